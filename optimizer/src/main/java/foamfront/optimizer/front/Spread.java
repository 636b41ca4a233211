package foamfront.optimizer.front;

import foamfront.optimizer.study.Aim;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** A few rows that show a whole front: its extremes, its compromise, then always the row farthest from those chosen. */
final class Spread {
    private Spread() {}

    static List<Integer> choose(Front front, int count) {
        SortedSet<Integer> chosen = new TreeSet<>();
        if (front.isEmpty()) {
            return List.of();
        }
        for (Aim aim : front.aims()) {
            chosen.add(front.best(aim));
        }
        chosen.add(front.compromise());
        double[][] unit = toUnitBox(front.costs());
        while (chosen.size() < Math.min(count, front.size())) {
            chosen.add(farthest(unit, chosen));
        }
        return new ArrayList<>(chosen);
    }

    private static int farthest(double[][] unit, SortedSet<Integer> chosen) {
        int best = -1;
        double gap = -1;
        for (int i = 0; i < unit.length; i++) {
            if (chosen.contains(i)) {
                continue;
            }
            double nearest = Double.POSITIVE_INFINITY;
            for (int other : chosen) {
                nearest = Math.min(nearest, squaredDistance(unit[i], unit[other]));
            }
            if (nearest > gap) {
                gap = nearest;
                best = i;
            }
        }
        return best;
    }

    private static double squaredDistance(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += (a[k] - b[k]) * (a[k] - b[k]);
        }
        return sum;
    }

    private static double[][] toUnitBox(double[][] costs) {
        double[][] unit = new double[costs.length][costs[0].length];
        for (int k = 0; k < costs[0].length; k++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (double[] row : costs) {
                least = Math.min(least, row[k]);
                most = Math.max(most, row[k]);
            }
            for (int i = 0; i < costs.length; i++) {
                unit[i][k] = most > least ? (costs[i][k] - least) / (most - least) : 0;
            }
        }
        return unit;
    }
}
