package foamfront.optimizer.fleet;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Wing;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Parts that an aeroplane takes from another one.
 *
 * @param from the design that they were made for
 * @param parts as the design file's keys name them
 * @param alone the best of the same study without sharing, or null where nobody said
 */
public record Sharing(
        Design from, List<String> parts, @Nullable Appraisal alone) {
    /** What a line-up can compare; other keys of a design file are no parts. */
    public static final Set<String> PARTS =
            Set.of("wing", "tail", "body", "power", "undercarriage", "controls", "radio", "board", "covering");

    public Sharing {
        parts = List.copyOf(parts);
    }

    /** The parts that are no longer the same in both. */
    public List<String> different(Design design) {
        return parts.stream().filter(part -> !same(part, design, from)).toList();
    }

    private static boolean same(String part, Design a, Design b) {
        return switch (part) {
            case "wing" -> sameWing(a, b);
            case "tail" ->
                a.tail().equals(b.tail())
                        && sameTailControls(a.controls(), b.controls())
                        && a.board().equals(b.board());
            case "body" -> a.body().equals(b.body()) && a.board().equals(b.board());
            case "power" -> a.power().equals(b.power());
            case "undercarriage" -> a.undercarriage().equals(b.undercarriage());
            case "controls" -> a.controls().equals(b.controls());
            case "board" -> a.board().equals(b.board());
            case "covering" -> a.covering() == b.covering();
            default -> a.radio().equals(b.radio());
        };
    }

    /** Ailerons and flaps are cut out of the wing; figures of those it does not have say nothing. */
    private static boolean sameWingControls(Controls a, Controls b) {
        return a.ailerons() == b.ailerons()
                && a.flaps() == b.flaps()
                && (!a.ailerons() || (a.aileronSpan() == b.aileronSpan() && a.aileronChord() == b.aileronChord()))
                && (a.flaps() != FlapKind.FLAPS || (a.flapSpan() == b.flapSpan() && a.flapChord() == b.flapChord()));
    }

    private static boolean sameTailControls(Controls a, Controls b) {
        return a.elevatorChord() == b.elevatorChord()
                && a.rudder() == b.rudder()
                && (!a.rudder() || a.rudderChord() == b.rudderChord());
    }

    /** Where it sits on the body is each body's own affair. */
    private static boolean sameWing(Design a, Design b) {
        Wing one = a.wing();
        Wing other = b.wing();
        boolean sameGap = !(one instanceof Wing.Biplane first)
                || (other instanceof Wing.Biplane second
                        && first.gap() == second.gap()
                        && first.stagger() == second.stagger());
        return one.kind() == other.kind()
                && one.planform().equals(other.planform())
                && one.build().equals(other.build())
                && sameGap
                && sameWingControls(a.controls(), b.controls())
                && a.board().equals(b.board())
                && a.covering() == b.covering();
    }
}
