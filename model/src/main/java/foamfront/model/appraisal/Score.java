package foamfront.model.appraisal;

/**
 * What a search needs of one design: the measures it asked for and how badly limits are missed.
 *
 * <p>Stages run from cheap to dear and stop at the first whose limits fail; measures of later stages are then NaN and the
 * violation is raised by {@value #STAGE} for each stage not reached, so that designs that get further always rank ahead.
 */
public final class Score {
    /** Added to the violation for each stage that was not reached. */
    public static final double STAGE = 100;

    private final double[] values;
    private final double violation;

    Score(double[] values, double violation) {
        this.values = values;
        this.violation = violation;
    }

    /** SI value of the {@code i}-th measure asked for; NaN where its stage was not reached. */
    public double value(int i) {
        return values[i];
    }

    /** Sum of the limits' violations, each over its limit's size; 0 when all hold. */
    public double violation() {
        return violation;
    }

    public boolean feasible() {
        return violation == 0;
    }

    /** How many measures were asked for. */
    public int size() {
        return values.length;
    }
}
