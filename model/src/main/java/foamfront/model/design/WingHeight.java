package foamfront.model.design;

/** Where a monoplane's wing meets the body. */
public enum WingHeight implements Choice {
    LOW("low"),
    SHOULDER("shoulder"),
    HIGH("high");

    private final String words;

    WingHeight(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
