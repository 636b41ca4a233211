package foamfront.model.aero;

import foamfront.model.airframe.Control;
import foamfront.model.airframe.Surface;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lift and moment of elevons on swept wings against a fine lattice whose rear rows are turned. */
class ElevonExternalTest {
    private static final int STRIPS = 16;
    private static final double CHORD_FRACTION = 0.25;

    /** Between two strips of the lattice, so that neither is half an elevon: their fourth edge. */
    private static final double INBOARD = Math.sin(Math.PI * 4 / (2.0 * STRIPS));

    /** Eight strips, of which one is an elevon in part, and a moment from thin-section theory, which knows no ends. */
    private static final double POWER = 0.04;

    private static final Validation ELEVONS = Validation.of(
            Subject.LIFT,
            "Elevons",
            "Lattices of 16 strips and 8 and 16 rows a half over both halves, a quarter of the chord turned outboard of 0.38 of the"
                    + " semispan, carried on to endless rows (derived: a turned plate's error halves with its rows); ours by H."
                    + " Glauert's flap, ARC R&M 1095, 1927, on the strips.");

    /** What the elevons of a lattice do per rad. */
    private record Power(double lift, double noseDown) {
        static Power of(Surface wing, int rows) {
            FullLattice lattice =
                    new FullLattice(STRIPS, rows, wing).solveDeflected((int) (CHORD_FRACTION * rows), INBOARD);
            return new Power(lattice.lift(), lattice.lift() * lattice.centreX());
        }

        /** Of errors that halve from this one to the finer. */
        Power towards(Power finer) {
            return new Power(2 * finer.lift - lift, 2 * finer.noseDown - noseDown);
        }
    }

    @ParameterizedTest(name = "aspect ratio {0}, taper {1}, sweep {2}")
    @CsvSource({"5, 0.9, 20", "6, 0.6, 25", "7, 0.5, 30"})
    void liftAndMomentOfElevons(double aspectRatio, double taper, double sweep) {
        Surface plain = TestWings.wing(aspectRatio, taper, sweep);
        LiftingSystem ours =
                TestWings.solved(TestWings.with(plain, new Control(Control.Kind.ELEVON, CHORD_FRACTION, INBOARD, 1)));
        Power lattice = Power.of(plain, 8).towards(Power.of(plain, 16));
        double lift = lattice.lift() / plain.area();
        double x = ours.neutralPoint();
        double moment = x / ours.referenceChord() * lift - lattice.noseDown() / plain.area() / ours.referenceChord();
        String wing =
                String.format(Locale.ROOT, "aspect ratio %.0f, taper %.1f, sweep %.0f", aspectRatio, taper, sweep);
        ELEVONS.relative(wing + ": lift", lift, ours.elevatorLiftSlope(), POWER, "1/rad")
                .relative(
                        wing + ": moment about the neutral point", moment, ours.elevatorMomentSlope(x), POWER, "1/rad");
    }
}
