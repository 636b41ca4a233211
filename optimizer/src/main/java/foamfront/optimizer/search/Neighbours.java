package foamfront.optimizer.search;

import java.util.Arrays;

/** The nearest neighbours of points of which one after another is taken away; see {@link Thinning}. */
final class Neighbours {
    private final double[][] points;
    private final int count;
    private final int[] nearest;
    private final double[] squares;
    private final double[] room;
    private final boolean[] alive;
    private final boolean[] kept;

    Neighbours(double[][] points) {
        this.points = points;
        int n = points.length;
        count = points[0].length;
        nearest = new int[n * count];
        squares = new double[n * count];
        room = new double[n];
        alive = new boolean[n];
        kept = new boolean[n];
        Arrays.fill(alive, true);
        Arrays.fill(squares, Double.POSITIVE_INFINITY);
        Arrays.fill(nearest, -1);
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < a; b++) {
                double square = square(a, b);
                note(a, b, square);
                note(b, a, square);
            }
        }
        for (int a = 0; a < n; a++) {
            weigh(a);
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
        Arrays.fill(squares, point * count, (point + 1) * count, Double.POSITIVE_INFINITY);
        Arrays.fill(nearest, point * count, (point + 1) * count, -1);
        for (int b = 0; b < points.length; b++) {
            if (alive[b] && b != point) {
                note(point, b, square(point, b));
            }
        }
        weigh(point);
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
