package foamfront.optimizer.front;

import foamfront.optimizer.study.Aim;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The best trade-offs: rows of which none is at least as good as another on every aim and better on one, in one total order
 * (best in the first aim first) that does not depend on how they came in.
 */
public final class Front {
    private final List<Aim> aims;
    private final List<Row> rows;

    private Front(List<Aim> aims, List<Row> rows) {
        this.aims = List.copyOf(aims);
        this.rows = List.copyOf(rows);
    }

    /** The non-dominated among {@code candidates}; of equals the first in the total order stays. */
    public static Front of(List<Aim> aims, List<Row> candidates) {
        if (aims.isEmpty()) {
            throw new IllegalArgumentException("a front needs an aim");
        }
        List<Row> sorted = new ArrayList<>(candidates);
        sorted.sort(order(aims));
        List<Row> kept = new ArrayList<>();
        for (Row candidate : sorted) {
            // Sorted by the first aim, a row can only be beaten or matched by one before it.
            if (kept.stream().noneMatch(row -> coversAll(aims, row, candidate))) {
                kept.add(candidate);
            }
        }
        return new Front(aims, kept);
    }

    /** True where {@code a} is at least as good as {@code b} on every aim. */
    private static boolean coversAll(List<Aim> aims, Row a, Row b) {
        for (Aim aim : aims) {
            if (!(Costs.of(aim, a.measures()) <= Costs.of(aim, b.measures()))) {
                return false;
            }
        }
        return true;
    }

    private static Comparator<Row> order(List<Aim> aims) {
        return (a, b) -> {
            for (Aim aim : aims) {
                int byAim = Double.compare(Costs.of(aim, a.measures()), Costs.of(aim, b.measures()));
                if (byAim != 0) {
                    return byAim;
                }
            }
            return compareCells(DesignColumns.cells(a.design()), DesignColumns.cells(b.design()));
        };
    }

    private static int compareCells(List<String> a, List<String> b) {
        for (int i = 0; i < a.size(); i++) {
            int byCell = a.get(i).compareTo(b.get(i));
            if (byCell != 0) {
                return byCell;
            }
        }
        return 0;
    }

    public List<Aim> aims() {
        return aims;
    }

    public List<Row> rows() {
        return rows;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    public int size() {
        return rows.size();
    }

    /** The best trade-offs within each layout, layouts in alphabetical order. */
    public static Map<String, Front> byLayout(List<Aim> aims, List<Row> candidates) {
        Map<String, List<Row>> groups = new TreeMap<>();
        for (Row row : candidates) {
            groups.computeIfAbsent(row.layout(), layout -> new ArrayList<>()).add(row);
        }
        Map<String, Front> fronts = new TreeMap<>();
        groups.forEach((layout, rows) -> fronts.put(layout, of(aims, rows)));
        return fronts;
    }

    /** Index of the best row in one aim; of equals the first. */
    public int best(Aim aim) {
        int best = 0;
        for (int i = 1; i < rows.size(); i++) {
            if (Costs.of(aim, rows.get(i).measures())
                    < Costs.of(aim, rows.get(best).measures())) {
                best = i;
            }
        }
        return best;
    }

    /** Index of the best compromise, by {@link Compromise}. */
    public int compromise() {
        return Compromise.best(costs());
    }

    /** One array per row, one number per aim, to be minimised. */
    double[][] costs() {
        double[][] costs = new double[rows.size()][aims.size()];
        for (int i = 0; i < costs.length; i++) {
            for (int k = 0; k < aims.size(); k++) {
                costs[i][k] = Costs.of(aims.get(k), rows.get(i).measures());
            }
        }
        return costs;
    }

    /** What a row stands out for, for example {@code most payload; best compromise}; empty for most. */
    public String mark(int row) {
        List<String> marks = new ArrayList<>();
        for (Aim aim : aims) {
            if (best(aim) == row) {
                marks.add(Costs.words(aim));
            }
        }
        if (compromise() == row) {
            marks.add("best compromise");
        }
        return String.join("; ", marks);
    }

    /** Indices of at most {@code count} rows spread over the front: extremes and compromise always, then the farthest. */
    public List<Integer> spread(int count) {
        return Spread.choose(this, count);
    }
}
