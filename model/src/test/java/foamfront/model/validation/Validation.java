package foamfront.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One external check: a published source and our figures beside it. Each figure is asserted and written as one line of its own
 * file, so that the page does not depend on the order of the tests. Digits follow the tolerance: one below its first, which keeps
 * rounding of the last bit off the page.
 *
 * @param subject its section on the page
 * @param check number and name
 * @param source author, title, year, and how it was come by
 */
public record Validation(Subject subject, String check, String source) {
    private static final Path FOLDER = Path.of("target", "validation");
    private static final MathContext PUBLISHED_DIGITS = new MathContext(7, RoundingMode.HALF_EVEN);
    private static final int MOST_DECIMALS = 7;
    private static final Map<String, String> WRITTEN = new ConcurrentHashMap<>();

    public static Validation of(Subject subject, String check, String source) {
        return new Validation(subject, check, source);
    }

    /** One published figure, within a tolerance in its own unit. */
    public Validation value(String name, double published, double ours, double tolerance, String unit) {
        int decimals = decimals(tolerance);
        boolean relative = Math.abs(published) > 2 * tolerance;
        String error = relative
                ? percent(ours / published - 1, tolerance / Math.abs(published))
                : fixed(ours - published, decimals);
        String allowed = relative ? percent(tolerance / Math.abs(published)) : plain(tolerance);
        write("value", name, unit, plain(published), fixed(ours, decimals), error, allowed);
        assertThat(ours).as("%s: %s", check, name).isCloseTo(published, within(tolerance));
        return this;
    }

    /** One published figure, within a share of it. */
    public Validation relative(String name, double published, double ours, double share, String unit) {
        return value(name, published, ours, share * Math.abs(published), unit);
    }

    /** A published range. */
    public Validation band(String name, double low, double high, double ours, String unit) {
        int decimals = decimals(high - low);
        write("value", name, unit, plain(low) + " to " + plain(high), fixed(ours, decimals), "inside", "the range");
        assertThat(ours).as("%s: %s", check, name).isBetween(low, high);
        return this;
    }

    /** A range that our figure is known to miss: shown as such, and a reason to look again on the day it does not. */
    public Validation outside(String name, double low, double high, double ours, String unit) {
        int decimals = decimals(high - low);
        String where = ours < low ? "below" : "above";
        write("value", name, unit, plain(low) + " to " + plain(high), fixed(ours, decimals), where, "the range");
        assertThat(ours < low || ours > high)
                .as("%s: %s is %s, inside after all", check, name, ours)
                .isTrue();
        return this;
    }

    /** Errors over a set of data, none of them above the first tolerance and their root mean square not above the second. */
    public Validation set(String name, ErrorStatistics errors, double most, double mostRms, String unit) {
        return set(name, errors.count(), errors.largest(), errors.rms(), most, mostRms, unit);
    }

    /** The same with the statistics made elsewhere. */
    public Validation set(
            String name, int count, double largest, double rms, double most, double mostRms, String unit) {
        write(
                "set",
                name,
                unit,
                Integer.toString(count),
                fixed(largest, decimals(most)),
                fixed(rms, decimals(mostRms)),
                plain(most) + ", " + plain(mostRms));
        assertThat(largest).as("%s: largest error of %s", check, name).isLessThanOrEqualTo(most);
        assertThat(rms).as("%s: RMS error of %s", check, name).isLessThanOrEqualTo(mostRms);
        return this;
    }

    private void write(String... fields) {
        String where = String.format(Locale.ROOT, "%d-%s-%s", subject.ordinal(), slug(check), slug(fields[1]));
        String line = subject.ordinal()
                + "\t"
                + String.join("\t", List.of(subject.title(), subject.weakest(), check, source))
                + "\t"
                + String.join("\t", fields)
                + "\n";
        assertThat(WRITTEN.putIfAbsent(where, line))
                .as("two figures under the name of %s", where)
                .isIn(null, line);
        try {
            Files.createDirectories(FOLDER);
            Files.write(FOLDER.resolve(where + ".tsv"), line.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String slug(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}0-9.]+", "-");
    }

    private static int decimals(double tolerance) {
        int first = (int) Math.floor(Math.log10(tolerance) + 1e-9);
        return Math.max(0, Math.min(MOST_DECIMALS, 1 - first));
    }

    private static String percent(double share, double tolerance) {
        return fixed(100 * share, decimals(100 * tolerance)) + " %";
    }

    private static String percent(double share) {
        MathContext two = new MathContext(2, RoundingMode.HALF_EVEN);
        return new BigDecimal(100 * share).round(two).stripTrailingZeros().toPlainString() + " %";
    }

    private static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value).round(PUBLISHED_DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Fixed decimals; a zero never carries a sign. */
    private static String fixed(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.toPlainString();
    }
}
