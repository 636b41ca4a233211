package foamfront.model.flight;

import foamfront.model.aero.LeadingEdgeVortex;
import foamfront.model.aero.LiftingSystem;
import org.jspecify.annotations.Nullable;

/**
 * What letting a load go asks of the elevator: the trims about the two balance points, each at its own weight, over
 * a delta's edge vortices {@link VortexTrim}'s (derived).
 */
public final class ReleaseTrim {
    private ReleaseTrim() {}

    /**
     * Elevator after the release less that before, at one speed, rad; 0 without an elevator.
     *
     * @param edge vortices of a delta, or null
     * @param bodyMoment dC_m/dα of the bodies, per rad
     * @param loadedX balance point before, m from the nose
     * @param loadedLift lift coefficient before
     * @param lightX balance point after, m from the nose
     * @param lightLift lift coefficient after
     */
    public static double elevatorShift(
            LiftingSystem lifting,
            @Nullable LeadingEdgeVortex edge,
            double bodyMoment,
            double loadedX,
            double loadedLift,
            double lightX,
            double lightLift) {
        return elevator(lifting, edge, bodyMoment, lightX, lightLift)
                - elevator(lifting, edge, bodyMoment, loadedX, loadedLift);
    }

    private static double elevator(
            LiftingSystem lifting, @Nullable LeadingEdgeVortex edge, double bodyMoment, double x, double lift) {
        if (edge != null) {
            VortexTrim vortices = new VortexTrim();
            vortices.solve(lifting, edge, x, bodyMoment);
            return vortices.elevator(lift);
        }
        TrimLine line = new TrimLine();
        line.solve(lifting, x, bodyMoment);
        return line.elevator(lift);
    }
}
