package foamfront.optimizer.search;

import java.util.random.RandomGenerator;

/**
 * Simulated binary crossover on [0, 1], both children, with the spread on either side cut at the bound.
 *
 * <p>Agrawal and Deb, Simulated binary crossover for continuous search space, Complex Systems 9 (1995) 115-148; the bounded
 * form after Deb and Agrawal, A niched-penalty approach for constraint handling in genetic algorithms, ICANNGA 1999 (from
 * memory). The library's own crossover centres its child on half the difference of the parents and is not used.
 */
final class BoundedCrossover {
    /** A variable pair is crossed with this chance, otherwise inherited; common practice. */
    private static final double PER_VARIABLE = 0.5;

    /** Parents closer than this are the same for the spread. */
    private static final double SAME = 1e-14;

    private final Schema schema;

    BoundedCrossover(Schema schema) {
        this.schema = schema;
    }

    /** Crosses two copies of parents in place; categories are exchanged whole. */
    void cross(double[] first, double[] second, RandomGenerator random) {
        for (int i = 0; i < first.length; i++) {
            double a = first[i];
            double b = second[i];
            if (a == b || random.nextDouble() >= PER_VARIABLE) {
                continue;
            }
            if (schema.isCategory(i)) {
                first[i] = b;
                second[i] = a;
            } else if (Math.abs(a - b) > SAME) {
                boolean swap = random.nextBoolean();
                double u = random.nextDouble();
                double low = Math.min(a, b);
                double high = Math.max(a, b);
                double nearLow = child(low, high, u, low, -1);
                double nearHigh = child(low, high, u, 1 - high, 1);
                first[i] = swap ? nearHigh : nearLow;
                second[i] = swap ? nearLow : nearHigh;
            }
        }
    }

    /** (a + b)/2 plus or minus half the spread beta (b - a), beta bounded so that the child stays within {@code room}. */
    private static double child(double low, double high, double u, double room, int side) {
        double distance = high - low;
        double reach = 1 + 2 * room / distance;
        double alpha = 2 - 1 / sixteenthPower(reach);
        double beta = u * alpha <= 1 ? sixteenthRoot(u * alpha) : sixteenthRoot(1 / (2 - u * alpha));
        return Math.min(1, Math.max(0, 0.5 * (low + high + side * beta * distance)));
    }

    /** x^(eta + 1) for the spread index eta = 15: near-parent children, common practice. */
    private static double sixteenthPower(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        return x8 * x8;
    }

    private static double sixteenthRoot(double x) {
        return Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(x))));
    }
}
