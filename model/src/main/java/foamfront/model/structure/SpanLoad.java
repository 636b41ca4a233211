package foamfront.model.structure;

import java.util.Arrays;

/**
 * How lift lies along one half wing: strips from root to tip. Lift acts at each strip's station; strips adjoin, so their
 * edges are the sums of their widths. Laid again by a worker for each of its designs.
 */
public final class SpanLoad {
    /** Strips of the stand-in: its root moment is exact, its tip deflection within 0.01 %. */
    private static final int ELLIPTIC_STRIPS = 16;

    private static final double[] ETA = new double[ELLIPTIC_STRIPS];
    private static final double[] WIDTH = new double[ELLIPTIC_STRIPS];
    private static final double[] SHARE = new double[ELLIPTIC_STRIPS];

    static {
        // Edges crowd towards the tip, where the load falls like a square root.
        double inner = 0;
        for (int i = 0; i < ELLIPTIC_STRIPS; i++) {
            double outer = i == ELLIPTIC_STRIPS - 1 ? 1 : StrictMath.sin(0.5 * Math.PI * (i + 1) / ELLIPTIC_STRIPS);
            SHARE[i] = EllipticLoad.shear(inner) - EllipticLoad.shear(outer);
            // ∫ η dV between the edges = [M + η V], in the units of M₀ = (4 / 3π) (b/2) V₀.
            double moment = 4 / (3 * Math.PI) * (EllipticLoad.moment(inner) - EllipticLoad.moment(outer))
                    + inner * EllipticLoad.shear(inner)
                    - outer * EllipticLoad.shear(outer);
            ETA[i] = moment / SHARE[i];
            WIDTH[i] = outer - inner;
            inner = outer;
        }
    }

    private double[] y = new double[ELLIPTIC_STRIPS];
    private double[] width = new double[ELLIPTIC_STRIPS];
    private double[] share = new double[ELLIPTIC_STRIPS];
    private int strips;

    /** Forgets the strips laid so far. */
    public void clear() {
        strips = 0;
    }

    /**
     * Lays the next strip from the root.
     *
     * @param y where its lift acts, m from the centre line
     * @param width m
     * @param share of the aeroplane's lift it carries; one half of a lone wing has 0.5 in all
     */
    public void add(double y, double width, double share) {
        if (strips == this.y.length) {
            int room = 2 * strips;
            this.y = Arrays.copyOf(this.y, room);
            this.width = Arrays.copyOf(this.width, room);
            this.share = Arrays.copyOf(this.share, room);
        }
        this.y[strips] = y;
        this.width[strips] = width;
        this.share[strips] = share;
        strips++;
    }

    /**
     * An elliptic load, each strip's lift at its own centroid.
     *
     * @param semispan m
     * @param share of the aeroplane's lift on this half wing, 0.5 for a lone wing
     */
    public static SpanLoad elliptic(double semispan, double share) {
        SpanLoad load = new SpanLoad();
        for (int i = 0; i < ELLIPTIC_STRIPS; i++) {
            load.add(semispan * ETA[i], semispan * WIDTH[i], share * SHARE[i]);
        }
        return load;
    }

    int strips() {
        return strips;
    }

    double y(int strip) {
        return y[strip];
    }

    double width(int strip) {
        return width[strip];
    }

    double share(int strip) {
        return share[strip];
    }

    /** Sum of the strips' shares whatever their sign. */
    double size() {
        double sum = 0;
        for (int i = 0; i < strips; i++) {
            sum += Math.abs(share[i]);
        }
        return sum;
    }

    /** Sum of the strips' widths, m. */
    double semispan() {
        double sum = 0;
        for (int i = 0; i < strips; i++) {
            sum += width[i];
        }
        return sum;
    }

    /** Where the lift's size has its centroid, m; 0 without lift. */
    double arm() {
        double sum = 0;
        double moment = 0;
        for (int i = 0; i < strips; i++) {
            sum += Math.abs(share[i]);
            moment += Math.abs(share[i]) * y[i];
        }
        return sum > 0 ? moment / sum : 0;
    }
}
