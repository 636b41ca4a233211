package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.Design;
import foamfront.model.design.Power;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.study.DesignReader;
import foamfront.optimizer.study.DesignWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A ducted fan and a twin from file to appraisal, with the catalogue that ships. */
class PowerKindsTest {
    private static final String FAN = """
            design: ridge jet
            wing: {height: shoulder, span: 1.0 m, root chord: 210 mm, taper: 0.75, dihedral: 3 deg, incidence: 2 deg, leading edge: {x: 470 mm}, spar: tube 6/4, joint: plug in}
            tail: {kind: conventional, span: 420 mm, chord: 130 mm, fin: {height: 170 mm, chord: 130 mm}}
            body: {kind: square tube, length: 1100 mm, width: 90 mm, height: 90 mm}
            power: {kind: ducted fan, fan: 64 mm 3150, battery: 3S 2200, controller: 40 A}
            controls: {ailerons: yes}
            radio: {servo: servo 17 g}
            """;

    private static final String TWIN = """
            design: dyke twin
            wing: {height: high, span: 1.3 m, root chord: 220 mm, dihedral: 3 deg, incidence: 2 deg, spar: tube 8/6, joint: plug in}
            tail: {kind: conventional, span: 480 mm, chord: 140 mm, fin: {height: 180 mm, chord: 140 mm}}
            body: {kind: square tube, length: 950 mm, width: 80 mm, height: 80 mm}
            power: {kind: twin tractor, motor: 2208-900, propeller: 8x4 thin electric, battery: 3S 2200, controller: 20 A}
            undercarriage: {kind: tricycle}
            controls: {ailerons: yes}
            """;

    private static final String GLIDER = """
            design: ridge runner
            wing: {height: high, span: 1.6 m, root chord: 190 mm, taper: 0.7, dihedral: 2 deg, incidence: 3 deg, leading edge: {x: 410 mm}, spar: tube 6/4, joint: plug in}
            tail: {kind: conventional, span: 460 mm, chord: 110 mm, fin: {height: 190 mm, chord: 130 mm}}
            body: {kind: square tube, length: 1080 mm, width: 60 mm, height: 60 mm}
            power: {kind: none, battery: 2S 1300}
            controls: {ailerons: yes}
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aFanCanBeBuiltAndFlown() throws IOException {
        Run run = appraise(FAN);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains(
                        "every limit holds",
                        "fan with motor",
                        "64 mm 3150",
                        "duct",
                        "a fifth off",
                        "leave the fan",
                        "Idle, the fan adds");
    }

    @Test
    void aTwinCanBeBuiltAndFlown() throws IOException {
        Run run = appraise(TWIN);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains(
                        "every limit holds", "rudder with one motor out", "leads in the wing", "braked propeller adds");
        // Two of each on the shopping list, one battery.
        assertThat(run.out().lines().filter(line -> line.matches("(2208-900|20 A|8x4 thin electric) +2 +2 .*")))
                .hasSize(3);
    }

    /** What the wake costs a pusher and what a hot motor asks of its pilot are said where they can be read. */
    @Test
    void whatAnInstallationCostsIsSaid() throws IOException {
        Path club = Path.of("..", "studies", "club");
        assertThat(Run.of("appraise", club.resolve("stubble-pusher.yaml").toString())
                        .out())
                .contains("gives 96.5 % of its thrust", "3 dB, louder (common practice)");
        assertThat(Run.of("appraise", club.resolve("reed-wing.yaml").toString()).out())
                .contains("slows the air at the propeller to 98.9 %");
        assertThat(Run.of("appraise", club.resolve("hall-lamp.yaml").toString()).out())
                .contains("more heat than it sheds for long (judgement)");
    }

    @Test
    void aGliderCanBeBuiltAndFlown() throws IOException {
        Run run = appraise(GLIDER);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("every limit holds", "no motor", "switch and regulator", "no second try", "still air")
                .doesNotContain("connected propeller", "full thrust", "firewall");
        assertThat(run.out().lines().filter(line -> line.startsWith("endurance")))
                .isEmpty();
        assertThat(run.out().lines().filter(line -> line.startsWith("Not of this design")))
                .singleElement()
                .asString()
                .contains("endurance", "climb rate");
        Run json = Run.of("appraise", folder.resolve("design.yaml").toString(), "--json");
        assertThat(json.code()).isEqualTo(Exit.FINE);
        assertThat(json.out()).contains("\"endurance\"").doesNotContain("NaN");
    }

    @Test
    void aGliderWithAMotorOrTooManyCellsIsAFault() throws IOException {
        Run motor = appraise(GLIDER.replace("kind: none,", "kind: none, motor: 2208-900, controller: 20 A,"));
        assertThat(motor.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(motor.err()).contains("power.motor", "power.controller", "'none' has none");
        Run cells = appraise(GLIDER.replace("2S 1300", "3S 1300"));
        assertThat(cells.err()).contains("design.yaml:5", "at most 2 cells");
        Run wheels = appraise(GLIDER + "undercarriage: {kind: tail wheel}\n");
        assertThat(wheels.err()).contains("leaves the hand");
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        for (String text : new String[] {FAN, TWIN, GLIDER}) {
            Design design = read(text);
            assertThat(read(DesignWriter.write(design)).power()).isEqualTo(design.power());
        }
        assertThat(read(TWIN).power()).isInstanceOf(Power.TwinTractor.class);
    }

    @Test
    void aFanWithAPropellerOrWithoutAFanIsAFault() throws IOException {
        Run both = appraise(FAN.replace("fan: 64 mm 3150", "fan: 64 mm 3150, propeller: 8x4 thin electric"));
        assertThat(both.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(both.err()).contains("design.yaml:5", "'ducted fan' has none");
        Run none = appraise(FAN.replace("fan: 64 mm 3150, ", ""));
        assertThat(none.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(none.err()).contains("power.fan", "the key is missing");
    }

    private Run appraise(String text) throws IOException {
        return Run.of(
                "appraise",
                Files.writeString(folder.resolve("design.yaml"), text).toString());
    }

    private static Design read(String text) {
        return DesignReader.read("design.yaml", text.getBytes(StandardCharsets.UTF_8), CatalogueReader.standard())
                .design();
    }
}
