package foamfront.optimizer.search;

import org.jspecify.annotations.Nullable;

/**
 * The evaluations of recent designs, found by what they decode to. A table of fixed size, in rows of a few designs of which the
 * newest pushes out the oldest: constant memory over any number of evaluations, and the same content whenever the same designs
 * come in the same order.
 */
final class KnownDesigns {
    private static final int ROW = 4;

    private final @Nullable Fitness[] slots;
    private final int rows;

    /** @param rows a power of two */
    KnownDesigns(int rows) {
        this.rows = rows;
        this.slots = new @Nullable Fitness[ROW * rows];
    }

    boolean contains(UnitChromosome design) {
        return find(design) != null;
    }

    @Nullable
    Evaluation find(UnitChromosome design) {
        int start = start(design);
        for (int k = start; k < start + ROW; k++) {
            Fitness there = slots[k];
            if (there == null) {
                return null;
            }
            if (there.design().equals(design)) {
                return there.evaluation();
            }
        }
        return null;
    }

    void add(Fitness fitness) {
        int start = start(fitness.design());
        System.arraycopy(slots, start, slots, start + 1, ROW - 1);
        slots[start] = fitness;
    }

    private int start(UnitChromosome design) {
        return ROW * (design.hashCode() & (rows - 1));
    }
}
