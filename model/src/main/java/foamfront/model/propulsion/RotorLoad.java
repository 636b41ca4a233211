package foamfront.model.propulsion;

import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.Rotor;

/**
 * One rotor in air: its thrust and torque at a rotation n in rev/s, and the n that takes a motor's current or gives a thrust.
 * Newton's steps are kept inside a bracket and replaced by halving it where they leave it. Belongs to one {@link PowerTrain}.
 */
final class RotorLoad {
    /** Newton stops at this relative step; convergence is quadratic, so the error left is about its square. */
    static final double STEP = 1e-7;

    static final int MOST_STEPS = 60;

    private PropellerCurves curves;
    private double diameter;
    private double thrustScale;
    private double torqueScale;

    RotorLoad(Rotor rotor) {
        curves = rotor.curves();
    }

    /**
     * Turns this into another rotor's.
     *
     * @param thrustDensity density times the factor on thrust, kg/m³
     * @param torqueDensity density times the factor on shaft power, kg/m³
     */
    void prepare(Rotor rotor, double thrustDensity, double torqueDensity) {
        curves = rotor.curves();
        diameter = rotor.diameter();
        double squared = diameter * diameter;
        thrustScale = thrustDensity * squared * squared;
        torqueScale = torqueDensity * squared * squared * diameter / PowerTrain.TURN;
    }

    /** Thrust on an aeroplane over that of the rotor alone. */
    void install(double thrustShare) {
        thrustScale *= thrustShare;
    }

    double advanceRatio(double n, double speed) {
        return speed / (n * diameter);
    }

    /** That of {@link PropellerCurves#speedTerm}. */
    double speedTerm(double n) {
        return curves.speedTerm(n);
    }

    /** N. */
    double thrust(double n, double advanceRatio, double speedTerm) {
        return thrustScale * n * n * curves.thrustCoefficient(advanceRatio, speedTerm);
    }

    /** N m. */
    double torque(double n, double advanceRatio, double speedTerm) {
        return torqueScale * n * n * curves.powerCoefficient(advanceRatio, speedTerm);
    }

    /** Whether a point lies inside the measured speeds and advance ratios. */
    boolean isMeasured(double n, double advanceRatio) {
        return n >= curves.lowestSpeed() && n <= curves.highestSpeed() && advanceRatio <= curves.furthestAdvance();
    }

    /** n where K_v Q + i₁ ω + ω / (K_v R) equals the {@code excess} current. */
    double forCurrent(double speedConstant, double excess, double perTurn, double speed) {
        double k = speedConstant * torqueScale;
        double high = excess / perTurn;
        double low = 0;
        double near = 0.7 * high;
        double square = k * curves.powerCoefficient(speed / (near * diameter), curves.speedTerm(near));
        double n = 2 * excess / (perTurn + Math.sqrt(perTurn * perTurn + 4 * square * excess));
        for (int i = 0; i < MOST_STEPS; i++) {
            double j = speed / (n * diameter);
            double l = curves.speedTerm(n);
            double c = curves.powerCoefficient(j, l);
            double error = n * (k * n * c + perTurn) - excess;
            if (error > 0) {
                high = n;
            } else {
                low = n;
            }
            double driven = c > 0 ? n * curves.powerSpeedSlope(j) * curves.speedTermSlope(n) : 0;
            double slope = k * n * (2 * c - j * curves.powerSlope(j, l) + driven) + perTurn;
            double next = n - error / slope;
            if (Math.abs(next - n) <= STEP * n) {
                return next;
            }
            n = next > low && next < high ? next : 0.5 * (low + high);
        }
        return n;
    }

    /** n where one propeller gives a thrust; it gives at least that at {@code fastest}. */
    double forThrust(double asked, double speed, double fastest) {
        double high = fastest;
        double low = 0;
        double n = thrustGuess(asked, speed, fastest);
        for (int i = 0; i < MOST_STEPS; i++) {
            double j = speed / (n * diameter);
            double l = curves.speedTerm(n);
            double c = curves.thrustCoefficient(j, l);
            double error = thrustScale * n * n * c - asked;
            if (error > 0) {
                high = n;
            } else {
                low = n;
            }
            double slope =
                    2 * c - j * curves.thrustSlope(j, l) + n * curves.thrustSpeedSlope(j) * curves.speedTermSlope(n);
            double next = n - error / (thrustScale * n * slope);
            if (Math.abs(next - n) <= STEP * n) {
                return next;
            }
            n = next > low && next < high ? next : 0.5 * (low + high);
        }
        return n;
    }

    /** Start of Newton: the curve as a straight line from its static value to its value at the fastest speed. */
    private double thrustGuess(double asked, double speed, double fastest) {
        double l = curves.speedTerm(0.7 * fastest);
        double start = curves.thrustCoefficient(0, l);
        double j = Math.min(curves.furthestAdvance(), speed / (0.7 * fastest * diameter));
        double fall = j > 0 ? (start - curves.thrustCoefficient(j, l)) / j : 0;
        double half = 0.5 * fall * speed / diameter;
        double n = (half + Math.sqrt(half * half + start * asked / thrustScale)) / start;
        return n > 0 && n < fastest ? n : 0.7 * fastest;
    }
}
