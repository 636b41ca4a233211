package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.Covering;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SandwichTest {
    /** A film of 56 kN/m on one of two papers of 450 kN/m each stiffens the faces by 6 %, over both by 12 %. */
    @Test
    void laminatedFacesStiffenTheBoardByFilmOverPaper() {
        Sandwich bare = new Sandwich(0.15e-3, 4.5e-3, 3e9, 10e6, 3e6);

        assertThat(bare.covered(Covering.TAPED_EDGES)).isSameAs(bare);
        assertThat(bare.covered(Covering.ONE_FACE).faceModulus() / bare.faceModulus())
                .isCloseTo(1 + 56.0 / 900, within(1e-12));
        assertThat(bare.covered(Covering.BOTH_FACES).faceModulus() / bare.faceModulus())
                .isCloseTo(1 + 112.0 / 900, within(1e-12));
    }

    private static final double FACE = 0.15e-3;
    private static final double CORE = 4.5e-3;

    /** As the checks have it, m/s². */
    private static final double GRAVITY = 9.81;

    private static Sandwich board(double faceModulus, double coreModulus, double coreShear) {
        return new Sandwich(FACE, CORE, faceModulus, coreModulus, coreShear);
    }

    /** D = E_f t_f d² / 2 + E_f t_f³ / 6 + E_c c³ / 12, derived; tolerance half the last printed digit. */
    @ParameterizedTest(name = "E_f {0} GPa")
    @CsvSource({"2, 3.320", "3, 4.943", "5, 8.187"})
    void bendingStiffnessOfAStrip(double faceModulus, double stiffness) {
        assertThat(board(faceModulus * 1e9, 10e6, 3e6).bendingStiffness()).isCloseTo(stiffness, within(0.5e-3));
    }

    @Test
    void shearStiffnessOfAStrip() {
        assertThat(board(3e9, 10e6, 3e6).shearStiffness()).isCloseTo(14_415, within(0.5));
    }

    /** Three-point bending by the closed form, derived: 50 mm wide, 300 mm between supports, 100 g in the middle. */
    @Test
    void aStripOnTwoSupportsSagsAsMeasured() {
        Sandwich board = board(3e9, 10e6, 3e6);
        double force = 0.1 * GRAVITY;
        double span = 0.3;
        double width = 0.05;
        double bending = force * span * span * span / (48 * board.bendingStiffness() * width);
        double shear = force * span / (4 * board.shearStiffness() * width);
        assertThat(bending).isCloseTo(2.233e-3, within(0.5e-6));
        assertThat(shear).isCloseTo(0.102e-3, within(0.5e-6));
        assertThat(bending + shear).isCloseTo(2.335e-3, within(1e-6));
        assertThat(board.faceStress(force * span / 4 / width)).isCloseTo(2.11e6, within(0.005e6));
    }

    /** k (E_f E_c G_c)^(1/3), k = 0.5: N. J. Hoff and S. E. Mautner, J. Aeronautical Sciences 12, 1945 (from memory). */
    @ParameterizedTest(name = "core {1}/{2} MPa under {0} GPa")
    @CsvSource({
        "3, 5, 2, 15.5, 0.05",
        "3, 8, 3, 20.8, 0.05",
        "3, 10, 4, 24.7, 0.05",
        "3, 15, 6, 32.3, 0.05",
        "70, 60, 25, 236, 0.5"
    })
    void facesWrinkle(double face, double core, double shear, double stress, double printed) {
        assertThat(board(face * 1e9, core * 1e6, shear * 1e6).wrinklingStress() / 1e6)
                .isCloseTo(stress, within(printed));
    }

    /**
     * A published crude test, derived from it: a board 10 in wide across two chairs, 0.46 m apart; bottles of 0.5 kg
     * taken as one force.
     */
    @ParameterizedTest(name = "{0} bottles")
    @CsvSource({"2, 6.4", "3, 9.6"})
    void aCrudeTestBracketsThePaper(int bottles, double stress) {
        double moment = bottles * 0.5 * GRAVITY * 0.46 / 4;
        double found = board(3e9, 8e6, 3e6).faceStress(moment / 0.254) / 1e6;
        assertThat(found).isCloseTo(stress, within(0.05));
    }
}
