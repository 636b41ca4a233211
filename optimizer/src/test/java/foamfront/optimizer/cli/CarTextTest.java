package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import foamfront.model.fabrication.Piece;
import foamfront.model.fabrication.Stowage;
import foamfront.model.fabrication.Stowed;
import foamfront.model.mission.CarSpace;
import foamfront.model.units.Currency;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.study.ShowIn;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class CarTextTest {
    private static final String GLIDER =
            Path.of("..", "studies", "club", "ridge-logger.yaml").toString();

    /** Which way a piece lies, as {@link Stowed} says it. */
    private static final int STRAIGHT = -1;

    private static final int ASLANT = 2;

    @Test
    void thePiecesAreListedAndSaidHowTheyLie() {
        String out = Run.of("appraise", GLIDER).out();
        assertThat(out.substring(out.indexOf("In the car")))
                .contains("1200 x 700 x 400 mm (taken apart", "They go in so: body", "wing halves", "mm longer.");
        assertThat(out.lines().filter(line -> line.startsWith("wing half "))).hasSize(2);
    }

    @Test
    void onlyWhatIsThereTravelsApart() {
        assertThat(text(false, STRAIGHT, 0.01, 0)).contains("comes; battery and payload travel apart)");
        assertThat(text(false, STRAIGHT, 0.01, 1)).contains("comes; propeller, battery and payload travel apart)");
        assertThat(text(false, STRAIGHT, 0.01, 2)).contains("comes; propellers, battery and payload travel apart)");
        assertThat(text(true, STRAIGHT, 0.01, 1)).contains("mm (assembled)").doesNotContain("apart");
    }

    @Test
    void nothingLeftIsSaidOfWhatLiesStraight() {
        assertThat(text(true, STRAIGHT, 0.01, 1))
                .endsWith("It goes in so: aeroplane upright; every side of it could be 10 mm longer.\n");
        assertThat(text(true, STRAIGHT, 0, 1)).endsWith("It goes in so: aeroplane upright; with nothing to spare.\n");
        assertThat(text(true, ASLANT, 0, 1)).endsWith("It goes in so: aeroplane upright and aslant.\n");
        assertThat(text(true, STRAIGHT, -0.01, 1))
                .endsWith(
                        "It does not go in: every side of it would have to be 10 mm shorter, then: aeroplane upright.\n");
    }

    private static String text(boolean assembled, int layer, double margin, int propellers) {
        CarSpace car = new CarSpace(1, 0.5, 0.4, assembled);
        Stowed lies = new Stowed(new Piece("aeroplane", 1, 0.5, 0.4), 2, layer, 0, 0, 0, 1, 0.5, 0.4);
        Show show = new Show(ShowIn.METRIC, new Currency("USD"));
        return CarText.of(new Stowage(car, List.of(lies), margin), propellers, show);
    }

    @Test
    void programsGetTheSame() throws IOException {
        JsonNode car = new ObjectMapper()
                .readTree(Run.of("appraise", "--json", GLIDER).out())
                .at("/in_the_car");
        assertThat(car.at("/pieces")).hasSize(3);
        assertThat(car.at("/room_left").asDouble()).isPositive();
        for (JsonNode piece : car.at("/pieces")) {
            for (int axis = 0; axis < 3; axis++) {
                double end = piece.at("/from/" + axis).asDouble()
                        + piece.at("/takes/" + axis).asDouble();
                assertThat(end).isLessThanOrEqualTo(car.at("/space/" + axis).asDouble());
            }
        }
    }
}
