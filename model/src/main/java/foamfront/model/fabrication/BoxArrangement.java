package foamfront.model.fabrication;

/**
 * How up to three boxes go into a space together, edges along its edges: the length by which every side of every box could grow
 * with all still inside, over all arrangements.
 *
 * <p>Boxes do not overlap where each pair of them keeps apart along one axis at least (C. S. Chen, S. M. Lee, Q. S. Shen, An
 * analytical model for the container loading problem, European Journal of Operational Research 80, 1995, 68-76, whose unknowns
 * these relative positions are; from memory). Whatever orders the pairs that keep apart along an axis have there, they must
 * make room for the longest row of boxes one behind another, which of a number k of boxes with sides d in a space S leaves
 *
 * <pre>m = (S − Σd) / k</pre>
 *
 * since each grows by m. One pair is a row of two. Two pairs share a box, and with the others both on one side of it they are two
 * rows of two. Three pairs are a row of three. So for given attitudes a choice of axis for each pair decides, orders do not, and
 *
 * <ul>
 *   <li>unless all pairs do best along one axis, each takes its best axis: no choice leaves a pair more (derived);
 *   <li>if all do, they form a row of three there, or one of them moves to its second-best axis; a row of three along another axis
 *       leaves no more than two pairs here and one there, as every row leaves no more than what is in it (derived).
 * </ul>
 *
 * A side that shrinks stops at nothing, hence a row leaves no more than any part of it. Attitudes, six a box, are tried with
 * whatever cannot beat the best so far left out, and the search ends when what the boxes leave each by itself is reached. None of
 * this needs arrangements to come apart by cuts right through.
 */
final class BoxArrangement {
    /** Which side of a box lies along each axis, attitude by attitude; the first as it is. */
    private static final int[][] TURNS = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};

    /** Pairs of three boxes: 0 and 1, 0 and 2, 1 and 2. */
    static final int PAIRS = 3;

    private final double[] space = new double[3];
    private final double[] side = new double[9];
    private int count;

    /** Whether a box is a layer, across which axis all layers lie, and which of their sides is that thick. */
    private final boolean[] layer = new boolean[3];

    private final int[] thick = new int[3];
    private int across;

    /** Sides along the axes as turned, box by box. */
    private final double[] turned = new double[9];

    /** What each pair leaves along each axis. */
    private final double[] row = new double[3 * PAIRS];

    private final int[] turn = new int[3];
    private final int[] axis = new int[PAIRS];
    private final int[] bestTurn = new int[3];
    private final int[] bestAxis = new int[PAIRS];
    private double best;
    private double most;

    /** Begins anew with a space, m. */
    void begin(double x, double y, double z) {
        space[0] = x;
        space[1] = y;
        space[2] = z;
        count = 0;
    }

    /** Adds a box, m. */
    void add(double a, double b, double c) {
        side[3 * count] = a;
        side[3 * count + 1] = b;
        side[3 * count + 2] = c;
        layer[count] = false;
        count++;
    }

    /** Makes a box a layer across an axis, the same for all layers, as thick as one of its sides: nothing else lies beside it. */
    void lay(int box, int axis, int which) {
        layer[box] = true;
        thick[box] = which;
        across = axis;
    }

    /** Makes it a box again. */
    void stand(int box) {
        layer[box] = false;
    }

    /** The most by which all sides can grow, m; negative by what they are too long. */
    double margin() {
        return margin(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** The same, sought above a floor, which is the answer where there is no more, and no further than enough. */
    double margin(double floor, double enough) {
        best = floor;
        most = enough;
        for (int i = 0; i < count; i++) {
            most = Math.min(most, alone(i));
        }
        if (most > best) {
            first();
        }
        return best;
    }

    /** What one box leaves by itself: sides in order of length against the space's in order. */
    private double alone(int box) {
        double alone = Double.NEGATIVE_INFINITY;
        for (int t = 0; t < TURNS.length; t++) {
            alone = Math.max(alone, place(box, t));
        }
        return alone;
    }

    /** Turns a box and says what it leaves by itself; a layer takes no turns, and only its thickness asks for room. */
    private double place(int box, int t) {
        if (layer[box]) {
            turn[box] = t;
            double side = side(box, thick[box]);
            for (int a = 0; a < 3; a++) {
                turned[3 * box + a] = a == across ? side : 0;
            }
            return t == 0 ? space[across] - side : Double.NEGATIVE_INFINITY;
        }
        int[] order = TURNS[t];
        turn[box] = t;
        double least = Double.POSITIVE_INFINITY;
        for (int a = 0; a < 3; a++) {
            double along = side[3 * box + order[a]];
            turned[3 * box + a] = along;
            least = Math.min(least, space[a] - along);
        }
        return least;
    }

    private void first() {
        for (int t = 0; t < TURNS.length && best < most; t++) {
            double alone = place(0, t);
            if (alone > best) {
                if (count == 1) {
                    keep(alone);
                } else {
                    second(alone);
                }
            }
        }
    }

    private void second(double sofar) {
        for (int t = 0; t < TURNS.length && best < most; t++) {
            double two = Math.min(Math.min(sofar, place(1, t)), pair(0, 0, 1));
            if (two > best) {
                if (count == 2) {
                    keep(two);
                } else {
                    third(two);
                }
            }
        }
    }

    private void third(double sofar) {
        // Two boxes alike change places for nothing.
        int from =
                !layer[1] && !layer[2] && side[3] == side[6] && side[4] == side[7] && side[5] == side[8] ? turn[1] : 0;
        for (int t = from; t < TURNS.length && best < most; t++) {
            double alone = Math.min(sofar, place(2, t));
            if (alone <= best) {
                continue;
            }
            double pairs = Math.min(pair(1, 0, 2), pair(2, 1, 2));
            if (pairs <= best) {
                continue;
            }
            // In the third box's attitude before this one crowded() may have moved the first pair off its best axis.
            axis[0] = bestOf(0, -1);
            double three = Math.min(alone, axis[0] == axis[1] && axis[1] == axis[2] ? crowded() : pairs);
            if (three > best) {
                keep(three);
            }
        }
    }

    /** Sets what a pair leaves along each axis and which is best; says how much that is. */
    private double pair(int pair, int i, int j) {
        for (int a = 0; a < 3; a++) {
            boolean open = a == across || !(layer[i] || layer[j]);
            row[3 * pair + a] =
                    !open ? Double.NEGATIVE_INFINITY : 0.5 * (space[a] - turned[3 * i + a] - turned[3 * j + a]);
        }
        axis[pair] = bestOf(pair, -1);
        return row[3 * pair + axis[pair]];
    }

    private int bestOf(int pair, int but) {
        int at = but == 0 ? 1 : 0;
        for (int a = at + 1; a < 3; a++) {
            at = a != but && row[3 * pair + a] > row[3 * pair + at] ? a : at;
        }
        return at;
    }

    /** All pairs do best along one axis. */
    private double crowded() {
        int a = axis[0];
        double within = Math.min(row[a], Math.min(row[3 + a], row[6 + a]));
        double sum = turned[a] + turned[3 + a] + turned[6 + a];
        double found = Math.min(within, (space[a] - sum) / 3);
        int moved = -1;
        for (int pair = 0; pair < PAIRS; pair++) {
            int other = bestOf(pair, a);
            double rest = Math.min(row[3 * ((pair + 1) % 3) + a], row[3 * ((pair + 2) % 3) + a]);
            double three = Math.min(rest, row[3 * pair + other]);
            if (three > found) {
                found = three;
                moved = pair;
            }
        }
        if (moved >= 0) {
            axis[moved] = bestOf(moved, a);
        }
        return found;
    }

    private void keep(double margin) {
        best = margin;
        for (int i = 0; i < 3; i++) {
            bestTurn[i] = turn[i];
            bestAxis[i] = axis[i];
        }
    }

    double side(int box, int which) {
        return side[3 * box + which];
    }

    /** Side of a box along an axis in the best arrangement, m. */
    double along(int box, int a) {
        return side[3 * box + TURNS[bestTurn[box]][a]];
    }

    /** Which side of a box that is: 0, 1 or 2 as given. */
    int which(int box, int a) {
        return TURNS[bestTurn[box]][a];
    }

    /** Axis along which a pair keeps apart there. */
    int apart(int i, int j) {
        return bestAxis[i + j - 1];
    }

    int count() {
        return count;
    }

    boolean isLayer(int box) {
        return layer[box];
    }

    /** Across which axis layers lie. */
    int across() {
        return across;
    }

    /** Which side of a layer is its thickness. */
    int thick(int box) {
        return thick[box];
    }
}
