package foamfront.model.fabrication;

/** What a part belongs to. */
public enum Assembly {
    WING("wing"),
    TAIL("tail"),
    BODY("body"),
    POWER("power plant"),
    UNDERCARRIAGE("undercarriage");

    private final String words;

    Assembly(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
