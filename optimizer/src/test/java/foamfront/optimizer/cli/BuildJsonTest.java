package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An appraisal's bench half for programs: SI, snake case, and sums that agree with each other. */
class BuildJsonTest {
    private static final String DESIGN = """
            design: dyke runner
            wing: {height: high, span: 1.2 m, root chord: 200 mm, dihedral: 3 deg, incidence: 2 deg, spar: tube 6/4}
            tail: {kind: conventional, span: 420 mm, chord: 130 mm}
            body: {kind: square tube, length: 860 mm, width: 70 mm, height: 70 mm}
            power: {kind: nose tractor, motor: 2208-900, propeller: 8x4 thin electric, battery: 3S 1300, controller: 20 A}
            controls: {ailerons: yes}
            payload: [{name: camera, mass: 30 g, size: 30 mm x 30 mm x 25 mm, place: nose}]
            """;
    /** Figures are written with nine digits. */
    private static final double ROUNDING = 1e-6;

    @TempDir
    private Path folder = Path.of("");

    private JsonNode json = new ObjectMapper().createObjectNode();

    @BeforeEach
    void appraise() throws IOException {
        Path file = Files.writeString(folder.resolve("design.yaml"), DESIGN);
        json = new ObjectMapper()
                .readTree(Run.of("appraise", file.toString(), "--json").out());
    }

    private static double sum(JsonNode list, String... factors) {
        double sum = 0;
        for (JsonNode item : list) {
            double product = 1;
            for (String factor : factors) {
                product *= item.at("/" + factor).asDouble();
            }
            sum += product;
        }
        return sum;
    }

    @Test
    void theTotalLiesAmidItsBand() {
        double total = json.at("/mass/total").asDouble();
        double low = json.at("/mass/total_10_90/0").asDouble();
        double high = json.at("/mass/total_10_90/1").asDouble();
        assertThat(low).isLessThan(total);
        assertThat(0.5 * (low + high)).isCloseTo(total, within(ROUNDING));
        assertThat(sum(json.at("/mass/items"), "mass")).isCloseTo(total, within(ROUNDING));
    }

    /** A tensor of masses: symmetric, positive, each moment at most the sum of the others (derived). */
    @Test
    void theTensorIsOneOfMasses() {
        double[][] i = new double[3][3];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                i[row][column] = json.at("/mass/inertia/" + row + "/" + column).asDouble(Double.NaN);
            }
        }
        assertThat(i[0][1]).isCloseTo(i[1][0], within(0.0));
        assertThat(i[0][2]).isCloseTo(i[2][0], within(0.0)).isNotZero();
        assertThat(i[1][2]).isCloseTo(i[2][1], within(0.0));
        assertThat(i[0][0]).isPositive().isLessThan(i[1][1] + i[2][2]);
        assertThat(i[2][2]).isGreaterThan(i[1][1]).isLessThan(i[0][0] + i[1][1]);
    }

    @Test
    void linesOfCostMakeTheBuildCost() {
        assertThat(sum(json.at("/bill_of_materials"), "cost"))
                .isCloseTo(json.at("/measures/build_cost/value").asDouble(), within(ROUNDING));
    }

    @Test
    void theCutListWeighsTheBoardOfTheAirframe() {
        double board = sum(json.at("/cut_list"), "count", "area");
        // Board of 300 g/m2 with glue and tape (8 to 17 % of it, common practice).
        Set<String> cut = new HashSet<>(json.at("/cut_list").findValuesAsText("name"));
        double built = 0;
        for (JsonNode item : json.at("/mass/items")) {
            built += cut.contains(item.at("/name").asText()) ? item.at("/mass").asDouble() : 0;
        }
        assertThat(built / (board * 0.300)).isBetween(1.05, 1.2);
        assertThat(json.at("/stock_list/0/stock").asText()).isEqualTo("tube 6/4");
        assertThat(json.at("/stock_list/0/length").asDouble()).isBetween(0.5, 1.0);
    }

    @Test
    void throwsAreRadiansAndTravelsTheirArcs() {
        assertThat(json.at("/controls").findValuesAsText("control"))
                .containsExactlyInAnyOrder("aileron", "elevator", "rudder");
        for (JsonNode control : json.at("/controls")) {
            assertThat(control.at("/first_throw").asDouble())
                    .isBetween(0.1, 0.5)
                    .isLessThan(control.at("/full_throw").asDouble());
            assertThat(control.at("/full_travel").asDouble()).isBetween(0.005, 0.05);
            assertThat(control.at("/hinge_moment").asDouble()).isPositive();
        }
    }

    @Test
    void theMishapIsThatOfTheMeasures() {
        assertThat(json.at("/mishap/first_hit").asText()).isEqualTo("propeller");
        assertThat(json.at("/mishap/propellers_broken").asInt()).isEqualTo(1);
        assertThat(json.at("/mishap/wing_shed").isBoolean()).isTrue();
        Stream.of("cost", "time")
                .forEach(key -> assertThat(json.at("/mishap/" + key).asDouble())
                        .isEqualTo(json.at("/measures/repair_" + key + "/value").asDouble()));
    }
}
