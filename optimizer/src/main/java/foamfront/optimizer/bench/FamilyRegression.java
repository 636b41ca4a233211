package foamfront.optimizer.bench;

import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.Provenance;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Curves of a propeller that nobody measured, from its diameter, pitch, family and blades.
 *
 * <p>Each measured propeller of the catalogue is described at {@value PropellerCurves#REFERENCE_SPEED} rev/s by its
 * advance ratio of zero thrust J₀ over P/D, by C_T and C_P at rest, by the shares of these left at 0.35, 0.7 and 1 of
 * J₀, and by its speed terms. The descriptors are regressed on pitch ratio, its square, diameter and an offset and two
 * slopes for each family, with a small ridge; cubics through the four predicted points are the curves. Left out one at a
 * time, nine of ten two-blade propellers lie within 25 % of C_T and 35 % of C_P at rest, and 24 of 28 within 0.06 of the
 * best efficiency and 0.08 of its advance ratio too (FamilyRegressionExternalTest): "slow flyer" is two product lines whose
 * blades differ, and three of the four outside bear on that or stand at the edge of the sizes.
 *
 * <p>Blades other than two multiply both coefficients, 1.324 and 1.402 for three, 1.567 and 1.755 for four: geometric means of
 * two research planforms, of constant chord (1.354, 1.467; 1.633, 1.918) and strongly tapered (1.294, 1.339; 1.504, 1.606),
 * which lie up to 19 % apart (Brandt, Deters, Ananda, Dantsker and Selig, UIUC Propeller Database, volume 2).
 */
public final class FamilyRegression {
    private static final double RIDGE = 0.02;

    /** How freely each family departs from the common slopes; found by leaving one out among 0, 0.5 and 1. */
    private static final double OWN_SLOPE = 0.5;

    private static final double MIDDLE_PITCH_RATIO = 0.65;
    private static final double MIDDLE_DIAMETER = 0.25;
    private static final double DIAMETER_UNIT = 0.1;
    private static final double[] STATIONS = {0, 0.35, 0.7, 1};
    private static final double REFERENCE = PropellerCurves.REFERENCE_SPEED;

    /** C_T and C_P over those of two blades, for 2, 3 and 4. */
    private static final double[] THRUST_OF_BLADES = {1, 1.324, 1.567};

    private static final double[] POWER_OF_BLADES = {1, 1.402, 1.755};

    private final List<Propeller> measured = new ArrayList<>();
    private final RealMatrix weights;

    /** Over the measured two-blade propellers among {@code propellers}. */
    public FamilyRegression(List<Propeller> propellers) {
        for (Propeller propeller : propellers) {
            if (propeller.provenance() == Provenance.OPEN_DATA && propeller.blades() == 2) {
                measured.add(propeller);
            }
        }
        double[][] features = new double[measured.size()][];
        double[][] targets = new double[measured.size()][];
        for (int i = 0; i < features.length; i++) {
            Propeller p = measured.get(i);
            features[i] = features(p.family(), p.diameter(), p.pitch());
            targets[i] = describe(p);
        }
        RealMatrix a = new Array2DRowRealMatrix(features, false);
        RealMatrix normal = a.transpose().multiply(a);
        for (int i = 0; i < normal.getRowDimension(); i++) {
            normal.addToEntry(i, i, i == 0 ? 1e-9 : RIDGE);
        }
        RealMatrix right = a.transpose().multiply(new Array2DRowRealMatrix(targets, false));
        weights = new LUDecomposition(normal).getSolver().solve(right);
    }

    /** How many propellers of a family were measured. */
    public long measured(BladeFamily family) {
        return measured.stream().filter(p -> p.family() == family).count();
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
        double[] z = weights.preMultiply(features(family, diameter, pitch));
        double j0 = pitch / diameter * StrictMath.exp(z[0]);
        double thrust = StrictMath.exp(z[1]) * THRUST_OF_BLADES[blades - 2];
        double power = StrictMath.exp(z[4]) * POWER_OF_BLADES[blades - 2];
        double[] a = cubic(j0, thrust, new double[] {1, z[2], z[3], 0}, z[8], z[9]);
        double[] b = cubic(j0, power, new double[] {1, z[5], z[6], z[7]}, z[10], z[11]);
        double[] speeds = speeds(family);
        return new PropellerCurves(a, b, speeds[0], speeds[1], j0);
    }

    /** Speeds between which every measured propeller of the family ran, or the nearest to that. */
    private double[] speeds(BladeFamily family) {
        double low = 0;
        double high = Double.MAX_VALUE;
        for (Propeller p : measured) {
            if (p.family() == family || measured(family) == 0) {
                low = Math.max(low, p.curves().lowestSpeed());
                high = Math.min(high, p.curves().highestSpeed());
            }
        }
        return new double[] {Math.min(low, high), Math.max(low, high)};
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
        double l = curves.speedTerm(REFERENCE);
        double j0 = zeroThrust(curves, l);
        double thrust = curves.thrustCoefficient(0, l);
        double power = curves.powerCoefficient(0, l);
        double[] a = curves.thrustTerms();
        double[] b = curves.powerTerms();
        return new double[] {
            StrictMath.log(j0 * p.diameter() / p.pitch()),
            StrictMath.log(thrust),
            curves.thrustCoefficient(STATIONS[1] * j0, l) / thrust,
            curves.thrustCoefficient(STATIONS[2] * j0, l) / thrust,
            StrictMath.log(power),
            curves.powerCoefficient(STATIONS[1] * j0, l) / power,
            curves.powerCoefficient(STATIONS[2] * j0, l) / power,
            curves.powerCoefficient(j0, l) / power,
            a[4] / thrust,
            a[5] / thrust,
            b[4] / power,
            b[5] / power
        };
    }

    private static double zeroThrust(PropellerCurves curves, double speedTerm) {
        double j = 0;
        while (curves.thrustCoefficient(j, speedTerm) > 0) {
            j += 5e-4;
        }
        return j;
    }

    private static double[] cubic(double j0, double scale, double[] shares, double speed, double speedSlope) {
        double[][] powers = new double[4][4];
        for (int i = 0; i < 4; i++) {
            double j = STATIONS[i] * j0;
            powers[i] = new double[] {1, j, j * j, j * j * j};
        }
        double[] c = new LUDecomposition(new Array2DRowRealMatrix(powers, false))
                .getSolver()
                .solve(new ArrayRealVector(shares))
                .toArray();
        return new double[] {scale * c[0], scale * c[1], scale * c[2], scale * c[3], scale * speed, scale * speedSlope};
    }
}
