package foamfront.model.design;

/** Undercarriages. */
public enum UndercarriageKind implements Choice {
    NONE("none"),
    TAIL_WHEEL("tail wheel"),
    TRICYCLE("tricycle"),
    FLOATS("floats"),
    AMPHIBIAN("hull with wheels");

    private final String words;

    UndercarriageKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
