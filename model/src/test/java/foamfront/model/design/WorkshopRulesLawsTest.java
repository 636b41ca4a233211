package foamfront.model.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WorkshopRulesLawsTest {
    /** Products of a few doubles. */
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @EnumSource(WingHeight.class)
    void everyRuleGivesSomethingAWorkshopCanMake(WingHeight height) {
        for (boolean ailerons : new boolean[] {false, true}) {
            double[] values = WorkshopRules.open();
            WorkshopRules.complete(values, WingKind.MONOPLANE, height, ailerons);
            for (DesignVariable variable : DesignVariable.values()) {
                double value = values[variable.index()];
                assertThat(variable.workshop().contains(value))
                        .as("%s %s", variable, value)
                        .isTrue();
            }
        }
    }

    /** A wing grown by a factor takes tail and body with it, so that the tail volumes stay. */
    @ParameterizedTest
    @EnumSource(WingHeight.class)
    void theRulesScaleWithTheSpan(WingHeight height) {
        double[] one = WorkshopRules.open();
        WorkshopRules.complete(one, WingKind.MONOPLANE, height, false);
        double[] two = WorkshopRules.open();
        two[DesignVariable.SPAN.index()] = 2 * one[DesignVariable.SPAN.index()];
        WorkshopRules.complete(two, WingKind.MONOPLANE, height, false);

        for (DesignVariable variable : new DesignVariable[] {
            DesignVariable.ROOT_CHORD,
            DesignVariable.TAIL_SPAN,
            DesignVariable.TAIL_CHORD,
            DesignVariable.FIN_HEIGHT,
            DesignVariable.FIN_CHORD,
            DesignVariable.BODY_LENGTH
        }) {
            double value = one[variable.index()];
            assertThat(two[variable.index()]).isCloseTo(2 * value, within(ROUNDING * value));
        }
    }

    @ParameterizedTest
    @EnumSource(DesignVariable.class)
    void whatIsStatedStands(DesignVariable variable) {
        double[] values = WorkshopRules.open();
        double stated = variable.workshop().high();
        values[variable.index()] = stated;
        WorkshopRules.complete(values, WingKind.MONOPLANE, WingHeight.HIGH, false);

        assertThat(values[variable.index()]).isEqualTo(stated);
        assertThat(values).doesNotContain(Double.NaN);
    }
}
