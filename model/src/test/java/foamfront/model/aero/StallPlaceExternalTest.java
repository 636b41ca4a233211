package foamfront.model.aero;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where wings of one section let go first, and what they lift there of what the section lifts: our strips against a fine lattice
 * over both halves.
 */
class StallPlaceExternalTest {
    private static final double ASPECT_RATIO = 6;

    /** The widest of eight strips. */
    private static final double PLACE = 0.17;

    /** Of maximum lift: strips hold the load's peak to this. */
    private static final double LIFT = 0.006;

    private static final int STRIPS = 24;

    private static final Validation STALL = Validation.of(
            Subject.LIFT,
            "Where the stall begins",
            "A lattice of 24 x 3 a half over both halves (derived); aspect ratio 6, one section that stalls at 1 all along, tips"
                    + " twisted against the root. The load is flat near its peak, so that its place is known to a strip's width. (The"
                    + " monoplane equation has 0.874 and 0.937 for tapers of 1 and 0.5, its loads being fuller at the tips.)");

    /** What a wing lifts when its first strip stalls, and where. */
    private record Stall(double lift, double place) {
        /** The strip of lift {@code rest + slope * C_L} stalls at this C_L. */
        Stall or(double rest, double slope, double at) {
            double stalls = (1 - rest) / slope;
            return slope > 0 && stalls < lift ? new Stall(stalls, at) : this;
        }
    }

    private static final Stall NEVER = new Stall(Double.POSITIVE_INFINITY, Double.NaN);

    @ParameterizedTest(name = "taper {0}, sweep {1}, tip twisted by {2} degrees")
    @CsvSource({
        "1, 0, 0",
        "0.5, 0, 0",
        "0.25, 0, 0",
        "0.5, 0, -3",
        "0.5, 0, 3",
        "1, 0, 3",
        "0.5, 25, 0",
        "1, 30, 0",
        "0.6, 20, -4",
        "0.6, -15, 0"
    })
    void theFirstStripIsTheWings(double taper, double sweep, double twist) {
        Surface wing = TestWings.wing(ASPECT_RATIO, taper, sweep);
        Panel panel = wing.panels().get(0);
        double tip = Math.toRadians(twist);
        FullLattice plain = new FullLattice(STRIPS, 3, wing).solve((y, z, ny, nz, eta) -> nz);
        double plainLift = plain.lift() / wing.area();
        Stall reference = NEVER;
        FullLattice twisted = new FullLattice(STRIPS, 3, wing).solve((y, z, ny, nz, eta) -> tip * Math.abs(eta) * nz);
        double twistedLift = twisted.lift() / wing.area();
        for (int k = 0; k < STRIPS; k++) {
            double eta = Math.sin(Math.PI * (k + 0.5) / (2.0 * STRIPS));
            double chord = panel.chord(eta);
            double slope = 2 * plain.circulation(k) / chord / plainLift;
            double rest = 2 * twisted.circulation(k) / chord - slope * twistedLift;
            reference = reference.or(rest, slope, eta);
        }
        show(
                String.format(Locale.ROOT, "taper %.2f, sweep %.0f, washed %s", taper, sweep, washed(twist)),
                taper,
                sweep,
                twist,
                reference);
    }

    private static String washed(double twist) {
        return twist == 0 ? "not" : String.format(Locale.ROOT, "%s by %.0f", twist < 0 ? "out" : "in", Math.abs(twist));
    }

    private static void show(String name, double taper, double sweep, double twist, Stall reference) {
        Surface wing = TestWings.twisted(TestWings.wing(ASPECT_RATIO, taper, sweep), 0, Math.toRadians(twist));
        LiftingSystem system = TestWings.solved(wing);
        double none = system.liftCoefficient(0, 0, 0);
        Stall ours = NEVER;
        for (int i = system.firstStrip(0); i < system.endStrip(0); i++) {
            double rest = system.stripLiftCoefficient(i, -none / system.liftSlope(), 0, 0);
            double slope = system.stripLiftCoefficient(i, (1 - none) / system.liftSlope(), 0, 0) - rest;
            ours = ours.or(rest, slope, 2 * system.stripY(i) / wing.span());
        }
        STALL.relative(name + ": C_L over c_l", reference.lift(), ours.lift(), LIFT, "")
                .value(name + ": place", reference.place(), ours.place(), PLACE, "semispan");
    }
}
