package foamfront.model.mission;

import static foamfront.model.units.Require.positive;

/**
 * A part already in the drawer: it costs nothing.
 *
 * @param part catalogue name
 * @param count how many
 */
public record Owned(String part, int count) {
    public Owned {
        positive("count in the drawer", count, "");
    }
}
