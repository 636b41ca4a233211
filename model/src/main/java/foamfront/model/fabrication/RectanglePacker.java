package foamfront.model.fabrication;

import java.util.Arrays;

/**
 * Packs rectangles into a strip or into equal bins: best-fit skyline with turning. The lowest gap is filled with the rectangle
 * that fits it best; where none fits, the gap is lifted to its lower neighbour. After E. K. Burke, G. Kendall & G. Whitwell, "A
 * new placement heuristic for the orthogonal stock-cutting problem", Operations Research 52 (2004) 655-671, with the fitness
 * of flush sides of S. C. H. Leung, D. Zhang & K. M. Sim, "A two-stage intelligent search algorithm for the two-dimensional
 * strip packing problem", European Journal of Operational Research 215 (2011) (both from memory).
 *
 * <p>Owned by one worker: it keeps its scratch arrays, and a pass depends only on what was loaded and on the order asked for.
 */
final class RectanglePacker {
    private double[] width = new double[64];
    private double[] height = new double[64];
    private boolean[] turnable = new boolean[64];
    private int n;

    private double stripWidth;
    private double limit;

    private final Skyline skyline = new Skyline();
    private int[] waiting = new int[64];
    // results by rectangle
    double[] atX = new double[64];
    double[] atY = new double[64];
    int[] bin = new int[64];
    boolean[] turned = new boolean[64];
    private int bins;
    private double lastBinArea;
    private double top;

    /** Starts a new problem: a strip (infinite {@code limit}) or bins of that height. */
    void clear(double stripWidth, double limit) {
        n = 0;
        this.stripWidth = stripWidth;
        this.limit = limit;
    }

    void add(double w, double h, boolean mayTurn) {
        if (n == width.length) {
            grow();
        }
        width[n] = w;
        height[n] = h;
        turnable[n] = mayTurn;
        n++;
    }

    private void grow() {
        int size = 2 * n;
        width = Arrays.copyOf(width, size);
        height = Arrays.copyOf(height, size);
        turnable = Arrays.copyOf(turnable, size);
        waiting = new int[size];
        atX = new double[size];
        atY = new double[size];
        bin = new int[size];
        turned = new boolean[size];
    }

    int size() {
        return n;
    }

    double width(int i) {
        return width[i];
    }

    double height(int i) {
        return height[i];
    }

    boolean turnable(int i) {
        return turnable[i];
    }

    /** Bins used by the last pass. */
    int bins() {
        return bins;
    }

    /** Height of the last bin, of the strip when there is one only. */
    double top() {
        return top;
    }

    /** What a pass is judged by: the height of a strip; full bins and the filled share of the last one. Less is better. */
    double score() {
        return limit == Double.POSITIVE_INFINITY ? top : bins - 1 + lastBinArea / (stripWidth * limit);
    }

    /** Places all rectangles, ties going to the earlier in {@code order}. */
    void pack(int[] order, Rule rule) {
        System.arraycopy(order, 0, waiting, 0, n);
        int left = n;
        bins = 1;
        lastBinArea = 0;
        skyline.reset(stripWidth);
        boolean empty = true;
        while (left > 0) {
            int segment = skyline.lowest();
            int choice = choose(segment, left, rule);
            if (choice >= 0) {
                int slot = choice >> 1;
                set(segment, waiting[slot], (choice & 1) == 1);
                left--;
                System.arraycopy(waiting, slot + 1, waiting, slot, left - slot);
                empty = false;
            } else if (!skyline.raise(segment)) {
                if (empty) {
                    oversize(waiting[0]);
                    left--;
                    System.arraycopy(waiting, 1, waiting, 0, left);
                }
                if (left > 0) {
                    bins++;
                    lastBinArea = 0;
                }
                skyline.reset(stripWidth);
                empty = true;
            }
        }
        top = skyline.top();
    }

    /** A rectangle larger than the bin lies in one by itself. */
    private void oversize(int i) {
        atX[i] = 0;
        atY[i] = 0;
        bin[i] = bins - 1;
        turned[i] = false;
        lastBinArea = width[i] * height[i];
    }

    /** Slot in the waiting list times 2, plus 1 when turned; −1 when nothing fits. */
    private int choose(int segment, int left, Rule rule) {
        double room = skyline.width(segment);
        double headroom = limit - skyline.y(segment);
        double leftRise = skyline.leftRise(segment);
        double rightRise = skyline.rightRise(segment);
        int best = -1;
        double bestFit = -1;
        for (int slot = 0; slot < left; slot++) {
            int i = waiting[slot];
            double w = width[i];
            double h = height[i];
            double fit = rule.fitness(w, h, room, headroom, leftRise, rightRise);
            if (fit > bestFit) {
                bestFit = fit;
                best = 2 * slot;
            }
            if (turnable[i] && w != h) {
                fit = rule.fitness(h, w, room, headroom, leftRise, rightRise);
                if (fit > bestFit) {
                    bestFit = fit;
                    best = 2 * slot + 1;
                }
            }
        }
        return best;
    }

    private void set(int segment, int i, boolean turn) {
        double w = turn ? height[i] : width[i];
        double h = turn ? width[i] : height[i];
        double leftRise = skyline.leftRise(segment);
        double rightRise = skyline.rightRise(segment);
        boolean flushRight = Math.abs(h - rightRise) <= Skyline.FLUSH;
        boolean flushLeft = Math.abs(h - leftRise) <= Skyline.FLUSH;
        boolean atLeft = flushLeft || (!flushRight && leftRise >= rightRise);
        atY[i] = skyline.y(segment);
        bin[i] = bins - 1;
        turned[i] = turn;
        lastBinArea += w * h;
        atX[i] = skyline.place(segment, w, h, atLeft);
    }

    /** How well a rectangle fits a gap; negative where it does not. */
    enum Rule {
        /** The widest that fits. */
        WIDEST {
            @Override
            double fitness(double w, double h, double room, double headroom, double leftRise, double rightRise) {
                if (w > room + Skyline.FLUSH || h > headroom + Skyline.FLUSH) {
                    return -1;
                }
                return w / room;
            }
        },
        /** Most flush sides, then the order. */
        FLUSH {
            @Override
            double fitness(double w, double h, double room, double headroom, double leftRise, double rightRise) {
                if (w > room + Skyline.FLUSH || h > headroom + Skyline.FLUSH) {
                    return -1;
                }
                boolean full = room - w <= Skyline.FLUSH;
                boolean left = Math.abs(h - leftRise) <= Skyline.FLUSH;
                boolean right = Math.abs(h - rightRise) <= Skyline.FLUSH;
                if (full) {
                    return left && right ? 5 : left || right ? 4 : 3;
                }
                return left || right ? 2 : 1;
            }
        };

        abstract double fitness(double w, double h, double room, double headroom, double leftRise, double rightRise);
    }
}
