package foamfront.model.design;

/** High-lift surfaces. */
public enum FlapKind implements Choice {
    NONE("none"),
    FLAPS("flaps"),
    FLAPERONS("flaperons");

    private final String words;

    FlapKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
