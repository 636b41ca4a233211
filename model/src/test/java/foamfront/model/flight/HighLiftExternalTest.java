package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.aero.LeadingEdgeVortex;
import foamfront.model.aero.PlainFlap;
import foamfront.model.design.Design;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Wing;
import foamfront.model.units.Unit;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/** Maximum lift with flaps, of two wings, of a delta and of a wing that trims itself, beside what was measured. */
class HighLiftExternalTest {
    private static final double WEIGHT = 10; // N

    private static final Validation FLAPS = Validation.of(
            Subject.LIFT,
            "Maximum lift of flaps",
            "C. J. Wenzinger, NACA R-554, 1936: plain flaps of a fifth of the chord gave sections 0.4 to 0.9 (from memory), at higher"
                    + " Reynolds numbers than ours; on the inner 45 % of a semispan a fifth to half of that (derived: share of area).");

    private static final Validation ARRANGEMENTS = Validation.of(
            Subject.LIFT,
            "Maximum lift of arrangements",
            "Biplanes one chord apart reach 0.85 to 1 of wings far apart (handbook practice, from memory); plates of aspect ratio 1"
                    + " and 2 at Re 140 000 lifted 0.825 and 0.75 at most, to 0.07 (A. Pelletier and T. J. Mueller, J. Aircraft 37(5),"
                    + " 2000, in a second hand), their angles being free where a delta's is the trimmed one of 20 degrees.");

    @Test
    void flapsRaiseTheMaximumLiftOfSectionAndWing() {
        double worth = PlainFlap.worth(FlapSetting.LANDING.deflection(FlapKind.FLAPS));
        FLAPS.band("section, fifth of the chord, 40 degrees", 0.4, 0.9, PlainFlap.maximumLiftSlope(0.2) * worth, "")
                .band("wing, quarter of the chord, inner 45 %, 40 degrees", 0.1, 0.4, gain(), "");
    }

    private static double gain() {
        Flights flights = Flights.of(Arrangements.of("flaps"), WEIGHT);
        double deflection = FlapSetting.LANDING.deflection(FlapKind.FLAPS);
        return flights.flight.lowered(deflection).maximumLift() - flights.flight.maximumLift();
    }

    /** The lower wing under the upper's pressure, both loaded unevenly by stagger: the more the closer they stand. */
    @Test
    void aBiplaneLiftsALittleLessForItsArea() {
        double chord = Arrangements.of("biplane").wing().planform().rootChord();
        double close = apart(chord);
        double wide = apart(4 * chord);
        assertThat(apart(0.5 * chord)).isLessThan(close);
        assertThat(close).isLessThan(wide);
        ARRANGEMENTS.band("biplane one chord apart over one four chords apart", 0.85, 1, close / wide, "");
    }

    private static double apart(double gap) {
        Design biplane = Arrangements.of("biplane");
        Wing.Biplane two = (Wing.Biplane) biplane.wing();
        return most(Records.with(biplane, "wing", Records.with(two, "gap", gap)));
    }

    private static double most(Design design) {
        return Flights.of(design, WEIGHT).flight.maximumLift();
    }

    /** Within the cap and its spread, and within what measured plates lifted. */
    @Test
    void aDeltaLiftsWhatPlatesLift() {
        double delta = most(Arrangements.of("delta"));
        assertThat(delta).isLessThanOrEqualTo(LeadingEdgeVortex.MOST_LIFT);
        ARRANGEMENTS.band("delta, trimmed", 0.68, 0.895, delta, "");
    }

    /** What its elevons take from a flying wing's maximum lift, and how far they are up there. */
    @Test
    void aFlyingWingsElevonsAnswerAtMaximumLift() {
        TrimmedFlight wing = Flights.of(Arrangements.of("flying wing"), WEIGHT).flight;
        ARRANGEMENTS.band(
                "flying wing's elevons at maximum lift over their travel of 20 degrees, standing limit",
                0,
                0.8,
                Math.abs(wing.elevatorAtStall()) / Unit.DEGREE.toSi(20),
                "");
    }
}
