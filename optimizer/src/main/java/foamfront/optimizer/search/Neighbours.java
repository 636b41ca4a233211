package foamfront.optimizer.search;

import java.util.Arrays;

/**
 * The nearest neighbours of points of which one after another is taken away; see {@link Thinning}. The points stand in the order
 * of their first number, so that a search outwards from one of them can stop where that number alone is too far away.
 */
final class Neighbours {
    private static final int NOBODY = -1;

    private final double[][] points;
    private final int count;
    private final int[] before;
    private final int[] after;
    private final int[] nearest;
    private final double[] squares;
    private final double[] room;
    private final boolean[] alive;
    private final boolean[] kept;

    Neighbours(double[][] points) {
        this.points = points;
        int n = points.length;
        count = points[0].length;
        before = new int[n];
        after = new int[n];
        nearest = new int[n * count];
        squares = new double[n * count];
        room = new double[n];
        alive = new boolean[n];
        kept = new boolean[n];
        Arrays.fill(alive, true);
        line();
        for (int a = 0; a < n; a++) {
            renew(a);
        }
    }

    private void line() {
        int[] sorted = new int[points.length];
        Arrays.setAll(sorted, k -> k);
        new LexicographicOrder().sort(sorted, sorted.length, points);
        for (int k = 0; k < sorted.length; k++) {
            before[sorted[k]] = k == 0 ? NOBODY : sorted[k - 1];
            after[sorted[k]] = k + 1 == sorted.length ? NOBODY : sorted[k + 1];
        }
    }

    /** Goes last. */
    void protect(int point) {
        kept[point] = true;
        room[point] = Double.POSITIVE_INFINITY;
    }

    boolean isAlive(int point) {
        return alive[point];
    }

    /** The product of the squared distances to the nearest neighbours; infinite for a protected point or one with too few. */
    double room(int point) {
        return room[point];
    }

    void removeMostCrowded() {
        int most = -1;
        for (int a = 0; a < points.length; a++) {
            if (alive[a] && (most < 0 || room[a] < room[most])) {
                most = a;
            }
        }
        alive[most] = false;
        if (before[most] != NOBODY) {
            after[before[most]] = after[most];
        }
        if (after[most] != NOBODY) {
            before[after[most]] = before[most];
        }
        for (int a = 0; a < points.length; a++) {
            if (alive[a] && isNeighbour(a, most)) {
                renew(a);
            }
        }
    }

    private boolean isNeighbour(int point, int other) {
        for (int k = point * count; k < (point + 1) * count; k++) {
            if (nearest[k] == other) {
                return true;
            }
        }
        return false;
    }

    private void renew(int point) {
        int farthest = (point + 1) * count - 1;
        Arrays.fill(squares, point * count, farthest + 1, Double.POSITIVE_INFINITY);
        Arrays.fill(nearest, point * count, farthest + 1, NOBODY);
        int down = before[point];
        int up = after[point];
        double below = step(point, down);
        double above = step(point, up);
        while (Math.min(below, above) < squares[farthest]) {
            if (below < above) {
                note(point, down, square(point, down));
                down = before[down];
                below = step(point, down);
            } else {
                note(point, up, square(point, up));
                up = after[up];
                above = step(point, up);
            }
        }
        weigh(point);
    }

    /** Square of the distance in the first number. */
    private double step(int point, int other) {
        double difference = other == NOBODY ? Double.POSITIVE_INFINITY : points[point][0] - points[other][0];
        return difference * difference;
    }

    /** Puts a neighbour into a point's short sorted list if it is near enough. */
    private void note(int point, int other, double square) {
        int start = point * count;
        int k = start + count - 1;
        if (square >= squares[k]) {
            return;
        }
        while (k > start && squares[k - 1] > square) {
            squares[k] = squares[k - 1];
            nearest[k] = nearest[k - 1];
            k--;
        }
        squares[k] = square;
        nearest[k] = other;
    }

    private void weigh(int point) {
        double product = kept[point] ? Double.POSITIVE_INFINITY : 1;
        for (int k = point * count; k < (point + 1) * count; k++) {
            product *= squares[k];
        }
        room[point] = Double.isNaN(product) ? 0 : product;
    }

    private double square(int a, int b) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double difference = points[a][i] - points[b][i];
            sum += difference * difference;
        }
        return sum;
    }
}
