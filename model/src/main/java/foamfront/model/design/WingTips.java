package foamfront.model.design;

/** Wing tips. */
public enum WingTips implements Choice {
    PLAIN("plain"),
    WINGLETS("winglets");

    private final String words;

    WingTips(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
