package foamfront.model.design;

/** What turns the aeroplane. */
public enum ControlLayout implements Choice {
    RUDDER_ELEVATOR("rudder-elevator"),
    AILERONS("ailerons"),
    ELEVONS("elevons"),
    FLAPS("flaps"),
    FLAPERONS("flaperons");

    private final String words;

    ControlLayout(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }

    /** The high-lift surfaces that come with it. */
    public FlapKind flaps() {
        return switch (this) {
            case FLAPS -> FlapKind.FLAPS;
            case FLAPERONS -> FlapKind.FLAPERONS;
            default -> FlapKind.NONE;
        };
    }
}
