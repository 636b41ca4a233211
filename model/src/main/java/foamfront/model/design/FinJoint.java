package foamfront.model.design;

/** How fins are joined. */
public enum FinJoint implements Choice {
    FIXED("fixed"),
    FOLDING("folding");

    private final String words;

    FinJoint(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
