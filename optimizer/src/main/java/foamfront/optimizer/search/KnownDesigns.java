package foamfront.optimizer.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The evaluations of recent designs, found by what they decode to. A table of fixed size, in rows of a few designs of which the
 * newest pushes out the oldest: constant memory over any number of evaluations, and the same content whenever the same designs
 * come in the same order. Of a design only its values are held, not its genes, since these would be most of what the garbage
 * collector has to copy.
 */
final class KnownDesigns {
    private static final int ROW = 4;

    private final int rows;
    private final int[] hashes;
    private final double[][] values;
    private final @Nullable Evaluation[] scores;

    /** @param rows a power of two */
    KnownDesigns(int rows) {
        this.rows = rows;
        hashes = new int[ROW * rows];
        values = new double[ROW * rows][];
        Arrays.fill(values, new double[0]); // unlike any design's
        scores = new @Nullable Evaluation[ROW * rows];
    }

    boolean contains(UnitChromosome design) {
        return find(design) != null;
    }

    @Nullable
    Evaluation find(UnitChromosome design) {
        int start = start(design);
        for (int k = start; k < start + ROW; k++) {
            if (hashes[k] == design.hashCode() && Arrays.equals(values[k], design.values())) {
                return scores[k];
            }
        }
        return null;
    }

    void add(Fitness fitness) {
        int start = start(fitness.design());
        System.arraycopy(hashes, start, hashes, start + 1, ROW - 1);
        System.arraycopy(values, start, values, start + 1, ROW - 1);
        System.arraycopy(scores, start, scores, start + 1, ROW - 1);
        hashes[start] = fitness.design().hashCode();
        values[start] = fitness.design().values();
        scores[start] = fitness.evaluation();
    }

    /** Each held design as a row: place, evaluation, values. */
    void exchange(Tape tape) {
        List<double[]> rows = new ArrayList<>();
        for (int k = 0; k < scores.length; k++) {
            Evaluation score = scores[k];
            if (score != null) {
                double[] evaluation = score.row();
                double[] row = new double[1 + evaluation.length + values[k].length];
                row[0] = k;
                System.arraycopy(evaluation, 0, row, 1, evaluation.length);
                System.arraycopy(values[k], 0, row, 1 + evaluation.length, values[k].length);
                rows.add(row);
            }
        }
        for (double[] row : tape.rows("known", rows)) {
            int place = (int) row[0];
            values[place] = Arrays.copyOfRange(row, Evaluation.endOfRow(row, 1), row.length);
            scores[place] = Evaluation.ofRow(row, 1);
            hashes[place] = UnitChromosome.hash(values[place]);
        }
    }

    private int start(UnitChromosome design) {
        return ROW * (design.hashCode() & (rows - 1));
    }
}
