package foamfront.optimizer.explore;

import foamfront.model.appraisal.LimitCheck;
import foamfront.model.design.Design;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Mission;
import foamfront.model.parts.Workshop;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.search.Outcome;
import foamfront.optimizer.search.Search;
import foamfront.optimizer.search.Settings;
import foamfront.optimizer.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * Where nothing is feasible, the smallest sets of limits without which something is.
 *
 * <p>Each suspect is lifted alone, then each pair, and a short search from the designs that came nearest tells whether anything
 * can then be built and flown. A set that works is certain, for a design was found; that no smaller one works is as sure as such
 * a search is. Where neither one nor two suffice, the fewest limits that one of the nearest designs misses stand.
 *
 * @param sets of limits; lifting all of a set lets something fly, or would let the nearest design
 * @param tried whether every smaller set, and every one as small, was tried; not where somebody stopped it
 */
public record Relaxation(List<List<Bound>> sets, boolean tried) {
    /** Limits looked at: 8 alone and 28 pairs take some seconds (judgement). */
    private static final int SUSPECTS = 8;

    private static final int DESIGNS = 2000;
    private static final int POPULATION = 60;

    public Relaxation {
        sets = sets.stream().map(List::copyOf).toList();
    }

    /**
     * Finds them. The same study and seed give the same answer on any machine.
     *
     * @param found in which nothing is feasible
     * @param stop asked now and then; after true no more sets are tried
     */
    public static Relaxation of(
            Study study, Workshop workshop, Found found, long seed, int threads, BooleanSupplier stop) {
        List<Bound> suspects =
                found.blockers().stream().limit(SUSPECTS).map(Blocker::bound).toList();
        List<Bound> fewest = fewest(found.nearest());
        boolean tried = true;
        for (int size = 1; size <= 2 && size < fewest.size(); size++) {
            List<List<Bound>> working = new ArrayList<>();
            for (List<Bound> set : subsets(suspects, size)) {
                tried &= !stop.getAsBoolean();
                if (tried && letsSomethingFly(set, study, workshop, found, seed, threads)) {
                    working.add(set);
                }
            }
            if (!working.isEmpty()) {
                return new Relaxation(working, tried);
            }
        }
        return new Relaxation(fewest.isEmpty() ? List.of() : List.of(fewest), tried);
    }

    /** The limits missed by the design that misses the fewest, the nearest of those. */
    private static List<Bound> fewest(List<Row> nearest) {
        return nearest.stream()
                .map(row -> row.limits().stream()
                        .filter(check -> !check.holds())
                        .map(LimitCheck::bound)
                        .toList())
                .filter(missed -> !missed.isEmpty())
                .min(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    private static List<List<Bound>> subsets(List<Bound> suspects, int size) {
        List<List<Bound>> subsets = new ArrayList<>();
        for (int i = 0; i < suspects.size(); i++) {
            if (size == 1) {
                subsets.add(List.of(suspects.get(i)));
            }
            for (int k = i + 1; k < suspects.size() && size == 2; k++) {
                subsets.add(List.of(suspects.get(i), suspects.get(k)));
            }
        }
        return subsets;
    }

    private static boolean letsSomethingFly(
            List<Bound> set, Study study, Workshop workshop, Found found, long seed, int threads) {
        Mission asked = study.mission(workshop);
        Limits limits = asked.limits();
        for (Bound bound : set) {
            limits = limits.without(bound.measure());
        }
        Task task = Task.of(study, new Mission(asked.site(), limits, asked.drawer(), asked.car(), asked.workshop()));
        List<Design> starts = found.nearest().stream().map(Row::design).toList();
        Settings settings = new Settings(DESIGNS, seed, threads, POPULATION, POPULATION);
        Outcome outcome = Search.run(task.problem(starts), settings, Listener.NONE, () -> false);
        return outcome.feasible() > 0;
    }

    /** Sentences; empty where nothing is known. */
    public String words(Show show) {
        if (sets.isEmpty()) {
            return "";
        }
        List<Bound> first = sets.get(0);
        String list = sets.stream()
                .map(set -> set.stream()
                        .map(bound -> bound.measure().words() + " (" + Explanation.asked(bound, show) + ")")
                        .collect(Collectors.joining(" and ")))
                .collect(Collectors.joining("; or "));
        if (!tried) {
            return "Stopped before every limit had been lifted alone and with another, so that less may do. Enough is lifting "
                    + list + ".";
        }
        return (first.size() == 1
                        ? "Lifting one limit is enough: "
                        : "No one limit alone rules everything out. Enough is lifting ")
                + list + ".";
    }
}
