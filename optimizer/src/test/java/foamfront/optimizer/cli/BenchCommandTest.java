package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchCommandTest {
    /** Nine digits are printed. */
    private static final double PRINTED = 1e-7;

    private static final String[] EVERYDAY = {
        "bench",
        "--motor",
        "2212-1000",
        "--propeller",
        "10x4.7 slow flyer",
        "--battery",
        "3S 2200",
        "--controller",
        "20 A"
    };

    /** Thrust, powers, rotor speed, current, efficiencies; two and three lines in one field. */
    private static final int FIELDS = 5;

    private static final int LINES = 8;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aPowerPlantGivesASentenceAPlotAndATable() {
        Run run = Run.of(EVERYDAY);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out().lines().findFirst())
                .hasValueSatisfying(
                        line -> assertThat(line).contains("at rest", "is at its best at", "of the speed they bear."));
        assertThat(run.out())
                .contains(
                        "thrust [N]",
                        "power [W]: e electrical, s shaft",
                        "speed [rpm]",
                        "battery current [A]",
                        "airspeed [m/s] of every field",
                        "electrical power [W]",
                        "makers' sheets come first",
                        "Clamp the stand",
                        "swollen, dented or pierced");
    }

    @Test
    void theJsonAgreesWithTheCsvAndPowersAreConsistent() throws IOException {
        JsonNode json = new ObjectMapper().readTree(Run.of(with("--json")).out());
        List<String> rows = Run.of(with("--csv")).out().lines().toList();
        assertThat(json.at("/points")).hasSize(rows.size() - 1);
        double previous = Double.MAX_VALUE;
        for (int i = 0; i < rows.size() - 1; i++) {
            JsonNode point = json.at("/points/" + i);
            double thrust = point.at("/thrust").asDouble();
            assertThat(Double.parseDouble(rows.get(i + 1).split(",", -1)[1])).isEqualTo(thrust);
            assertThat(thrust).isLessThan(previous);
            previous = thrust;
            assertThat(point.at("/shaft_power").asDouble())
                    .isLessThan(point.at("/electrical_power").asDouble());
            assertThat(point.at("/efficiency").asDouble())
                    .isCloseTo(
                            point.at("/motor_efficiency").asDouble()
                                    * point.at("/rotor_efficiency").asDouble(),
                            within(1e-8));
        }
    }

    /** 2212-1000: 131 mohm counted 1.8 times, and the 20 A controller's 8 mohm; what is left is the iron's. */
    @Test
    void whatTheBatteryGivesIsShaftCopperIronAndController() throws IOException {
        JsonNode rest =
                new ObjectMapper().readTree(Run.of(with("--json")).out()).at("/points/0");
        double current = rest.at("/motor_current").asDouble();
        double copper = rest.at("/copper_loss").asDouble();
        double iron = rest.at("/iron_loss").asDouble();
        assertThat(copper).isCloseTo(1.8 * 0.131 * current * current, within(PRINTED * copper));
        assertThat(iron).isPositive().isLessThan(copper);
        double electrical = rest.at("/electrical_power").asDouble();
        assertThat(rest.at("/shaft_power").asDouble() + copper + iron + 0.008 * current * current)
                .isCloseTo(electrical, within(PRINTED * electrical));
    }

    /** A small pack, cold and nearly empty, under two motors: all that is too much is named, the cut-off among it. */
    @Test
    void everythingAskedTooMuchIsNamed() {
        Run run = Run.of(
                "bench",
                "--motor",
                "2212-1000",
                "--motors",
                "2",
                "--propeller",
                "10x4.7 slow flyer",
                "--battery",
                "3S 1000",
                "--charge",
                "10 %",
                "--temperature",
                "-10 degC");
        assertThat(run.out().lines().findFirst())
                .hasValueSatisfying(line -> assertThat(line)
                        .contains(
                                "2 x 2212-1000",
                                "is asked too much: the battery works at",
                                "; the cells fall to",
                                "cuts off"));
        assertThat(run.out()).contains("each motor's winding takes", "of what it bears for 30 s");
    }

    @Test
    void byThrottleCurrentRisesToFullThrottles() throws IOException {
        JsonNode part = new ObjectMapper()
                .readTree(Run.of(with("--json", "--by", "throttle", "--speed", "8 m/s"))
                        .out());
        double previous = 0;
        for (JsonNode point : part.at("/points")) {
            assertThat(point.at("/battery_current").asDouble()).isGreaterThan(previous);
            previous = point.at("/battery_current").asDouble();
        }
        assertThat(part.at("/points/8/throttle").asDouble()).isEqualTo(1);
    }

    @Test
    void aPlantByNumbersRunsAndSaysWhatItDoesNotKnow() {
        Run run = Run.of(
                "bench",
                "--kv",
                "1000 rpm/V",
                "--resistance",
                "130 mohm",
                "--no-load-current",
                "0.7 A",
                "--diameter",
                "10in",
                "--pitch",
                "4.7in",
                "--family",
                "slow flyer",
                "--cells",
                "3",
                "--capacity",
                "2200 mAh");
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("a motor by numbers with a 10in x 4.7in slow flyer on 3S 2200 mAh", "--motor-mass");
    }

    @Test
    void theSvgIsWellFormedAndTheSameInADecimalCommaLocale() throws Exception {
        Path plot = folder.resolve("plot.svg");
        Run.of(with("--svg", plot.toString()));
        String here = Files.readString(plot);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Run.of(with("--svg", plot.toString()));
        } finally {
            Locale.setDefault(before);
        }
        assertThat(Files.readString(plot)).isEqualTo(here);
        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(plot.toFile())
                        .getElementsByTagName("polyline")
                        .getLength())
                .isEqualTo(FIELDS + LINES);
    }

    /** 10x4.7 slow flyer, C_T at rest 0.1299 and C_P 0.0531 at 6528 rpm (UIUC Propeller Database, volume 1). */
    @Test
    void coefficientsAreThoseMeasured() throws IOException {
        Run run = Run.of("bench", "--propeller", "10x4.7", "--rpm", "6528", "--json");
        JsonNode still = new ObjectMapper().readTree(run.out()).at("/points/0");
        // Two RMS residuals of the worst accepted fit.
        assertThat(still.at("/thrust_coefficient").asDouble()).isCloseTo(0.1299, within(0.055 * 0.1299));
        assertThat(still.at("/power_coefficient").asDouble()).isCloseTo(0.0531, within(0.055 * 0.0531));
        assertThat(Run.of("bench", "--propeller", "10x4.7 slow flyer", "--rpm", "6500")
                        .out())
                .contains("advance ratio J", "is at its best at an advance ratio of 0.4");
    }

    @Test
    void aSizeOfSeveralFamiliesIsTheFirstsAndSaysSo() {
        Run run = Run.of("bench", "--propeller", "10x4.7", "--rpm", "6500");
        assertThat(run.out()).startsWith("10x4.7 slow flyer at 6500 rpm");
        assertThat(run.err()).contains("taken as 10x4.7 slow flyer", "also made as 10x4.7 soft slow flyer");
    }

    @Test
    void readingsGiveARowThatTheCatalogueReadsBack() throws IOException {
        Path readings = readings("");
        Run run = Run.of("bench", "--fit", readings.toString(), "--motor", "2212-1000", "--name", "mine", "--csv");
        assertThat(run.err()).isEmpty();
        Files.writeString(folder.resolve("motors.csv"), run.out());
        assertThat(Run.of("parts", "--catalogue", folder.toString(), "--type", "motors")
                        .out())
                .contains("mine", "own bench");
        assertThat(Run.of("bench", "--fit", readings.toString()).out()).contains("give or take", "rpm/V", "1.8");
    }

    /** A motor weighed and rated keeps its rating when its constants are measured again. */
    @Test
    void aNamedMotorsRatingStays() throws IOException {
        Path readings = readings("");
        Run first = Run.of("bench", "--fit", readings.toString(), "--motor", "2212-1000", "--name", "rated", "--csv");
        Files.writeString(folder.resolve("motors.csv"), rated(first.out(), "177"));
        Run again = Run.of(
                "bench",
                "--fit",
                readings.toString(),
                "--motor",
                "rated",
                "--catalogue",
                folder.toString(),
                "--name",
                "again",
                "--csv");
        assertThat(again.err()).isEmpty();
        assertThat(cell(first.out())).isEqualTo("0");
        assertThat(cell(again.out())).isEqualTo("177");
    }

    private static int powerColumn(String csv) {
        return List.of(csv.lines().findFirst().orElseThrow().split(",", -1)).indexOf("continuous power [W]");
    }

    private static String cell(String csv) {
        return csv.lines().toList().get(1).split(",", -1)[powerColumn(csv)];
    }

    private static String rated(String csv, String watts) {
        List<String> lines = csv.lines().toList();
        String[] cells = lines.get(1).split(",", -1);
        cells[powerColumn(csv)] = watts;
        return lines.get(0) + "\n" + String.join(",", cells) + "\n";
    }

    @Test
    void aRowWithoutAFrameIsWholeAndSaysWhatIsGuessed() throws IOException {
        Path readings = readings("");
        assertThat(Run.of("bench", "--fit", readings.toString()).out()).contains("weigh and measure", "--motor");
        Run csv = Run.of("bench", "--fit", readings.toString(), "--csv");
        assertThat(csv.err()).contains("weigh and measure");
        assertThat(csv.out()).doesNotContain("weigh", ",,");
        Run weighed = Run.of("bench", "--fit", readings.toString(), "--csv", "--motor-mass", "61 g");
        assertThat(weighed.err()).doesNotContain("weigh");
        assertThat(weighed.out()).contains("my motor,61,");
        Files.writeString(folder.resolve("motors.csv"), csv.out());
        assertThat(Run.of("parts", "--catalogue", folder.toString(), "--type", "motors")
                        .out())
                .contains("my motor", "own bench");
    }

    /** Currents read ten times too large make a motor that weighs four times as much. */
    @Test
    void readingsThatFitNoSuchMotorAreDoubted() throws IOException {
        Path readings = readings("");
        Path tenfold = Files.writeString(folder.resolve("tenfold.csv"), """
                voltage [V],current [A],speed [rpm],load
                7.4,6.3,7270,none
                11.1,7.7,10950,none
                7.1,41,6290,8x4
                10.9,79,9310,8x4
                10.6,122,8170,10x4.7
                """);
        assertThat(Run.of("bench", "--fit", tenfold.toString(), "--motor", "2212-1000")
                        .out())
                .contains("weigh about", "check the readings' units");
        assertThat(Run.of("bench", "--fit", readings.toString(), "--motor", "2212-1000")
                        .out())
                .doesNotContain("check the readings' units");
    }

    /** The row carries its uncertainty as its remark; a named controller's resistance is taken off. */
    @Test
    void theRowSaysWhatItIsGoodTo() throws IOException {
        Path readings = readings("");
        Run run = Run.of("bench", "--fit", readings.toString(), "--motor", "2212-1000");
        assertThat(run.out()).contains(",source\n", "5 readings; give or take 0.77 rpm/V; 0.54 mohm", "still in it");
        Run known = Run.of("bench", "--fit", readings.toString(), "--motor", "2212-1000", "--controller", "20 A");
        // 8 mohm off 199.6, over 1.8.
        assertThat(known.out()).contains(",106.4,").doesNotContain("still in it");
    }

    /** Two packs sag by half and carry twice as much. */
    @Test
    void packsInParallelAreNamedByTheirCount() throws IOException {
        JsonNode one = new ObjectMapper().readTree(Run.of(with("--json")).out());
        JsonNode two = new ObjectMapper()
                .readTree(Run.of(
                                "bench",
                                "--motor",
                                "2212-1000",
                                "--propeller",
                                "10x4.7 slow flyer",
                                "--battery",
                                "2 x 3S 2200",
                                "--controller",
                                "20 A",
                                "--json")
                        .out());
        assertThat(two.at("/battery").asText()).isEqualTo("2 x 3S 2200");
        assertThat(two.at("/points/0/thrust").asDouble())
                .isGreaterThan(one.at("/points/0/thrust").asDouble());
    }

    /** The first example of the help overloads nothing. */
    @Test
    void theFirstExampleIsWithinItsRatings() {
        Run run = Run.of("bench", "--motor", "2212-920", "--propeller", "10x5 thin electric", "--battery", "3S 2200");
        assertThat(Run.of("bench", "--help").out())
                .containsIgnoringWhitespaces(
                        "--motor 2212-920 --propeller '10x5 thin electric' \\ --battery '3S 2200'");
        assertThat(run.out()).doesNotContain("asked too much");
    }

    private Path readings(String extra) throws IOException {
        // 1000 rpm/V, 0.2 ohm, 0.7 A by hand, rounded as meters round.
        return Files.writeString(
                folder.resolve("readings.csv"),
                "voltage [V],current [A],speed [rpm],load\n7.4,0.63,7270,none\n11.1,0.77,10950,none\n"
                        + "7.1,4.1,6290,8x4\n10.9,7.9,9310,8x4\n10.6,12.2,8170,10x4.7\n"
                        + extra);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "--motor 2212-1000 --battery 3S~2200 --diameter 10in --pitch -4.7in --family sport | --pitch",
                "--motor 2212-1000 --propeller 10x4.7 --cells 0 --capacity 2200~mAh | --cells is 0",
                "--motor 2212-1000 --propeller 10x4.7 --cells 3 --capacity 2200~mm | --capacity",
                "--motor 2212-1000 --propeller 10x55 --battery 3S~2200 | no propeller '10x55'",
                "--motor 2212-1001 --propeller 10x4.7 --battery 3S~2200 | Did you mean",
                "--motor 2212-1000 --kv 900~rpm/V --propeller 10x4.7 --battery 3S~2200 | same part",
                "--motor 2212-1000 --battery 3S~2200 | no propeller is given",
                "--motor 2212-1000 --propeller 10x4.7 | no battery is given",
                "--propeller 10x4.7 --battery 3S~2200 | no motor is given",
                "--motor 2212-1000 --battery 3S~2200 --diameter 10in | --pitch is missing beside --diameter",
                "--kv 1000~rpm/V --propeller 10x4.7 --battery 3S~2200 | --resistance is missing beside --kv",
                "--motor 2212-1000 --propeller 10x4.7 --cells 3 | --capacity is missing beside --cells",
                "--propeller 10x4.7 --rpm 20 | --rpm is 20",
                "--motor 2212-1000 --diameter 30in --pitch 10in --family sport --battery 3S~2200 | outside the measured",
                "--motor 2212-1000 --propeller 10x4.7 --battery 3S~2200 --csv --json | Keep one of them",
                "--motor 2212-1000 --propeller 10x4.7 --battery 3S~2200 --speed 10~m/s | --by throttle",
                "--motor 2212-1000 --propeller 10x4.7 --rpm fast | is not a number",
                "--motors two | is not a whole number",
                "--motor 2212-1000 --propeller 10x4.7 --battery 3S~2200 --capacity 10~mAh | same part",
                "--motor 2212-1000 --resistance 50~mohm --propeller 10x4.7 --battery 3S~2200 | same part",
                "--motor 2212-1000 --propeller 10x4.7 --pitch 5in --battery 3S~2200 | same part",
                "--fan 64~mm~3150 --blades 3 --battery 3S~2200 | same part",
                "--propeller 10x4.7 --rpm 6500 --svg plot.svg | --svg has no say beside --rpm",
                "--fit no-such.csv --propeller 10x4.7 | --propeller has no say beside --fit",
                "--motor 2212-1000 --propeller 10x4.7 --battery 3S~2200 --name mine | Add --fit",
                "--motor 2212-1000 --propeller 10x4.7 --battery 3S~2200 --temperature -300~degC | Use -40 degC to 50 degC",
                "--motor 2212-1000 --propeller 10x4.7 --battery 3S~2200 --charge 0 | Use 1 % to 100 %",
                "--motor 2212-1000 --propeller 10x4.7 --battery 3S~2200 --by throttle --speed -5~m/s | Use 0 to 100 m/s",
                "--fit target | this is a folder",
                "--fit no-such.csv | cannot be read"
            })
    void badInputIsExitTwoWithAdvice(String options, String expected) {
        List<String> args = new ArrayList<>(List.of("bench"));
        Arrays.stream(options.strip().split(" ", -1))
                .map(word -> word.replace('~', ' '))
                .forEach(args::add);
        Run run = Run.of(args.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(run.err()).contains(expected).doesNotContain("Exception", "\tat ");
        assertThat(run.out()).isEmpty();
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "voltage [V],current [A],speed [rpm],load;7.4,0.6,7000,none;7,4,6000,8x4;7,5,5900,9x5 | leave nothing",
                "voltage [V],current [A],speed [rev/s],load;7.4,0.6,7270,none | outside",
                "voltage [V],current [A],speed [rpm],load;7.4,630,7270,none | amperes",
                "voltage [V],current [V],speed [rpm],load;7.4,0.6,7270,none | current",
                "voltage [V],current [A],load;7.4,0.6,none | the column is missing",
                "# nothing | there is nothing in it",
                "voltage [V]\tcurrent [A]\tspeed [rpm]\tload | not parted by commas",
                "voltage [V],current [A],speed [rpm],load;7.4,0.6,7270,none;7,4,6000,8x4;7,4,6000,8x4;7,4,6000,8x4;7,4,6000,8x4 |"
                        + " from 2 different readings",
                "voltage [V],current [A],speed [rpm],load;7,4,6000,8x4;8,5,6500,8x4;9,6,7000,8x4;9,6,7001,9x5;8,5,6501,9x5 |"
                        + " no reading is without",
                "voltage [V],current [A],speed [rpm],load;7.4,0.6,7270,nome;7,4,6000,8x4 | 'nome' is neither none nor a size"
            })
    void badReadingsAreFaultsWithLines(String rows, String expected) throws IOException {
        Path file = Files.writeString(folder.resolve("bad.csv"), rows.strip().replace(';', '\n'));
        Run run = Run.of("bench", "--fit", file.toString());
        assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(run.err()).contains("bad.csv", expected.strip()).doesNotContain("Exception", "\tat ");
    }

    private static String[] with(String... more) {
        List<String> all = new ArrayList<>(List.of(EVERYDAY));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }
}
