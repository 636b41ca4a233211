package foamfront.model.design;

/** Tail arrangements. */
public enum TailKind implements Choice {
    CONVENTIONAL("conventional"),
    T_TAIL("T"),
    V_TAIL("V"),
    NONE("none");

    private final String words;

    TailKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
