package foamfront.optimizer.study;

import foamfront.model.design.Choice;

/** The units people read. */
public enum ShowIn implements Choice {
    METRIC("metric"),
    INCHES("inches");

    private final String words;

    ShowIn(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
