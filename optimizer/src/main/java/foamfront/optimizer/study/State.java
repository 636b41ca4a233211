package foamfront.optimizer.study;

import foamfront.model.design.Choice;

/** How far an aeroplane of the club has come. */
public enum State implements Choice {
    IDEA("idea"),
    EXPLORED("explored"),
    BUILT("built"),
    FLOWN("flown"),
    PROVEN("proven");

    private final String words;

    State(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
