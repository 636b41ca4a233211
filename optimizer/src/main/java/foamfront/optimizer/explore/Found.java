package foamfront.optimizer.explore;

import foamfront.model.design.Design;
import foamfront.optimizer.front.Front;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.search.Fault;
import foamfront.optimizer.search.Member;
import foamfront.optimizer.search.Outcome;
import foamfront.optimizer.search.Progress;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What an exploration found, computed in full.
 *
 * @param front the best trade-offs, of the study's region of interest where any lie in it; empty where nothing is feasible
 * @param whole how many rows the front has with those outside the study's region of interest
 * @param byLayout the best of each layout, where there is more than one; rows are numbered on from the front's
 * @param met layouts of which any design meets every limit, inside the region of interest or not
 * @param nearest where nothing is feasible, the designs nearest to it
 * @param blockers where nothing is feasible, the limits that rule everything out
 * @param evaluations designs tried
 * @param feasible of them could be built and flown
 * @param stopped whether somebody stopped it early
 * @param stalled whether it ended because the front stood still
 * @param faults designs at which the computation broke down
 * @param faultCount how many there were
 * @param hypervolume of the trade-offs found, as the search measures it ({@link Progress})
 * @param growth of it over the last fifth of the search, 0 to 1
 */
public record Found(
        Front front,
        int whole,
        Map<String, Front> byLayout,
        Set<String> met,
        List<Row> nearest,
        List<Blocker> blockers,
        long evaluations,
        long feasible,
        boolean stopped,
        boolean stalled,
        List<Fault> faults,
        long faultCount,
        double hypervolume,
        double growth) {
    /** The end of a search, over which its growth is told. */
    private static final double LAST = 0.2;

    /** Of each layout's best at most so many are kept, spread over its front. */
    private static final int PER_LAYOUT = 20;

    /** So many designs tell what rules everything out. */
    private static final int NEAREST = 20;

    static Found of(Task task, Outcome outcome) {
        List<Row> rows = rows(task, outcome.front());
        Front whole = Front.of(task.study().aims(), rows);
        Front front = named(task, Region.narrowed(task.study(), whole), 1);
        List<Row> nearest = rows(
                task,
                outcome.leastInfeasible()
                        .subList(0, Math.min(NEAREST, outcome.leastInfeasible().size())));
        List<Progress> history = outcome.history();
        List<Row> all = new ArrayList<>(whole.rows());
        outcome.nicheFronts().forEach(niche -> all.addAll(rows(task, niche)));
        return new Found(
                front,
                whole.size(),
                layouts(task, front, all),
                all.stream().map(Row::layout).collect(Collectors.toCollection(TreeSet::new)),
                named(task, nearest, 1),
                Blocker.of(nearest),
                outcome.evaluations(),
                outcome.feasible(),
                outcome.stoppedEarly(),
                outcome.stalled(),
                outcome.faults(),
                outcome.faultCount(),
                history.isEmpty() ? 0 : history.get(history.size() - 1).hypervolume(),
                growth(history));
    }

    private static double growth(List<Progress> history) {
        if (history.isEmpty()) {
            return 0;
        }
        Progress end = history.get(history.size() - 1);
        double before = 0;
        for (Progress progress : history) {
            if (progress.evaluations() <= (1 - LAST) * end.evaluations()) {
                before = progress.hypervolume();
            }
        }
        return end.hypervolume() == 0 ? 0 : 1 - before / end.hypervolume();
    }

    /** Every design gets the study's name and its row number. */
    private static List<Row> named(Task task, List<Row> rows, int first) {
        List<Row> named = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            Design design = named(row.design(), task.study().name() + " " + (first + i));
            named.add(new Row(design, row.measures(), row.limits(), row.caveats()));
        }
        return named;
    }

    private static List<Row> rows(Task task, List<Member> members) {
        return members.stream()
                .map(member -> task.row().apply(task.genome().decode(member.values())))
                .toList();
    }

    private static Map<String, Front> layouts(Task task, Front front, List<Row> all) {
        boolean narrowed = front.rows().stream().allMatch(row -> Region.holds(task.study(), row));
        List<Row> reported = all.stream()
                .filter(row -> !narrowed || Region.holds(task.study(), row))
                .toList();
        Map<String, Front> best = Front.byLayout(task.study().aims(), reported);
        if (best.size() < 2) {
            return Map.of();
        }
        Map<String, Front> fronts = new LinkedHashMap<>();
        int first = front.size() + 1;
        for (Map.Entry<String, Front> layout : new TreeMap<>(best).entrySet()) {
            List<Row> spread = layout.getValue().spread(PER_LAYOUT).stream()
                    .map(layout.getValue().rows()::get)
                    .toList();
            Front kept = named(task, Front.of(task.study().aims(), spread), first);
            fronts.put(layout.getKey(), kept);
            first += kept.size();
        }
        return fronts;
    }

    private static Front named(Task task, Front front, int first) {
        return Front.of(front.aims(), named(task, front.rows(), first));
    }

    private static Design named(Design design, String name) {
        return new Design(
                name,
                design.wing(),
                design.tail(),
                design.body(),
                design.power(),
                design.undercarriage(),
                design.controls(),
                design.board(),
                design.covering(),
                design.radio(),
                design.loads());
    }

    /** Every row with a number: the front's from 1, then each layout's. */
    public List<Row> numbered() {
        List<Row> all = new ArrayList<>(front.rows());
        byLayout.values().forEach(layout -> all.addAll(layout.rows()));
        return all;
    }
}
