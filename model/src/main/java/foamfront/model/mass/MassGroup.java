package foamfront.model.mass;

/** What a mass belongs to, for tables of mass shares and for the loads of the structure. */
public enum MassGroup {
    WING("wing"),
    TAIL("tail"),
    BODY("body"),
    UNDERCARRIAGE("undercarriage"),
    POWER("power plant"),
    RADIO("radio and controls"),
    BATTERY("battery"),
    PAYLOAD("payload"),
    RELEASED("payload released in flight");

    private final String words;

    MassGroup(String words) {
        this.words = words;
    }

    /** Name in tables. */
    public String words() {
        return words;
    }
}
