package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VariationTest {
    /** 200 000 draws of a spread near 0.01 leave a mean uncertain by 3e-5; the rest is the bound, a tenth away. */
    private static final double MEAN_MARGIN = 0.002;

    /** Standard errors of 200 000 draws stay below 0.5 per cent. */
    private static final double SAMPLING = 0.02;

    private static final int DRAWS = 200_000;

    private static final Schema MIXED = new Schema(new Problem(
            List.of(
                    new Variable.Real("length"),
                    new Variable.Integral("count", 2, 11),
                    new Variable.Ordinal("size", 5),
                    new Variable.Category("kind", 4),
                    new Variable.Real("detail").onlyWhen(new Variable.Condition(3, List.of(1)))),
            List.of(1.0, 1.0),
            () -> values -> Evaluation.feasible(0, 0)));

    private final RandomGenerator random = Generators.of(1, 0, 0);

    @Test
    void crossoverKeepsTheMeanOfTheParents() {
        BoundedCrossover crossover = new BoundedCrossover(MIXED);
        double[] sums = new double[2];
        int changed = 0;
        for (int k = 0; k < DRAWS; k++) {
            double[] first = {0.8, 0, 0, 0, 0};
            double[] second = {0.9, 0, 0, 0, 0};
            crossover.cross(first, second, random);
            if (first[0] != 0.8) {
                changed++;
                sums[0] += first[0];
                sums[1] += second[0];
            }
        }
        assertThat(changed).isGreaterThan(DRAWS / 3);
        assertThat(sums[0] / changed).isCloseTo(0.85, within(MEAN_MARGIN));
        assertThat(sums[1] / changed).isCloseTo(0.85, within(MEAN_MARGIN));
    }

    @Test
    void crossoverStaysInsideAndExchangesCategoriesWhole() {
        BoundedCrossover crossover = new BoundedCrossover(MIXED);
        for (int k = 0; k < DRAWS / 10; k++) {
            double[] first = {0.001, 0.05, 0.1, 0.125, 1};
            double[] second = {1, 0.95, 0.9, 0.875, 0};
            crossover.cross(first, second, random);
            assertThat(Arrays.stream(first)).allMatch(gene -> gene >= 0 && gene <= 1);
            assertThat(Arrays.stream(second)).allMatch(gene -> gene >= 0 && gene <= 1);
            assertThat(first[3] + second[3]).isEqualTo(1);
            assertThat(first[3]).isIn(0.125, 0.875);
        }
    }

    @Test
    void polynomialMutationHasItsSpread() {
        // Away from the bounds the density is (eta + 1)/2 (1 - |d|)^eta, so the mean of |d| is 1/(eta + 2) = 1/22.
        double sum = 0;
        double signed = 0;
        for (int k = 0; k < DRAWS; k++) {
            double step = Mutation.polynomial(0.5, random.nextDouble()) - 0.5;
            sum += Math.abs(step);
            signed += step;
        }
        assertThat(22 * sum / DRAWS).isCloseTo(1, within(SAMPLING));
        assertThat(22 * signed / DRAWS).isCloseTo(0, within(SAMPLING));
    }

    @Test
    void polynomialMutationReachesBothBoundsAndNothingBeyond() {
        assertThat(Mutation.polynomial(0.3, 0)).isZero();
        assertThat(Mutation.polynomial(0.3, 1)).isEqualTo(1);
        assertThat(Mutation.polynomial(0, 0.25)).isZero();
        assertThat(Mutation.polynomial(1, 0.75)).isEqualTo(1);
    }

    @Test
    void wholeNumbersStepToBothSidesAndCategoriesGoAnywhere() {
        Mutation mutation = new Mutation(MIXED);
        int[] categories = new int[4];
        int up = 0;
        int down = 0;
        double steps = 0;
        for (int k = 0; k < DRAWS; k++) {
            double[] genes = {0.5, 0.55, 0.5, 0.375, 0.5};
            mutation.mutate(genes, random);
            int step = MIXED.level(1, genes[1]) - 5;
            up += step > 0 ? 1 : 0;
            down += step < 0 ? 1 : 0;
            steps += Math.abs(step);
            categories[MIXED.level(3, genes[3])]++;
        }
        // Five active variables: one in five mutates each; a category at least one in ten, evenly to the other three.
        assertThat((double) (up + down) / DRAWS).isCloseTo(0.2, within(SAMPLING));
        // A fresh draw from level 5 of ten: four above, five below, 25/9 levels off on average.
        double fresh = Mutation.FRESH;
        assertThat((double) up / down)
                .isCloseTo(((1 - fresh) / 2 + fresh * 4 / 9) / ((1 - fresh) / 2 + fresh * 5 / 9), within(SAMPLING * 2));
        // Mean of a geometric step that goes on with chance 1/4: 4/3.
        assertThat(steps / (up + down)).isCloseTo((1 - fresh) * 4 / 3 + fresh * 25 / 9, within(SAMPLING));
        assertThat((double) categories[0] / categories[2]).isCloseTo(1, within(SAMPLING * 3));
        assertThat((double) categories[1] / DRAWS).isCloseTo(0.8, within(SAMPLING));
    }

    @Test
    void aFewRealsAreDrawnAfreshFromTheirWholeRange() {
        Mutation mutation = new Mutation(MIXED);
        int far = 0;
        int changed = 0;
        for (int k = 0; k < DRAWS; k++) {
            double[] genes = {0.1, 0.55, 0.5, 0.375, 0.5};
            mutation.mutate(genes, random);
            changed += genes[0] != 0.1 ? 1 : 0;
            far += genes[0] > 0.6 ? 1 : 0;
        }
        // A polynomial step of 0.5 out of 0.9 has the chance (4/9)^21 / 2: none. A fresh draw lies there with 0.4.
        assertThat((double) far / changed).isCloseTo(0.4 * Mutation.FRESH, within(SAMPLING));
    }

    @ParameterizedTest(name = "{0} categories")
    @ValueSource(ints = {1, 2, 8})
    void aChildInTenHasACategoryRedrawnHoweverManyThereAre(int count) {
        List<Variable> variables = new ArrayList<>();
        for (int k = 0; k < 100; k++) {
            variables.add(k < count ? new Variable.Category("c" + k, 2) : new Variable.Real("r" + k));
        }
        Mutation mutation =
                new Mutation(new Schema(new Problem(variables, List.of(1.0), () -> values -> Evaluation.feasible(0))));
        int redrawn = 0;
        for (int k = 0; k < DRAWS; k++) {
            double[] genes = new double[100];
            Arrays.fill(genes, 0.25);
            mutation.mutate(genes, random);
            redrawn += (int)
                    Arrays.stream(genes, 0, count).filter(gene -> gene > 0.5).count();
        }
        assertThat((double) redrawn / DRAWS).isCloseTo(0.1, within(0.1 * SAMPLING));
    }

    @Test
    void anInactiveVariableIsLeftAlone() {
        Mutation mutation = new Mutation(MIXED);
        for (int k = 0; k < DRAWS / 10; k++) {
            double[] genes = {0.5, 0.55, 0.5, 0.125, 0.5};
            mutation.mutate(genes, random);
            if (MIXED.level(3, genes[3]) != 1) {
                assertThat(genes[4]).isEqualTo(0.5);
            }
        }
    }

    @Test
    void differentialVariationTakesACategoryWholeFromTheBase() {
        DifferentialVariation variation = new DifferentialVariation(MIXED);
        for (int k = 0; k < DRAWS / 10; k++) {
            double[] target = {0.2, 0.2, 0.2, 0.125, 0.2};
            double[] base = {0.9, 0.9, 0.9, 0.625, 0.9};
            variation.vary(target, base, new double[] {1, 1, 1, 1, 1}, new double[] {0.4, 0.4, 0.4, 0, 0.4}, random);
            assertThat(target[3]).isIn(0.125, 0.625);
            assertThat(target[0]).isIn(0.2, 1.0);
        }
    }

    @Test
    void theShareOfAnOperatorFollowsItsSuccessButNeverVanishes() {
        OperatorShares shares = new OperatorShares();
        for (int generation = 0; generation < 100; generation++) {
            for (int k = 0; k < 50; k++) {
                shares.count(Operator.CROSSOVER, false);
                shares.count(Operator.DIFFERENTIAL, true);
            }
            shares.renew();
        }
        assertThat(shares.differential()).isEqualTo(0.95);
    }
}
