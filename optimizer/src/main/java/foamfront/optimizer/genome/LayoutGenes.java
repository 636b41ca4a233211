package foamfront.optimizer.genome;

import foamfront.model.design.Arrangement;
import foamfront.model.design.BodyKind;
import foamfront.model.design.Combination;
import foamfront.model.design.ControlLayout;
import foamfront.model.design.Covering;
import foamfront.model.design.FinJoint;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Nose;
import foamfront.model.design.PowerKind;
import foamfront.model.design.SectionKind;
import foamfront.model.design.SparKind;
import foamfront.model.design.TailKind;
import foamfront.model.design.UndercarriageKind;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingTips;
import foamfront.optimizer.study.Arrangements;
import foamfront.optimizer.study.WingChoice;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The open kinds as digits of one number, and for every combination that cannot be built the nearest that can: first by changing
 * how things are made, then, where that does not help, the layout itself.
 */
final class LayoutGenes {
    /** One digit per kind, the layout first. */
    enum Digit {
        WING("wing"),
        TAIL("tail"),
        POWER("power"),
        BODY("body"),
        UNDERCARRIAGE("undercarriage"),
        CONTROLS("controls"),
        SECTION("wing section"),
        JOINT("wing joint"),
        SPAR("kind of spar"),
        HOLD_DOWN("hold-down"),
        COVERING("covering"),
        TIPS("wing tips"),
        NOSE("nose"),
        FIN_JOINT("fin joint");

        /** Digits up to this one are the layout, those after it how it is made. */
        static final Digit LAST_OF_LAYOUT = UNDERCARRIAGE;

        final String words;

        Digit(String words) {
            this.words = words;
        }
    }

    /** More combinations than this are no table any more. */
    private static final int MOST = 1 << 22;

    private final List<List<?>> options;
    private final int[] levels;
    private final int[] weights;
    private final int[] nearest;

    LayoutGenes(Arrangements kinds) {
        options = List.of(
                kinds.wings(),
                kinds.tails(),
                kinds.powers(),
                kinds.bodies(),
                kinds.undercarriages(),
                kinds.controls(),
                kinds.sections(),
                kinds.joints(),
                kinds.spars(),
                kinds.holdDowns(),
                kinds.coverings(),
                kinds.tips(),
                kinds.noses(),
                kinds.finJoints());
        levels = options.stream().mapToInt(List::size).toArray();
        weights = new int[levels.length];
        long product = 1;
        for (int i = levels.length - 1; i >= 0; i--) {
            weights[i] = (int) product;
            product *= levels[i];
            if (product < 1 || product > MOST) {
                throw new IllegalArgumentException(
                        "the study opens " + (product < 1 ? "no layout" : "too many layouts"));
            }
        }
        nearest = nearest((int) product);
    }

    List<?> options(Digit digit) {
        return options.get(digit.ordinal());
    }

    int levels(Digit digit) {
        return levels[digit.ordinal()];
    }

    /** How many layouts can be built. */
    int buildable() {
        int count = 0;
        for (int i = 0; i < nearest.length; i++) {
            count += nearest[i] == i ? 1 : 0;
        }
        return count;
    }

    /** Changes digits to those of the nearest layout that can be built. */
    void repair(int[] digits) {
        int code = 0;
        for (int i = 0; i < digits.length; i++) {
            code += digits[i] * weights[i];
        }
        if (nearest[code] != code) {
            read(nearest[code], digits);
        }
    }

    private void read(int code, int[] digits) {
        for (int i = 0; i < digits.length; i++) {
            digits[i] = code / weights[i] % levels[i];
        }
    }

    Arrangement arrangement(int[] digits) {
        WingChoice wing = (WingChoice) choice(Digit.WING, digits);
        return new Arrangement(
                wing.kind(),
                wing.height(),
                (TailKind) choice(Digit.TAIL, digits),
                (BodyKind) choice(Digit.BODY, digits),
                (Nose) choice(Digit.NOSE, digits),
                (PowerKind) choice(Digit.POWER, digits),
                (UndercarriageKind) choice(Digit.UNDERCARRIAGE, digits),
                (WingTips) choice(Digit.TIPS, digits),
                (FinJoint) choice(Digit.FIN_JOINT, digits),
                (Covering) choice(Digit.COVERING, digits),
                (SectionKind) choice(Digit.SECTION, digits),
                (WingJoint) choice(Digit.JOINT, digits),
                (SparKind) choice(Digit.SPAR, digits),
                (HoldDown) choice(Digit.HOLD_DOWN, digits),
                (ControlLayout) choice(Digit.CONTROLS, digits));
    }

    private Object choice(Digit digit, int[] digits) {
        return options.get(digit.ordinal()).get(digits[digit.ordinal()]);
    }

    /** Why choices of the study do not go together, in the order of {@link Combination#table}. */
    List<String> refusals() {
        Set<String> found = new HashSet<>();
        int[] digits = new int[levels.length];
        for (int code = 0; code < nearest.length; code++) {
            read(code, digits);
            String reason = arrangement(digits).refusal();
            if (reason != null) {
                found.add(reason);
            }
        }
        return Combination.table().stream()
                .map(Combination::reason)
                .filter(found::contains)
                .toList();
    }

    private int[] nearest(int count) {
        int[] table = new int[count];
        Arrays.fill(table, -1);
        Deque<Integer> reached = new ArrayDeque<>();
        int[] digits = new int[levels.length];
        for (int code = 0; code < count; code++) {
            read(code, digits);
            if (Combination.refusal(arrangement(digits)) == null) {
                table[code] = code;
                reached.add(code);
            }
        }
        if (reached.isEmpty()) {
            read(0, digits);
            throw new IllegalArgumentException("no layout of the study can be built: "
                    + arrangement(digits).refusal());
        }
        spread(table, reached, Digit.LAST_OF_LAYOUT.ordinal() + 1);
        for (int code = 0; code < count; code++) {
            if (table[code] >= 0) {
                reached.add(code);
            }
        }
        spread(table, reached, 0);
        return table;
    }

    /** Breadth first: what differs in one digit from a layout already answered takes its answer. */
    private void spread(int[] table, Deque<Integer> reached, int firstDigit) {
        while (!reached.isEmpty()) {
            int code = reached.remove();
            for (int i = levels.length - 1; i >= firstDigit; i--) {
                int digit = code / weights[i] % levels[i];
                for (int other = 0; other < levels[i]; other++) {
                    int neighbour = code + (other - digit) * weights[i];
                    if (table[neighbour] < 0) {
                        table[neighbour] = table[code];
                        reached.add(neighbour);
                    }
                }
            }
        }
    }
}
