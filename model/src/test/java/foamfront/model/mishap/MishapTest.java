package foamfront.model.mishap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Nose;
import foamfront.model.fabrication.FlatPatterns;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Balance;
import foamfront.model.mass.MassBreakdown;
import foamfront.model.parts.Board;
import java.util.List;
import org.junit.jupiter.api.Test;

class MishapTest {
    private static final double ROUNDING = 1e-9;

    private static Mishap of(Design design, double speed) {
        Airframe airframe = Airframe.of(design);
        MassBreakdown masses = MassBreakdown.of(
                airframe, FlatPatterns.of(airframe), Samples.mission().workshop(), Factors.NOMINAL);
        Balance balance = Balance.of(masses, airframe, airframe.chordX() + 0.4 * airframe.chord());
        return Mishap.of(airframe, masses, balance, speed, Samples.mission().workshop(), Factors.NOMINAL);
    }

    /** Paper walls at 0.4 of their crushing load and foam at 0.2 MPa round a box of 70 by 70 mm stop half m V². */
    @Test
    void theNoseCrushesUnderItsEnergy() {
        Design design = Samples.trainer();
        Board board = design.board();
        double around = 2 * (design.body().width() + design.body().height());
        double paper = 0.4 * board.faceStrength() * 2 * board.faceThickness();
        double foam = 0.2e6 * (board.thickness() - 2 * board.faceThickness());
        double mass = mass(design);
        assertThat(of(design, 7).depth())
                .isCloseTo(0.5 * mass * 49 / (around * (paper + foam)), within(ROUNDING))
                .isBetween(0.02, 0.12);
        assertThat(of(design, 14).depth()).isCloseTo(4 * of(design, 7).depth(), within(ROUNDING));
    }

    private static double mass(Design design) {
        Airframe airframe = Airframe.of(design);
        return MassBreakdown.of(
                        airframe, FlatPatterns.of(airframe), Samples.mission().workshop(), Factors.NOMINAL)
                .mass();
    }

    @Test
    void aTractorBreaksItsPropellerAndAPusherDoesNot() {
        assertThat(of(Samples.trainer(), 7).first()).isEqualTo(Mishap.Hit.PROPELLER);
        assertThat(of(Samples.trainer(), 7).propellers()).isEqualTo(1);
        assertThat(of(Arrangements.of("pusher"), 7).propellers()).isZero();
        assertThat(of(Arrangements.of("pusher"), 7).first()).isNotEqualTo(Mishap.Hit.PROPELLER);
        assertThat(of(Arrangements.of("twin"), 7).propellers()).isZero();
    }

    @Test
    void aBatteryReachedIsReplaced() {
        Design design = Samples.trainer();
        Mishap slow = of(design, 1);
        Mishap fast = of(design, 25);
        assertThat(slow.battery()).isFalse();
        assertThat(fast.battery()).isTrue();
        assertThat(fast.cost() - slow.cost())
                .isGreaterThan(design.power().battery().price());
    }

    @Test
    void bandsLetTheWingGoWhereGlueTearsTheSaddle() {
        Design glued = Records.with(Samples.trainer(), "wing.build.holdDown", HoldDown.GLUED);
        Design banded = Records.with(glued, "wing.build.holdDown", HoldDown.RUBBER_BANDS);
        var workshop = Samples.mission().workshop();
        double saddle = 2 * glued.wing().planform().rootChord();
        assertThat(of(glued, 7).shed()).isFalse();
        assertThat(of(banded, 7).shed()).isTrue();
        double tear = saddle * (workshop.glueRate() + workshop.tapeRate());
        assertThat(of(glued, 7).time() - of(banded, 7).time())
                .isCloseTo(tear - workshop.fittingTime() - heavier(banded, glued), within(60.0));
    }

    /** The bands' own mass deepens the damage by a trifle. */
    private static double heavier(Design a, Design b) {
        return of(a, 7).depth() - of(b, 7).depth();
    }

    @Test
    void aSpareNoseIsChangedInMinutes() {
        Design fixed = Samples.trainer();
        Design spare = Records.with(fixed, "body.nose", Nose.REPLACEABLE);
        Mishap changed = of(spare, 7);
        assertThat(changed.swapped()).isTrue();
        assertThat(changed.time()).isLessThan(of(fixed, 7).time());
        assertThat(of(spare, 25).swapped()).as("crushed beyond the joint").isFalse();
    }

    @Test
    void loadsWantRoomAheadOfThem() {
        Design design = Samples.trainer();
        Mishap mishap = of(design, 7);
        assertThat(mishap.loads()).isEqualTo(mishap.room() < 0);
        assertThat(of(Records.with(design, "loads", List.of()), 7).room()).isNaN();
    }
}
