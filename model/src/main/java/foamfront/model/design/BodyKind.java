package foamfront.model.design;

/** Body arrangements. */
public enum BodyKind implements Choice {
    SQUARE_TUBE("square tube"),
    TWO_BAY_TUBE("two-bay tube"),
    POD_AND_BOOM("pod and boom"),
    PROFILE_BOARD("profile board"),
    BOAT_HULL("boat hull");

    private final String words;

    BodyKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
