package foamfront.optimizer.search;

import foamfront.model.units.Require;
import java.util.List;
import java.util.stream.Stream;

/**
 * One free choice of a problem. The search moves each on [0, 1]; the evaluator sees a fraction for a {@link Real} and a whole
 * number for the others.
 *
 * <p>A variable is active while all its conditions hold; an inactive one is carried along, decoded as its lowest value, and
 * neither mutated nor told apart.
 */
public sealed interface Variable {
    String name();

    /** All must hold for the variable to matter; none means always active. */
    List<Condition> when();

    /** How many values it can take; 0 for a {@link Real}. */
    int levels();

    /** The lowest decoded value. */
    int lowest();

    /** True where neighbouring values are no more alike than distant ones. */
    default boolean unordered() {
        return false;
    }

    /** The same variable, active only while {@code condition} and any earlier ones hold. */
    Variable onlyWhen(Condition condition);

    /**
     * An activity condition.
     *
     * @param variable index of a category variable that comes earlier in the problem
     * @param values the values of that variable for which the condition holds
     */
    record Condition(int variable, List<Integer> values) {
        public Condition {
            Require.notNegative("index of a condition's variable", variable, "");
            values = List.copyOf(values);
            if (values.isEmpty()) {
                throw new IllegalArgumentException("a condition on variable " + variable + " names no value");
            }
        }
    }

    /** A continuous choice, decoded as a number in [0, 1]; the caller scales it. */
    record Real(String name, List<Condition> when) implements Variable {
        public Real {
            when = List.copyOf(when);
        }

        public Real(String name) {
            this(name, List.of());
        }

        @Override
        public int levels() {
            return 0;
        }

        @Override
        public int lowest() {
            return 0;
        }

        @Override
        public Real onlyWhen(Condition condition) {
            return new Real(name, both(when, condition));
        }
    }

    /** A whole number from {@code lowest} to {@code highest}, both included. */
    record Integral(String name, int lowest, int highest, List<Condition> when) implements Variable {
        public Integral {
            if (highest < lowest) {
                throw new IllegalArgumentException(name + " goes from " + lowest + " to " + highest);
            }
            when = List.copyOf(when);
        }

        public Integral(String name, int lowest, int highest) {
            this(name, lowest, highest, List.of());
        }

        @Override
        public int levels() {
            return highest - lowest + 1;
        }

        @Override
        public Integral onlyWhen(Condition condition) {
            return new Integral(name, lowest, highest, both(when, condition));
        }
    }

    /** One entry of a sorted list, decoded as its index. */
    record Ordinal(String name, int levels, List<Condition> when) implements Variable {
        public Ordinal {
            Require.positive("number of entries of " + name, levels, "");
            when = List.copyOf(when);
        }

        public Ordinal(String name, int levels) {
            this(name, levels, List.of());
        }

        @Override
        public int lowest() {
            return 0;
        }

        @Override
        public Ordinal onlyWhen(Condition condition) {
            return new Ordinal(name, levels, both(when, condition));
        }
    }

    /** One of several kinds without an order, decoded as its index. */
    record Category(String name, int levels, List<Condition> when) implements Variable {
        public Category {
            Require.positive("number of kinds of " + name, levels, "");
            when = List.copyOf(when);
        }

        public Category(String name, int levels) {
            this(name, levels, List.of());
        }

        @Override
        public int lowest() {
            return 0;
        }

        @Override
        public boolean unordered() {
            return true;
        }

        @Override
        public Category onlyWhen(Condition condition) {
            return new Category(name, levels, both(when, condition));
        }
    }

    private static List<Condition> both(List<Condition> earlier, Condition added) {
        return Stream.concat(earlier.stream(), Stream.of(added)).toList();
    }
}
