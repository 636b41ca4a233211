package foamfront.model.aero;

/**
 * Drag coefficients of round rods, straight between measured points.
 *
 * <p>Across the stream, on diameter times length, against Reynolds number and end relief against diameter over length: C.
 * Wieselsberger (1922, given as NACA TN-84), as tabulated by a public study. Along the stream with blunt ends, on frontal area,
 * against length over diameter: Kritzinger (2004), same study. Scatter ±5 %. Few enough points to stand here.
 */
public final class Cylinder {
    private static final double[] REYNOLDS = {
        17.7, 63.6, 196, 892, 2270, 5150, 9180, 15_000, 30_300, 65_500, 161_000, 220_000, 293_000, 391_000, 503_000
    };
    private static final double[] LOG_REYNOLDS = logarithms(REYNOLDS);
    private static final double[] ACROSS = {
        2.12, 1.48, 1.27, 0.964, 0.886, 0.944, 1.06, 1.14, 1.16, 1.17, 1.18, 1.06, 0.910, 0.649, 0.302
    };
    private static final double[] BLUNTNESS = {0, 0.0237, 0.049, 0.0998, 0.200, 0.341, 0.498, 0.998};
    private static final double[] FINITE = {1.19, 0.986, 0.926, 0.820, 0.737, 0.744, 0.687, 0.614};
    private static final double[] FINENESS = {0, 0.43, 0.75, 1.06, 1.30, 1.81, 3.1, 4.4};
    private static final double[] ALONG = {1.17, 1.12, 1.02, 0.911, 0.856, 0.820, 0.818, 0.814};

    /** Up to this length over diameter the measured drag along the stream holds its friction. */
    static final double LONGEST_MEASURED = 4.4;

    private Cylinder() {}

    /** Endless rod across the stream. */
    public static double across(double reynolds) {
        return interpolate(LOG_REYNOLDS, ACROSS, StrictMath.log(reynolds));
    }

    /** What free ends leave of {@link #across}, at Re near 100 000. */
    public static double endRelief(double diameterOverLength) {
        return interpolate(BLUNTNESS, FINITE, diameterOverLength) / FINITE[0];
    }

    /** Blunt-ended rod along the stream. */
    public static double along(double lengthOverDiameter) {
        return interpolate(FINENESS, ALONG, lengthOverDiameter);
    }

    private static double interpolate(double[] x, double[] y, double at) {
        if (at <= x[0]) {
            return y[0];
        }
        for (int i = 1; i < x.length; i++) {
            if (at <= x[i]) {
                return y[i - 1] + (at - x[i - 1]) / (x[i] - x[i - 1]) * (y[i] - y[i - 1]);
            }
        }
        return y[y.length - 1];
    }

    private static double[] logarithms(double[] values) {
        double[] logs = new double[values.length];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = StrictMath.log(values[i]);
        }
        return logs;
    }
}
