package foamfront.optimizer.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A front of bounded size over all feasible designs offered: objective space is cut into boxes, of the boxes only the
 * non-dominated are kept, and in each box one design, the nearest to the box's best corner. Besides, the best design in each
 * objective is kept for good. Over the cap all boxes double.
 *
 * <p>Box dominance: Laumanns, Thiele, Deb, Zitzler, Combining convergence and diversity in evolutionary multiobjective
 * optimization, Evolutionary Computation 10(3) (2002) 263-282 (from memory). While no box doubles the content does not depend
 * on the order of offers (*derived*: the non-dominated boxes of a set, and the first of a total order in each).
 */
final class EpsilonArchive {
    /** Front order: by objectives, then by decoded values. */
    static final Comparator<Fitness> ORDER = EpsilonArchive::compare;

    /**
     * Of a box: so far above a value its box begins. An objective that moves in steps of one side (loads weighed to 5 g) would
     * otherwise share a box with its neighbour wherever the quotient rounds down.
     */
    private static final double EDGE = 1e-9;

    private final double[] side;
    private final int cap;
    private final long[] box;
    private final @Nullable Fitness[] best;
    private BoxGroups boxes = new BoxGroups();

    EpsilonArchive(List<Double> resolution, int cap) {
        side = resolution.stream().mapToDouble(Double::doubleValue).toArray();
        this.cap = cap;
        box = new long[side.length];
        best = new @Nullable Fitness[side.length];
    }

    /** True where the design now stands in the archive, as the holder of a box or the best in an objective. */
    boolean offer(Fitness fitness) {
        double[] objectives = fitness.objectives();
        boolean isBest = false;
        for (int i = 0; i < best.length; i++) {
            Fitness holder = best[i];
            if (holder == null || objectives[i] < holder.objectives()[i] || isBetterTie(fitness, holder, i)) {
                best[i] = fitness;
                isBest = true;
            }
        }
        return file(fitness) || isBest;
    }

    private static boolean isBetterTie(Fitness fitness, Fitness holder, int objective) {
        return fitness.objectives()[objective] == holder.objectives()[objective] && compare(fitness, holder) < 0;
    }

    private boolean file(Fitness fitness) {
        double fromCorner = 0;
        double[] objectives = fitness.objectives();
        for (int i = 0; i < side.length; i++) {
            double scaled = objectives[i] / side[i];
            double floor = Math.floor(scaled + EDGE);
            box[i] = (long) floor;
            fromCorner += scaled - floor;
        }
        boolean entered = boxes.offer(box, fromCorner, fitness);
        while (boxes.size() > cap) {
            coarsen();
        }
        return entered;
    }

    private void coarsen() {
        for (int i = 0; i < side.length; i++) {
            side[i] *= 2;
        }
        List<Fitness> held = boxes.members();
        boxes = new BoxGroups();
        for (Fitness fitness : held) {
            file(fitness);
        }
    }

    /** Which design holds which box follows from the set of designs, so their order need not be kept. */
    void exchange(Tape tape) {
        double[] sides = tape.row("sides", side);
        List<Fitness> sorted = boxes.members();
        sorted.sort(ORDER);
        List<Fitness> held = tape.designs("boxes", sorted);
        List<Fitness> extremes = tape.designs(
                "best", Arrays.stream(best).filter(Objects::nonNull).toList());
        System.arraycopy(sides, 0, side, 0, side.length);
        boxes = new BoxGroups();
        held.forEach(this::file);
        for (int i = 0; i < extremes.size(); i++) {
            best[i] = extremes.get(i); // all or none are there
        }
    }

    int size() {
        return boxes.size();
    }

    /** How often the boxes doubled shows in their side. */
    double side(int objective) {
        return side[objective];
    }

    /** The front with the best in each objective, sorted. */
    List<Fitness> members() {
        List<Fitness> result = new ArrayList<>(boxes.members());
        for (Fitness extreme : best) {
            if (extreme != null && result.stream().noneMatch(member -> isSame(member, extreme))) {
                result.add(extreme);
            }
        }
        result.sort(ORDER);
        return result;
    }

    private static boolean isSame(Fitness a, Fitness b) {
        return LexicographicOrder.compare(a.objectives(), b.objectives()) == 0;
    }

    private static int compare(Fitness a, Fitness b) {
        int byObjectives = Arrays.compare(a.objectives(), b.objectives());
        if (byObjectives != 0) {
            return byObjectives;
        }
        int byValues = Arrays.compare(a.design().values(), b.design().values());
        return byValues != 0
                ? byValues
                : Arrays.compare(a.design().genes(), b.design().genes());
    }
}
