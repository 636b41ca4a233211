package foamfront.model.design;

/** How the wing is held to the body. */
public enum HoldDown implements Choice {
    GLUED("glued"),
    RUBBER_BANDS("rubber bands");

    private final String words;

    HoldDown(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
