package foamfront.optimizer.search;

import java.util.random.RandomGenerator;

/**
 * Points on the unit box of which every axis has exactly one in each of n equal strata.
 *
 * <p>McKay, Beckman, Conover, Technometrics 21(2) (1979) 239-245.
 */
final class LatinHypercube {
    private LatinHypercube() {}

    static double[][] draw(int points, int axes, RandomGenerator random) {
        double[][] result = new double[points][axes];
        int[] strata = new int[points];
        for (int axis = 0; axis < axes; axis++) {
            for (int k = 0; k < points; k++) {
                int other = random.nextInt(k + 1);
                strata[k] = strata[other];
                strata[other] = k;
            }
            for (int k = 0; k < points; k++) {
                result[k][axis] = (strata[k] + random.nextDouble()) / points;
            }
        }
        return result;
    }
}
