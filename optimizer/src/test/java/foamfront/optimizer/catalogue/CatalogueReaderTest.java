package foamfront.optimizer.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Provenance;
import foamfront.model.units.Unit;
import foamfront.optimizer.faults.StudyException;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueReaderTest {
    private static final int MUTATIONS = 500;

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheTestTables() throws IOException, URISyntaxException {
        Path tables =
                Path.of(Objects.requireNonNull(CatalogueReaderTest.class.getResource("/foamfront/optimizer/catalogue"))
                        .toURI());
        try (Stream<Path> files = Files.list(tables)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(String.valueOf(file.getFileName())));
            }
        }
    }

    @Test
    void readsEveryTable() {
        Catalogue catalogue = CatalogueReader.folder(folder);

        Motor motor = Objects.requireNonNull(Catalogue.find(catalogue.motors(), "2212-920"));
        assertThat(motor.mass()).isEqualTo(0.0533);
        assertThat(motor.speedConstant()).isEqualTo(Unit.RPM_PER_VOLT.toSi(920));
        assertThat(motor.provenance()).isEqualTo(Provenance.REGRESSION);
        Propeller propeller = catalogue.propellers().get(0);
        assertThat(propeller.family()).isEqualTo(BladeFamily.THIN_ELECTRIC);
        assertThat(propeller.diameter()).isEqualTo(8 * 0.0254);
        assertThat(propeller.curves().thrustTerms()[0]).isEqualTo(0.09773);
        assertThat(propeller.curves().lowestSpeed()).isEqualTo(3037 / 60.0);
        assertThat(catalogue.workshop().cutRate()).isEqualTo(36);
        assertThat(catalogue.workshop().allowance()).isEqualTo(0.05);
        assertThat(catalogue.parts()).hasSizeGreaterThan(30);
        assertThat(catalogue.digest()).matches("[0-9a-f]{64}");
    }

    @Test
    void theStandardCatalogueTravelsWithTheProgram() {
        Catalogue standard = CatalogueReader.standard();

        assertThat(standard.parts()).hasSizeGreaterThan(100);
        assertThat(CatalogueReader.folder(Path.of("..", "studies", "catalogue")).digest())
                .isEqualTo(standard.digest());
        assertThat(CatalogueReader.beside(folder.resolve("study.yaml"))).isEqualTo(standard);
    }

    @Test
    void theDigestChangesWithTheTables() throws IOException {
        String before = CatalogueReader.folder(folder).digest();
        assertThat(CatalogueReader.folder(folder).digest()).isEqualTo(before);

        edit("motors.csv", "53.3", "53.4");

        assertThat(CatalogueReader.folder(folder).digest()).isNotEqualTo(before);
    }

    @Test
    void anyUnitOfTheRightDimensionServes() throws IOException {
        edit("wheels.csv", "diameter [mm]", "diameter [in]");

        assertThat(CatalogueReader.folder(folder).wheels().get(0).diameter()).isEqualTo(45 * 0.0254);
    }

    @Test
    void faultsSayFileLineAndColumn() throws IOException {
        edit("wheels.csv", "diameter [mm]", "diameter [kg]");
        edit("motors.csv", "1806-2300,18.5", "1806-2300,heavy");
        edit("boards.csv", "white 3 mm,3.0", "white 3 mm,-3.0");
        edit("servos.csv", "servo 5 g,", "servo 3.7 g,");
        edit("spars.csv", "rod 3,round", "rod 3,rnd");
        edit("batteries.csv", "capacity [mAh]", "capasity [mAh]");
        edit("receivers.csv", ",5,", ",\"5,");

        assertThatThrownBy(() -> CatalogueReader.folder(folder))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining("wheels.csv:2  diameter: 'kg' is a mass where a length belongs")
                .hasMessageContaining("motors.csv:4  mass: 'heavy' is not a quantity")
                .hasMessageContaining("boards.csv:4  board thickness must be above 0 m")
                .hasMessageContaining("servos.csv:4  name: 'servo 3.7 g' stands already in servos.csv:3")
                .hasMessageContaining("spars.csv:4  shape: 'rnd' is not one of its words")
                .hasMessageContaining("batteries.csv:2  capasity [mAh]: there is no such column")
                .hasMessageContaining("Did you mean 'capacity'?")
                .hasMessageContaining("batteries.csv:2  capacity: the column is missing")
                .hasMessageContaining("receivers.csv");
    }

    @Test
    void boardsThatNothingCanBeBuiltOfAreFaults() throws IOException {
        edit("boards.csv", "white 5 mm,4.5", "white 5 mm,0");
        edit("boards.csv", "white 3 mm,3.0,235,762,508", "white 3 mm,3.0,235,40,30");
        edit("boards.csv", "art A1 5 mm,5.0,450,841,594,0.2", "art A1 5 mm,5.0,450,841,594,3.2");

        assertThatThrownBy(() -> CatalogueReader.folder(folder))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining("boards.csv:3  board thickness must be above 0 m but is 0.0")
                .hasMessageContaining("boards.csv:4  sheet width 0.03 m is less than the 0.06 m of the smallest mount")
                .hasMessageContaining("boards.csv:6  two faces of 0.0032 m leave no core in a board of 0.005 m");
    }

    /** Rates that a user edited, word and sign. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "',0.6,0.8,1.5,',',ten,0.8,1.5,','workshop.csv:3  cut rate: ''ten'' is not a quantity'",
        "',0.6,0.8,1.5,',',0.6,,1.5,','workshop.csv:3  fold rate'",
        "',0.6,0.8,1.5,',',-0.6,0.8,1.5,','workshop.csv:3  cut rate must be above 0 s/m but is -36.0'",
        "'cut rate [min/m]','cut rat [min/m]','workshop.csv:2  cut rat [min/m]: there is no such column'"
    })
    void ratesOfTheWorkshopAreReadOrRefused(String from, String to, String fault) throws IOException {
        edit("workshop.csv", from, to);

        assertThatThrownBy(() -> CatalogueReader.folder(folder))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining(fault);
    }

    @Test
    void missingAndEmptyTablesAreFaults() throws IOException {
        Files.writeString(folder.resolve("motors.csv"), "");
        Files.writeString(folder.resolve("wheels.csv"), "# nothing\n");
        Files.writeString(
                folder.resolve("servos.csv"),
                Files.readAllLines(folder.resolve("servos.csv")).get(1));

        assertThatThrownBy(() -> CatalogueReader.folder(folder))
                .hasMessageContaining("motors.csv  the table is empty")
                .hasMessageContaining("wheels.csv  the table is empty")
                .hasMessageContaining("servos.csv  the table has no rows");
    }

    @Test
    void mutatedTablesAreReadOrRefused() throws IOException {
        Random random = new Random(3);
        Path table = folder.resolve("propellers.csv");
        String good = Files.readString(table);
        String splices = "\",\n\r#[]- 9e.\u0000\uFEFFx";
        int refused = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            StringBuilder text = new StringBuilder(good);
            for (int n = random.nextInt(3); n >= 0; n--) {
                text.setCharAt(random.nextInt(text.length()), splices.charAt(random.nextInt(splices.length())));
            }
            Files.writeString(table, text);
            StudyException e =
                    Assertions.catchThrowableOfType(StudyException.class, () -> CatalogueReader.folder(folder));
            refused += e == null ? 0 : 1;
        }
        assertThat(refused).isBetween(MUTATIONS / 4, MUTATIONS - 1);
    }

    private void edit(String file, String from, String to) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(from);
        int at = text.indexOf(from);
        Files.writeString(path, text.substring(0, at) + to + text.substring(at + from.length()));
    }
}
