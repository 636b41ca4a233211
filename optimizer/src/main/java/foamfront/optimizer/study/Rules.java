package foamfront.optimizer.study;

import foamfront.model.design.Choice;
import foamfront.model.parts.Part;
import foamfront.model.units.Quantities;
import foamfront.model.units.Unit;
import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.Value;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads one table of a design file and notes every value that its rule supplied. */
final class Rules {
    private final String path;
    private final @Nullable Fields fields;
    private final List<DesignFile.Taken> taken;

    Rules(String path, @Nullable Fields fields, List<DesignFile.Taken> taken) {
        this.path = path;
        this.fields = fields;
        this.taken = taken;
    }

    /** The rules of a table under this one. */
    Rules under(Key key) {
        return new Rules(
                path.isEmpty() ? key.name() : path + "." + key.name(),
                fields == null ? null : fields.fields(key),
                taken);
    }

    boolean has(Key key) {
        return fields != null && fields.has(key);
    }

    /** A figure of the file, or {@code standing} as a file would print it, so that written designs read back the same. */
    double quantity(Key key, double standing, Unit unit) {
        if (fields != null && fields.has(key)) {
            return fields.quantity(key, standing);
        }
        String printed = Quantities.print(standing, unit);
        take(key, printed);
        return Quantities.parse(printed, unit.dimension());
    }

    boolean yesNo(Key key, boolean standing) {
        if (!has(key)) {
            take(key, standing ? "yes" : "no");
        }
        return fields == null ? standing : fields.yesNo(key, standing);
    }

    int whole(Key key, int standing) {
        if (!has(key)) {
            take(key, String.valueOf(standing));
        }
        return fields == null ? standing : (int) fields.whole(key, standing);
    }

    /** A choice the model computes; what it does not is refused. */
    <C extends Choice> C choice(Key key, C[] values, C standing) {
        Value value = fields == null ? null : fields.value(key);
        if (value == null) {
            take(key, standing.words());
            return standing;
        }
        C choice = value.choice(values);
        return choice == null ? standing : choice;
    }

    /** A catalogue part, or what stands where it is missing or wrong. */
    <P extends Part> P part(Key key, List<P> parts, P standing) {
        Value value = fields == null ? null : fields.value(key);
        if (value == null) {
            if (!key.required()) {
                take(key, standing.name());
            }
            return standing;
        }
        P part = StockReader.part(value, parts, key.name());
        return part == null ? standing : part;
    }

    @Nullable
    Value value(Key key) {
        return fields == null ? null : fields.value(key);
    }

    List<Value> items(Key key) {
        return fields == null ? new ArrayList<>() : fields.items(key);
    }

    void fault(Key key, String problem, String advice) {
        if (fields != null) {
            fields.fault(key, problem, advice);
        }
    }

    void take(Key key, String value) {
        String about = key.about();
        taken.add(new DesignFile.Taken(path.isEmpty() ? key.name() : path + "." + key.name(), value, about));
    }
}
