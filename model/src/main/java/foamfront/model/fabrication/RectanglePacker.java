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

    /** Whether the problem is a strip of open height. */
    boolean strip() {
        return limit == Double.POSITIVE_INFINITY;
    }

    /**
     * Bins these rectangles cannot do without: by their area, and by the first found set of which no two fit one bin, taking
     * the rectangles as loaded.
     */
    int bound() {
        double area = 0;
        int apart = 0;
        for (int i = 0; i < n; i++) {
            area += width[i] * height[i];
            boolean joins = true;
            for (int k = 0; k < apart && joins; k++) {
                joins = !share(i, waiting[k]);
            }
            if (joins) {
                waiting[apart++] = i;
            }
        }
        return Math.max(apart, (int) Math.ceil(area / (stripWidth * limit) - Skyline.FLUSH));
    }

    /**
     * The score no packing can be below: a strip's area over its width or whatever stands highest when laid down as far as it
     * may, or the bins of {@link #bound}.
     */
    double goal() {
        return strip() ? Math.max(area() / stripWidth, highest()) : bound();
    }

    private double highest() {
        double highest = 0;
        double room = stripWidth + Skyline.FLUSH;
        for (int i = 0; i < n; i++) {
            boolean lies = turnable[i] && height[i] <= room;
            boolean stands = width[i] <= room;
            if (stands || lies) {
                highest = Math.max(highest, !lies ? height[i] : stands ? Math.min(width[i], height[i]) : width[i]);
            }
        }
        return highest;
    }

    double breadth() {
        return stripWidth;
    }

    private double area() {
        double area = 0;
        for (int i = 0; i < n; i++) {
            area += width[i] * height[i];
        }
        return area;
    }

    /** The same rectangles filled in from the side: bins turned over, a strip as wide as this one must be high. */
    RectanglePacker across() {
        RectanglePacker side = new RectanglePacker();
        side.clear(strip() ? goal() : limit, strip() ? limit : stripWidth);
        for (int i = 0; i < n; i++) {
            side.add(height[i], width[i], turnable[i]);
        }
        return side;
    }

    /** Takes over what a packer from {@link #across} has placed. */
    void takeAcross(RectanglePacker side) {
        System.arraycopy(side.atX, 0, atY, 0, n);
        System.arraycopy(side.atY, 0, atX, 0, n);
        System.arraycopy(side.bin, 0, bin, 0, n);
        System.arraycopy(side.turned, 0, turned, 0, n);
        bins = side.bins;
        lastBinArea = side.lastBinArea;
        top = 0;
        for (int i = 0; i < n; i++) {
            top = Math.max(top, atY[i] + (turned[i] ? width[i] : height[i]));
        }
    }

    /** Whether two rectangles fit one bin, side by side or one above the other in any allowed attitude. */
    private boolean share(int i, int j) {
        for (int turn = 0; turn < 4; turn++) {
            boolean ti = (turn & 1) == 1;
            boolean tj = (turn & 2) == 2;
            if ((ti && !turnable[i]) || (tj && !turnable[j])) {
                continue;
            }
            double wi = ti ? height[i] : width[i];
            double hi = ti ? width[i] : height[i];
            double wj = tj ? height[j] : width[j];
            double hj = tj ? width[j] : height[j];
            boolean beside = wi + wj <= stripWidth + Skyline.FLUSH && Math.max(hi, hj) <= limit + Skyline.FLUSH;
            boolean above = hi + hj <= limit + Skyline.FLUSH && Math.max(wi, wj) <= stripWidth + Skyline.FLUSH;
            if (beside || above) {
                return true;
            }
        }
        return false;
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
        return strip() ? top : bins - 1 + lastBinArea / (stripWidth * limit);
    }

    /** Places all rectangles, ties going to the earlier in {@code order}. */
    void pack(int[] order, Rule rule) {
        pack(order, rule, Integer.MAX_VALUE);
    }

    /** The same, but gives up, and says false, once more than {@code most} bins are needed. */
    boolean pack(int[] order, Rule rule, int most) {
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
                    if (bins == most) {
                        return false;
                    }
                    bins++;
                    lastBinArea = 0;
                }
                skyline.reset(stripWidth);
                empty = true;
            }
        }
        top = skyline.top();
        return true;
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
        boolean widest = rule == Rule.WIDEST;
        double room = skyline.width(segment) + Skyline.FLUSH;
        double headroom = limit - skyline.y(segment) + Skyline.FLUSH;
        double leftRise = skyline.leftRise(segment);
        double rightRise = skyline.rightRise(segment);
        int best = -1;
        double bestFit = 0;
        double lastWidth = -1;
        double lastHeight = -1;
        for (int slot = 0; slot < left; slot++) {
            int i = waiting[slot];
            double w = width[i];
            double h = height[i];
            if (w == lastWidth && h == lastHeight) {
                continue; // alike, and the earlier one goes first
            }
            lastWidth = turnable[i] ? w : -1;
            lastHeight = h;
            if (w <= room && h <= headroom) {
                double fit = widest ? w : flush(w, h, room, leftRise, rightRise);
                if (fit > bestFit) {
                    bestFit = fit;
                    best = 2 * slot;
                }
            }
            if (turnable[i] && h <= room && w <= headroom) {
                double fit = widest ? h : flush(h, w, room, leftRise, rightRise);
                if (fit > bestFit) {
                    bestFit = fit;
                    best = 2 * slot + 1;
                }
            }
        }
        return best;
    }

    /** How many sides of a rectangle lie flush, 5 for all three down to 1 for none; a filled gap outweighs a level top. */
    private static int flush(double w, double h, double room, double leftRise, double rightRise) {
        int level = Math.abs(h - leftRise) <= Skyline.FLUSH ? 1 : 0;
        level += Math.abs(h - rightRise) <= Skyline.FLUSH ? 1 : 0;
        return room - w <= 2 * Skyline.FLUSH ? 3 + level : 1 + Math.min(1, level);
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

    /** Which of the rectangles that fit a gap is taken. */
    enum Rule {
        /** The widest. */
        WIDEST,
        /** The one with most flush sides, then the first in order. */
        FLUSH
    }
}
