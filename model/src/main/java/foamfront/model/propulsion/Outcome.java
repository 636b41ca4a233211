package foamfront.model.propulsion;

/** Whether a power train runs as asked, and if not, why. */
public enum Outcome {
    /** It does. */
    REACHED(""),
    /** Full throttle gives less thrust at this speed and state of charge. */
    BEYOND_FULL_THROTTLE("full throttle gives less thrust"),
    /** The pack cannot supply the radio and the motors at once. */
    BATTERY_COLLAPSED("the battery's voltage collapses under the load");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /** What a report says; empty if nothing is wrong. */
    public String words() {
        return words;
    }
}
