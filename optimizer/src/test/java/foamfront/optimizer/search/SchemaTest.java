package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import foamfront.optimizer.search.Variable.Category;
import foamfront.optimizer.search.Variable.Condition;
import foamfront.optimizer.search.Variable.Integral;
import foamfront.optimizer.search.Variable.Ordinal;
import foamfront.optimizer.search.Variable.Real;
import java.util.List;
import org.junit.jupiter.api.Test;

class SchemaTest {
    private static Schema schema(Variable... variables) {
        return new Schema(new Problem(List.of(variables), List.of(1.0), () -> values -> Evaluation.feasible(0)));
    }

    @Test
    void genesDecodeByKindBothBoundsIncluded() {
        Schema schema = schema(new Real("a"), new Integral("b", -2, 2), new Ordinal("c", 3), new Category("d", 2));
        assertThat(schema.design(new double[] {0, 0, 0, 0}, Operator.START).values())
                .containsExactly(0, -2, 0, 0);
        assertThat(schema.design(new double[] {1, 1, 1, 1}, Operator.START).values())
                .containsExactly(1, 2, 2, 1);
        assertThat(schema.design(new double[] {0.5, 0.5, 0.5, 0.49}, Operator.START)
                        .values())
                .containsExactly(0.5, 0, 1, 0);
    }

    @Test
    void genesOutsideAreClipped() {
        UnitChromosome design = schema(new Real("a"), new Real("b")).design(new double[] {-3, 7}, Operator.START);
        assertThat(design.genes()).containsExactly(0, 1);
        assertThat(design.get(1).isValid()).isTrue();
    }

    @Test
    void anInactiveVariableTellsNoDesignsApart() {
        Schema schema = schema(
                new Category("tail", 2),
                new Category("fin", 2).onlyWhen(new Condition(0, List.of(1))),
                new Real("sweep").onlyWhen(new Condition(1, List.of(0))));
        UnitChromosome a = schema.design(new double[] {0.1, 0.1, 0.3}, Operator.START);
        UnitChromosome b = schema.design(new double[] {0.1, 0.9, 0.7}, Operator.START);
        UnitChromosome c = schema.design(new double[] {0.9, 0.1, 0.7}, Operator.START);
        assertThat(a).isEqualTo(b);
        assertThat(a).isNotEqualTo(c);
        assertThat(schema.activeCount(a.genes())).isEqualTo(1);
        assertThat(schema.activeCount(c.genes())).isEqualTo(3);
    }

    @Test
    void snappedDesignsAreOne() {
        Problem problem = new Problem(
                List.of(new Real("a")),
                List.of(1.0),
                () -> values -> Evaluation.feasible(0),
                Problem.Niches.ONE,
                values -> new double[] {Math.rint(4 * values[0]) / 4},
                List.of());
        Schema schema = new Schema(problem);
        UnitChromosome a = schema.design(new double[] {0.52}, Operator.START);
        UnitChromosome b = schema.design(new double[] {0.49}, Operator.START);
        assertThat(a).isEqualTo(b);
        assertThat(a.values()).containsExactly(0.5);
    }

    @Test
    void aConditionMustNameAnEarlierCategoryAndItsValues() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> schema(new Real("a"), new Real("b").onlyWhen(new Condition(0, List.of(1)))))
                .withMessageContaining("b depends on variable 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> schema(new Category("a", 2), new Real("b").onlyWhen(new Condition(0, List.of(2)))))
                .withMessageContaining("a category with 2");
    }
}
