package foamfront.model.section;

/**
 * A quantity against the natural logarithm of the Reynolds number, sampled evenly so that a look-up is arithmetic. Straight
 * between samples, held at the end values outside.
 */
final class ReynoldsTable {
    static final double LOWEST = 30_000;
    static final double HIGHEST = 400_000;
    /** Fine enough that the corners of a table given at seven points are cut by less than 0.5 % (SectionPolarTest). */
    private static final int STEPS = 128;

    private static final double LOG_LOWEST = StrictMath.log(LOWEST);
    private static final double LOG_HIGHEST = StrictMath.log(HIGHEST);
    private static final double STEPS_PER_LOG = STEPS / (LOG_HIGHEST - LOG_LOWEST);

    private final double[] values;

    private ReynoldsTable(double[] values) {
        this.values = values;
    }

    /** Through values at rising Reynolds numbers, linear in the logarithm between them. */
    static ReynoldsTable through(double[] reynolds, double[] given) {
        double[] values = new double[STEPS + 1];
        int next = 1;
        for (int i = 0; i <= STEPS; i++) {
            double log = LOG_LOWEST + i / STEPS_PER_LOG;
            while (next < reynolds.length - 1 && log > StrictMath.log(reynolds[next])) {
                next++;
            }
            double before = StrictMath.log(reynolds[next - 1]);
            double part = (log - before) / (StrictMath.log(reynolds[next]) - before);
            values[i] = given[next - 1] + Math.min(1, Math.max(0, part)) * (given[next] - given[next - 1]);
        }
        return new ReynoldsTable(values);
    }

    /** Laminar friction of both sides of a flat plate, 2 · 1.328 / √Re (Blasius 1908), times a ratio. */
    static ReynoldsTable laminarFriction(double ratio) {
        double[] values = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            values[i] = ratio * 2 * 1.328 * StrictMath.exp(-0.5 * (LOG_LOWEST + i / STEPS_PER_LOG));
        }
        return new ReynoldsTable(values);
    }

    /**
     * Friction of a plate, {@code ratio} times the laminar up to the transition and from there along the turbulent,
     * 0.455 / (log₁₀ Re)^2.58 (Prandtl and Schlichting, as in H. Schlichting, Boundary-Layer Theory, ch. XXI), that meets it.
     */
    static ReynoldsTable friction(double ratio, double transition) {
        double[] values = laminarFriction(ratio).values;
        double meeting = ratio * 2 * 1.328 / Math.sqrt(transition) / turbulent(transition);
        for (int i = 0; i <= STEPS; i++) {
            values[i] = Math.max(values[i], meeting * turbulent(StrictMath.exp(LOG_LOWEST + i / STEPS_PER_LOG)));
        }
        return new ReynoldsTable(values);
    }

    private static double turbulent(double reynolds) {
        return 0.455 / StrictMath.pow(StrictMath.log10(reynolds), 2.58);
    }

    /** Least value over {@link #laminarFriction} of ratio 1, as a drag table's. */
    double overFriction() {
        double least = Double.POSITIVE_INFINITY;
        ReynoldsTable friction = laminarFriction(1);
        for (int i = 0; i < values.length; i++) {
            least = Math.min(least, values[i] / friction.values[i]);
        }
        return least;
    }

    ReynoldsTable scaled(double factor) {
        double[] scaled = new double[values.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = factor * values[i];
        }
        return new ReynoldsTable(scaled);
    }

    /** The inverse cube root of every sample. */
    ReynoldsTable inverseCubeRoot() {
        double[] roots = new double[values.length];
        for (int i = 0; i < roots.length; i++) {
            roots[i] = 1 / StrictMath.cbrt(values[i]);
        }
        return new ReynoldsTable(roots);
    }

    double at(double logReynolds) {
        double place = place(logReynolds);
        int below = below(place);
        return between(below, place - below);
    }

    /** Where a Reynolds number stands in every table, in steps. */
    static double place(double logReynolds) {
        double steps = (logReynolds - LOG_LOWEST) * STEPS_PER_LOG;
        return steps < 0 ? 0 : steps > STEPS ? STEPS : steps;
    }

    /** The sample below a place. */
    static int below(double place) {
        return Math.min(STEPS - 1, (int) place);
    }

    /** The value a part of a step above a sample. */
    double between(int below, double part) {
        double value = values[below];
        return value + part * (values[below + 1] - value);
    }

    static boolean inside(double logReynolds) {
        return logReynolds >= LOG_LOWEST && logReynolds <= LOG_HIGHEST;
    }
}
