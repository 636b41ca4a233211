package foamfront.optimizer.search;

/** One evaluated design. */
public final class Member {
    private final UnitChromosome design;
    private final Evaluation evaluation;

    Member(UnitChromosome design, Evaluation evaluation) {
        this.design = design;
        this.evaluation = evaluation;
    }

    /** One number in [0, 1] per variable; decodes to {@link #values}. */
    public double[] genes() {
        return design.genes().clone();
    }

    /** What the evaluator saw. */
    public double[] values() {
        return design.values().clone();
    }

    public Evaluation evaluation() {
        return evaluation;
    }

    /** Its niche; negative where the problem names none for it. */
    public int niche() {
        return design.niche();
    }
}
