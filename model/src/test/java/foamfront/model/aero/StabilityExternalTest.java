package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Neutral point, body moment, V-tail and flaps against handbook figures. */
class StabilityExternalTest {
    /** Half the last printed digit of the derived values. */
    private static final double FOUR_DECIMALS = 5.1e-5;

    /** Half the last printed digit of the flap's moments. */
    private static final double THREE_DECIMALS = 6e-4;

    /** Multhopp's method is good to this share. */
    private static final double BODY = 0.2;

    /** A canted tail's load falls to nothing at the root as steeply as at the tip, where eight strips do not crowd. */
    private static final double CANTED = 0.045;

    /** Of the bodies beside a wing, m. */
    private static final double LENGTH = 0.9;

    private static final int PIECES = 400;

    private static final Validation NEUTRAL = Validation.of(
            Subject.STABILITY,
            "Neutral point",
            "h = 1/4 + (a_t / a) (1 − dε/dα) V, wing of aspect ratio 6, tail of 4, V 0.5, Helmbold's slopes (derived; quick rule of"
                    + " M. Drela, MIT Unified Engineering notes, from memory).");

    private static final Validation PRISM = Validation.of(
            Subject.STABILITY,
            "Body in pitch",
            "H. Multhopp, NACA TM-1036, 1942, (π/2) ∫ w² dx / S c; M. M. Munk's slender body, 2 V (k₂ − k₁) / S c (derived); R. R."
                    + " Gilruth, NACA TR-711 (from memory), flown and measured, on w² l with the greatest breadth of bodies that taper"
                    + " to both ends, where a tube of boards is as broad all along: an ellipsoid in our flow comes within a fifth of"
                    + " his factor with the wing far aft. What stays above it with the wing forward is the long rear's boundary"
                    + " layer, which ours does not have.");

    private static final Validation VEE = Validation.of(
            Subject.STABILITY,
            "V-tail",
            "P. E. Purser and J. P. Campbell, NACA R-823, 1945 (from memory): C_L-alpha = a_N cos² ν, C_Y-beta = −K a_N sin² ν, K"
                    + " 0.65 to 0.75. K grows with aspect ratio (derived: loads of opposite sign on both halves take from each other"
                    + " at the root); a tail of aspect ratio 4 lies below the range, and a fine lattice says the same.");

    private static final Validation FLAP = Validation.of(
            Subject.STABILITY,
            "Plain flaps",
            "H. Glauert, ARC R&M 1095, 1927 (derived): incidence and quarter-chord moment per rad; what measured flaps keep of it,"
                    + " NACA R-721 and R-1075 charts (from memory).");

    private static final Validation HELMBOLD = Validation.of(
            Subject.LIFT,
            "Closed slope beside lifting surface",
            "H. B. Helmbold, 2π A / (2 + √(A² + 4)), over the converged lattice's slope (derived).");

    private static LiftingSystem trainer() {
        Surface wing = TestWings.surface(Surface.Role.WING, 6, 1, 0, 0.24, 0, 0, 0);
        Surface tail = TestWings.surface(Surface.Role.TAIL, 4, 1, 0, 0.5 * 0.24 * 0.2 / 0.6, 0.6, 0, 0);
        return TestWings.solved(wing, tail);
    }

    @Test
    void neutralPoints() {
        double a = Helmbold.liftSlope(6, 1);
        double ratio = Helmbold.liftSlope(4, 1) / a;
        double downwash = 2 * a / (Math.PI * 6);
        LiftingSystem system = trainer();
        double ours = 0.25 + system.neutralPoint() / system.referenceChord();
        NEUTRAL.value("dε/dα", 0.4805, downwash, FOUR_DECIMALS, "")
                .value("closed form", 0.4727, 0.25 + ratio * (1 - downwash) * 0.5, FOUR_DECIMALS, "c")
                .value(
                        "closed form, 0.9 of the pressure at the tail",
                        0.4505,
                        0.25 + 0.9 * ratio * (1 - downwash) * 0.5,
                        FOUR_DECIMALS,
                        "c")
                .value(
                        "closed form, the sheet's downwash 0.5324",
                        0.4505,
                        0.25 + ratio * (1 - 0.5324) * 0.5,
                        FOUR_DECIMALS,
                        "c")
                .value(
                        "quick rule",
                        0.4722,
                        0.25 + (1 + 2.0 / 6) / (1 + 2.0 / 4) * (1 - 4.0 / 8) * 0.5,
                        FOUR_DECIMALS,
                        "c")
                .band("one system of wing and tail", 0.44, 0.48, ours, "c");
    }

    @Test
    void bodies() {
        BodyShape body = new BodyShape(0.9, 0.1, 0.1, 0.9, 0.005, 0);
        double ours = BodyMoment.pitchSlope(body, new WingFlow(2, 2.2, 2.05, 1.2, 0), 0.25, 0.2083);
        double munk = 2 * 0.009 / (0.25 * 0.2083);
        PRISM.value("prism of 0.1 x 0.1 x 0.9 m", 0.2715, ours, FOUR_DECIMALS, "1/rad")
                .value("slender body", 0.3457, munk, FOUR_DECIMALS, "1/rad")
                .band("Multhopp's over 0.95 of the slender body's", 1 - BODY, 1 + BODY, ours / (0.95 * munk), "");
        double factor = ours / (0.01 * 0.9 / (0.25 * 0.2083));
        assertThat(factor).isCloseTo(0.5 * Math.PI, within(1e-9));
        PRISM.outside(
                        "ours over Gilruth's factor, wing at 30 % of the body",
                        1 - BODY, 1 + BODY, beside(0.3) / 0.344, "")
                .outside(
                        "ours over Gilruth's factor, wing at 60 % of the body",
                        1 - BODY, 1 + BODY, beside(0.6) / 0.888, "");
        PRISM.outside(
                        "the same of an ellipsoid as broad and long, wing at 30 % of the body",
                        1 - BODY, 1 + BODY, tapering(0.3) / 0.344, "")
                .band(
                        "the same of an ellipsoid as broad and long, wing at 60 % of the body",
                        1 - BODY, 1 + BODY, tapering(0.6) / 0.888, "");
        // The wing's flow takes away behind it more than it adds ahead, the more so the further forward the wing
        // stands.
        assertThat(beside(0.3)).isLessThan(beside(0.6)).isLessThan(0.8 * factor);
        assertThat(beside(0.6)).isLessThan(factor);
    }

    /** The body's moment beside a wing of aspect ratio 6 whose quarter chord lies at a share of its length, over w² l. */
    private static double beside(double share) {
        return BodyMoment.pitchSlope(new BodyShape(LENGTH, 0.1, 0.1, LENGTH, 0.005, 0), flow(share), 0.01, LENGTH);
    }

    /** The same of a body that tapers to both ends as an ellipsoid, w its greatest breadth. */
    private static double tapering(double share) {
        WingFlow flow = flow(share);
        double sum = 0;
        for (int i = 0; i < PIECES; i++) {
            double middle = (i + 0.5) / PIECES;
            double square = 4 * middle * (1 - middle);
            sum += square * flow.along(LENGTH * i / PIECES, LENGTH * (i + 1) / PIECES);
        }
        return 0.5 * Math.PI * sum / LENGTH;
    }

    private static WingFlow flow(double share) {
        double line = share * LENGTH;
        double chord = 0.2;
        return new WingFlow(line - 0.25 * chord, line + 0.75 * chord, line, 1.2, 4.2 * 0.24);
    }

    @ParameterizedTest(name = "{0} degrees")
    @CsvSource({"30", "35", "40"})
    void canted(double degrees) {
        Surface flat = level(4);
        double area = TestWings.solved(flat).surfaceLiftSlope(0);
        double cosine = Math.cos(Math.toRadians(degrees));
        double lift = TestWings.solved(canted(flat, degrees)).surfaceLiftSlope(0) / area;
        double ours = sideFactor(flat, degrees);
        String words = String.format(Locale.ROOT, "%.0f degrees: ", degrees);
        VEE.band(words + "lift over a_N cos² ν", 1, 1.1, lift / (cosine * cosine), "")
                .outside(words + "K of the side force, aspect ratio 4", 0.65, 0.75, ours, "")
                .relative(
                        words + "K, aspect ratio 4, of a fine lattice",
                        fineSideFactor(flat, degrees),
                        ours,
                        CANTED,
                        "");
    }

    /** The opposite loads of both halves take from each other at the root, the less so the longer the halves are. */
    @ParameterizedTest(name = "aspect ratio {0}")
    @CsvSource({"6", "8"})
    void longerTailsKeepMoreOfTheirSideForce(double aspectRatio) {
        String words = String.format(Locale.ROOT, "35 degrees: K of the side force, aspect ratio %.0f", aspectRatio);
        VEE.band(words, 0.65, 0.75, sideFactor(level(aspectRatio), 35), "");
    }

    private static Surface level(double aspectRatio) {
        Surface tail = TestWings.surface(Surface.Role.TAIL, aspectRatio, 0.8, 0, 0.05, 0.6, 0, 0);
        return TestWings.of(Surface.Role.WING, tail.panels());
    }

    /** The same halves turned up about the root. */
    private static Surface canted(Surface level, double degrees) {
        Panel p = level.panels().get(0);
        double y = p.breadth() * Math.cos(Math.toRadians(degrees));
        double z = p.breadth() * Math.sin(Math.toRadians(degrees));
        Panel panel = new Panel(p.rootX(), 0, 0, p.rootChord(), 0, p.tipX(), y, z, p.tipChord(), 0);
        return TestWings.of(Surface.Role.WING, List.of(panel));
    }

    private static double sideFactor(Surface level, double degrees) {
        LiftingSystem canted = TestWings.solved(canted(level, degrees));
        double side = -canted.lateral().sideForceSlope() * canted.referenceArea();
        double sine = Math.sin(Math.toRadians(degrees));
        return side / TestWings.solved(level).surfaceLiftSlope(0) / (sine * sine);
    }

    private static double fineSideFactor(Surface level, double degrees) {
        double lift =
                new FullLattice(20, 5, level).solve((y, z, ny, nz, eta) -> nz).lift();
        double side = new FullLattice(20, 5, canted(level, degrees))
                .solve((y, z, ny, nz, eta) -> -ny)
                .side();
        double sine = Math.sin(Math.toRadians(degrees));
        return Math.abs(side) / lift / (sine * sine);
    }

    @ParameterizedTest(name = "flap of {0} chord")
    @CsvSource({
        "0.15, 0.4805, -0.607", "0.20, 0.5498, -0.640", "0.25, 0.6090, -0.6495",
        "0.30, 0.6607, -0.642", "0.40, 0.7478, -0.588", "0.50, 0.8183, -0.500"
    })
    void flaps(double share, double effectiveness, double moment) {
        String words = String.format(Locale.ROOT, "flap of %.2f chord, ", share);
        FLAP.value(words + "effectiveness", effectiveness, PlainFlap.effectiveness(share), 1e-4, "")
                .value(words + "moment", moment, PlainFlap.momentSlope(share), THREE_DECIMALS, "1/rad");
    }

    @Test
    void measuredFlapsKeepLess() {
        FLAP.band("share kept at 10 degrees", 0.75, 0.9, PlainFlap.efficiency(Math.toRadians(10)), "")
                .band("share kept at 25 degrees", 0.55, 0.65, PlainFlap.efficiency(Math.toRadians(25)), "");
    }

    /** pb/2V = C_lδ δ / −C_lp: twice the aileron rolls twice as fast while the flow holds, and less beyond. */
    @Test
    void helixAnglesGrowWithTheAileron() {
        Surface wing = TestWings.with(TestWings.wing(6, 0.6, 0), new Control(Control.Kind.AILERON, 0.25, 0.6, 1));
        LateralSystem system = TestWings.solved(wing).lateral();
        double perDeflection = system.aileronPower() / -system.rollDamping();
        double five = perDeflection * PlainFlap.worth(Math.toRadians(5));
        double ten = perDeflection * PlainFlap.worth(Math.toRadians(10));
        double twenty = perDeflection * PlainFlap.worth(Math.toRadians(20));
        assertThat(five).isPositive();
        assertThat(ten).isCloseTo(2 * five, within(1e-12));
        assertThat(twenty).isBetween(ten, 2 * ten);
    }

    /** A straight line's slope stands above the surface's by the published shares. */
    @ParameterizedTest(name = "aspect ratio {0}")
    @CsvSource({"1, 1.4599, 0.016", "2, 2.474, 0.052", "4, 3.612, 0.075", "6, 4.214, 0.075", "8, 4.586, 0.070"})
    void helmboldOverTheSurface(double aspectRatio, double surface, double excess) {
        double lattice = TestWings.solved(new Resolution(8, 24, 4), TestWings.wing(aspectRatio, 1, 0))
                .liftSlope();
        assertThat(lattice / surface).isCloseTo(1, within(0.003));
        HELMBOLD.value(
                String.format(Locale.ROOT, "excess at aspect ratio %.0f", aspectRatio),
                excess,
                Helmbold.liftSlope(aspectRatio, 1) / surface - 1,
                0.0006,
                "");
    }
}
