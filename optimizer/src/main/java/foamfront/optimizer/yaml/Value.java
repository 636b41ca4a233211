package foamfront.optimizer.yaml;

import foamfront.model.design.Choice;
import foamfront.model.units.Currency;
import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.model.units.QuantityException;
import foamfront.model.units.Range;
import foamfront.model.units.Reading;
import foamfront.model.units.Unit;
import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.faults.Nearest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value with the path that leads to it; every reading that fails leaves a fault and returns null. */
public record Value(Yaml yaml, String path, Faults faults) {
    private static final List<String> YES_NO = List.of("yes", "no");

    public void fault(String problem, String advice) {
        faults.add(yaml.line(), yaml.column(), path, problem, advice);
    }

    /** One line of text or more. */
    public @Nullable String prose() {
        if (yaml instanceof Yaml.Scalar scalar) {
            if (!scalar.text().isBlank()) {
                return scalar.text().strip();
            }
            fault("has no value", "Write one, or delete the key.");
            return null;
        }
        fault(
                yaml instanceof Yaml.Sequence
                        ? "is a list where one value belongs"
                        : "holds keys where a value belongs",
                "Write one value after the colon.");
        return null;
    }

    /** A value on one line. */
    public @Nullable String text() {
        if (yaml instanceof Yaml.Scalar scalar && scalar.folded()) {
            String hint = Hints.missingSpace(scalar.text());
            fault(
                    "runs on over the next line",
                    hint != null ? hint : "Check the indentation of the lines below it, or put them in quotes.");
            return null;
        }
        return prose();
    }

    public @Nullable Reading quantity(Dimension dimension, double low, double high) {
        String text = text();
        if (text == null) {
            return null;
        }
        return reading(() -> {
            Reading reading = Quantities.read(text, dimension);
            return inside(new Range(reading.si(), reading.si()), reading.unit(), low, high) ? reading : null;
        });
    }

    /** A figure or a range of figures, both ends within bounds. */
    public @Nullable Range range(Dimension dimension, double low, double high) {
        String text = text();
        if (text == null) {
            return null;
        }
        return reading(() -> {
            Range range = Quantities.range(text, dimension);
            if (Double.isInfinite(range.low()) || Double.isInfinite(range.high())) {
                fault("'" + text + "' has an open end", "Write both ends: 0.9 m to 1.3 m.");
                return null;
            }
            return inside(range, Quantities.unit(text, dimension), low, high) ? range : null;
        });
    }

    /** at most, at least, or from one to another. */
    public @Nullable Range limit(Unit unit, Currency currency) {
        String text = text();
        if (text == null) {
            return null;
        }
        return reading(() -> {
            Range range =
                    unit == Unit.MONEY ? Quantities.range(text, currency) : Quantities.range(text, unit.dimension());
            if (range.single()) {
                String own = Quantities.print(range.low(), unit, currency);
                fault(
                        "'" + text + "' does not say which way it limits",
                        "Write 'at most " + own + "' or 'at least " + own + "'.");
                return null;
            }
            return range;
        });
    }

    /** An amount of money within bounds. */
    public @Nullable Double money(double low, double high, Currency currency) {
        String text = text();
        if (text == null) {
            return null;
        }
        return reading(() -> {
            double amount = Quantities.parse(text, currency);
            if (amount >= low && amount <= high) {
                return amount;
            }
            fault(
                    Quantities.print(amount, Unit.MONEY, currency) + " lies outside what can be",
                    "Use " + Quantities.print(low, Unit.MONEY, currency) + " to "
                            + Quantities.print(high, Unit.MONEY, currency) + ".");
            return null;
        });
    }

    public double @Nullable [] size(int sides) {
        String text = text();
        if (text == null) {
            return null;
        }
        return reading(() -> {
            double[] lengths = Quantities.size(text, sides);
            for (double length : lengths) {
                if (!(length > 0 && length <= 10)) {
                    fault("'" + text + "' has a side that is not between 0 and 10 m", "Give outside lengths.");
                    return null;
                }
            }
            return lengths;
        });
    }

    public @Nullable Long whole(long low, long high) {
        String text = text();
        if (text == null) {
            return null;
        }
        if (text.matches("[-+]?\\d{1,18}")) {
            long value = Long.parseLong(text);
            if (value >= low && value <= high) {
                return value;
            }
            fault("'" + text + "' is outside " + low + " to " + high, "Use a whole number between them.");
        } else {
            fault("'" + shown(text) + "' is not a whole number", "Write digits only, for example " + low + ".");
        }
        return null;
    }

    public @Nullable Boolean yesNo() {
        String word = word(YES_NO, "answer");
        return word == null ? null : word.equals("yes");
    }

    public <C extends Choice> @Nullable C choice(C[] values) {
        List<String> words = new ArrayList<>();
        for (C value : values) {
            words.add(value.words());
        }
        String word = word(words, "choice");
        return word == null ? null : values[words.indexOf(word)];
    }

    /** The one of {@code known} that is written here. */
    public @Nullable String word(Collection<String> known, String what) {
        String text = text();
        if (text == null) {
            return null;
        }
        String plain = Key.plain(text);
        for (String word : known) {
            if (Key.plain(word).equals(plain)) {
                return word;
            }
        }
        fault("there is no " + what + " '" + shown(text) + "'", Nearest.advice(text, known, what));
        return null;
    }

    /** The items of a list; a single value is a list of one. */
    public List<Value> items() {
        if (!(yaml instanceof Yaml.Sequence sequence)) {
            return List.of(this);
        }
        if (sequence.items().isEmpty()) {
            fault("the list is empty", "Name at least one, or delete the key.");
        }
        List<Value> items = new ArrayList<>();
        for (Yaml item : sequence.items()) {
            items.add(new Value(item, path, faults));
        }
        return items;
    }

    /** The keys held here, or null with a fault. */
    public @Nullable Fields fields(KeyTable table) {
        if (yaml instanceof Yaml.Mapping mapping) {
            return new Fields(mapping, table, path, faults);
        }
        String hint = yaml instanceof Yaml.Scalar scalar ? Hints.missingSpace(scalar.text()) : null;
        fault(
                yaml instanceof Yaml.Scalar scalar && scalar.empty() ? "has no value" : "keys belong here",
                hint != null ? hint : "Write it as {" + table.names().get(0) + ": ...}.");
        return null;
    }

    public boolean isMapping() {
        return yaml instanceof Yaml.Mapping;
    }

    /** Text cut for a message. */
    static String shown(String text) {
        String plain = text.replaceAll("[\\p{Cntrl}]+", " ").strip();
        return plain.length() > 40 ? plain.substring(0, 37) + "..." : plain;
    }

    private boolean inside(Range range, Unit unit, double low, double high) {
        if (range.low() >= low && range.high() <= high) {
            return true;
        }
        String own = range.print(unit);
        if (high == Double.POSITIVE_INFINITY) {
            fault(own + " is too small", "Use at least " + Quantities.print(low, unit) + ".");
        } else {
            fault(
                    own + " lies outside what can be",
                    "Use " + Quantities.print(low, unit) + " to " + Quantities.print(high, unit) + ".");
        }
        return false;
    }

    private <T> @Nullable T reading(Supplier<@Nullable T> read) {
        try {
            return read.get();
        } catch (QuantityException e) {
            fault(e.problem(), e.advice());
            return null;
        }
    }
}
