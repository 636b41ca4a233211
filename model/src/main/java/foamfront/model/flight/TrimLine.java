package foamfront.model.flight;

import foamfront.model.aero.LiftingSystem;

/**
 * Incidence and elevator that trim an aeroplane about one balance point, against lift: with C_m(α, δ) = 0, body moment included,
 *
 * <pre>  α = α₀ + α₁ C_L,   δ = δ₀ + δ₁ C_L</pre>
 *
 * (derived: lift and moment of the lifting system are linear in both). Without an elevator it flies untrimmed.
 */
final class TrimLine {
    private double incidenceAtRest;
    private double incidencePerLift;
    private double elevatorAtRest;
    private double elevatorPerLift;

    /**
     * Takes over a solved lifting system.
     *
     * @param balanceX from the nose, m
     * @param bodyMoment dC_m/dα of the bodies, per rad
     */
    void solve(LiftingSystem lifting, double balanceX, double bodyMoment) {
        solve(lifting, balanceX, bodyMoment, 0);
    }

    /** The same with flaps, {@code flap} rad of them left of their deflection. */
    void solve(LiftingSystem lifting, double balanceX, double bodyMoment, double flap) {
        double c0 = lifting.liftCoefficient(0, 0, flap);
        double ca = lifting.liftSlope();
        double cd = lifting.elevatorLiftSlope();
        double m0 = lifting.fixedMoment(balanceX) + flap * lifting.flapMomentSlope(balanceX);
        double ma = lifting.momentSlope(balanceX) + bodyMoment;
        double md = lifting.elevatorMomentSlope(balanceX);
        if (md == 0) {
            incidenceAtRest = -c0 / ca;
            incidencePerLift = 1 / ca;
            elevatorAtRest = 0;
            elevatorPerLift = 0;
            return;
        }
        // From C_m = 0: δ = -(m0 + ma α) / md; put into C_L = c0 + ca α + cd δ.
        double slope = ca - cd * ma / md;
        incidencePerLift = 1 / slope;
        incidenceAtRest = (cd * m0 / md - c0) / slope;
        elevatorAtRest = -(m0 + ma * incidenceAtRest) / md;
        elevatorPerLift = -ma * incidencePerLift / md;
    }

    /** Of the body axis, rad. */
    double incidence(double lift) {
        return incidenceAtRest + incidencePerLift * lift;
    }

    /** Trailing edge down positive, rad. */
    double elevator(double lift) {
        return elevatorAtRest + elevatorPerLift * lift;
    }
}
