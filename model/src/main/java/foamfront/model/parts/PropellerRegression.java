package foamfront.model.parts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Curves of a propeller that nobody measured, from its diameter, pitch, family and blades.
 *
 * <p>Each measured propeller is described at {@value PropellerCurves#REFERENCE_SPEED} rev/s by its advance ratio of zero thrust
 * J₀ over P/D, by C_T and C_P at rest, by the shares of these left at quarters of J₀, and by its speed terms. The descriptors are
 * regressed on pitch ratio, its square, diameter and an offset and two slopes for each family, with a small ridge; quartics
 * through the five predicted points are the curves. Scaling by J₀ is what lets one form serve all pitches. Left out one at a
 * time, the propellers of the collection lie within 25 % of C_T and 35 % of C_P at rest, 0.06 of the best efficiency and 0.08 of
 * its advance ratio in 74 cases of 77 (UnseenPropellerExternalTest). With both lines of slow flyers, and both of thick
 * sport blades, in one family each it was 66.
 *
 * <p>Blades other than two multiply both coefficients, 1.324 and 1.402 for three, 1.567 and 1.755 for four: geometric means of
 * two research planforms, of constant chord (1.354, 1.467; 1.633, 1.918) and strongly tapered (1.294, 1.339; 1.504, 1.606),
 * which lie up to 19 % apart (Brandt, Deters, Ananda, Dantsker and Selig, UIUC Propeller Database, volume 2).
 */
public final class PropellerRegression {
    /** Penalty on every weight but the constant; kept from among 0.02, 0.05 and 0.1, which leaving one out hardly tells apart. */
    private static final double RIDGE = 0.02;

    /** How freely each family departs from the common slopes; kept from among 0.5 and 1, which leaving one out hardly tells apart. */
    private static final double OWN_SLOPE = 0.5;

    private static final double MIDDLE_PITCH_RATIO = 0.65;
    private static final double MIDDLE_DIAMETER = 0.25;
    private static final double DIAMETER_UNIT = 0.1;

    /** Points of a curve between rest and zero thrust, both included. */
    private static final int POINTS = 5;

    private static final int LEAST_BLADES = 2;

    /** C_T and C_P over those of two blades, for 2, 3 and 4. */
    private static final double[] THRUST_OF_BLADES = {1, 1.324, 1.567};

    private static final double[] POWER_OF_BLADES = {1, 1.402, 1.755};

    /** No prediction may flatter: figure of merit 0.79 and efficiency 0.80 at most (judgement), less room for rounding. */
    private static final double MOST_MERIT = 0.789;

    private static final double MOST_EFFICIENCY = 0.799;

    private final List<Propeller> measured = new ArrayList<>();

    /** A column for each descriptor. */
    private final double[][] weights;

    /** Over the measured two-blade propellers among {@code propellers}. */
    public PropellerRegression(List<Propeller> propellers) {
        for (Propeller propeller : propellers) {
            if (propeller.provenance() == Provenance.OPEN_DATA && propeller.blades() == LEAST_BLADES) {
                measured.add(propeller);
            }
        }
        double[][] normal = new double[0][];
        double[][] right = new double[0][];
        for (Propeller p : measured) {
            double[] features = features(p.family(), p.diameter(), p.pitch());
            double[] targets = describe(p);
            if (normal.length == 0) {
                normal = new double[features.length][features.length];
                right = new double[features.length][targets.length];
            }
            for (int i = 0; i < features.length; i++) {
                for (int k = 0; k < features.length; k++) {
                    normal[i][k] += features[i] * features[k];
                }
                for (int k = 0; k < targets.length; k++) {
                    right[i][k] += features[i] * targets[k];
                }
            }
        }
        for (int i = 0; i < normal.length; i++) {
            normal[i][i] += i == 0 ? 1e-9 : RIDGE;
        }
        weights = solved(normal, right);
    }

    /** How many propellers of a family were measured. */
    public long measured(BladeFamily family) {
        return measured.stream().filter(p -> p.family() == family).count();
    }

    /** Whether there is nothing to go by. */
    public boolean isEmpty() {
        return measured.isEmpty();
    }

    /** Least and greatest measured diameter (m) and pitch ratio of all families. */
    public double[] range() {
        double[] range = {Double.MAX_VALUE, 0, Double.MAX_VALUE, 0};
        for (Propeller p : measured) {
            range[0] = Math.min(range[0], p.diameter());
            range[1] = Math.max(range[1], p.diameter());
            range[2] = Math.min(range[2], p.pitch() / p.diameter());
            range[3] = Math.max(range[3], p.pitch() / p.diameter());
        }
        return range;
    }

    /** The curves of a size; two to four blades. */
    public PropellerCurves predict(BladeFamily family, double diameter, double pitch, int blades) {
        double[] features = features(family, diameter, pitch);
        double[] z = new double[weights[0].length];
        for (int i = 0; i < features.length; i++) {
            for (int k = 0; k < z.length; k++) {
                z[k] += features[i] * weights[i][k];
            }
        }
        double j0 = pitch / diameter * StrictMath.exp(z[0]);
        double thrust = StrictMath.exp(z[1]) * THRUST_OF_BLADES[blades - LEAST_BLADES];
        double power = StrictMath.exp(z[2]) * POWER_OF_BLADES[blades - LEAST_BLADES];
        PropellerCurves nearest = nearest(family, diameter, pitch);
        return credible(new PropellerCurves(
                curve(j0, thrust, new double[] {1, z[3], z[4], z[5], 0}, z[10], z[11]),
                curve(j0, power, new double[] {1, z[6], z[7], z[8], z[9]}, z[12], z[13]),
                nearest.lowestSpeed(),
                nearest.highestSpeed(),
                j0));
    }

    /** With power raised until figure of merit and efficiency are no better than measured propellers reach. */
    private static PropellerCurves credible(PropellerCurves curves) {
        double excess = 1;
        for (double n : new double[] {curves.lowestSpeed(), curves.highestSpeed()}) {
            CurveShape shape = CurveShape.at(curves, n);
            excess = Math.max(excess, shape.figureOfMerit() / MOST_MERIT);
            excess = Math.max(excess, shape.peakEfficiency() / MOST_EFFICIENCY);
        }
        double[] power = curves.powerTerms();
        for (int i = 0; i < power.length; i++) {
            power[i] *= excess;
        }
        return new PropellerCurves(
                curves.thrustTerms(), power, curves.lowestSpeed(), curves.highestSpeed(), curves.furthestAdvance());
    }

    /** The curves whose speeds a prediction is good for: those of the family's nearest size, or of all families' where it has none. */
    private PropellerCurves nearest(BladeFamily family, double diameter, double pitch) {
        boolean any = measured(family) == 0;
        return measured.stream()
                .filter(p -> any || p.family() == family)
                .min(Comparator.comparingDouble(p -> Math.abs(p.diameter() - diameter) + Math.abs(p.pitch() - pitch)))
                .orElseThrow()
                .curves();
    }

    private static double[] features(BladeFamily family, double diameter, double pitch) {
        double y = pitch / diameter - MIDDLE_PITCH_RATIO;
        int families = BladeFamily.values().length;
        double[] f = new double[4 + 3 * families];
        f[0] = 1;
        f[1] = y;
        f[2] = y * y;
        f[3] = (diameter - MIDDLE_DIAMETER) / DIAMETER_UNIT;
        f[4 + family.ordinal()] = 1;
        f[4 + families + family.ordinal()] = OWN_SLOPE * y;
        f[4 + 2 * families + family.ordinal()] = OWN_SLOPE * f[3];
        return f;
    }

    private static double[] describe(Propeller p) {
        PropellerCurves curves = p.curves();
        double l = curves.speedTerm(PropellerCurves.REFERENCE_SPEED);
        CurveShape shape = CurveShape.at(curves, PropellerCurves.REFERENCE_SPEED);
        double j0 = shape.zeroThrustAdvance();
        double thrust = shape.staticThrust();
        double power = shape.staticPower();
        double[] a = curves.thrustTerms();
        double[] b = curves.powerTerms();
        return new double[] {
            StrictMath.log(j0 * p.diameter() / p.pitch()),
            StrictMath.log(thrust),
            StrictMath.log(power),
            curves.thrustCoefficient(0.25 * j0, l) / thrust,
            curves.thrustCoefficient(0.5 * j0, l) / thrust,
            curves.thrustCoefficient(0.75 * j0, l) / thrust,
            curves.powerCoefficient(0.25 * j0, l) / power,
            curves.powerCoefficient(0.5 * j0, l) / power,
            curves.powerCoefficient(0.75 * j0, l) / power,
            curves.powerCoefficient(j0, l) / power,
            a[POINTS] / thrust,
            a[POINTS + 1] / thrust,
            b[POINTS] / power,
            b[POINTS + 1] / power
        };
    }

    private static double[] curve(double j0, double scale, double[] shares, double speed, double speedSlope) {
        double[] c = PropellerCurves.through(shares, j0 / (POINTS - 1));
        c[POINTS] = speed;
        c[POINTS + 1] = speedSlope;
        return Arrays.stream(c).map(term -> scale * term).toArray();
    }

    /** Gauss and Jordan, without exchanges: the ridge keeps every pivot above zero. */
    private static double[][] solved(double[][] a, double[][] right) {
        for (int p = 0; p < a.length; p++) {
            for (int i = 0; i < a.length; i++) {
                double share = i == p ? 0 : a[i][p] / a[p][p];
                for (int k = p; k < a.length && share != 0; k++) {
                    a[i][k] -= share * a[p][k];
                }
                for (int k = 0; k < right[i].length && share != 0; k++) {
                    right[i][k] -= share * right[p][k];
                }
            }
        }
        for (int i = 0; i < a.length; i++) {
            for (int k = 0; k < right[i].length; k++) {
                right[i][k] /= a[i][i];
            }
        }
        return right;
    }
}
