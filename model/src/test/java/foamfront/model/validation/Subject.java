package foamfront.model.validation;

/** Sections of the validation page in their order, each with what is weakest in it. */
public enum Subject {
    AIR("Air", "Humidity is left out; on a hot, wet day it thins the air by about one per cent."),
    LIFT(
            "Lifting surfaces",
            "The references are converged computations without viscosity, not measurements; bodies, and the joint of wing and"
                    + " body, are outside them."),
    STABILITY(
            "Stability and control",
            "Closed forms and a full-size light aeroplane's derivatives: no model's stability has been measured in flight here, and"
                    + " the body's moment is good to a fifth."),
    DRAG(
            "Friction and bodies",
            "The coefficients of cylinders, discs and rods are recalled from a handbook and agree only within five per cent;"
                    + " square foam bodies have no measurement of their own here."),
    SECTION(
            "Wing sections",
            "No open measurement of a stepped foam-board section was at hand: its drag and maximum lift stand on judgement with a"
                    + " wide spread."),
    PROPULSION(
            "Propellers, motors, batteries",
            "Propellers that were never measured are predicted only within 25 % of thrust and 35 % of power at rest; motor"
                    + " resistance under load rests on four bench sheets; ducted fans on one published chart and sellers' claims."),
    WORKSHOP(
            "Nesting on sheets",
            "Only rectangles: parts with slanted sides are nested by their bounding boxes, but for half-wings head to tail and a"
                    + " delta's offcuts, so real sheets can hold more than this says."),
    FLIGHT(
            "Flight",
            "All of these are closed forms or worked examples: they check the arithmetic of flight, not its physics. A throw by"
                    + " hand has no measurement behind it."),
    STRUCTURE(
            "Boards, folds and structure",
            "Closed forms and worked examples but for one weighed sheet and one board broken between two chairs: no published"
                    + " mechanical test of paper-faced board as a laminate was at hand, so paper and foam strengths stand on wide"
                    + " spreads.");

    private final String title;
    private final String weakest;

    Subject(String title, String weakest) {
        this.title = title;
        this.weakest = weakest;
    }

    String title() {
        return title;
    }

    String weakest() {
        return weakest;
    }
}
