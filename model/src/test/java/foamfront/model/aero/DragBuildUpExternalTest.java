package foamfront.model.aero;

import foamfront.model.validation.ErrorStatistics;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Bodies, rods, bases and wheels against what the handbooks give for like shapes. */
class DragBuildUpExternalTest {
    private static final double VISCOSITY = 1.46e-5; // m²/s
    private static final double SPEED = 12; // m/s

    private static final double[][] ACROSS = {
        {17.7, 2.12},
        {63.6, 1.48},
        {196, 1.27},
        {892, 0.964},
        {2270, 0.886},
        {5150, 0.944},
        {9180, 1.06},
        {15000, 1.14},
        {30300, 1.16},
        {65500, 1.17},
        {161000, 1.18},
        {220000, 1.06},
        {293000, 0.910},
        {391000, 0.649},
        {503000, 0.302}
    };
    private static final double[][] ENDS = {
        {0, 1.19},
        {0.0237, 0.986},
        {0.049, 0.926},
        {0.0998, 0.820},
        {0.2, 0.737},
        {0.341, 0.744},
        {0.498, 0.687},
        {0.998, 0.614}
    };
    private static final double[][] ALONG = {
        {0, 1.17}, {0.43, 1.12}, {0.75, 1.02}, {1.06, 0.911}, {1.30, 0.856}, {1.81, 0.820}, {3.1, 0.818}, {4.4, 0.814}
    };

    private static final Validation RODS = Validation.of(
            Subject.DRAG,
            "Measured round rods",
            "C. Wieselsberger (1922) across the stream and with free ends; Kritzinger (2004) along it; as tabulated by a public"
                    + " study. The model reads the same figures.");

    private static final Validation BODIES = Validation.of(
            Subject.DRAG,
            "Sharp-edged bodies and bases",
            "S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. 3 (from memory), on frontal or base area.");

    private static final Validation GEAR = Validation.of(
            Subject.DRAG,
            "Wheels and legs",
            "Solid foam wheels between thin discs edge-on and rods, 0.4 to 0.8 (judgement); a 1.5 mm wire at 10 m/s by C."
                    + " Wieselsberger (1922). Legs are bent wires here, so that a flat spring"
                    + " leg's 1.40 has no part to apply to.");

    @Test
    void rodsAsMeasured() {
        ErrorStatistics across = new ErrorStatistics();
        for (double[] point : ACROSS) {
            across.add(Cylinder.across(point[0]) / point[1] - 1);
        }
        ErrorStatistics ends = new ErrorStatistics();
        for (double[] point : ENDS) {
            ends.add(1.19 * Cylinder.endRelief(point[0]) / point[1] - 1);
        }
        ErrorStatistics along = new ErrorStatistics();
        for (double[] point : ALONG) {
            along.add(Cylinder.along(point[0]) / point[1] - 1);
        }
        RODS.set("across the stream, relative", across, 0.05, 0.05, "")
                .set("across the stream with free ends, relative", ends, 0.05, 0.05, "")
                .set("along the stream, relative", along, 0.05, 0.05, "");
    }

    @Test
    void boxesWithSharpEdges() {
        double side = 0.08;
        double face = side * side;
        BODIES.band("square plate", 1.05, 1.29, Fittings.box(1e-4, side, side, SPEED, VISCOSITY) / face, "")
                .band("cube, face on", 0.95, 1.16, Fittings.box(side, side, side, SPEED, VISCOSITY) / face, "");
        double diameter = 2 * side / Math.sqrt(Math.PI);
        for (double[] point : new double[][] {{2, 0.82}, {4, 0.87}}) {
            BoxBody sharp = new BoxBody(point[0] * diameter, side, side, 0, face);
            BODIES.relative(
                    String.format(Locale.ROOT, "blunt rod with its friction, %.0f diameters long", point[0]),
                    point[1],
                    sharp.dragArea(SPEED, VISCOSITY) / face,
                    0.10,
                    "");
        }
    }

    /** Recalled 0.99; a measured rod of 4.4 diameters and turbulent friction beyond make no more than this. */
    @Test
    void aLongRodStaysShortOfTheRecalledRise() {
        double side = 0.08;
        double length = 7 * 2 * side / Math.sqrt(Math.PI);
        double ours = new BoxBody(length, side, side, 0, side * side).dragArea(SPEED, VISCOSITY) / (side * side);
        BODIES.outside("blunt rod with its friction, 7 diameters long", 0.89, 1.09, ours, "");
    }

    @Test
    void aRoundedNoseIsWorthHalfTheDragOfASharpOne() {
        double face = 0.08 * 0.08;
        double sharp = new BoxBody(0.8, 0.08, 0.08, 0, face).dragArea(SPEED, VISCOSITY);
        double rounded = new BoxBody(0.8, 0.08, 0.08, 0.012, face).dragArea(SPEED, VISCOSITY);
        double friction = 0.32 * 0.8 * SkinFriction.turbulent(SPEED * 0.8 / VISCOSITY);
        double base = face * BoxBody.baseCoefficient((0.1 * face + friction) / face);
        BODIES.band("forebody with edges rounded to 0.15", 0, 0.1001, (rounded - friction - base) / face, "")
                .band("rounded over sharp nose, 9 diameters long", 0.3, 0.6, rounded / sharp, "");
    }

    @Test
    void bases() {
        for (double[] point : new double[][] {{0.05, 0.130}, {0.10, 0.092}, {0.20, 0.065}}) {
            BODIES.relative(
                    String.format(Locale.ROOT, "base behind a forebody of %.2f", point[0]),
                    point[1],
                    BoxBody.baseCoefficient(point[0]),
                    0.30,
                    "");
        }
    }

    @Test
    void wheelsAndWires() {
        GEAR.band("foam wheel on its frontal area", 0.4, 0.8, WheelDrag.dragArea(0.06, 0.018) / (0.06 * 0.018), "")
                .relative(
                        "wire of 1.5 mm at 10 m/s",
                        0.96,
                        WireDrag.dragArea(0.0015, 0.1, 10, 1.5e-5) / (0.0015 * 0.1),
                        0.05,
                        "");
    }
}
