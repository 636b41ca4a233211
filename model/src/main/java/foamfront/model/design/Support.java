package foamfront.model.design;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which choices the model computes. The others are part of the language of design files and refused with their reason: an
 * aeroplane computed without a drag that it has would look better than it is.
 */
public final class Support {
    private static final Map<Choice, String> NOT_YET =
            Map.ofEntries(Map.entry(PowerKind.NONE, "towed and thrown gliders are not computed yet"));

    private Support() {}

    /** Why the model does not compute this choice, or null if it does. */
    public static @Nullable String refusal(Choice choice) {
        return NOT_YET.get(choice);
    }

    /** The choices of one kind that the model computes, in their own order. */
    public static <C extends Choice> List<C> computed(C[] values) {
        return Arrays.stream(values).filter(choice -> refusal(choice) == null).toList();
    }
}
