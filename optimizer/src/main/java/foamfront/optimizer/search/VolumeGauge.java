package foamfront.optimizer.search;

import java.util.Arrays;
import java.util.List;

/**
 * The progress of a front as dominated volume. The box is fixed at the first reading with enough feasible designs: from the
 * best to the worst feasible values seen by then; later readings compare with it, and the largest so far is shown, because an
 * archive of boxes may lose a little when a box changes hands.
 */
final class VolumeGauge {
    private static final long ENOUGH = 20;

    /** Above three objectives the exact volume of a long front is too dear; a spread part of it is measured instead. */
    private static final int LONGEST_MANY = 100;

    private final Thinning thinning = new Thinning();
    private final double[] least;
    private final double[] span;
    private final double[] reference;
    private boolean fixed;
    private double largest;

    VolumeGauge(int objectives) {
        least = new double[objectives];
        span = new double[objectives];
        reference = new double[objectives];
        Arrays.fill(reference, 1);
    }

    void read(Archive archive, List<Fitness> front, long feasible) {
        if (!fixed && feasible >= ENOUGH) {
            fixed = true;
            for (int i = 0; i < least.length; i++) {
                least[i] = archive.least(i);
                span[i] = archive.most(i) > archive.least(i) ? archive.most(i) - archive.least(i) : 1;
            }
        }
        if (fixed) {
            largest = Math.max(largest, Hypervolume.of(scaled(front), reference));
        }
    }

    void exchange(Tape tape) {
        fixed = tape.whole("fixed", fixed ? 1 : 0) == 1;
        largest = tape.real("largest", largest);
        System.arraycopy(tape.row("least", least), 0, least, 0, least.length);
        System.arraycopy(tape.row("span", span), 0, span, 0, span.length);
    }

    /** The largest share of the box that a reading found dominated. */
    double volume() {
        return largest;
    }

    private double[][] scaled(List<Fitness> front) {
        double[][] points = new double[front.size()][least.length];
        int[] members = new int[points.length];
        for (int k = 0; k < points.length; k++) {
            members[k] = k;
            for (int i = 0; i < least.length; i++) {
                points[k][i] = (front.get(k).objectives()[i] - least[i]) / span[i];
            }
        }
        if (least.length <= 3 || points.length <= LONGEST_MANY) {
            return points;
        }
        thinning.thin(members, members.length, points, LONGEST_MANY);
        return Arrays.stream(members, 0, LONGEST_MANY).mapToObj(k -> points[k]).toArray(double[][]::new);
    }
}
