package foamfront.optimizer.search;

import java.util.random.RandomGenerator;

/**
 * Differential variation, rand/1/bin: a target takes some variables from base + F (a - b).
 *
 * <p>Storn and Price, Differential evolution, Journal of Global Optimization 11 (1997) 341-359. Separable problems like few
 * variables taken at once, linked ones many: the rate is drawn anew for each child (judgement).
 */
final class DifferentialVariation {
    /** Scale F of the difference; common practice. */
    private static final double SCALE = 0.5;

    private static final double FEW = 0.1;
    private static final double MANY = 0.9;

    private final Schema schema;

    DifferentialVariation(Schema schema) {
        this.schema = schema;
    }

    /** Changes a copy of the target in place; a category taken over comes whole from the base. */
    void vary(double[] target, double[] base, double[] a, double[] b, RandomGenerator random) {
        double rate = random.nextBoolean() ? FEW : MANY;
        int certain = random.nextInt(target.length);
        for (int i = 0; i < target.length; i++) {
            if (i == certain || random.nextDouble() < rate) {
                double moved = schema.isCategory(i) ? base[i] : base[i] + SCALE * (a[i] - b[i]);
                target[i] = Math.min(1, Math.max(0, moved));
            }
        }
    }
}
