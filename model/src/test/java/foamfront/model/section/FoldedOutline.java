package foamfront.model.section;

import java.util.TreeSet;

/**
 * A section as folded, made into a closed polygon for {@link PanelMethod}: sides divided finely towards their ends, the blunt nose of
 * a plate rounded to a half circle, and the blunt trailing edge closed to a point on the mean line as the wake closes it, over
 * the last facet of a folded section and over one thickness of a plate.
 */
final class FoldedOutline {
    private static final int NOSE_FACETS = 8;
    private static final int LEAST_DIVISIONS = 6;

    private final SectionShape shape;
    private final double noseRadius;
    private final double tail;

    FoldedOutline(SectionShape shape) {
        this.shape = shape;
        this.noseRadius = 0.5 * (shape.upper(0) - shape.lower(0));
        int last = shape.stations() - 1;
        double edge = shape.upper(last) - shape.lower(last);
        this.tail = noseRadius > 0 ? edge : 1 - shape.x(last - 1);
    }

    /** The flow about it, a side of the whole chord divided into this many. */
    PanelMethod flow(int divisions) {
        double[] stations = stations();
        int n = stations.length - 1;
        double[] cornersX = new double[2 * n + 1];
        double[] cornersZ = new double[2 * n + 1];
        for (int i = 0; i <= n; i++) {
            double at = stations[i];
            double half = 0.5 * (height(at, true) - height(at, false)) * nose(at) * Math.min(1, (1 - at) / tail);
            double mean = 0.5 * (height(at, true) + height(at, false));
            cornersX[n - i] = at;
            cornersZ[n - i] = mean - half;
            cornersX[n + i] = at;
            cornersZ[n + i] = mean + half;
        }
        return divided(cornersX, cornersZ, divisions);
    }

    private double[] stations() {
        TreeSet<Double> stations = new TreeSet<>();
        for (int i = 0; i < shape.stations(); i++) {
            stations.add(shape.x(i));
        }
        for (int i = 1; i <= NOSE_FACETS && noseRadius > 0; i++) {
            stations.add(noseRadius * (1 - Math.cos(0.5 * Math.PI * i / NOSE_FACETS)));
        }
        if (noseRadius > 0) {
            stations.add(1 - tail);
        }
        return stations.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private double nose(double at) {
        double ahead = 1 - Math.min(1, at / noseRadius);
        return noseRadius > 0 ? Math.sqrt(1 - ahead * ahead) : 1;
    }

    private double height(double at, boolean upper) {
        int i = 1;
        while (i < shape.stations() - 1 && shape.x(i) < at) {
            i++;
        }
        double part = (at - shape.x(i - 1)) / (shape.x(i) - shape.x(i - 1));
        double from = upper ? shape.upper(i - 1) : shape.lower(i - 1);
        double to = upper ? shape.upper(i) : shape.lower(i);
        return from + part * (to - from);
    }

    private static PanelMethod divided(double[] cornersX, double[] cornersZ, int divisions) {
        int[] parts = new int[cornersX.length - 1];
        int sum = 0;
        for (int i = 0; i < parts.length; i++) {
            double length = Math.hypot(cornersX[i + 1] - cornersX[i], cornersZ[i + 1] - cornersZ[i]);
            parts[i] = Math.max(LEAST_DIVISIONS, (int) (divisions * length));
            sum += parts[i];
        }
        double[] x = new double[sum + 1];
        double[] z = new double[sum + 1];
        int at = 0;
        for (int i = 0; i < parts.length; i++) {
            for (int k = 0; k < parts[i]; k++) {
                double share = 0.5 * (1 - Math.cos(Math.PI * k / parts[i]));
                x[at] = cornersX[i] + share * (cornersX[i + 1] - cornersX[i]);
                z[at++] = cornersZ[i] + share * (cornersZ[i + 1] - cornersZ[i]);
            }
        }
        x[at] = cornersX[parts.length];
        z[at] = cornersZ[parts.length];
        return PanelMethod.about(x, z);
    }
}
