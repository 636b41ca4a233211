package foamfront.optimizer.explore;

import foamfront.model.appraisal.LimitCheck;
import foamfront.model.mission.Bound;
import foamfront.optimizer.front.Row;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A limit that the designs nearest to feasible miss.
 *
 * @param bound the limit
 * @param missed by how many of them
 * @param of how many were looked at
 * @param nearest the value that comes nearest to holding, SI
 */
public record Blocker(Bound bound, int missed, int of, double nearest) {
    /** The limits missed by any of {@code rows}, the most missed first. */
    static List<Blocker> of(List<Row> rows) {
        List<Blocker> blockers = new ArrayList<>();
        List<Bound> bounds = rows.stream()
                .flatMap(row -> row.limits().stream())
                .map(LimitCheck::bound)
                .distinct()
                .toList();
        for (Bound bound : bounds) {
            Blocker blocker = of(bound, rows);
            if (blocker.missed > 0) {
                blockers.add(blocker);
            }
        }
        blockers.sort(Comparator.comparingInt((Blocker blocker) -> -blocker.missed)
                .thenComparing(blocker -> blocker.bound.measure()));
        return blockers;
    }

    private static Blocker of(Bound bound, List<Row> rows) {
        int missed = 0;
        double nearest = Double.NaN;
        double margin = Double.NEGATIVE_INFINITY;
        for (Row row : rows) {
            for (LimitCheck check : row.limits()) {
                if (!check.bound().equals(bound) || check.holds()) {
                    continue;
                }
                missed++;
                if (check.margin() > margin) {
                    margin = check.margin();
                    nearest = check.value();
                }
            }
        }
        return new Blocker(bound, missed, rows.size(), nearest);
    }
}
