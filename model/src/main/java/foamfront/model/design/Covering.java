package foamfront.model.design;

/** What covers the board. */
public enum Covering implements Choice {
    BARE("bare"),
    TAPED_EDGES("taped edges"),
    ONE_FACE("one face"),
    BOTH_FACES("both faces");

    private final String words;

    Covering(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
