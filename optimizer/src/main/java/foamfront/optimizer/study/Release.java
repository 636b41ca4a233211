package foamfront.optimizer.study;

import foamfront.model.design.Choice;

/** Whether a load leaves the aeroplane. */
enum Release implements Choice {
    NEVER("never"),
    IN_FLIGHT("in flight");

    private final String words;

    Release(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
