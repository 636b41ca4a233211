package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PromisingTest {
    private static final double[][] OBJECTIVES = {
        {0.4, 0.4}, // feasible
        {0.2, 0.3}, // better than it, far from feasible
        {0.3, 0.35}, // better than it, nearer
        {0.5, 0.3}, // a trade, nearest
        {0.45, 0.6}, // beaten by a feasible one
        {0.55, 0.35}, // beaten by the trade, but not by a feasible one
        {}, // unknown
        {0.2, 0.3}, // the same again
    };
    private static final double[] VIOLATION = {0, 0.5, 0.2, 0.1, 0.01, 0.3, 0.01, 0.5};

    private final Promising promising = new Promising();

    @Test
    void whatNoFeasibleDesignBeatsComesByTierAndThenByViolation() {
        assertThat(choose(9)).containsExactly(3, 2, 1, 5);
        assertThat(promising.tier(1)).isZero();
        assertThat(promising.tier(5)).isEqualTo(1);
    }

    @Test
    void noMoreThanWanted() {
        assertThat(choose(2)).containsExactly(3, 2);
        assertThat(choose(0)).isEmpty();
    }

    private int[] choose(int most) {
        return promising.choose(new int[] {1, 2, 3, 4, 5, 6, 7}, new int[] {0}, OBJECTIVES, VIOLATION, most);
    }
}
