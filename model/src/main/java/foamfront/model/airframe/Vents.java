package foamfront.model.airframe;

import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.parts.Controller;

/**
 * Openings that cool the controller: 2 cm² ahead for each 100 W, half as much again behind, both square (judgement). In
 * all our layouts the motor stands in the open stream and keeps its rating; only a controller inside a closed body
 * needs air, so vents are always cut for it rather than its rating lowered. They are sized for the most that its rating
 * admits, 1 / 1.25 of its current at the battery's nominal 3.7 V a cell: the full throttle of a design that meets the
 * controller's limit asks for no more. The foam they save is less than a gram and not counted.
 *
 * @param inlet area, m²; 0 where no controller lies inside
 */
public record Vents(double inlet) {
    private static final double PER_WATT = 2e-4 / 100; // m²/W
    private static final double OUTLET = 1.5; // of the inlet
    private static final double NOMINAL_CELL = 3.7; // V

    private static final Vents NONE = new Vents(0);

    public static Vents of(Design design) {
        Controller controller = Bay.controller(design.power());
        if (controller == null || design.body() instanceof Body.ProfileBoard) {
            return NONE;
        }
        double voltage = NOMINAL_CELL * design.power().battery().cells();
        return new Vents(PER_WATT * voltage * controller.current() / Controller.ROOM);
    }

    /** Length of the cuts round both openings, m. */
    public double cut() {
        return 4 * (Math.sqrt(inlet) + Math.sqrt(OUTLET * inlet));
    }

    /** Outlet over inlet area. */
    public static double ratio() {
        return OUTLET;
    }
}
