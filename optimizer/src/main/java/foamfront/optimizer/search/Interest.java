package foamfront.optimizer.search;

import java.util.List;

/**
 * The region of the trade-off that somebody cares about: half of the survivors' places are kept for what lies inside it,
 * or nearest to it while it is empty, while the archive goes on keeping the whole front. It never makes a design infeasible.
 *
 * @param low least objective of interest, one per objective, or −∞
 * @param high greatest, or +∞
 */
public record Interest(List<Double> low, List<Double> high) {
    /** Everything is. */
    public static final Interest ALL = new Interest(List.of(), List.of());

    public Interest {
        low = List.copyOf(low);
        high = List.copyOf(high);
        if (low.size() != high.size()) {
            throw new IllegalArgumentException(low.size() + " low ends for " + high.size() + " high ends");
        }
    }

    boolean isAll() {
        return low.isEmpty();
    }

    /** How far objectives lie outside, each in units of its resolution; all 0 inside. */
    double[] misses(double[] objectives, List<Double> resolution) {
        double[] misses = new double[objectives.length];
        for (int i = 0; i < misses.length; i++) {
            double outside = Math.max(low.get(i) - objectives[i], objectives[i] - high.get(i));
            misses[i] = Math.max(0, outside) / resolution.get(i);
        }
        return misses;
    }
}
