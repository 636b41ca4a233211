package foamfront.optimizer.front;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import foamfront.model.units.Currency;
import foamfront.optimizer.study.ShowIn;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TablesTest {
    private static final Currency USD = new Currency("USD");

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restoreTheLocale() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-US", "de-DE", "tr-TR", "ar-EG-u-nu-arab"})
    void theTablesAreTheSameBytesInEveryLocale(String tag) {
        Front front = Front.of(Rows.AIMS, List.of(Rows.named("a", 0.2, 600, 50.25), Rows.named("b", 0.5, 300, 61)));
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(FrontPage.narrow(front, front.spread(5), 1, new Show(ShowIn.METRIC, USD))
                        .text())
                .isEqualTo("""
                        row  payload [g]  endurance [min]  build cost [USD]  flying weight [g]  span [mm]  least room to spare    stands out for
                          1          500              5.0             61.00               1300        900  19.4 % on stall speed  most payload; best compromise
                          2          200             10.0             50.25               1000        900  19.4 % on stall speed  most endurance; least build cost
                        """);
        assertThat(FrontPage.narrow(front, front.spread(5), 1, new Show(ShowIn.INCHES, USD))
                        .text())
                .contains("payload [oz]", "flying weight [oz]", "span [in]", "35.43", "17.6");
        assertThat(FrontTable.of(front, 1, USD).csv())
                .startsWith("row,name,layout,stands out for,payload [g],endurance [min],build cost [USD],")
                .contains(
                        "\r\n1,b,\"monoplane, conventional tail, nose tractor\",most payload; best compromise,500,5,61,");
        assertThat(Sentences.verdict(front, new Show(ShowIn.METRIC, USD), 1))
                .isEqualTo("2 designs can be built and flown and none beats another on every aim (payload 200 to 500 g,"
                        + " endurance 5.0 to 10.0 min, build cost 50.25 to 61.00 USD); the best compromise is row 1, a"
                        + " monoplane, conventional tail, nose tractor.");
    }

    @Test
    void theCsvReadsBackCellForCell() throws Exception {
        Front front = Front.of(Rows.AIMS, Rows.random(300, 9));
        Table table = FrontTable.of(front, 1, USD);
        List<List<String>> read = parse(table.csv());
        assertThat(read.get(0))
                .isEqualTo(table.columns().stream().map(Table.Column::head).toList());
        assertThat(read.subList(1, read.size())).isEqualTo(table.rows());
    }

    @Test
    void theJsonHasItsStableKeysAndAgreesWithTheMeasures() throws Exception {
        Front front = Front.of(Rows.AIMS, Rows.random(300, 9));
        JsonNode json = new ObjectMapper().readTree(FrontJson.of("a \"study\"\n", front, 1, USD));
        assertThat(json.get("study").asText()).isEqualTo("a \"study\"\n");
        assertThat(json.get("aims").get(0).get("measure").asText()).isEqualTo("payload");
        assertThat(json.get("rows")).hasSize(front.size());
        for (int i = 0; i < front.size(); i++) {
            JsonNode row = json.get("rows").get(i);
            double cost = row.at("/measures/build_cost/value").asDouble();
            assertThat(cost).isEqualTo(front.rows().get(i).measures().of(foamfront.model.mission.Measure.BUILD_COST));
            assertThat(row.at("/measures/climb_rate/value").isNull()).isTrue();
            assertThat(row.at("/limits/0/margin").asDouble()).isPositive();
            assertThat(row.at("/dimensions/span").asDouble()).isBetween(0.9, 1.3);
            assertThat(row.at("/choices/power").asText()).isNotEmpty();
        }
    }

    @Test
    void noHostileNameRunsOrBreaksATable() throws Exception {
        for (String name : HostileNames.all()) {
            Front front = Front.of(Rows.AIMS, List.of(Rows.named(name, 0.2, 600, 50)));
            List<List<String>> csv = parse(FrontTable.of(front, 1, USD).csv());
            String cell = csv.get(1).get(1);
            assertThat(cell.startsWith("'") ? cell.substring(1) : cell).isIn(name, name.replaceFirst("^'", ""));
            assertThat(cell).doesNotMatch("(?s)[=+\\-@\\t\\r\\x00].*");
            assertThat(csv.get(1)).hasSameSizeAs(csv.get(0));
            JsonNode json = new ObjectMapper().readTree(FrontJson.of(name, front, 1, USD));
            assertThat(json.get("study").asText()).isEqualTo(name);
            assertThat(json.at("/rows/0/name").asText()).isEqualTo(name);
            String page = FrontPage.markdown(name, front, Map.of(), Set.of(), new Show(ShowIn.METRIC, USD));
            assertThat(page.lines().findFirst())
                    .hasValueSatisfying(line -> assertThat(line)
                            .startsWith("# ")
                            .doesNotContainPattern("(?<!\\\\)<")
                            .doesNotContainPattern("(?<!\\\\)\\]\\("));
            assertThat(page).contains("\n## Best trade-offs\n");
        }
    }

    @Test
    void numbersAreNeverGuarded() {
        Table table =
                new Table(List.of(Table.Column.number("n"), Table.Column.text("t")), List.of(List.of("-1.5", "-1.5")));
        assertThat(table.csv()).isEqualTo("n,t\r\n-1.5,'-1.5\r\n");
    }

    private static List<List<String>> parse(String csv) throws Exception {
        try (MappingIterator<List<String>> rows = new CsvMapper()
                .readerForListOf(String.class)
                .with(CsvParser.Feature.WRAP_AS_ARRAY)
                .readValues(csv)) {
            return rows.readAll();
        }
    }
}
