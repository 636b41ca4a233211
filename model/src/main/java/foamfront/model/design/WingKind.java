package foamfront.model.design;

/** Wing arrangements. */
public enum WingKind implements Choice {
    MONOPLANE("monoplane"),
    BIPLANE("biplane"),
    FLYING_WING("flying wing"),
    DELTA("one-sheet delta");

    private final String words;

    WingKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
