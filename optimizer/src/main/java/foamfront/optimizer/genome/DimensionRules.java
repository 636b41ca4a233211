package foamfront.optimizer.genome;

import foamfront.model.design.DesignVariable;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingKind;
import foamfront.model.design.WorkshopRules;
import foamfront.model.units.Dimension;
import foamfront.optimizer.study.Study;
import java.util.EnumMap;
import java.util.Map;

/** Grids of the open dimensions, and the rest by workshop rule, lengths snapped. */
final class DimensionRules {
    private static final double HALF_DEGREE = 0.5 * Math.PI / 180;
    private static final double HUNDREDTH = 0.01;

    private final double increment;
    private final Map<DesignVariable, Grid> grids = new EnumMap<>(DesignVariable.class);

    DimensionRules(Study study) {
        this.increment = study.increment();
        study.vary().forEach((variable, range) -> grids.put(variable, Grid.of(range, step(variable))));
        study.fixed().forEach((variable, value) -> grids.put(variable, new Grid(value, 0, 1)));
    }

    /** Angles to half a degree, ratios to a hundredth, lengths to the workshop's increment. */
    private double step(DesignVariable variable) {
        return switch (variable.unit().dimension()) {
            case LENGTH -> increment;
            case ANGLE -> HALF_DEGREE;
            default -> HUNDREDTH;
        };
    }

    /** The grid of a stated dimension; null for one by rule. */
    @org.jspecify.annotations.Nullable
    Grid grid(DesignVariable variable) {
        return grids.get(variable);
    }

    /** Whether wings may bend along their span or have a piece cut out at a place of the study's choosing. */
    boolean shapesWings() {
        return grids.containsKey(DesignVariable.BEND_POSITION) || grids.containsKey(DesignVariable.CUT_OUT_BREADTH);
    }

    double increment() {
        return increment;
    }

    /** Fills what is open by the workshop rules, in order, lengths snapped. */
    void complete(double[] values, WingKind wing, WingHeight height, boolean ailerons) {
        for (DesignVariable variable : Genome.DIMENSIONS) {
            int i = variable.ordinal();
            if (Double.isNaN(values[i])) {
                double rule = WorkshopRules.rule(variable, values, wing, height, ailerons);
                values[i] = variable.unit().dimension() == Dimension.LENGTH ? Grid.snap(rule, increment) : rule;
            }
        }
    }
}
