package foamfront.model.design;

/** One of the closed choices an aeroplane composes, under the words that study and design files use. */
public interface Choice {
    /** Lower-case words, for example {@code pusher behind the wing}. */
    String words();
}
