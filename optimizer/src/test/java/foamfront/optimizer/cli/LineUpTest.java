package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The club's own designs, two of which share one wing. */
class LineUpTest {
    private static final Path CLUB = Path.of("..", "studies", "club");
    private static final List<String> NAMES = List.of(
            "stubble-pusher", "post-courier", "ridge-logger", "seed-carrier", "reed-wing", "fete-double", "hall-lamp");

    private static JsonNode json(String... names) throws IOException {
        String[] args = Stream.concat(
                        Stream.of("line-up", "--json"),
                        Stream.of(names)
                                .map(name -> CLUB.resolve(name + ".yaml").toString()))
                .toArray(String[]::new);
        Run run = Run.of(args);
        assertThat(run.err()).isEmpty();
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void saysWhatEachIsForAndWhichRolesAreOpen() {
        Run run = Run.of(Stream.concat(
                        Stream.of("line-up"),
                        NAMES.stream().map(name -> CLUB.resolve(name + ".yaml").toString()))
                .toArray(String[]::new));
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("sows wildflower seed along the dykes", "flown", "proven", "idea")
                .contains("post courier flies with the wing, board, covering of stubble pusher.", "its own")
                .contains("Roles that none of these covers: gravel pit amphibian, island post")
                .contains("One shopping list", "European open category");
    }

    /** Whoever names every file of the folder does not buy what one of them is only compared with. */
    @Test
    void whatAnotherIsComparedWithIsNotBought() throws IOException {
        Run run = Run.of(
                "line-up",
                "--json",
                CLUB.resolve("post-courier-own-wing.yaml").toString(),
                CLUB.resolve("post-courier.yaml").toString());
        assertThat(run.err()).contains("post courier with a wing of its own is left out");
        JsonNode left = new ObjectMapper().readTree(run.out());
        assertThat(left.at("/aeroplanes")).hasSize(1);
        assertThat(left.at("/shopping/cost").asDouble())
                .isEqualTo(json("post-courier").at("/shopping/cost").asDouble());
    }

    @Test
    void eachIsAppraisedByTheStudyThatItsFileNames() {
        for (String name : NAMES) {
            Run run = Run.of("appraise", CLUB.resolve(name + ".yaml").toString());
            assertThat(run.out()).as(name).contains("It can be built and flown: every limit holds");
        }
        assertThat(Run.of("appraise", CLUB.resolve("hall-lamp.yaml").toString()).out())
                .startsWith("hall lamp (monoplane, conventional tail, nose tractor), judged by: hall moth\n");
    }

    @Test
    void oneListIsTheSumOfAllButForSharedSheetsAndParts() throws IOException {
        JsonNode both = json("stubble-pusher", "post-courier");
        JsonNode pusher = json("stubble-pusher");
        JsonNode own = json("post-courier-own-wing");
        // alone it is the design's own bill
        assertThat(pusher.at("/shopping/cost").asDouble())
                .isEqualTo(pusher.at("/shopping/cost_apart").asDouble(), within(1e-6));
        assertThat(own.at("/aeroplanes/0/measures/build_cost/value").asDouble())
                .isEqualTo(own.at("/shopping/cost").asDouble(), within(1e-6));
        assertThat(both.at("/shopping/cost").asDouble())
                .isLessThan(both.at("/shopping/cost_apart").asDouble());
        double besides = both.at("/aeroplanes/1/sharing/cost_besides").asDouble();
        assertThat(besides)
                .isLessThan(both.at("/aeroplanes/1/measures/build_cost/value").asDouble());
        // sheets are whole: together they never cost more than one after the other
        assertThat(both.at("/shopping/cost").asDouble())
                .isLessThanOrEqualTo(pusher.at("/shopping/cost").asDouble() + besides + 1e-6);
        assertThat(both.at("/aeroplanes/1/sharing/no_longer_the_same")).isEmpty();
    }

    @Test
    void aPartThatHasChangedSinceIsNoLongerShared(@TempDir Path folder) throws IOException {
        copied(folder);
        Path courier = folder.resolve("post-courier.yaml");
        Files.writeString(courier, Files.readString(courier).replaceFirst("dihedral: [0-9.]+ deg", "dihedral: 3 deg"));
        Run run = Run.of("line-up", courier.toString());
        assertThat(run.out())
                .contains("no longer the same in both files, and are counted for each: wing")
                .contains("is not in this line-up");
    }

    /** A wing whose flaps are cut otherwise is another wing, though its outline is the same. */
    @Test
    void otherControlsMakeAnotherWing(@TempDir Path folder) throws IOException {
        copied(folder);
        Path courier = folder.resolve("post-courier.yaml");
        Files.writeString(courier, Files.readString(courier).replaceFirst("ailerons: no", "ailerons: yes"));
        assertThat(Run.of("line-up", courier.toString()).out())
                .contains("no longer the same in both files, and are counted for each: wing");
    }

    /** Whoever takes power plant and pack from another aeroplane buys neither, nor the boards of its nacelles. */
    @Test
    void aSharedPowerPlantIsBoughtOnceWithAllItsPacks(@TempDir Path folder) throws IOException {
        copied(folder);
        Path one = folder.resolve("stubble-pusher.yaml");
        String packs = Files.readString(one).replaceFirst("battery: (\\S.*)", "battery: 2 x 3S 1500");
        Files.writeString(one, packs);
        Path other = folder.resolve("twin.yaml");
        Files.writeString(
                other,
                packs.replaceFirst("(?s)\nclub:.*", "")
                        + "\nclub: {keep from: {design: stubble-pusher.yaml, parts: [power]}}\n");
        JsonNode list = new ObjectMapper()
                .readTree(Run.of("line-up", "--json", one.toString(), other.toString())
                        .out())
                .at("/shopping/lines");
        double found = 0;
        for (JsonNode line : list) {
            found += line.at("/item").asText().equals("3S 1500")
                    ? line.at("/quantity").asDouble()
                    : 0;
        }
        assertThat(found).isEqualTo(2);
    }

    private static void copied(Path folder) throws IOException {
        for (String name : List.of("stubble-pusher", "post-courier", "post-courier-own-wing")) {
            Files.writeString(
                    folder.resolve(name + ".yaml"),
                    Files.readString(CLUB.resolve(name + ".yaml")).replaceAll("(\n  |, )study: [./a-z-]*", ""));
        }
    }

    @Test
    void whatIsNoPartIsAFault(@TempDir Path folder) throws IOException {
        Path design = folder.resolve("kite.yaml");
        Files.writeString(design, """
                design: kite
                power: {motor: 2212-1000, propeller: 8x4 thin electric, battery: 3S 1500, controller: 20 A}
                club: {keep from: {design: kite.yaml, parts: [payload]}}
                """);
        Run run = Run.of("line-up", design.toString());
        assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(run.err()).contains("not all of which are parts", "Parts are board, body");
    }

    @Test
    void aStudyAmongTheDesignsIsOneFault(@TempDir Path folder) throws IOException {
        Path study = Files.writeString(folder.resolve("kites.yaml"), "study: kites\nvary: {span: 1 m to 2 m}\n");
        Run run = Run.of("line-up", study.toString());
        assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(run.err())
                .contains("kites.yaml:1", "this is a study, where a design belongs")
                .doesNotContain("vary");
    }
}
