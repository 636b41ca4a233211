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

    /** The group of a cut or sawn part by the name it has on the drawings. */
    public static MassGroup ofPart(String name) {
        if (name.startsWith("wing saddle")) {
            return BODY;
        }
        if (name.startsWith("wing") || name.startsWith("upper wing")) {
            return WING;
        }
        if (name.startsWith("stabiliser") || name.startsWith("fin")) {
            return TAIL;
        }
        return name.startsWith("float") ? UNDERCARRIAGE : BODY;
    }

    /** Name in tables. */
    public String words() {
        return words;
    }
}
