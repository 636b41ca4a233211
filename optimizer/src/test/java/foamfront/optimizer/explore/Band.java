package foamfront.optimizer.explore;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/**
 * What is usual for one figure of a role.
 *
 * @param study its file's name
 * @param figure a measure's words, or one of those that {@link Figures} adds
 * @param low in the unit
 * @param high in the unit
 * @param unit as written
 * @param required whether most rows of the front must lie inside
 */
record Band(String study, String figure, double low, double high, String unit, boolean required) {
    /** Aimed at exactly, a static margin lies on a range's edge but for its rounding. */
    private static final double ROUNDING = 1e-9;

    boolean holds(double value) {
        return value >= low * (1 - ROUNDING) && value <= high * (1 + ROUNDING);
    }

    /** All of bands.csv. */
    static List<Band> all() {
        try (InputStream in = Objects.requireNonNull(Band.class.getResourceAsStream("bands.csv"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("study,"))
                    .map(line -> of(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Band of(String[] f) {
        return new Band(f[0], f[1], Double.parseDouble(f[2]), Double.parseDouble(f[3]), f[4], f[5].equals("yes"));
    }
}
