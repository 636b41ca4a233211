package foamfront.optimizer.explore;

import foamfront.model.mission.Bound;
import foamfront.optimizer.front.Costs;
import foamfront.optimizer.front.Front;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.search.Interest;
import foamfront.optimizer.study.Aim;
import foamfront.optimizer.study.Study;
import java.util.ArrayList;
import java.util.List;

/** A study's region of interest: for the search a box of objectives, for the report a choice of rows. */
final class Region {
    private Region() {}

    /** The box; everything where the study prefers nothing. */
    static Interest of(Study study) {
        if (study.prefer().isEmpty()) {
            return Interest.ALL;
        }
        List<Double> low = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        for (Aim aim : study.aims()) {
            double from = Double.NEGATIVE_INFINITY;
            double to = Double.POSITIVE_INFINITY;
            for (Bound bound : study.prefer()) {
                if (bound.measure() == aim.measure()) {
                    double one = Costs.of(aim, bound.low());
                    double other = Costs.of(aim, bound.high());
                    from = Math.min(one, other);
                    to = Math.max(one, other);
                }
            }
            low.add(from);
            high.add(to);
        }
        return new Interest(low, high);
    }

    static boolean holds(Study study, Row row) {
        return study.prefer().stream()
                .allMatch(bound -> bound.violation(row.measures().of(bound.measure())) == 0);
    }

    /** The rows inside; all of them where none is. */
    static Front narrowed(Study study, Front front) {
        List<Row> inside =
                front.rows().stream().filter(row -> holds(study, row)).toList();
        return inside.isEmpty() ? front : Front.of(front.aims(), inside);
    }
}
