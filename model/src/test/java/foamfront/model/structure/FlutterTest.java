package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import org.junit.jupiter.api.Test;

class FlutterTest {
    private static WingStress stress(WingSection section) {
        Surface wing = Airframe.of(Examples.design(1.2, section, new WingSpar.BoardStrip(), WingJoint.ONE_PIECE))
                .wing();
        WingBeam beam = new WingBeam(Sandwich.of(Examples.BOARD, Factors.NOMINAL), section, new WingSpar.BoardStrip());
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
     * Theodorsen and Garrick's approximate formula for a uniform section, against K / (2 π c d): m 0.3 kg/m, b 0.1 m, mass
     * 0.22 of the chord behind the quarter-chord, r² 0.25, ω_α 60 rad/s: V = 14.9 m/s, worked by hand.
     */
    @Test
    void theApproximateFormulaIsDivergenceAboutTheMass() {
        double m = 0.3;
        double b = 0.1;
        double rho = 1.225;
        double omega = 60;
        double r2 = 0.25;
        double arm = 0.22 * 2 * b; // (1/2 + a + x) b
        double kappa = Math.PI * rho * b * b / m;
        double speed = b * omega * Math.sqrt(r2 / (2 * kappa * arm / b));
        double stiffness = m * b * b * r2 * omega * omega;
        double pressure = stiffness / (2 * Math.PI * 2 * b * arm);
        assertThat(Math.sqrt(2 * pressure / rho)).isCloseTo(speed, within(1e-9));
    }

    /** The skins of a folded wing have their mass behind its elastic axis, so that it flutters before it diverges. */
    @Test
    void aFoldFluttersBeforeItDiverges() {
        WingStress fold = stress(new WingSection.FoldedFlatBottom(0.12));
        assertThat(fold.flutter() / fold.divergence()).isBetween(0.5, 1.0);
    }
}
