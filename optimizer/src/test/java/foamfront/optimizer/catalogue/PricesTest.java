package foamfront.optimizer.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foamfront.model.units.Currency;
import foamfront.optimizer.faults.StudyException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A copy of the shipped tables in euros. */
class PricesTest {
    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void copyTheTables() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "studies", "catalogue"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                Files.writeString(
                        folder.resolve(String.valueOf(file.getFileName())),
                        Files.readString(file).replace("USD]", "EUR]"));
            }
        }
    }

    private void edit(String file, String from, String to) throws IOException {
        Path table = folder.resolve(file);
        String text = Files.readString(table);
        assertThat(text).contains(from);
        Files.writeString(table, text.replace(from, to));
    }

    private String refusal() {
        StudyException e = org.assertj.core.api.Assertions.catchThrowableOfType(
                StudyException.class, () -> CatalogueReader.folder(folder));
        assertThat(e).isNotNull();
        return String.valueOf(e.getMessage());
    }

    @Test
    void theSameFiguresInAnotherCurrencyAreTheSameParts() {
        Catalogue standard = CatalogueReader.standard();
        Catalogue euros = CatalogueReader.folder(folder);
        assertThat(standard.currency()).isEqualTo(CatalogueReader.STANDARD_CURRENCY);
        assertThat(euros.currency()).isEqualTo(new Currency("EUR"));
        assertThat(euros.parts()).isEqualTo(standard.parts());
        assertThat(euros.workshop()).isNotEqualTo(standard.workshop());
        assertThat(euros.digest()).isNotEqualTo(standard.digest());
    }

    @Test
    void oneTableInAnotherCurrencyIsAFaultThatNamesBothPlaces() throws IOException {
        edit("servos.csv", "EUR]", "GBP]");
        assertThat(refusal())
                .contains("servos.csv:2  price: prices are in GBP here and in EUR in boards.csv:2, column 11")
                .contains("(folder " + folder + ")", "no exchange rates");
    }

    @Test
    void oneColumnOfTheWorkshopToo() throws IOException {
        edit("workshop.csv", "strap price [EUR]", "strap price [USD]");
        assertThat(refusal()).contains("workshop.csv:2  strap price: prices are in USD here and in EUR");
    }

    @Test
    void oneCellToo() throws IOException {
        edit("workshop.csv", "0.80,1.50", "0.80 USD,1.50");
        assertThat(refusal()).contains("workshop.csv:3  linkage price: '0.80 USD' is in USD where prices are in EUR");
    }

    /** The program's tables, in dollars, stand in for those that a folder lacks. */
    @Test
    void whatTheFolderLacksIsOneFault() throws IOException {
        for (String table : List.of("wheels.csv", "fans.csv")) {
            Files.delete(folder.resolve(table));
        }
        assertThat(refusal())
                .contains("fans.csv  the folder " + folder + " has no such table, nor wheels.csv")
                .contains("priced in USD, not in EUR as boards.csv:2, column 11 is")
                .contains("Add what is lacking, priced in EUR, or price the folder as the program's tables are");
    }

    @ParameterizedTest
    @CsvSource({
        "[EURO], price: 'EURO' is no currency code of ISO 4217, Do you mean EUR?",
        "[$], price: '$' does not say whose money it is, write the code of yours",
        "[], price: no currency stands behind it, '[EUR]'",
        "[g], price: 'g' is no currency code of ISO 4217, such as USD"
    })
    void aHeaderThatNamesNoCurrencyIsAFault(String unit, String problem, String advice) throws IOException {
        edit("wheels.csv", "[EUR]", unit);
        assertThat(refusal()).contains("wheels.csv:2", problem, advice);
    }

    @Test
    void theWorkshopsTableSaysWhatSwitchAndRegulatorCost() throws IOException {
        edit("workshop.csv", ",regulator price [EUR]", "");
        assertThatThrownBy(() -> CatalogueReader.folder(folder))
                .hasMessageContaining("workshop.csv:2  regulator price: the column is missing")
                .hasMessageContaining("Add it to the header and your price to the row")
                .hasMessageContaining("the program's table has 3.00 under 'regulator price [USD]'");
    }
}
