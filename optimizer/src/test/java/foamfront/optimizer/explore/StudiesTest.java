package foamfront.optimizer.explore;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.front.FrontTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The club's studies as shipped, each at its own budget and seed. */
class StudiesTest {
    /** A front that a practitioner can choose from. */
    private static final int ENOUGH = 20;

    @ParameterizedTest
    @MethodSource("foamfront.optimizer.explore.Shipped#names")
    void givesAFrontToChooseFrom(String name) {
        Found found = Shipped.found(name);
        assertThat(found.faultCount()).isZero();
        assertThat(found.front().rows())
                .hasSizeGreaterThanOrEqualTo(ENOUGH)
                .allSatisfy(row -> assertThat(row.limits()).allMatch(check -> check.holds()));
    }

    /** Others do so at a small budget in {@link FrozenFrontsTest}. */
    @Test
    void givesTheSameBytesOnFiveThreads() {
        String name = "school-trainer";
        assertThat(csv(Shipped.explore(Shipped.study(name), 5))).isEqualTo(csv(Shipped.found(name)));
    }

    private static String csv(Found found) {
        return FrontTable.of(found.front(), 1, Shipped.CATALOGUE.currency()).csv();
    }
}
