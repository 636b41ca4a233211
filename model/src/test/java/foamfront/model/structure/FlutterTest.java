package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FlutterTest {
    private static WingStress stress(WingSection section) {
        Surface wing = Airframe.of(Examples.design(1.2, section, new WingSpar.BoardStrip(), WingJoint.ONE_PIECE))
                .wing();
        WingBeam beam = new WingBeam(
                Sandwich.of(Examples.BOARD, Factors.NOMINAL), section, new WingSpar.BoardStrip(), Examples.BEAD);
        return WingStress.of(
                SpanLoad.elliptic(0.5 * wing.span(), 0.5), beam, wing, new WingStress.Forces(30, 0, 0, 0, 0));
    }

    /** A plate's mass and elastic axis both lie at mid-chord: flutter and torsional divergence are one. */
    @Test
    void aPlateFluttersWhereItDiverges() {
        WingStress plate = stress(new WingSection.FlatPlate());
        assertThat(plate.flutter()).isCloseTo(plate.divergence(), within(1e-9 * plate.divergence()));
    }

    /**
     * Theodorsen and Garrick's approximate formula for the sample's span of plate as a uniform section: it twists at (π / 2 l)
     * √(GJ / m r²), and its mass lies a quarter of the chord behind the quarter-chord. The speed is the same for any mass.
     */
    @ParameterizedTest(name = "{0} kg/m")
    @ValueSource(doubles = {0.03, 0.06, 0.3})
    void aPlateFluttersAtTheApproximateFormulasSpeed(double mass) {
        double c = 0.2;
        double b = 0.5 * c;
        double rho = 1.225;
        Sandwich board = Sandwich.of(Examples.BOARD, Factors.NOMINAL);
        WingBeam beam = new WingBeam(board, new WingSection.FlatPlate(), new WingSpar.BoardStrip(), Examples.BEAD);
        double r2 = c * c / 12;
        double omega = Math.PI / 1.2 * Math.sqrt(beam.torsionStiffness(c) / (mass * r2));
        double kappa = Math.PI * rho * b * b / mass;
        double speed = b * omega * Math.sqrt(r2 / (b * b) / (2 * kappa * 0.5));
        Surface wing = new Surface(
                Surface.Role.WING,
                new WingSection.FlatPlate(),
                List.of(new Panel(0, 0, 0, c, 0, 0, 0.6, 0, c, 0)),
                true,
                List.of());
        WingStress stress =
                WingStress.of(SpanLoad.elliptic(0.6, 0.5), beam, wing, new WingStress.Forces(30, 0, 0, 0, 0));
        // Rayleigh's quotient lies 0.13 % high in pressure, sixteen strips another 0.17 %.
        assertThat(Math.sqrt(2 * stress.flutter() / (2 * Math.PI) / rho)).isCloseTo(speed, withinPercentage(0.16));
    }

    /** The skins of a folded wing have their mass behind its elastic axis, so that it flutters before it diverges. */
    @Test
    void aFoldFluttersBeforeItDiverges() {
        WingStress fold = stress(new WingSection.FoldedFlatBottom(0.12));
        assertThat(fold.flutter() / fold.divergence()).isBetween(0.5, 1.0);
    }
}
