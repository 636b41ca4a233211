package foamfront.optimizer.search;

/** The area that growing points in the plane dominate up to a corner: steps from left to right, each lower than the last. */
final class Staircase {
    private final double[] x;
    private final double[] y;
    private int size;
    private double area;

    /** @param points at most this many will be added */
    Staircase(int points, double cornerX, double cornerY) {
        x = new double[points + 2];
        y = new double[points + 2];
        x[0] = Double.NEGATIVE_INFINITY;
        y[0] = cornerY;
        x[1] = cornerX;
        y[1] = Double.NEGATIVE_INFINITY;
        size = 2;
    }

    double area() {
        return area;
    }

    void add(double px, double py) {
        int at = firstNotLeftOf(px);
        if (y[at - 1] <= py || (x[at] == px && y[at] <= py)) {
            return;
        }
        int end = at;
        double ceiling = y[at - 1];
        double left = px;
        while (y[end] >= py) {
            area += (x[end] - left) * (ceiling - py);
            left = x[end];
            ceiling = y[end];
            end++;
        }
        area += (x[end] - left) * (ceiling - py);
        System.arraycopy(x, end, x, at + 1, size - end);
        System.arraycopy(y, end, y, at + 1, size - end);
        size += at + 1 - end;
        x[at] = px;
        y[at] = py;
    }

    private int firstNotLeftOf(double px) {
        int low = 1;
        int high = size - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (x[middle] < px) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
