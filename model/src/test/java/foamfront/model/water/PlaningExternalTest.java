package foamfront.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Savitsky's planing law against its paper's worked boat, in the paper's units, and against a set of model floats. */
class PlaningExternalTest {
    private static final double DEGREE = Math.PI / 180;
    private static final double FOOT = 0.3048; // m
    private static final double POUND = 4.4482216; // N
    private static final double SLUG = 515.37882; // kg/m³ for each slug/ft³

    /** Half the last digit of the lift's two parts. */
    private static final double HALF_DIGIT = 5e-6;

    /** Stated tolerance of the worked boat, and of the set of floats. */
    private static final double BOAT = 0.01;

    private static final double FLOATS = 0.005;

    private static final double BEAM = 14 * FOOT;
    private static final double SPEED = 67.5 * FOOT;
    private static final double LOAD = 60_000 * POUND;
    private static final Planing.Fluid SEA = new Planing.Fluid(1.95 * SLUG, 1e-5 * FOOT * FOOT, 0.0004);

    private static final Validation LAW = Validation.of(
            Subject.FLIGHT,
            "Planing lift",
            "D. Savitsky, Marine Technology 1(1) (1964), lift law; figures derived from it.");

    private static final Validation PAPER = Validation.of(
            Subject.FLIGHT,
            "Planing boat",
            "D. Savitsky, Marine Technology 1(1) (1964), worked example (inputs read in a public copy; figures derived from the"
                    + " paper's equations).");

    private static final Validation MODELS = Validation.of(
            Subject.FLIGHT,
            "Planing model floats",
            "D. Savitsky, Marine Technology 1(1) (1964): balance of 10 N on a bottom 0.12 m wide (derived from the equations).");

    @Test
    void theLiftLaw() {
        double whole = Planing.lift(4 * DEGREE, 3, 5);
        double fast = Planing.lift(4 * DEGREE, 3, 1e9);

        LAW.value("dynamic part, 4 deg, wetted ratio 3", 0.09550, fast, HALF_DIGIT, "")
                .value("buoyant part at C_V 5", 0.01576, whole - fast, HALF_DIGIT, "");
    }

    @ParameterizedTest(name = "{0} deg")
    @CsvSource({"2, 3.822, 9266, -126870", "3, 2.566, 8126, 331900", "4, 1.764, 7723, 701000"})
    void thePapersBoat(double degrees, double wetted, double drag, double moment) {
        Planing boat = Planing.of(BEAM, 10 * DEGREE, LOAD, degrees * DEGREE, SPEED, SEA);

        PAPER.relative("wetted ratio at " + degrees + " deg", wetted, boat.wetted(), BOAT, "")
                .relative("drag at " + degrees + " deg", drag, boat.drag() / POUND, BOAT, "lbf")
                .relative("pitching moment at " + degrees + " deg", moment, moment(boat), 2 * BOAT, "lbf ft");
        assertThat(boat.inside()).isTrue();
    }

    @Test
    void thePapersBoatFindsItsTrim() {
        Planing boat = balanced(BEAM, 10 * DEGREE, LOAD, SPEED, SEA, 29 * FOOT, 2 * FOOT, 4 * DEGREE, 0.5 * FOOT);

        PAPER.relative("trim", 2.254, boat.trim() / DEGREE, BOAT, "deg")
                .relative("wetted ratio in balance", 3.439, boat.wetted(), BOAT, "")
                .relative("drag in balance", 8874, boat.drag() / POUND, BOAT, "lbf");
    }

    @ParameterizedTest(name = "deadrise {0} deg, {1} m, {2} m/s")
    @CsvSource({
        "0, 0.12, 4, 5.069, 1.315, 1.579, true",
        "0, 0.16, 5, 2.890, 1.811, 1.884, true",
        "0, 0.20, 6, 1.850, 2.294, 2.676, false",
        "15, 0.12, 4, 6.522, 1.289, 1.850, true",
        "15, 0.16, 5, 3.893, 1.784, 2.093, true",
        "15, 0.20, 6, 2.612, 2.260, 2.863, true"
    })
    void modelFloatsFindTheirTrim(
            double deadrise, double ahead, double speed, double trim, double wetted, double drag, boolean inside) {
        Planing bottom = balanced(0.12, deadrise * DEGREE, 10, speed, Planing.Fluid.FRESH, ahead, 0.06, 0, 0.06);

        String name = "deadrise " + deadrise + " deg at " + speed + " m/s";
        MODELS.relative("trim, " + name, trim, bottom.trim() / DEGREE, FLOATS, "deg")
                .relative("wetted ratio, " + name, wetted, bottom.wetted(), FLOATS, "")
                .relative("drag, " + name, drag, bottom.drag(), FLOATS, "N");
        assertThat(bottom.inside()).isEqualTo(inside);
    }

    /** From forces and levers alone: the load presses straight up at the centre of pressure, friction pulls aft at the bottom. */
    @Test
    void theMomentPutsTheBowDownWhereThePressureIsBehindTheBalancePoint() {
        Planing planing = Planing.of(0.12, 0, 10, 4 * DEGREE, 5, Planing.Fluid.FRESH);
        double above = 0.06;
        for (double c : new double[] {-0.05, 0, 0.05}) {
            double ahead = planing.centre() + c;
            double down = planing.moment(ahead, above, 0.12, 0, 0, 0) - planing.friction() * above;
            assertThat(down).isCloseTo(10 * c * Math.cos(planing.trim()), within(1e-9));
        }
        assertThat(planing.friction()).isPositive();
    }

    private static double moment(Planing boat) {
        return boat.moment(29 * FOOT, 2 * FOOT, BEAM, 10 * DEGREE, 4 * DEGREE, 0.5 * FOOT) / POUND / FOOT;
    }

    /** By halving: nose up the centre of pressure falls behind. */
    private static Planing balanced(
            double beam,
            double deadrise,
            double load,
            double speed,
            Planing.Fluid fluid,
            double ahead,
            double above,
            double shaft,
            double f) {
        double low = 1 * DEGREE;
        double high = 14 * DEGREE;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            Planing planing = Planing.of(beam, deadrise, load, middle, speed, fluid);
            if (planing.moment(ahead, above, beam, deadrise, shaft, f) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Planing.of(beam, deadrise, load, low, speed, fluid);
    }
}
