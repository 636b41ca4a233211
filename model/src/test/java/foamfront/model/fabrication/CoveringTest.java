package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Covering;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What covering adds in mass and minutes, worked from the skins' area and the tape's width; stiffness is the board's. */
class CoveringTest {
    private static final Workshop WORKSHOP = TestAeroplanes.WORKSHOP;
    private static final double ROUNDING = 1e-9;

    /** Tape of 48 mm; 41.7 g/m² at 2.0 g/m, as 45 micrometres of film and glue weigh (derived). */
    private static final double WIDTH = 0.048;

    private static Design with(Covering covering) {
        return Records.with(Samples.trainer(), "covering", covering);
    }

    private static PartsList parts(Covering covering) {
        return FlatPatterns.of(Airframe.of(with(covering)));
    }

    private static double mass(Covering covering) {
        double sum = 0;
        for (CutPart part : parts(covering).cut()) {
            sum += PartsList.mass(part, Samples.board(), WORKSHOP);
        }
        return sum;
    }

    private static double minutes(Covering covering) {
        return BuildTime.of(Airframe.of(with(covering)), parts(covering), WORKSHOP, Factors.NOMINAL)
                .total();
    }

    /** Wing, tail, fin and shell, not what lies inside. */
    private static double skins() {
        double sum = 0;
        for (CutPart part : parts(Covering.ONE_FACE).cut()) {
            sum += part.covering() > 0 ? part.area() : 0;
        }
        return sum;
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"ONE_FACE,1", "BOTH_FACES,2"})
    void facesAddFilmByTheirArea(Covering covering, int faces) {
        double tape = faces * skins() / WIDTH;
        assertThat(skins()).isBetween(0.3, parts(Covering.BARE).area());
        assertThat(mass(covering) - mass(Covering.BARE)).isCloseTo(tape * 0.002, within(ROUNDING));
        assertThat(minutes(covering) - minutes(Covering.BARE)).isCloseTo(tape * WORKSHOP.tapeRate(), within(1e-6));
    }

    @Test
    void tapedEdgesAddTapeAlongThem() {
        double edges = 0;
        for (CutPart part : parts(Covering.TAPED_EDGES).cut()) {
            edges += part.coveringLength();
        }
        assertThat(edges).isBetween(0.5 * Samples.trainer().wing().planform().span(), 8.0);
        assertThat(mass(Covering.TAPED_EDGES) - mass(Covering.BARE)).isCloseTo(edges * 0.002, within(ROUNDING));
        assertThat(minutes(Covering.TAPED_EDGES)).isLessThan(minutes(Covering.ONE_FACE));
    }
}
