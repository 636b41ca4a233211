package foamfront.model.flight;

import foamfront.model.aero.LiftingSystem;
import foamfront.model.airframe.Surface;
import foamfront.model.factors.Factors;
import foamfront.model.factors.Spread;
import foamfront.model.section.SectionPolar;
import java.util.List;

/**
 * The strips of one aeroplane along a {@link TrimLine}, on each of which c_l = c₀ + c₁ C_L, and its fins at zero lift: what their
 * sections drag, and at which C_L the first of them stalls. An elevon moves its strips' polar along the lift axis by what it does
 * to maximum lift; c_l is then counted from there.
 */
final class Strips {
    private static final int MOST = 64;

    /** Strips whose lift changes less than this with the aeroplane's never stall. */
    private static final double UNLOADED = 1e-6;

    /** Outboard of this share of the semispan a wing that lets go rolls the aeroplane (common practice: where ailerons are). */
    static final double TIP = 0.7;

    /** No aeroplane is said to lift less or more than this at its stall. */
    static final double LEAST_LIFT = 0.05;

    static final double MOST_LIFT = 10;

    private final double[] atRest = new double[MOST];
    private final double[] perLift = new double[MOST];
    private final double[] area = new double[MOST];
    private final double[] reynoldsShift = new double[MOST];
    private final double[] place = new double[MOST];
    private final double[] liftFactor = new double[MOST];
    private final SectionPolar[] polar = new SectionPolar[MOST];

    private int wing;
    private int lifting;
    private int all;
    private double stallPlace;

    /**
     * Lays out the strips of a solved lifting system.
     *
     * @param surfaces as solved
     * @param polars of each surface's section
     * @param flap left of the flaps' deflection, rad
     * @param kinematicViscosity m²/s
     * @param factors on the sections' drag and maximum lift
     */
    void lay(
            LiftingSystem system,
            List<Surface> surfaces,
            SectionPolar[] polars,
            TrimLine trim,
            double flap,
            double kinematicViscosity,
            Factors factors) {
        double logViscosity = StrictMath.log(kinematicViscosity);
        all = 0;
        for (int s = 0; s < system.surfaceCount(); s++) {
            Surface surface = surfaces.get(system.listed(s));
            double semispan = 0.5 * surface.span();
            for (int i = system.firstStrip(s); i < system.endStrip(s); i++) {
                double none = system.stripLiftCoefficient(i, trim.incidence(0), trim.elevator(0), flap);
                double one = system.stripLiftCoefficient(i, trim.incidence(1), trim.elevator(1), flap);
                double shift = system.stripMaximumShift(i);
                atRest[all] = none - shift * trim.elevator(0) - system.stripFlapMaximumShift(i) * flap;
                perLift[all] = one - none - shift * (trim.elevator(1) - trim.elevator(0));
                place[all] = system.stripY(i) / semispan;
                add(2 * system.stripArea(i), system.stripChord(i), polars[system.listed(s)], logViscosity, factors);
            }
            if (surface.role() != Surface.Role.TAIL) {
                wing = all;
            }
        }
        lifting = all;
        for (int i = 0; i < surfaces.size(); i++) {
            Surface fin = surfaces.get(i);
            if (fin.role() == Surface.Role.FIN) {
                atRest[all] = 0;
                perLift[all] = 0;
                place[all] = 0;
                add(fin.area(), fin.meanAerodynamicChord(), polars[i], logViscosity, factors);
            }
        }
    }

    private void add(double stripArea, double chord, SectionPolar section, double logViscosity, Factors factors) {
        double dragRatio = section.dragUncertainty() / Spread.SECTION_DRAG.halfWidth();
        double liftRatio = section.liftUncertainty() / Spread.MAXIMUM_LIFT.halfWidth();
        area[all] = widened(factors.sectionDrag(), dragRatio) * stripArea;
        liftFactor[all] = widened(factors.maximumLift(), liftRatio);
        reynoldsShift[all] = StrictMath.log(chord) - logViscosity;
        polar[all] = section;
        all++;
    }

    /**
     * A factor whose distance from 1 is {@code ratio} times as large, upwards as a factor, downwards as its inverse: a section is
     * more or less sure than {@link Spread} says of them all.
     */
    static double widened(double factor, double ratio) {
        return factor >= 1 ? 1 + (factor - 1) * ratio : 1 / (1 + (1 / factor - 1) * ratio);
    }

    /** Profile drag area at a lift coefficient of the aeroplane, m². */
    double dragArea(double lift, double logSpeed) {
        double sum = 0;
        for (int i = 0; i < all; i++) {
            sum += area[i] * polar[i].drag(atRest[i] + perLift[i] * lift, logSpeed + reynoldsShift[i]);
        }
        return sum;
    }

    /** Profile drag area with no strip lifting, m². */
    double idleDragArea(double logSpeed) {
        double sum = 0;
        for (int i = 0; i < all; i++) {
            sum += area[i] * polar[i].drag(0, logSpeed + reynoldsShift[i]);
        }
        return sum;
    }

    /**
     * C_L at which the first strip of wing or tail reaches the end of its section that more lift drives it to.
     */
    double liftAtFirstStall(double logSpeed) {
        double least = MOST_LIFT;
        for (int i = 0; i < lifting; i++) {
            double lift = liftAtStall(i, logSpeed + reynoldsShift[i]);
            if (lift < least) {
                least = lift;
                stallPlace = i < wing ? place[i] : 0;
            }
        }
        return Math.max(LEAST_LIFT, least);
    }

    private double liftAtStall(int i, double logReynolds) {
        double slope = perLift[i];
        if (Math.abs(slope) < UNLOADED) {
            return Double.POSITIVE_INFINITY;
        }
        double end = slope > 0 ? polar[i].maximumLift(logReynolds) : polar[i].minimumLift(logReynolds);
        return (liftFactor[i] * end - atRest[i]) / slope;
    }

    /**
     * What the wing tips have left of their sections' lift at a lift coefficient of the aeroplane: the least over the strips
     * outboard of {@link #TIP}, as a share; 0 or less where they stall.
     */
    double tipReserve(double lift, double logSpeed) {
        double least = 1;
        for (int i = 0; i < wing; i++) {
            if (place[i] >= TIP) {
                double end = liftFactor[i] * polar[i].maximumLift(logSpeed + reynoldsShift[i]);
                least = Math.min(least, 1 - (atRest[i] + perLift[i] * lift) / end);
            }
        }
        return least;
    }

    /** Where the last {@link #liftAtFirstStall} found it, fraction of the semispan. */
    double stallPlace() {
        return stallPlace;
    }

    /** Whether every wing strip is inside its section's measured Reynolds numbers at a speed. */
    boolean insideSectionData(double logSpeed) {
        for (int i = 0; i < wing; i++) {
            if (!polar[i].inside(logSpeed + reynoldsShift[i])) {
                return false;
            }
        }
        return true;
    }

    /** Lowest Reynolds number on wing and tail. */
    double leastReynolds(double logSpeed) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lifting; i++) {
            least = Math.min(least, reynoldsShift[i]);
        }
        return StrictMath.exp(logSpeed + least);
    }

    /** Largest lift of a strip of wing or tail over that of its section's stall, at a lift coefficient of the aeroplane. */
    double greatestLiftShare(double lift, double logSpeed) {
        double greatest = 0;
        for (int i = 0; i < lifting; i++) {
            greatest =
                    Math.max(greatest, polar[i].liftShare(atRest[i] + perLift[i] * lift, logSpeed + reynoldsShift[i]));
        }
        return greatest;
    }
}
