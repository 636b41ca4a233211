package foamfront.model.units;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Quantities as people write them: {@code 1.2 m}, {@code 3/16 in}, {@code 1 1/2 in}, {@code 4 ft 6 in}, {@code 8 %},
 * {@code 0.9 m to 1.3 m}, {@code at most 8 m/s}, {@code 80 mm x 80 mm x 150 mm}. A figure without a unit takes that of the
 * figure after it in a range or size; otherwise only plain numbers and counts go without. What cannot be read is refused with
 * a {@link QuantityException} that says what would be right.
 */
public final class Quantities {
    /** Longer texts are no quantity. */
    private static final int LONGEST = 100;

    private static final Pattern NUMBER =
            Pattern.compile("[-+]?(?:\\d{1,20}(?:\\.\\d{0,20})?|\\.\\d{1,20})(?:[eE][-+]?\\d{1,3}(?![\\d.]))?");
    private static final Pattern FRACTION = Pattern.compile("([-+]?\\d{1,9})\\s*/\\s*(\\d{1,9})");
    private static final Pattern MIXED = Pattern.compile("([-+]?\\d{1,9})\\s+(\\d{1,9})/(\\d{1,9})");
    private static final Pattern UNIT = Pattern.compile("\\s*([^\\s\\d+.\\-][^\\s]*(?:\\s+[^\\s\\d+.\\-]\\S*)*)?\\s*");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d\\s?,\\s?\\d");
    private static final Pattern COMMA_NUMBER = Pattern.compile("(\\d)\\s?,\\s?(\\d)");
    private static final Pattern SIZE =
            Pattern.compile("\\s*[x×]\\s+|(?<=[\\sa-z])[x×](?=\\s*\\d)|(?<=\\d)[x×](?=\\d)");
    private static final Pattern TO = Pattern.compile("\\s+to\\s+");
    private static final Pattern DASHED = Pattern.compile(".*\\d\\s*[a-z%]*\\s*(?:\\.\\.+|…|–|-)\\s*\\d.*");

    private static final Pattern MARK = Pattern.compile("\\d\\s*[\"″”'′’]");
    private static final Pattern INCH_MARK = Pattern.compile("\\d\\s*(?:[\"″”]|'')");
    private static final Pattern EXPONENT = Pattern.compile("\\de[-+]?\\d");

    private Quantities() {}

    /** One quantity in SI. */
    public static double parse(String text, Dimension dimension) {
        return read(text, dimension).si();
    }

    /** One quantity with the unit it was written in. */
    public static Reading read(String text, Dimension dimension) {
        String plain = plain(text, dimension);
        refuseRange(plain, text, dimension);
        return read(plain, dimension, null, text);
    }

    /** One quantity whose unit may be left to a table's header. */
    public static double parse(String text, Dimension dimension, Unit heading) {
        String plain = plain(text, dimension);
        refuseRange(plain, text, dimension);
        return read(plain, dimension, heading, text).si();
    }

    /** A range, an open range, or one figure that stands for both ends. */
    public static Range range(String text, Dimension dimension) {
        String plain = plain(text, dimension);
        String lower = plain.toLowerCase(Locale.ROOT);
        if (lower.startsWith("at most ")) {
            return new Range(
                    Double.NEGATIVE_INFINITY,
                    read(plain.substring(8).strip(), dimension, null, text).si());
        }
        if (lower.startsWith("at least ")) {
            return new Range(
                    read(plain.substring(9).strip(), dimension, null, text).si(), Double.POSITIVE_INFINITY);
        }
        String[] ends = TO.split(plain, -1);
        if (ends.length != 2) {
            refuseRange(plain, text, dimension);
            double si = read(plain, dimension, null, text).si();
            return new Range(si, si);
        }
        Reading high = read(ends[1].strip(), dimension, null, text);
        Reading low = read(ends[0].strip(), dimension, high.unit(), text);
        if (low.si() > high.si()) {
            throw new QuantityException(
                    quote(text) + " runs downwards", "Write the smaller figure first: " + high + " to " + low + ".");
        }
        return new Range(low.si(), high.si());
    }

    /** The unit of the last figure in {@code text}, for answering in the writer's own. */
    public static Unit unit(String text, Dimension dimension) {
        String plain = plain(text, dimension);
        String[] ends = TO.split(plain.toLowerCase(Locale.ROOT).startsWith("at ") ? plain.substring(8) : plain, -1);
        return read(ends[ends.length - 1].strip(), dimension, null, text).unit();
    }

    /** Side lengths, for example {@code 80 mm x 80 mm x 150 mm}, in the order written. */
    public static double[] size(String text, int sides) {
        String plain = plain(text, Dimension.LENGTH);
        String[] parts = SIZE.split(plain, -1);
        if (parts.length != sides) {
            String example = sides == 2 ? "80 mm x 60 mm" : "80 mm x 60 mm x 40 mm";
            throw new QuantityException(
                    quote(text) + " has " + parts.length + (parts.length == 1 ? " side" : " sides") + " where " + sides
                            + " belong",
                    "Write it as " + example + ".");
        }
        double[] lengths = new double[sides];
        Unit unit = null;
        for (int i = sides - 1; i >= 0; i--) {
            Reading reading = read(parts[i].strip(), Dimension.LENGTH, unit, text);
            lengths[i] = reading.si();
            unit = reading.unit();
        }
        return lengths;
    }

    /** The unit written as {@code symbol}, if it measures {@code dimension}. */
    public static Unit unitNamed(String symbol, Dimension dimension) {
        if (symbol.isBlank()) {
            return bare(symbol, dimension);
        }
        return unit(symbol.strip(), dimension, symbol);
    }

    /** For files: nine significant digits and the symbol. */
    public static String print(double si, Unit unit) {
        return with(Numbers.exact(unit.fromSi(si)), unit);
    }

    /** For people: so many decimals and the symbol. */
    public static String print(double si, Unit unit, int decimals) {
        return with(Numbers.fixed(unit.fromSi(si), decimals), unit);
    }

    private static String with(String number, Unit unit) {
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** Figure after figure, each in a smaller unit than the one before. */
    private static Reading read(String plain, Dimension dimension, @Nullable Unit fallback, String text) {
        int at = 0;
        double sum = 0;
        double sign = 1;
        Unit last = null;
        Matcher unitMatcher = UNIT.matcher(plain);
        do {
            Figure figure = figure(plain, at, text, dimension);
            unitMatcher.region(figure.end(), plain.length());
            String symbol = unitMatcher.lookingAt() && unitMatcher.group(1) != null ? unitMatcher.group(1) : "";
            at = symbol.isEmpty() && !unitMatcher.hitEnd() ? figure.end() : unitMatcher.end();
            Unit unit = symbol.isEmpty()
                    ? fallback != null ? fallback : bare(text, dimension)
                    : unit(symbol.strip(), dimension, text);
            if (last == null) {
                sign = plain.startsWith("-") ? -1 : 1;
                sum = unit.toSi(figure.value());
            } else {
                sum += sign * compound(figure.value(), last, unit, text);
            }
            last = unit;
        } while (at < plain.length());
        if (!Double.isFinite(sum)) {
            throw new QuantityException(quote(text) + " is too large", "Write a figure a builder could measure.");
        }
        return new Reading(sum + 0.0, last);
    }

    private static double compound(double value, Unit before, Unit unit, String text) {
        double si = unit.toSi(value);
        boolean smaller = unit.toSi(1) < before.toSi(1) && unit.dimension() != Dimension.TEMPERATURE;
        if (!smaller || value < 0 || si >= before.toSi(1)) {
            throw new QuantityException(
                    quote(text) + " does not add up", "Write one figure with one unit, or like 4 ft 6 in.");
        }
        return si;
    }

    private record Figure(double value, int end) {}

    private static Figure figure(String plain, int at, String text, Dimension dimension) {
        Matcher mixed = MIXED.matcher(plain).region(at, plain.length());
        if (mixed.lookingAt()) {
            double whole = Double.parseDouble(mixed.group(1));
            double part = ratio(mixed.group(2), mixed.group(3), text);
            return new Figure(mixed.group(1).startsWith("-") ? whole - part : whole + part, mixed.end());
        }
        Matcher fraction = FRACTION.matcher(plain).region(at, plain.length());
        if (fraction.lookingAt()) {
            return new Figure(ratio(fraction.group(1), fraction.group(2), text), fraction.end());
        }
        Matcher number = NUMBER.matcher(plain).region(at, plain.length());
        if (!number.lookingAt()) {
            throw new QuantityException(quote(text) + " is not a quantity", example(dimension));
        }
        return new Figure(Double.parseDouble(number.group()), number.end());
    }

    private static double ratio(String above, String below, String text) {
        double denominator = Double.parseDouble(below);
        if (denominator == 0) {
            throw new QuantityException(quote(text) + " divides by zero", "Write a fraction like 3/16 in.");
        }
        return Double.parseDouble(above) / denominator;
    }

    private static Unit bare(String text, Dimension dimension) {
        if (dimension == Dimension.NUMBER) {
            return Unit.RATIO;
        }
        if (dimension == Dimension.COUNT) {
            return Unit.COUNT;
        }
        throw new QuantityException(
                quote(text) + " has no unit", "Add the unit, " + oneOf(UnitNames.symbols(dimension)) + ".");
    }

    private static String oneOf(String symbols) {
        return (symbols.contains(",") ? "one of " : "") + symbols;
    }

    private static Unit unit(String symbol, Dimension dimension, String text) {
        Unit unit = UnitNames.find(symbol);
        if (unit != null && unit.dimension() == dimension) {
            return unit;
        }
        String wanted = UnitNames.symbols(dimension);
        String advice = wanted.isEmpty() ? "Write a plain number without a unit." : "Use " + oneOf(wanted) + ".";
        if (symbol.startsWith("_")) {
            throw new QuantityException(quote(text) + " is not a quantity", "Write figures without underscores.");
        }
        throw new QuantityException(
                unit == null
                        ? quote(text) + " is not understood: there is no unit " + quote(symbol)
                        : quote(text) + " is " + name(unit.dimension()) + " where " + name(dimension) + " belongs",
                advice);
    }

    private static String plain(String text, Dimension dimension) {
        String plain =
                text.strip().replace('\u2212', '-').replace('\u00a0', ' ').replace('\u202f', ' ');
        if (plain.length() > LONGEST) {
            throw new QuantityException(quote(text) + " is too long for a quantity", example(dimension));
        }
        if (plain.isEmpty()) {
            throw new QuantityException("the value is empty", example(dimension));
        }
        if (MARK.matcher(plain).find()) {
            boolean inch = INCH_MARK.matcher(plain).find();
            throw new QuantityException(
                    quote(text) + " uses " + (inch ? "an inch mark" : "a foot mark"),
                    "Write the unit as a word, like 4 ft 6 in.");
        }
        if (DECIMAL_COMMA.matcher(plain).find()) {
            throw new QuantityException(
                    quote(text) + " has a decimal comma",
                    "Write a decimal point: "
                            + COMMA_NUMBER.matcher(plain).replaceAll("$1.$2").strip() + ".");
        }
        return plain;
    }

    private static void refuseRange(String plain, String text, Dimension dimension) {
        String lower = plain.toLowerCase(Locale.ROOT);
        if (TO.split(plain, -1).length > 1 || lower.startsWith("at most") || lower.startsWith("at least")) {
            throw new QuantityException(
                    quote(text) + " is a range where one figure belongs", "Give one figure. " + example(dimension));
        }
        if ((DASHED.matcher(lower).matches() && !EXPONENT.matcher(lower).find())
                || lower.startsWith("<")
                || lower.startsWith(">")) {
            throw new QuantityException(
                    quote(text) + " is not a quantity", "Write ranges in words: 0.9 m to 1.3 m, at most 8 m/s.");
        }
    }

    private static String example(Dimension dimension) {
        return "Write it like " + Examples.of(dimension) + ".";
    }

    private static String name(Dimension dimension) {
        return Examples.name(dimension);
    }

    /** The text in quotation marks, cut where it is long and without control characters. */
    private static String quote(String text) {
        String shown = text.strip().replaceAll("\\p{Cntrl}", "?");
        return "'" + (shown.length() > 40 ? shown.substring(0, 37) + "..." : shown) + "'";
    }
}
