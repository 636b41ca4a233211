package foamfront.model.design;

/** How the wing halves meet. */
public enum WingJoint implements Choice {
    ONE_PIECE("one piece"),
    PLUG_IN("plug in"),
    FOLDING("folding");

    private final String words;

    WingJoint(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
