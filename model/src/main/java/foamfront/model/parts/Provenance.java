package foamfront.model.parts;

/** Where the figures of a catalogue row come from. */
public enum Provenance {
    /** Measured and openly published, cited in the catalogue. */
    OPEN_DATA("open data"),
    /** Measured by the builder on a bench of their own. */
    OWN_BENCH("own bench"),
    /** From a regression over published figures, cited in the catalogue. */
    REGRESSION("regression"),
    /** Plausible trade figures without a source. */
    INVENTED("invented for the demo");

    private final String words;

    Provenance(String words) {
        this.words = words;
    }

    /** The words used in catalogue files and reports. */
    public String words() {
        return words;
    }
}
