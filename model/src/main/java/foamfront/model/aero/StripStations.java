package foamfront.model.aero;

/**
 * Where strips begin and end along a surface, and where their control points lie, as distances from the root along the
 * surface.
 *
 * <p>Nodes are the integers and control points the half-integers of one smooth mapping s(u), because the sum over
 * trailing vortices is then the mid-point rule of the downwash integral, whose singular part cancels; control points at
 * strip middles would cost several per cent of slope and efficiency. Three mappings:
 *
 * <ul>
 *   <li>a surface alone: s = L sin(π u / 2N), clustered at the tip, where the load falls like a square root;
 *   <li>a tail behind a wing: N equal strips of width h = L / (N + 1/4): a lattice of equal strips ends a quarter strip
 *       short of the tip (G. J. Hough, "Remarks on Vortex-Lattice Methods", J. Aircraft 10(5), 1973, from memory);
 *   <li>a wing before a tail: the tail's own stations up to its last node, so that the wing's trailing vortices pass
 *       the tail half-way between its control points, then T + (L - T) S (A + (1 - A) S) with S = sin(π v / 2), where A
 *       makes the spacing continuous at T (derived; A = 1 is the first mapping). A wide tail leaves the wing fewer
 *       strips outboard - none when the rest is about the quarter strip of the second mapping - and is cut finer itself.
 * </ul>
 */
final class StripStations {
    /** Distance of the lattice's end from a tip cut into equal strips, in strips. */
    private static final double TIP_INSET = 0.25;

    /** Above this A the mapping of a wing before a tail crowds its middle: fewer strips outboard then. */
    private static final double MOST_A = 1.7;

    private final int wingStrips;
    private final int outboardStrips;
    private final int tailStrips;
    private final double[] wingSines;
    private final double[][] outboardSines;
    private final double[] tailSines;

    /** Distance of each node from the root, m. */
    final double[] node;

    /** Distance of each control point from the root, m. */
    final double[] control;

    /** Strips of the latest mapping. */
    int strips;

    /** Equal strips that the tail and the wings before it share. */
    private int equalStrips;

    StripStations(Resolution resolution) {
        wingStrips = resolution.wingStrips();
        outboardStrips = resolution.outboardStrips();
        tailStrips = resolution.tailStrips();
        wingSines = sines(wingStrips);
        outboardSines = new double[outboardStrips + 1][];
        for (int n = 0; n <= outboardStrips; n++) {
            outboardSines[n] = sines(n);
        }
        tailSines = sines(tailStrips);
        node = new double[resolution.mostStrips() + 1];
        control = new double[resolution.mostStrips()];
    }

    /** sin(π k / 4n) for k = 0 … 2n: nodes and control points alternate. */
    private static double[] sines(int n) {
        double[] sines = new double[2 * n + 1];
        for (int k = 0; k <= 2 * n; k++) {
            sines[k] = StrictMath.sin(Math.PI * k / (4 * n));
        }
        return sines;
    }

    /** How far along itself the last node of a tail cut into equal strips lies, share of its length. */
    static double reach(int count) {
        return count / (count + TIP_INSET);
    }

    /** Takes this many equal strips from now on. */
    void share(int count) {
        equalStrips = count;
    }

    /** Whether a wing that shares the equal strips has all the strips it should. */
    boolean isFull(double length, double inner) {
        return equalStrips + outboard(length, inner) >= tailStrips + outboardStrips;
    }

    /** Strips outboard of {@code inner} that keep A within bounds. */
    private int outboard(double length, double inner) {
        double most = MOST_A * 0.5 * Math.PI * (length - inner) * equalStrips / inner;
        return (int) Math.min(outboardStrips + tailStrips - equalStrips, most);
    }

    void wingAlone(double length) {
        clustered(length, wingSines, wingStrips);
    }

    void tailAlone(double length) {
        clustered(length, tailSines, tailStrips);
    }

    void tailBehindWing(double length) {
        strips = equalStrips;
        equal(reach(equalStrips) * length / equalStrips);
    }

    /** A wing of this length whose inner strips end at {@code inner}, the distance abreast of the tail's last node. */
    void wingBeforeTail(double length, double inner) {
        int outboard = outboard(length, inner);
        double[] sines = outboardSines[outboard];
        strips = equalStrips + outboard;
        equal(inner / equalStrips);
        double rest = length - inner;
        double a = inner / equalStrips * outboard / rest * (2 / Math.PI);
        for (int k = 0; k < outboard; k++) {
            double mid = sines[2 * k + 1];
            double end = sines[2 * k + 2];
            control[equalStrips + k] = inner + rest * mid * (a + (1 - a) * mid);
            node[equalStrips + k + 1] = inner + rest * end * (a + (1 - a) * end);
        }
    }

    private void equal(double step) {
        for (int k = 0; k < equalStrips; k++) {
            node[k] = k * step;
            control[k] = (k + 0.5) * step;
        }
        node[equalStrips] = equalStrips * step;
    }

    private void clustered(double length, double[] sines, int count) {
        strips = count;
        node[0] = 0;
        for (int k = 0; k < count; k++) {
            control[k] = length * sines[2 * k + 1];
            node[k + 1] = length * sines[2 * k + 2];
        }
    }
}
