package foamfront.model.flight;

import foamfront.model.aero.LiftingSystem;
import foamfront.model.airframe.Airframe;
import foamfront.model.mass.Balance;
import foamfront.model.mass.Inertia;

/**
 * How the aeroplane answers a disturbance in level flight at one speed, motor stopped.
 *
 * @param speed m/s
 * @param shortPeriod of pitching
 * @param derivatives of rolling and yawing
 * @param lateral rolling, spiral and Dutch roll
 */
public record Motions(double speed, ShortPeriod shortPeriod, LateralDerivatives derivatives, LateralModes lateral) {
    /**
     * Of a trimmed aeroplane.
     *
     * @param yaw C_nβ, body included, per rad
     */
    public static Motions of(
            Airframe airframe,
            LiftingSystem lifting,
            TrimmedFlight flight,
            Balance balance,
            Inertia inertia,
            double yaw,
            double speed) {
        double lift = flight.liftCoefficient(speed);
        double pressure = 0.5 * flight.density() * speed * speed * flight.referenceArea();
        double drag = flight.drag(speed) / pressure;
        double x = balance.x();
        double aspect = lifting.referenceSpan() * lifting.referenceSpan() / lifting.referenceArea();
        double lag = 2 * lifting.liftSlope() / (Math.PI * aspect);
        ShortPeriod pitch = ShortPeriod.of(
                pressure,
                lifting.referenceChord(),
                speed,
                balance.mass(),
                inertia.yy(),
                flight.liftSlope(lift),
                drag,
                flight.momentSlope(lift),
                Stability.pitchDamping(airframe, lifting, x),
                lag * Stability.tailDamping(airframe, lifting, x));
        LateralDerivatives k = Stability.lateral(airframe, lifting, x, balance.z(), yaw, lift, drag);
        LateralModes modes =
                LateralModes.of(k, pressure, airframe.span(), speed, balance.mass(), inertia.xx(), inertia.zz());
        return new Motions(speed, pitch, k, modes);
    }
}
