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

    /** One amount of money, in this currency. */
    public static double parse(String text, Currency currency) {
        return single(text, Wanted.money(currency), null).si();
    }

    /** One quantity with the unit it was written in. */
    public static Reading read(String text, Dimension dimension) {
        return single(text, Wanted.of(dimension), null);
    }

    /** One quantity whose unit may be left to a table's header. */
    public static double parse(String text, Dimension dimension, Unit heading) {
        return single(text, Wanted.of(dimension), heading).si();
    }

    /** One amount whose currency may be left to a table's header. */
    public static double parseUnder(String text, Currency heading) {
        return single(text, Wanted.money(heading), Unit.MONEY).si();
    }

    private static Reading single(String text, Wanted wanted, @Nullable Unit fallback) {
        String plain = plain(text, wanted);
        refuseRange(plain, text, wanted);
        return read(plain, wanted, fallback, text);
    }

    /** A range, an open range, or one figure that stands for both ends. */
    public static Range range(String text, Dimension dimension) {
        return range(text, Wanted.of(dimension));
    }

    /** The same of money, in this currency. */
    public static Range range(String text, Currency currency) {
        return range(text, Wanted.money(currency));
    }

    private static Range range(String text, Wanted wanted) {
        String plain = plain(text, wanted);
        String lower = plain.toLowerCase(Locale.ROOT);
        if (lower.startsWith("at most ")) {
            return new Range(
                    Double.NEGATIVE_INFINITY,
                    read(plain.substring(8).strip(), wanted, null, text).si());
        }
        if (lower.startsWith("at least ")) {
            return new Range(
                    read(plain.substring(9).strip(), wanted, null, text).si(), Double.POSITIVE_INFINITY);
        }
        String[] ends = TO.split(plain, -1);
        if (ends.length != 2) {
            refuseRange(plain, text, wanted);
            double si = read(plain, wanted, null, text).si();
            return new Range(si, si);
        }
        Reading high = read(ends[1].strip(), wanted, null, text);
        Reading low = read(ends[0].strip(), wanted, high.unit(), text);
        if (low.si() > high.si()) {
            throw new QuantityException(
                    quote(text) + " runs downwards",
                    "Write the smaller figure first: " + wanted.shown(high) + " to " + wanted.shown(low) + ".");
        }
        return new Range(low.si(), high.si());
    }

    /** The unit of the last figure in {@code text}, for answering in the writer's own. */
    public static Unit unit(String text, Dimension dimension) {
        Wanted wanted = Wanted.of(dimension);
        String plain = plain(text, wanted);
        String[] ends = TO.split(plain.toLowerCase(Locale.ROOT).startsWith("at ") ? plain.substring(8) : plain, -1);
        return read(ends[ends.length - 1].strip(), wanted, null, text).unit();
    }

    /** Side lengths, for example {@code 80 mm x 80 mm x 150 mm}, in the order written. */
    public static double[] size(String text, int sides) {
        String plain = plain(text, Wanted.of(Dimension.LENGTH));
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
            Reading reading = read(parts[i].strip(), Wanted.of(Dimension.LENGTH), unit, text);
            lengths[i] = reading.si();
            unit = reading.unit();
        }
        return lengths;
    }

    /** The unit written as {@code symbol}, if it measures {@code dimension}. */
    public static Unit unitNamed(String symbol, Dimension dimension) {
        Wanted wanted = Wanted.of(dimension);
        if (symbol.isBlank()) {
            return bare(symbol, wanted);
        }
        return unit(symbol.strip(), wanted, symbol);
    }

    /** For files: nine significant digits and the symbol. */
    public static String print(double si, Unit unit) {
        return with(Numbers.exact(unit.fromSi(si)), unit);
    }

    /** For files: the same, of money with its currency's code. */
    public static String print(double si, Unit unit, Currency currency) {
        String symbol = unit.symbol(currency);
        return Numbers.exact(unit.fromSi(si)) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /** For people: so many decimals and the symbol. */
    public static String print(double si, Unit unit, int decimals) {
        return with(Numbers.fixed(unit.fromSi(si), decimals), unit);
    }

    private static String with(String number, Unit unit) {
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** Figure after figure, each in a smaller unit than the one before. */
    private static Reading read(String plain, Wanted wanted, @Nullable Unit fallback, String text) {
        int at = 0;
        double sum = 0;
        double sign = 1;
        Unit last = null;
        Matcher unitMatcher = UNIT.matcher(plain);
        do {
            Figure figure = figure(plain, at, text, wanted);
            unitMatcher.region(figure.end(), plain.length());
            String symbol = unitMatcher.lookingAt() && unitMatcher.group(1) != null ? unitMatcher.group(1) : "";
            at = symbol.isEmpty() && !unitMatcher.hitEnd() ? figure.end() : unitMatcher.end();
            Unit unit = symbol.isEmpty()
                    ? fallback != null ? fallback : bare(text, wanted)
                    : unit(symbol.strip(), wanted, text);
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

    private static Figure figure(String plain, int at, String text, Wanted wanted) {
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
            throw new QuantityException(quote(text) + " is not a quantity", example(wanted));
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

    private static Unit bare(String text, Wanted wanted) {
        if (wanted.dimension() == Dimension.NUMBER) {
            return Unit.RATIO;
        }
        if (wanted.dimension() == Dimension.COUNT) {
            return Unit.COUNT;
        }
        throw new QuantityException(quote(text) + " has no unit", "Add the unit, " + oneOf(wanted.symbols()) + ".");
    }

    private static String oneOf(String symbols) {
        return (symbols.contains(",") ? "one of " : "") + symbols;
    }

    private static Unit unit(String symbol, Wanted wanted, String text) {
        Unit unit = UnitNames.find(symbol);
        if (unit != null && unit.dimension() == wanted.dimension()) {
            return unit;
        }
        Currency asked = wanted.currency();
        if (unit == null && asked != null) {
            return money(symbol, asked, text);
        }
        String symbols = wanted.symbols();
        String advice = symbols.isEmpty() ? "Write a plain number without a unit." : "Use " + oneOf(symbols) + ".";
        if (symbol.startsWith("_")) {
            throw new QuantityException(quote(text) + " is not a quantity", "Write figures without underscores.");
        }
        boolean money = unit == null && (Currency.known(symbol) || Currency.signed(symbol));
        Dimension found = money ? Dimension.MONEY : unit == null ? null : unit.dimension();
        throw new QuantityException(
                found == null
                        ? quote(text) + " is not understood: there is no unit " + quote(symbol)
                        : quote(text) + " is " + Examples.name(found) + " where " + Examples.name(wanted.dimension())
                                + " belongs",
                advice);
    }

    private static Unit money(String symbol, Currency asked, String text) {
        Currency written = Currency.of(symbol);
        if (!written.equals(asked)) {
            throw new QuantityException(
                    quote(text) + " is in " + written + " where prices are in " + asked,
                    "Write it in " + asked + ", the catalogue's currency: there are no exchange rates here.");
        }
        return Unit.MONEY;
    }

    private static String plain(String text, Wanted wanted) {
        String plain =
                text.strip().replace('\u2212', '-').replace('\u00a0', ' ').replace('\u202f', ' ');
        if (plain.length() > LONGEST) {
            throw new QuantityException(quote(text) + " is too long for a quantity", example(wanted));
        }
        if (plain.isEmpty()) {
            throw new QuantityException("the value is empty", example(wanted));
        }
        if (wanted.currency() != null && Currency.signed(plain)) {
            Currency.of(plain);
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

    private static void refuseRange(String plain, String text, Wanted wanted) {
        String lower = plain.toLowerCase(Locale.ROOT);
        if (TO.split(plain, -1).length > 1 || lower.startsWith("at most") || lower.startsWith("at least")) {
            throw new QuantityException(
                    quote(text) + " is a range where one figure belongs", "Give one figure. " + example(wanted));
        }
        if ((DASHED.matcher(lower).matches() && !EXPONENT.matcher(lower).find())
                || lower.startsWith("<")
                || lower.startsWith(">")) {
            throw new QuantityException(
                    quote(text) + " is not a quantity", "Write ranges in words: 0.9 m to 1.3 m, at most 8 m/s.");
        }
    }

    private static String example(Wanted wanted) {
        return "Write it like " + wanted.example() + ".";
    }

    /** The text in quotation marks, cut where it is long and without control characters. */
    static String quote(String text) {
        String shown = text.strip().replaceAll("\\p{Cntrl}", "?");
        return "'" + (shown.length() > 40 ? shown.substring(0, 37) + "..." : shown) + "'";
    }
}
