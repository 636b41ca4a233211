package foamfront.model.design;

/** Foam-board wing sections. */
public enum SectionKind implements Choice {
    FLAT_PLATE("flat plate"),
    STEPPED_PLATE("stepped plate"),
    CURVED_PLATE("curved plate"),
    FOLDED_FLAT_BOTTOM("folded flat-bottom"),
    FOLDED_SYMMETRICAL("folded symmetrical");

    private final String words;

    SectionKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
