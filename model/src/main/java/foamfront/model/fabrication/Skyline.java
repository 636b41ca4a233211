package foamfront.model.fabrication;

/**
 * The upper edge of what is already placed on a sheet: level segments from left to right. Owned by one packer; grows as needed.
 */
final class Skyline {
    /** Sides equal within this are flush, m (or units of a data set): far below any cut, far above rounding. */
    static final double FLUSH = 1e-9;

    private double[] x = new double[64];
    private double[] y = new double[64];
    private double[] w = new double[64];
    private int n;

    void reset(double width) {
        n = 1;
        x[0] = 0;
        y[0] = 0;
        w[0] = width;
    }

    /** The lowest segment, leftmost of equals. */
    int lowest() {
        int best = 0;
        for (int i = 1; i < n; i++) {
            if (y[i] < y[best] - FLUSH) {
                best = i;
            }
        }
        return best;
    }

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    double width(int i) {
        return w[i];
    }

    /** Rise to the left neighbour, infinite at the sheet's edge. */
    double leftRise(int i) {
        return i == 0 ? Double.POSITIVE_INFINITY : y[i - 1] - y[i];
    }

    double rightRise(int i) {
        return i == n - 1 ? Double.POSITIVE_INFINITY : y[i + 1] - y[i];
    }

    double top() {
        double top = 0;
        for (int i = 0; i < n; i++) {
            top = Math.max(top, y[i]);
        }
        return top;
    }

    /** Lifts segment i to its lower neighbour; false when it spans the whole sheet. */
    boolean raise(int i) {
        if (n == 1) {
            return false;
        }
        y[i] += Math.min(leftRise(i), rightRise(i));
        merge(i);
        return true;
    }

    /** Sets a part on segment i at its left or right end and gives its x. */
    double place(int i, double width, double height, boolean left) {
        double at = left ? x[i] : x[i] + w[i] - width;
        if (w[i] - width <= FLUSH) {
            at = x[i];
            y[i] += height;
            merge(i);
            return at;
        }
        insert(left ? i : i + 1);
        int part = left ? i : i + 1;
        int rest = left ? i + 1 : i;
        double base = left ? y[i + 1] : y[i];
        double start = left ? x[i + 1] : x[i];
        double full = left ? w[i + 1] : w[i];
        x[part] = at;
        y[part] = base + height;
        w[part] = width;
        x[rest] = left ? start + width : start;
        y[rest] = base;
        w[rest] = full - width;
        merge(part);
        return at;
    }

    private void insert(int at) {
        if (n == x.length) {
            x = java.util.Arrays.copyOf(x, 2 * n);
            y = java.util.Arrays.copyOf(y, 2 * n);
            w = java.util.Arrays.copyOf(w, 2 * n);
        }
        for (int k = n; k > at; k--) {
            x[k] = x[k - 1];
            y[k] = y[k - 1];
            w[k] = w[k - 1];
        }
        n++;
    }

    /** Joins segment i with level neighbours. */
    private void merge(int i) {
        int at = i;
        if (at + 1 < n && Math.abs(y[at + 1] - y[at]) <= FLUSH) {
            w[at] += w[at + 1];
            remove(at + 1);
        }
        if (at > 0 && Math.abs(y[at - 1] - y[at]) <= FLUSH) {
            w[at - 1] += w[at];
            y[at - 1] = Math.max(y[at - 1], y[at]);
            remove(at);
        }
    }

    private void remove(int at) {
        n--;
        for (int k = at; k < n; k++) {
            x[k] = x[k + 1];
            y[k] = y[k + 1];
            w[k] = w[k + 1];
        }
    }
}
