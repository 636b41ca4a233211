package foamfront.model.flight;

import foamfront.model.aero.LeadingEdgeVortex;
import foamfront.model.aero.LiftingSystem;

/**
 * Incidence and elevon that trim a wing with {@link LeadingEdgeVortex} about one balance point, against lift. With s = sin α
 * and c = cos α of the incidence from zero lift,
 *
 * <pre>
 *  C_L = c [c (a s + a_δ δ) + K s |s|],   C_m = m₀ + m_b (s − s₀) + c (m s + m_δ δ) + m_K K s |s| = 0
 * </pre>
 *
 * (Polhamus, as cited there; elevons turn the potential part alone and bodies follow the sine, both derived.) C_m = 0 gives
 * δ as a function of s, and C_L of s is then turned round by Newton's rule.
 */
final class VortexTrim {
    private static final int STEPS = 12;
    private static final double ENOUGH = 1e-12;

    /** Steeper than this nothing is asked, sine. */
    private static final double MOST_SINE = 0.9;

    private double lift;
    private double elevatorLift;
    private double vortex;
    private double rest;
    private double potentialMoment;
    private double vortexMoment;
    private double bodyMoment;
    private double elevatorMoment;
    private double zeroLiftIncidence;

    void solve(LiftingSystem lifting, LeadingEdgeVortex edge, double balanceX, double body) {
        lift = lifting.liftSlope();
        elevatorLift = lifting.elevatorLiftSlope();
        vortex = edge.lift();
        zeroLiftIncidence = -lifting.liftCoefficient(0, 0, 0) / lift;
        potentialMoment = lifting.momentSlope(balanceX);
        vortexMoment = vortex * (balanceX - edge.centreX()) / lifting.referenceChord();
        bodyMoment = body;
        elevatorMoment = lifting.elevatorMomentSlope(balanceX);
        rest = lifting.fixedMoment(balanceX) + (potentialMoment + body) * zeroLiftIncidence;
    }

    /** Elevon that balances the moments at a sine, rad; 0 without elevons. */
    private double elevatorAt(double s) {
        double c = Math.sqrt(1 - s * s);
        double moment = rest + bodyMoment * s + c * potentialMoment * s + vortexMoment * s * Math.abs(s);
        return elevatorMoment == 0 ? 0 : -moment / (elevatorMoment * c);
    }

    /** Trimmed C_L at a sine of the incidence from zero lift. */
    double liftAt(double s) {
        double c = Math.sqrt(1 - s * s);
        return c * (c * (lift * s + elevatorLift * elevatorAt(s)) + vortex * s * Math.abs(s));
    }

    /** Sine of the incidence from zero lift trimmed at C_L. */
    double sine(double liftCoefficient) {
        double s = Math.max(-0.5, Math.min(0.5, liftCoefficient / lift));
        for (int step = 0; step < STEPS; step++) {
            double miss = liftAt(s) - liftCoefficient;
            double next = Math.max(-MOST_SINE, Math.min(MOST_SINE, s - miss / slope(s)));
            double moved = Math.abs(next - s);
            s = next;
            if (moved < ENOUGH) {
                break;
            }
        }
        return s;
    }

    /** dC_L/ds of the trimmed wing. */
    private double slope(double s) {
        double c = Math.sqrt(1 - s * s);
        double share = elevatorMoment == 0 ? 0 : elevatorLift / elevatorMoment;
        double a = lift - share * potentialMoment;
        double k = vortex - share * vortexMoment;
        double b = -share * bodyMoment;
        double r = -share * rest;
        double size = Math.abs(s);
        return a * (c * c - 2 * s * s) + k * size * (2 * c - s * s / c) + b * c - (r + b * s) * s / c;
    }

    /** dC_L/dα with the elevon held where it trims a lift coefficient, per rad: the lift above, derived by α. */
    double liftSlope(double liftCoefficient) {
        double s = sine(liftCoefficient);
        double c = Math.sqrt(1 - s * s);
        double size = Math.abs(s);
        double potential = lift * s + elevatorLift * elevatorAt(s);
        return c * c * c * lift - 2 * c * s * potential + vortex * size * (2 * c * c - s * s);
    }

    /** dC_m/dα likewise, bodies included, per rad. */
    double momentSlope(double liftCoefficient) {
        double s = sine(liftCoefficient);
        double c = Math.sqrt(1 - s * s);
        double potential = potentialMoment * s + elevatorMoment * elevatorAt(s);
        return bodyMoment * c + c * c * potentialMoment - s * potential + 2 * vortexMoment * Math.abs(s) * c;
    }

    /** Of the body axis, rad. */
    double incidence(double liftCoefficient) {
        return incidenceAt(sine(liftCoefficient));
    }

    private double incidenceAt(double s) {
        return zeroLiftIncidence + StrictMath.asin(s);
    }

    /** Trailing edge down positive, rad. */
    double elevator(double liftCoefficient) {
        return elevatorAt(sine(liftCoefficient));
    }

    /** Drag coefficient of a wing without edge suction, C_L tan α. */
    double normalForceDrag(double liftCoefficient) {
        double s = sine(liftCoefficient);
        return liftCoefficient * s / Math.sqrt(1 - s * s);
    }

    /** Trimmed C_L at an incidence from zero lift, rad. */
    double liftAtUsable(double incidence) {
        return liftAt(StrictMath.sin(incidence));
    }
}
