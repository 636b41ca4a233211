package foamfront.model.appraisal;

/**
 * What a search needs of one design: the measures it asked for and how badly limits are missed, stage by stage. Every stage runs,
 * whatever limits fail before it: a search that saw the first failing stage only would settle every choice for that stage's
 * sake, before it knew what the later ones ask for.
 */
public final class Score {
    private final double[] values;
    private final double[] excesses;

    Score(double[] values, double[] excesses) {
        this.values = values;
        this.excesses = excesses;
    }

    /** SI value of the {@code i}-th measure asked for; NaN where the design cannot have it. */
    public double value(int i) {
        return values[i];
    }

    /** Sum of the limits' violations, each over its limit's size; 0 when all hold. */
    public double violation() {
        double sum = 0;
        for (double excess : excesses) {
            sum += excess;
        }
        return sum;
    }

    /** The same sum over the limits of each stage. */
    public double[] excesses() {
        return excesses.clone();
    }

    public boolean feasible() {
        return violation() == 0;
    }

    /** How many measures were asked for. */
    public int size() {
        return values.length;
    }
}
