package foamfront.model.aero;

import foamfront.model.units.MeasuredTable;

/**
 * Drag coefficients of round rods, straight between measured points.
 *
 * <p>Across the stream, on diameter times length, against Reynolds number and end relief against diameter over length: C.
 * Wieselsberger (1922, given as NACA TN-84), as tabulated by a public study. Along the stream with blunt ends, on frontal area,
 * against length over diameter: Kritzinger (2004), same study. Scatter ±5 %.
 */
public final class Cylinder {
    private static final MeasuredTable ACROSS = MeasuredTable.read(Cylinder.class, "cylinder-across.csv");
    private static final MeasuredTable ENDS = MeasuredTable.read(Cylinder.class, "cylinder-ends.csv");
    private static final MeasuredTable ALONG = MeasuredTable.read(Cylinder.class, "cylinder-along.csv");

    private static final double[] LOG_REYNOLDS = logarithms(ACROSS.column(0));
    private static final double[] DRAG_ACROSS = ACROSS.column(1);
    private static final double[] BLUNTNESS = ENDS.column(0);
    private static final double[] DRAG_FINITE = ENDS.column(1);
    private static final double[] FINENESS = ALONG.column(0);
    private static final double[] DRAG_ALONG = ALONG.column(1);

    /** Up to this length over diameter the measured drag along the stream holds its friction. */
    static final double LONGEST_MEASURED = 4.4;

    private Cylinder() {}

    /** Endless rod across the stream. */
    public static double across(double reynolds) {
        return interpolate(LOG_REYNOLDS, DRAG_ACROSS, StrictMath.log(reynolds));
    }

    /** What free ends leave of {@link #across}, at Re near 100 000. */
    public static double endRelief(double diameterOverLength) {
        return interpolate(BLUNTNESS, DRAG_FINITE, diameterOverLength) / DRAG_FINITE[0];
    }

    /** Blunt-ended rod along the stream. */
    public static double along(double lengthOverDiameter) {
        return interpolate(FINENESS, DRAG_ALONG, lengthOverDiameter);
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
