package foamfront.model.design;

/** Where a load rides. */
public enum Place implements Choice {
    NOSE("nose"),
    ON_TOP("on top"),
    BEHIND_NOSE("behind the nose"),
    BELOW("below"),
    BALANCE_POINT("at the balance point");

    private final String words;

    Place(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
