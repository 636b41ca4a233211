package foamfront.model.mass;

import foamfront.model.fabrication.Assembly;

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

    /** The group of what is cut or sawn for an assembly. */
    public static MassGroup of(Assembly assembly) {
        return switch (assembly) {
            case WING -> WING;
            case TAIL -> TAIL;
            case BODY, POWER -> BODY;
            case UNDERCARRIAGE -> UNDERCARRIAGE;
        };
    }

    /** Name in tables. */
    public String words() {
        return words;
    }
}
