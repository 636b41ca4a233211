package foamfront.model.flight;

import foamfront.model.aero.LiftingSystem;

/** What letting a load go asks of the elevator: the trim lines of the two balance points, each at its own weight (derived). */
public final class ReleaseTrim {
    private ReleaseTrim() {}

    /**
     * Elevator after the release less that before, at one speed, rad; 0 without an elevator.
     *
     * @param bodyMoment dC_m/dα of the bodies, per rad
     * @param loadedX balance point before, m from the nose
     * @param loadedLift lift coefficient before
     * @param lightX balance point after, m from the nose
     * @param lightLift lift coefficient after
     */
    public static double elevatorShift(
            LiftingSystem lifting,
            double bodyMoment,
            double loadedX,
            double loadedLift,
            double lightX,
            double lightLift) {
        TrimLine loaded = new TrimLine();
        loaded.solve(lifting, loadedX, bodyMoment);
        TrimLine light = new TrimLine();
        light.solve(lifting, lightX, bodyMoment);
        return light.elevator(lightLift) - loaded.elevator(loadedLift);
    }
}
