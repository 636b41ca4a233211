package foamfront.model.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one writer of numbers: every file, table and message gets its digits here, so that they are the same on every Java, in
 * every locale. From the exact binary value, rounded half to even; never through {@code Double.toString}, whose digits
 * changed between Java 17 and 19.
 */
public final class Numbers {
    /** Significant digits in files. */
    public static final int DIGITS = 9;

    private static final MathContext FILE = new MathContext(DIGITS, RoundingMode.HALF_EVEN);

    /** Powers of ten written out in full; outside them an exponent is shorter. */
    private static final int LEAST_PLAIN = -7;

    private static final int MOST_PLAIN = 15;

    private Numbers() {}

    /** For files: {@value #DIGITS} significant digits, no trailing zeros. */
    public static String exact(double value) {
        return significant(value, FILE);
    }

    /** For people: so many significant digits, no trailing zeros. */
    public static String significant(double value, int digits) {
        return significant(value, new MathContext(digits, RoundingMode.HALF_EVEN));
    }

    /** For people: so many decimals, all of them shown. */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return word(value);
        }
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.toPlainString();
    }

    private static String significant(double value, MathContext context) {
        if (!Double.isFinite(value)) {
            return word(value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(context).stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        if (exponent >= LEAST_PLAIN && exponent <= MOST_PLAIN) {
            return rounded.toPlainString();
        }
        String digits = rounded.unscaledValue().abs().toString();
        String fraction = digits.length() > 1 ? "." + digits.substring(1) : "";
        return (rounded.signum() < 0 ? "-" : "") + digits.charAt(0) + fraction + "e" + exponent;
    }

    private static String word(double value) {
        return Double.isNaN(value) ? "NaN" : value > 0 ? "Infinity" : "-Infinity";
    }
}
