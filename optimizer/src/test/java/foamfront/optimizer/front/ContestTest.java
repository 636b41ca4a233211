package foamfront.optimizer.front;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.Design;
import foamfront.model.units.Currency;
import foamfront.optimizer.study.ShowIn;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Who leads at which payload is read off the rows themselves. */
class ContestTest {
    private static final List<Row> ROWS = Rows.random(200, 5);
    private static final Design ONE = ROWS.get(0).design();
    private static final Design OTHER = ROWS.stream()
            .map(Row::design)
            .filter(design -> !Layout.words(design).equals(Layout.words(ONE)))
            .findFirst()
            .orElseThrow();

    private static String page() {
        List<Row> rows = List.of(
                Rows.row(ONE, 0.1, 1200, 50),
                Rows.row(ONE, 0.3, 900, 60),
                Rows.row(OTHER, 0.1, 1500, 80),
                Rows.row(OTHER, 0.2, 600, 40));
        Front front = Front.of(Rows.AIMS, rows);
        return new Contest(
                        front,
                        Front.byLayout(Rows.AIMS, rows),
                        Set.of("kite"),
                        new Show(ShowIn.METRIC, new Currency("USD")))
                .markdown();
    }

    @Test
    void eachLayoutShowsItsBestInEachAim() {
        assertThat(page())
                .contains("| " + Layout.words(ONE) + " | 2 | 300 | 20.0 | 50.00 |")
                .contains("| " + Layout.words(OTHER) + " | 2 | 200 | 25.0 | 40.00 |");
    }

    @Test
    void theLeadChangesWithThePayloadAndSaysByHowMuch() {
        assertThat(page())
                .contains("| 100 | most endurance | " + Layout.words(OTHER) + " | 25.0 min | " + Layout.words(ONE)
                        + " | 20.0 min | 20 % |")
                .contains("| 200 | most endurance | " + Layout.words(ONE) + " | 15.0 min | " + Layout.words(OTHER)
                        + " | 10.0 min | 33 % |")
                .contains("| 300 | least build cost | " + Layout.words(ONE) + " | 60.00 USD | no other layout |")
                .contains("| 200 | least build cost | " + Layout.words(OTHER) + " | 40.00 USD | " + Layout.words(ONE)
                        + " | 60.00 USD | 50 % |");
    }

    @Test
    void whatNothingWasFoundForIsNamed() {
        assertThat(page()).contains("as: kite.");
    }
}
