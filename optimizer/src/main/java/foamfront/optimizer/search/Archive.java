package foamfront.optimizer.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is remembered beside a population: the joint front, the front of every niche, the designs nearest to feasible while
 * nothing is, and the span of all feasible objectives seen.
 */
final class Archive {
    /** Members of a niche's own front; enough to draw it. */
    private static final int NICHE_CAP = 100;

    private static final int NEAREST_KEPT = 10;

    private final EpsilonArchive front;
    private final List<EpsilonArchive> nicheFronts = new ArrayList<>();
    private final List<Fitness> nearest = new ArrayList<>();
    private final @Nullable Fitness[] nicheNearest;
    private final List<Fitness> arrivals = new ArrayList<>();
    private final double[] least;
    private final double[] most;

    Archive(Problem problem, int cap) {
        front = new EpsilonArchive(problem.resolution(), cap);
        int niches = problem.niches().count();
        for (int k = 0; k < niches && niches > 1; k++) {
            nicheFronts.add(new EpsilonArchive(problem.resolution(), Math.min(cap, NICHE_CAP)));
        }
        nicheNearest = new @Nullable Fitness[niches];
        least = new double[problem.objectives()];
        most = new double[problem.objectives()];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(most, Double.NEGATIVE_INFINITY);
    }

    /** True where the design entered the joint front. */
    boolean offer(Fitness fitness) {
        if (!fitness.isFeasible()) {
            offerNearest(fitness);
            return false;
        }
        double[] objectives = fitness.objectives();
        for (int i = 0; i < least.length; i++) {
            least[i] = Math.min(least[i], objectives[i]);
            most[i] = Math.max(most[i], objectives[i]);
        }
        int niche = fitness.design().niche();
        boolean ofNiche =
                niche >= 0 && !nicheFronts.isEmpty() && nicheFronts.get(niche).offer(fitness);
        boolean entered = front.offer(fitness);
        if (entered || ofNiche) {
            arrivals.add(fitness);
        }
        return entered;
    }

    private void offerNearest(Fitness fitness) {
        int niche = fitness.design().niche();
        if (niche >= 0) {
            Fitness holder = nicheNearest[niche];
            nicheNearest[niche] = holder == null || fitness.violation() < holder.violation() ? fitness : holder;
        }
        int last = nearest.size() - 1;
        if ((last + 1 == NEAREST_KEPT && nearest.get(last).violation() <= fitness.violation())
                || nearest.stream().anyMatch(other -> other.design().equals(fitness.design()))) {
            return;
        }
        int at = last + 1;
        while (at > 0 && nearest.get(at - 1).violation() > fitness.violation()) {
            at--;
        }
        nearest.add(at, fitness);
        if (nearest.size() > NEAREST_KEPT) {
            nearest.remove(NEAREST_KEPT);
        }
    }

    /** Takes over what entered another archive since it was last taken over. */
    void takeArrivals(Archive other) {
        other.arrivals.forEach(this::offer);
        other.arrivals.clear();
        arrivals.clear();
        other.nearest.forEach(this::offer);
        for (int i = 0; i < least.length; i++) {
            least[i] = Math.min(least[i], other.least[i]);
            most[i] = Math.max(most[i], other.most[i]);
        }
    }

    void exchange(Tape tape) {
        front.exchange(tape);
        nicheFronts.forEach(niche -> niche.exchange(tape));
        replace(nearest, tape.designs("nearest", nearest));
        replace(arrivals, tape.designs("arrivals", arrivals));
        for (int k = 0; k < nicheNearest.length; k++) {
            Fitness held = nicheNearest[k];
            List<Fitness> kept = tape.designs("niche", held == null ? List.of() : List.of(held));
            nicheNearest[k] = kept.isEmpty() ? null : kept.get(0);
        }
        System.arraycopy(tape.row("least", least), 0, least, 0, least.length);
        System.arraycopy(tape.row("most", most), 0, most, 0, most.length);
    }

    private static void replace(List<Fitness> list, List<Fitness> by) {
        List<Fitness> copy = List.copyOf(by);
        list.clear();
        list.addAll(copy);
    }

    /** Sorted. */
    List<Fitness> front() {
        return front.members();
    }

    /** Of one niche, sorted; the joint front where there is one niche only. */
    List<Fitness> front(int niche) {
        return nicheFronts.isEmpty() ? front() : nicheFronts.get(niche).members();
    }

    /** What can bring a niche back: its front, or the design nearest to feasible while it has none. */
    List<Fitness> revivable(int niche) {
        List<Fitness> own = front(niche);
        Fitness almost = nicheNearest[niche];
        return own.isEmpty() && almost != null ? List.of(almost) : own;
    }

    /** Designs nearest to feasible, best first; of interest while the front is empty. */
    List<Fitness> nearest() {
        return Collections.unmodifiableList(nearest);
    }

    double least(int objective) {
        return least[objective];
    }

    double most(int objective) {
        return most[objective];
    }
}
