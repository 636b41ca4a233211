package foamfront.model;

import foamfront.model.parts.PropellerCurves;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.BiFunction;

/** Changed copies of trees of records, each figure named by its path: {@code wing.planform.span}. For tests. */
public final class Records {
    /** What a figure of zero is moved to: rad, W or m. */
    private static final double FROM_ZERO = 0.02;

    /** A tail boom is a tube as it is sold: shaken, its bore can outgrow it. */
    private static final String BOOM = "body.boom.";

    private Records() {}

    /** Paths of every number in a tree. */
    public static List<String> numbers(Object root) {
        List<String> paths = new ArrayList<>();
        mapped(root, "", (path, value) -> {
            if (value instanceof Number) {
                paths.add(path);
            }
            return value;
        });
        return paths;
    }

    /** The record and component that each number of a tree stands in: {@code wing.planform.span} is {@code Planform.span}. */
    public static Map<String, String> owners(Object root) {
        Map<String, String> owners = new LinkedHashMap<>();
        walk(root, "", owners);
        return owners;
    }

    private static void walk(Object value, String path, Map<String, String> owners) {
        if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                walk(list.get(i), path + "[" + i + "]", owners);
            }
        } else if (value instanceof Record) {
            for (RecordComponent component : value.getClass().getRecordComponents()) {
                String at = path.isEmpty() ? component.getName() : path + "." + component.getName();
                Object held = held(component, value);
                if (held instanceof Number) {
                    owners.put(at, owner(value.getClass(), component));
                }
                walk(held, at, owners);
            }
        }
    }

    private static Object held(RecordComponent component, Object value) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(component.getName(), e);
        }
    }

    /** For example {@code Planform.span}. */
    public static String owner(Class<?> record, RecordComponent component) {
        return record.getSimpleName() + "." + component.getName();
    }

    /** A copy with one number multiplied; a whole number goes one up or down, zero goes to a small value. */
    public static <T> T scaled(T root, String at, double factor) {
        return changed(root, (path, value) -> path.equals(at) ? scaled(value, factor) : value);
    }

    /** A copy with whatever stands at a path replaced. */
    public static <T> T with(T root, String at, Object replacement) {
        return changed(root, (path, value) -> path.equals(at) ? replacement : value);
    }

    /** A copy with every length, mass and ratio moved at random by up to a share, whole numbers and a tail boom left. */
    public static <T> T shaken(T root, double share, SplittableRandom random) {
        return changed(
                root,
                (path, value) -> value instanceof Double d && !path.startsWith(BOOM)
                        ? (Object) (d * (1 + share * (2 * random.nextDouble() - 1)))
                        : value);
    }

    @SuppressWarnings("unchecked") // mapped gives back a record of the class it took
    private static <T> T changed(T root, BiFunction<String, Object, Object> change) {
        return (T) mapped(root, "", change);
    }

    private static Object scaled(Object value, double factor) {
        if (value instanceof Integer i) {
            return factor > 1 ? i + 1 : Math.max(1, i - 1);
        }
        double d = (Double) value;
        return d == 0 ? FROM_ZERO : d * factor;
    }

    private static Object mapped(Object value, String path, BiFunction<String, Object, Object> change) {
        Object changed = change.apply(path, value);
        if (changed != value) {
            return changed;
        }
        if (value instanceof List<?> list) {
            List<Object> copy = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                copy.add(mapped(list.get(i), path + "[" + i + "]", change));
            }
            return copy;
        }
        if (value instanceof PropellerCurves curves) {
            return mapped(curves, path, change);
        }
        return value instanceof Record ? record(value, path, change) : value;
    }

    private static Object record(Object value, String path, BiFunction<String, Object, Object> change) {
        RecordComponent[] components = value.getClass().getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] arguments = new Object[components.length];
        try {
            for (int i = 0; i < components.length; i++) {
                types[i] = components[i].getType();
                components[i].getAccessor().setAccessible(true);
                Object component = components[i].getAccessor().invoke(value);
                String name = components[i].getName();
                arguments[i] = mapped(component, path.isEmpty() ? name : path + "." + name, change);
            }
            Constructor<?> constructor = value.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(arguments);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(path, e);
        }
    }

    private static PropellerCurves mapped(
            PropellerCurves curves, String path, BiFunction<String, Object, Object> change) {
        return new PropellerCurves(
                mapped(curves.thrustTerms(), path + ".thrust", change),
                mapped(curves.powerTerms(), path + ".power", change),
                (Double) change.apply(path + ".lowestSpeed", curves.lowestSpeed()),
                (Double) change.apply(path + ".highestSpeed", curves.highestSpeed()),
                (Double) change.apply(path + ".furthestAdvance", curves.furthestAdvance()));
    }

    private static double[] mapped(double[] terms, String path, BiFunction<String, Object, Object> change) {
        double[] copy = new double[terms.length];
        for (int i = 0; i < terms.length; i++) {
            copy[i] = (Double) change.apply(path + "[" + i + "]", terms[i]);
        }
        return copy;
    }
}
