package foamfront.model.design;

/** High-lift surfaces: hinged parts of the trailing edge inboard of the ailerons, or ailerons that droop together. */
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
