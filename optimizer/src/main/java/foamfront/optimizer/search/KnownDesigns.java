package foamfront.optimizer.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The evaluations of recent designs, found by what they decode to. A table of fixed size, in rows of a few designs of which the
 * newest takes the place of the oldest: constant memory over any number of evaluations, and the same content whenever the same
 * designs come in the same order. Of a design its values are copied into one long array and nothing else is held: designs kept
 * alive here would be most of what the garbage collector has to copy.
 */
final class KnownDesigns {
    private static final int ROW = 4;

    private final int rows;
    private final int length;
    private final int[] hashes;
    private final double[] values;
    private final @Nullable Evaluation[] scores;
    /** Of each row, the place of its newest design; older ones follow, going round. */
    private final int[] newest;

    /**
     * @param rows a power of two
     * @param length numbers of a design
     */
    KnownDesigns(int rows, int length) {
        this.rows = rows;
        this.length = length;
        hashes = new int[ROW * rows];
        values = new double[ROW * rows * length];
        scores = new @Nullable Evaluation[ROW * rows];
        newest = new int[rows];
    }

    boolean contains(UnitChromosome design) {
        return find(design) != null;
    }

    @Nullable
    Evaluation find(UnitChromosome design) {
        int start = ROW * row(design.hashCode());
        for (int k = start; k < start + ROW; k++) {
            Evaluation score = scores[k];
            if (hashes[k] == design.hashCode() && score != null && holds(k, design.values())) {
                return score;
            }
        }
        return null;
    }

    private boolean holds(int place, double[] design) {
        return Arrays.equals(values, place * length, (place + 1) * length, design, 0, length);
    }

    void add(Fitness fitness) {
        int hash = fitness.design().hashCode();
        int row = row(hash);
        newest[row] = (newest[row] + ROW - 1) % ROW;
        put(ROW * row + newest[row], hash, fitness.design().values(), fitness.evaluation());
    }

    private void put(int place, int hash, double[] design, Evaluation score) {
        hashes[place] = hash;
        System.arraycopy(design, 0, values, place * length, length);
        scores[place] = score;
    }

    /** Each held design as a row of numbers: place, counted from the newest of its row; evaluation; values. */
    void exchange(Tape tape) {
        List<double[]> held = new ArrayList<>();
        for (int place = 0; place < scores.length; place++) {
            int row = place / ROW;
            int k = ROW * row + (newest[row] + place) % ROW;
            Evaluation score = scores[k];
            if (score != null) {
                double[] evaluation = score.row();
                double[] numbers = new double[1 + evaluation.length + length];
                numbers[0] = place;
                System.arraycopy(evaluation, 0, numbers, 1, evaluation.length);
                System.arraycopy(values, k * length, numbers, 1 + evaluation.length, length);
                held.add(numbers);
            }
        }
        List<double[]> kept = tape.rows("known", held);
        Arrays.fill(newest, 0);
        Arrays.fill(scores, null);
        for (double[] numbers : kept) {
            double[] design = Arrays.copyOfRange(numbers, Evaluation.endOfRow(numbers, 1), numbers.length);
            put((int) numbers[0], UnitChromosome.hash(design), design, Evaluation.ofRow(numbers, 1));
        }
    }

    private int row(int hash) {
        return hash & (rows - 1);
    }
}
