package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class CarTextTest {
    private static final String GLIDER =
            Path.of("..", "studies", "club", "ridge-logger.yaml").toString();

    @Test
    void thePiecesAreListedAndSaidHowTheyLie() {
        String out = Run.of("appraise", GLIDER).out();
        assertThat(out.substring(out.indexOf("In the car")))
                .contains("1200 x 700 x 400 mm (taken apart", "They go in so: body", "wing halves", "mm longer.");
        assertThat(out.lines().filter(line -> line.startsWith("wing half "))).hasSize(2);
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
