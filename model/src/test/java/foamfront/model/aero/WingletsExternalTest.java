package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.WingTips;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Closed forms against a vortex lattice of a wing of span over root chord 6 with upright plates on its tips. */
class WingletsExternalTest {
    private static final double SPAN = 6;

    /** Closed form against lattice: its worst case over the range that is built. */
    private static final double SHARE = 0.02;

    private static final Validation PLATES = Validation.of(
            Subject.LIFT,
            "Winglets",
            "Upright plates without twist on the tips of straight wings; a vortex lattice of the tests (one row, far wake), span"
                    + " six root chords.");

    @ParameterizedTest(name = "taper {0}, height {1} tip chords")
    @CsvSource({"1, 0.35", "1, 0.7", "1, 1", "0.9, 0.7", "0.5, 0.35", "0.5, 0.7", "0.5, 1"})
    void spanEfficiencyAndBendingFollowTheClosedForms(double taper, double height) {
        TipPlateLattice plain = new TipPlateLattice(SPAN, taper, 0);
        TipPlateLattice tipped = new TipPlateLattice(SPAN, taper, height * taper);
        double share = height * taper / SPAN;
        double gain = tipped.spanEfficiency() / plain.spanEfficiency();
        double bending = tipped.bendingArm() / plain.bendingArm();

        String name = String.format(Locale.ROOT, "gain of span efficiency, taper %.1f, h/b %.3f", taper, share);
        PLATES.relative(name, gain, Winglets.frictionlessGain(share), SHARE, "");
        assertThat(1 / Winglets.inducedShare(share)).isBetween(1 + 0.6 * (gain - 1), gain);
        assertThat(Winglets.rootBending(share)).isCloseTo(bending, within(0.025));
    }

    @Test
    void theSampleTrainerGetsTwoPlatesAndLosesNothingElse() {
        Design trainer = Samples.trainer();
        Design tipped = Records.with(trainer, "wing.build.tips", WingTips.WINGLETS);
        Airframe plain = Airframe.of(trainer);
        Airframe with = Airframe.of(tipped);

        assertThat(Winglets.heightOverSpan(plain.surfaces())).isZero();
        assertThat(Winglets.heightOverSpan(with.surfaces())).isCloseTo(0.7 * 0.18 / 1.2, within(1e-12));
        assertThat(with.surfaces()).hasSize(plain.surfaces().size() + 2);
        assertThat(with.fins()).isEqualTo(plain.fins());
        assertThat(Winglets.inducedShare(0)).isEqualTo(1);
        assertThat(Winglets.rootBending(0)).isEqualTo(1);
    }
}
