package foamfront.model.design;

import foamfront.model.parts.Propeller;
import java.util.Arrays;

/**
 * The dimensions that nobody stated: what a club builder would take (common practice, not optimal). Values are SI in an array
 * by {@link DesignVariable#index}, NaN where still open.
 */
public final class WorkshopRules {
    private static final DesignVariable[] VARIABLES = DesignVariable.values();
    private static final double DEGREE = Math.PI / 180;

    /** Tip over root of fins: an upright trailing edge, a swept leading edge. */
    public static final double FIN_TAPER = 0.7;

    /** Fins of a wing without a tail, one a side (common practice). */
    public static final int TAILLESS_FINS = 2;

    static final double FLAP_SPAN = 0.4;
    static final double FLAP_CHORD = 0.25;
    private static final double TWIN_CLEARANCE = 0.025;

    private WorkshopRules() {}

    /** All open, to be filled. */
    public static double[] open() {
        double[] values = new double[VARIABLES.length];
        Arrays.fill(values, Double.NaN);
        return values;
    }

    /** Fills every open value by its rule. */
    public static void complete(double[] values, WingKind wing, WingHeight height, boolean ailerons) {
        for (int i = 0; i < values.length; i++) {
            if (Double.isNaN(values[i])) {
                values[i] = rule(VARIABLES[i], values, wing, height, ailerons);
            }
        }
    }

    /** One rule; the values before it are filled. */
    public static double rule(
            DesignVariable variable, double[] values, WingKind wing, WingHeight height, boolean ailerons) {
        return wing == WingKind.DELTA ? delta(variable, values) : plain(variable, values, height, ailerons);
    }

    /** What is different on a delta: a flat triangle with a straight trailing edge, its tips folded up whole. */
    private static double delta(DesignVariable variable, double[] values) {
        return switch (variable) {
            case ROOT_CHORD -> 2.0 / 3 * of(values, DesignVariable.SPAN);
            case TAPER -> 0.2;
            case SWEEP -> straightTrailingEdge(values);
            case DIHEDRAL, OUTER_DIHEDRAL, INCIDENCE -> 0;
            case FIN_CHORD -> of(values, DesignVariable.TAPER) * of(values, DesignVariable.ROOT_CHORD);
            default -> plain(variable, values, WingHeight.SHOULDER, true);
        };
    }

    /** Of the quarter-chord line, rad. */
    private static double straightTrailingEdge(double[] values) {
        double back = 0.75 * (1 - of(values, DesignVariable.TAPER)) * of(values, DesignVariable.ROOT_CHORD);
        return StrictMath.atan2(back, 0.5 * of(values, DesignVariable.SPAN));
    }

    private static double plain(DesignVariable variable, double[] values, WingHeight height, boolean ailerons) {
        return switch (variable) {
            case SPAN -> 1.2;
            case ROOT_CHORD -> of(values, DesignVariable.SPAN) / 6;
            case TAPER -> 1;
            case SWEEP, WASHOUT, CUT_OUT_DEPTH, TAIL_INCIDENCE, STAGGER -> 0;
            case DIHEDRAL -> ((ailerons ? 2 : 5) + (height == WingHeight.LOW ? 2 : 0)) * DEGREE;
            case OUTER_DIHEDRAL -> of(values, DesignVariable.DIHEDRAL);
            case BEND_POSITION -> 0.55;
            case CUT_OUT_BREADTH -> 0.2;
            case INCIDENCE -> 2 * DEGREE;
            case SECTION_THICKNESS -> 0.12;
            case SECTION_CAMBER -> 0.06;
            case SECTION_STEP -> 0.5;
            case GAP -> of(values, DesignVariable.ROOT_CHORD);
            case WING_POSITION -> 0.25;
            case TAIL_SPAN -> 0.38 * of(values, DesignVariable.SPAN);
            case TAIL_CHORD -> 0.6 * of(values, DesignVariable.ROOT_CHORD);
            case TAIL_CANT -> 35 * DEGREE;
            case FIN_HEIGHT -> 0.14 * of(values, DesignVariable.SPAN);
            case FIN_CHORD -> of(values, DesignVariable.TAIL_CHORD);
            case BODY_LENGTH -> 0.75 * of(values, DesignVariable.SPAN);
            case POD_LENGTH -> 0.5 * of(values, DesignVariable.BODY_LENGTH);
            case BODY_WIDTH -> 0.07;
            case BODY_HEIGHT -> of(values, DesignVariable.BODY_WIDTH);
            case STEP_POSITION ->
                Math.max(
                        0.25,
                        Math.min(
                                0.75,
                                of(values, DesignVariable.WING_POSITION)
                                        + 0.4
                                                * of(values, DesignVariable.ROOT_CHORD)
                                                / of(values, DesignVariable.BODY_LENGTH)));
            case DEADRISE -> 15 * DEGREE;
            case FLOAT_LENGTH -> 0.72 * of(values, DesignVariable.BODY_LENGTH);
            case FLOAT_BEAM -> of(values, DesignVariable.FLOAT_LENGTH) / 7;
            case AILERON_SPAN -> 0.4;
            case AILERON_CHORD -> 0.22;
            case FLAP_SPAN -> FLAP_SPAN;
            case FLAP_CHORD -> FLAP_CHORD;
            case ELEVATOR_CHORD -> 0.35;
            case RUDDER_CHORD -> 0.4;
        };
    }

    /** A twin's motors, m from the middle: their propellers 25 mm clear of the body. */
    public static double motorStation(Propeller propeller, double bodyWidth) {
        return 0.5 * (propeller.diameter() + bodyWidth) + TWIN_CLEARANCE;
    }

    /** Height of the wing root's leading edge over the body axis, m: on top, a fifth below the top, or underneath. */
    public static double wingZ(WingHeight height, double bodyHeight) {
        return switch (height) {
            case HIGH -> 0.5 * bodyHeight;
            case SHOULDER -> 0.3 * bodyHeight;
            case LOW -> -0.5 * bodyHeight;
        };
    }

    /** Height of a delta's root over the body axis, m: in a slot of a profile board a fifth below its top, on top of others. */
    public static double deltaZ(BodyKind body, double bodyHeight) {
        return wingZ(body == BodyKind.PROFILE_BOARD ? WingHeight.SHOULDER : WingHeight.HIGH, bodyHeight);
    }

    /** Leading edge of the tail's root, m from the nose: its trailing edge ends the body. */
    public static double tailX(double bodyLength, double tailChord) {
        return bodyLength - tailChord;
    }

    /** Height of the tail's root over the body axis, m: through the axis, on a hull's deck, on top of the fin, a V-tail's on the body. */
    public static double tailZ(TailKind kind, BodyKind body, double bodyHeight, double finHeight) {
        if (kind == TailKind.CONVENTIONAL && body == BodyKind.BOAT_HULL) {
            return 0.5 * bodyHeight;
        }
        return switch (kind) {
            case T_TAIL -> 0.5 * bodyHeight + finHeight;
            case V_TAIL -> 0.5 * bodyHeight;
            default -> 0;
        };
    }

    private static double of(double[] values, DesignVariable variable) {
        return values[variable.index()];
    }
}
