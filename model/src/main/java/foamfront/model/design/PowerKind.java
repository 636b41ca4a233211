package foamfront.model.design;

/** Power arrangements. */
public enum PowerKind implements Choice {
    NOSE_TRACTOR("nose tractor"),
    PUSHER("pusher behind the wing"),
    TWIN_TRACTOR("twin tractor"),
    COUNTER_TWIN("counter-rotating twin"),
    DUCTED_FAN("ducted fan"),
    NONE("none");

    private final String words;

    PowerKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
