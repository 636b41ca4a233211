package foamfront.optimizer.search;

import org.jspecify.annotations.Nullable;

/**
 * The evaluations of recent designs, found by what they decode to. A table of fixed size in which a newer design takes the
 * place of an older one with the same slot: constant memory over any number of evaluations, and the same content whenever
 * the same designs come in the same order.
 */
final class KnownDesigns {
    private final @Nullable Fitness[] slots;

    /** @param slots a power of two */
    KnownDesigns(int slots) {
        this.slots = new @Nullable Fitness[slots];
    }

    boolean contains(UnitChromosome design) {
        return find(design) != null;
    }

    @Nullable
    Evaluation find(UnitChromosome design) {
        Fitness there = slots[slot(design)];
        return there != null && there.design().sameDesign(design) ? there.evaluation() : null;
    }

    void add(Fitness fitness) {
        slots[slot(fitness.design())] = fitness;
    }

    /** Hash times the golden ratio (Knuth's multiplicative hashing), its high bits folded in. */
    private int slot(UnitChromosome design) {
        int spread = design.designHash() * 0x9E3779B9;
        return (spread ^ (spread >>> 16)) & (slots.length - 1);
    }
}
