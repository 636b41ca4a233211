package foamfront.optimizer.yaml;

import foamfront.model.design.Choice;
import foamfront.model.units.Currency;
import foamfront.model.units.Range;
import foamfront.model.units.Reading;
import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.faults.Nearest;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A mapping read by its table: unknown and repeated keys are faults at once, and each reading falls back to what stands where
 * the key is missing or wrong, so that reading goes on and finds every fault.
 */
public final class Fields {
    private final Yaml.Mapping mapping;
    private final String path;
    private final Faults faults;
    private final IdentityHashMap<Key, Yaml.Entry> values = new IdentityHashMap<>();
    private final IdentityHashMap<Key, Fields> nested = new IdentityHashMap<>();

    public Fields(Yaml.Mapping mapping, KeyTable table, String path, Faults faults) {
        this.mapping = mapping;
        this.path = path;
        this.faults = faults;
        @Nullable Key before = null;
        for (Yaml.Entry entry : mapping.entries()) {
            before = take(entry, table, before);
        }
        for (Key key : table.keys()) {
            if (key.required() && !values.containsKey(key)) {
                faults.add(
                        mapping.line(),
                        mapping.column(),
                        path(key),
                        "the key is missing",
                        "Add it: " + key.about() + ".");
            }
        }
    }

    private @Nullable Key take(Yaml.Entry entry, KeyTable table, @Nullable Key before) {
        String written = entry.key().text();
        Key key = table.find(written);
        if (key == null) {
            unknown(entry, table, before);
            return null;
        }
        Yaml.Entry first = values.get(key);
        if (first == null) {
            values.put(key, entry);
            return key;
        }
        String other = first.key().text();
        String problem = other.equals(written)
                ? "the key stands here a second time"
                : "this is the same key as '" + Value.shown(other) + "', spelt otherwise";
        faults.add(
                entry.key().line(),
                entry.key().column(),
                path(key),
                problem + " (first in line " + first.key().line() + ")",
                "Keep one of them.");
        return key;
    }

    private void unknown(Yaml.Entry entry, KeyTable table, @Nullable Key before) {
        Yaml.Scalar scalar = entry.key();
        String written = scalar.text();
        boolean alone = entry.value() instanceof Yaml.Scalar value && value.empty();
        String shown = Value.shown(written);
        if (alone && before != null && written.matches("\\d.*")) {
            Yaml.Entry split = values.remove(before);
            String whole = split != null && split.value() instanceof Yaml.Scalar value ? value.text() : "";
            String point = whole.isEmpty() ? "1.2 m" : Value.shown(whole + "." + written);
            faults.add(
                    scalar.line(),
                    scalar.column(),
                    path(before),
                    "a decimal comma splits the value in two",
                    written.matches("\\d{3}") && whole.matches("[1-9]\\d{0,2}")
                            ? "Write a decimal point, " + point + ", or a count without commas, " + whole + written
                                    + "."
                            : "Write a decimal point: " + point + ".");
            return;
        }
        String hint = alone ? Hints.missingSpace(written) : null;
        faults.add(
                scalar.line(),
                scalar.column(),
                path.isEmpty() ? shown : path + "." + shown,
                hint == null ? "there is no such key" : "a key and its value run together",
                hint == null ? Nearest.advice(written, table.names(), "key") : hint);
    }

    /** Where a key stands, for messages. */
    public String path(Key key) {
        return path.isEmpty() ? key.name() : path + "." + key.name();
    }

    public boolean has(Key key) {
        return values.containsKey(key);
    }

    public @Nullable Value value(Key key) {
        Yaml.Entry entry = values.get(key);
        return entry == null ? null : new Value(entry.value(), path(key), faults);
    }

    /** A fault at a key's value, or at the mapping where the key is missing. */
    public void fault(Key key, String problem, String advice) {
        Value value = value(key);
        if (value != null) {
            value.fault(problem, advice);
        } else {
            faults.add(mapping.line(), mapping.column(), path(key), problem, advice);
        }
    }

    public String text(Key key, String fallback) {
        Value value = value(key);
        String text = value == null ? null : value.prose();
        return text == null ? fallback : text;
    }

    /** By the key's own shape. */
    public double quantity(Key key, double fallback) {
        Value value = value(key);
        if (value == null || !(key.shape() instanceof Shape.Quantity shape)) {
            return fallback;
        }
        Reading reading = value.quantity(shape.dimension(), shape.low(), shape.high());
        return reading == null ? fallback : reading.si();
    }

    /** By the key's own shape. */
    public double money(Key key, double fallback, Currency currency) {
        Value value = value(key);
        if (value == null || !(key.shape() instanceof Shape.Quantity shape)) {
            return fallback;
        }
        Double amount = value.money(shape.low(), shape.high(), currency);
        return amount == null ? fallback : amount;
    }

    /** By the key's own shape; null where it is missing or wrong. */
    public @Nullable Range range(Key key) {
        Value value = value(key);
        if (value == null || !(key.shape() instanceof Shape.Span shape)) {
            return null;
        }
        return value.range(shape.dimension(), shape.low(), shape.high());
    }

    public double @Nullable [] size(Key key) {
        Value value = value(key);
        return value == null || !(key.shape() instanceof Shape.Size shape) ? null : value.size(shape.sides());
    }

    public long whole(Key key, long fallback) {
        Value value = value(key);
        Long whole = value == null || !(key.shape() instanceof Shape.Whole shape)
                ? null
                : value.whole(shape.low(), shape.high());
        return whole == null ? fallback : whole;
    }

    public boolean yesNo(Key key, boolean fallback) {
        Value value = value(key);
        Boolean answer = value == null ? null : value.yesNo();
        return answer == null ? fallback : answer;
    }

    public <C extends Choice> C choice(Key key, C[] values, C fallback) {
        Value value = value(key);
        C choice = value == null ? null : value.choice(values);
        return choice == null ? fallback : choice;
    }

    /** The items of a list; none where the key is missing. */
    public List<Value> items(Key key) {
        Value value = value(key);
        return value == null ? List.of() : value.items();
    }

    /** Keys of a nested table, the same each time; null where missing or wrong. */
    public @Nullable Fields fields(Key key) {
        Fields known = nested.get(key);
        Value value = value(key);
        if (known != null || value == null || !(key.shape() instanceof Shape.Table shape)) {
            return known;
        }
        Fields fields = value.fields(shape.table());
        if (fields != null) {
            nested.put(key, fields);
        }
        return fields;
    }

    /** A nested table that has been read already; null otherwise. */
    public @Nullable Fields known(Key key) {
        return nested.get(key);
    }

    /** The keys of the table that are written here, in the table's order. */
    public List<Key> present(KeyTable table) {
        List<Key> present = new ArrayList<>();
        for (Key key : table.keys()) {
            if (has(key)) {
                present.add(key);
            }
        }
        return present;
    }
}
