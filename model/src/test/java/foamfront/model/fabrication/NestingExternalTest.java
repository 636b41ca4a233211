package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Published rectangle-packing instances (sources in nesting.csv): how far both nestings stay from the known optima. The bounds
 * are those set before the code; the measured figures are pinned beside them.
 */
class NestingExternalTest {
    private static final long SEED = 1;

    /** Rectangles times passes: equal work for small and large instances, 16 000 passes for 30 rectangles. */
    private static final int WORK = 480_000;

    private static final int MOST_TRIES = 16_000;

    /** Last digit kept of a pinned gap, in per cent. */
    private static final double PINNED = 0.01;

    private static final Validation PACKING = Validation.of(
            Subject.WORKSHOP, "Rectangle packing", "Published instances with known optima, sources in nesting.csv.");

    private static final Validation HEURISTIC = Validation.of(
            Subject.WORKSHOP,
            "Quick nesting against a published heuristic",
            "Best fit with turning, Burke, Kendall and Whitwell, 2004 (from memory): from the optimum to two units above it.");

    private static final List<NestingInstances> ALL = NestingInstances.load();

    @Test
    void allInstancesAreThereAndStripsAreCutWithoutWaste() {
        assertThat(ALL).hasSize(45);
        for (NestingInstances instance : ALL) {
            if (instance.strip()) {
                double area = 0;
                for (int i = 0; i < instance.sides().size(); i += 2) {
                    area += instance.sides().get(i) * instance.sides().get(i + 1);
                }
                assertThat(area).as(instance.name()).isEqualTo(instance.width() * instance.optimum());
            }
        }
    }

    @Test
    void quickNestingOnStrips() {
        double[] gap = gaps(instance -> new OrderSearch(instance.packer()).quick(instance.optimum()));
        PACKING.band("quick, mean gap over 27 strips", 0, 5, gap[0], "%")
                .band("quick, worst gap over 27 strips", 0, 17, gap[1], "%");
        assertThat(gap[0]).isLessThanOrEqualTo(5).isCloseTo(QUICK_MEAN, within(PINNED));
        assertThat(gap[1]).isLessThanOrEqualTo(17).isCloseTo(QUICK_WORST, within(PINNED));
    }

    private static final double QUICK_MEAN = 3.55; // %
    private static final double QUICK_WORST = 13.33; // %

    @Test
    void thoroughNestingOnStrips() {
        double[] gap = gaps(instance -> thorough(instance));
        PACKING.band("thorough, mean gap over 27 strips", 0, 1.4, gap[0], "%")
                .band("thorough, worst gap over 27 strips", 0, 3.3, gap[1], "%");
        assertThat(gap[0]).isLessThanOrEqualTo(1.4).isCloseTo(THOROUGH_MEAN, within(PINNED));
        assertThat(gap[1]).isLessThanOrEqualTo(3.3).isCloseTo(THOROUGH_WORST, within(PINNED));
    }

    private static final double THOROUGH_MEAN = 0.36; // %
    private static final double THOROUGH_WORST = 1.67; // %

    /** The hardest of the low strips owes its answer to no lucky seed. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {2, 3, 4, 5, 6, 7})
    void aLowStripComesOutWithoutWasteFromEverySeed(long seed) {
        NestingInstances instance = named("hopper-turton-c3-2");
        assertThat(new OrderSearch(instance.packer()).thorough(seed, MOST_TRIES))
                .isCloseTo(instance.optimum(), within(1e-9));
    }

    private static NestingInstances named(String name) {
        return ALL.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void quickNestingInBins() {
        int[] exact = bins(instance -> new OrderSearch(instance.packer()).quick(instance.optimum()));
        assertThat(exact[1]).as("furthest off, bins").isLessThanOrEqualTo(1);
        PACKING.band("quick, sheets above the optimum, worst of 18", 0, 1, exact[1], "");
        PACKING.band("quick, sheets exact, of 18", 0, 18, exact[0], "");
        assertThat(exact[0]).as("exact of 18").isEqualTo(12);
    }

    @Test
    void thoroughNestingInBins() {
        int[] exact = bins(instance -> thorough(instance));
        assertThat(exact[1]).as("furthest off, bins").isLessThanOrEqualTo(1);
        PACKING.band("thorough, sheets above the optimum, worst of 18", 0, 1, exact[1], "");
        PACKING.band("thorough, sheets exact, of 18", 14, 18, exact[0], "");
        assertThat(exact[0]).as("exact of 18").isEqualTo(17);
    }

    /**
     * Heights reached by the best-fit heuristic with turning in Burke, Kendall & Whitwell (2004), from memory: ours stays
     * within 2 units of them or below.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "burke-n1,45",
        "burke-n2,53",
        "burke-n3,52",
        "burke-n4,83",
        "burke-n5,105",
        "burke-n6,103",
        "burke-n8,84",
        "burke-n9,152",
        "burke-n11,152",
        "hopper-turton-c1-1,21",
        "hopper-turton-c1-2,22",
        "hopper-turton-c1-3,24",
        "hopper-turton-c3-1,32",
        "hopper-turton-c3-2,34",
        "hopper-turton-c3-3,33",
        "hopper-turton-c4-1,63",
        "hopper-turton-c4-2,62",
        "hopper-turton-c4-3,62",
        "hopper-turton-c6-1,123",
        "hopper-turton-c6-2,122",
        "hopper-turton-c6-3,124"
    })
    void quickNestingKeepsUpWithTheLiterature(String name, double height) {
        NestingInstances instance = named(name);
        double scatter = 2;
        double reached = new OrderSearch(instance.packer()).quick(instance.optimum());
        HEURISTIC.band(name, instance.optimum(), height + scatter, reached, "");
    }

    private static double thorough(NestingInstances instance) {
        RectanglePacker packer = instance.packer();
        return new OrderSearch(packer).thorough(SEED, Math.min(MOST_TRIES, WORK / packer.size()));
    }

    /** Mean and worst gap over the strips, %. */
    private static double[] gaps(ToDoubleFunction<NestingInstances> nesting) {
        double sum = 0;
        double worst = 0;
        int n = 0;
        for (NestingInstances instance : ALL) {
            if (instance.strip()) {
                double gap = 100 * (nesting.applyAsDouble(instance) / instance.optimum() - 1);
                assertThat(gap).as(instance.name()).isGreaterThan(-1e-9);
                sum += gap;
                worst = Math.max(worst, gap);
                n++;
            }
        }
        assertThat(n).isEqualTo(27);
        return new double[] {sum / n, worst};
    }

    /** How many are exact, and how far the worst is off. */
    private static int[] bins(ToDoubleFunction<NestingInstances> nesting) {
        int exact = 0;
        int worst = 0;
        for (NestingInstances instance : ALL) {
            if (!instance.strip()) {
                int off = (int) Math.ceil(nesting.applyAsDouble(instance) - 1e-9) - (int) instance.optimum();
                assertThat(off).as(instance.name()).isNotNegative();
                exact += off == 0 ? 1 : 0;
                worst = Math.max(worst, off);
            }
        }
        return new int[] {exact, worst};
    }
}
