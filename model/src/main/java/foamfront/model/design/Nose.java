package foamfront.model.design;

/** How the nose is joined. */
public enum Nose implements Choice {
    FIXED("fixed"),
    REPLACEABLE("replaceable");

    private final String words;

    Nose(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
