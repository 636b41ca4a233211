package foamfront.optimizer.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CompromiseTest {
    /** Half the last digit worked out by hand. */
    private static final double HALF_DIGIT = 5e-7;

    @Test
    void closenessIsThatOfTheWorkedExample() {
        // Payload and endurance up, cost down; vector normalisation, weights 0.5, 0.3, 0.2. Worked by hand (derived).
        double[][] costs = {{-200, -12, 18}, {-350, -8, 22}, {-500, -5, 30}, {-300, -10, 20}};
        double[] closeness = Compromise.closeness(costs, new double[] {0.5, 0.3, 0.2});
        assertThat(closeness)
                .containsExactly(new double[] {0.373951, 0.491999, 0.626049, 0.445835}, within(HALF_DIGIT));
    }

    @Test
    void aRowThatIsBestInEverythingIsTheCompromise() {
        assertThat(Compromise.best(new double[][] {{3, 4}, {1, 1}, {2, 5}})).isEqualTo(1);
    }

    @Test
    void aFrontOfOneRowHasThatRow() {
        assertThat(Compromise.best(new double[][] {{3, 4}})).isZero();
        assertThat(Compromise.best(new double[0][])).isEqualTo(-1);
    }

    @Test
    void anAddedDominatedRowCanChangeTheOrderAsThePagesSay() {
        double[][] two = {{1, 10}, {10, 1}};
        double[][] three = {{1, 10}, {10, 1}, {10, 40}};
        double[] equal = {0.5, 0.5};
        double[] before = Compromise.closeness(two, equal);
        double[] after = Compromise.closeness(three, equal);
        assertThat(before[0]).isEqualTo(before[1], within(1e-12));
        assertThat(after[0]).isNotCloseTo(after[1], within(1e-3));
    }
}
