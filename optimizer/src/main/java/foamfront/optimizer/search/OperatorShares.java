package foamfront.optimizer.search;

/**
 * How large a share of the children each operator makes: in proportion to how often its recent children entered the archive.
 *
 * <p>The idea of operator choice by archive membership: Hadka and Reed, Borg, Evolutionary Computation 21(2) (2013) (from
 * memory); rates with forgetting are a judgement.
 */
final class OperatorShares {
    /** No operator falls silent, or it could not come back. */
    private static final double SMALLEST = 0.05;

    /** What is left of old counts after a generation. */
    private static final double MEMORY = 0.9;

    private static final double START_SHARE = 0.2;

    private double differential = START_SHARE;
    private final double[] tried = new double[Operator.values().length];
    private final double[] kept = new double[Operator.values().length];

    double differential() {
        return differential;
    }

    void count(Operator operator, boolean enteredArchive) {
        tried[operator.ordinal()]++;
        if (enteredArchive) {
            kept[operator.ordinal()]++;
        }
    }

    /** Moves the share at the end of a generation, then fades the counts. */
    void renew() {
        double crossed = rate(Operator.CROSSOVER);
        double differed = rate(Operator.DIFFERENTIAL);
        differential = Math.min(1 - SMALLEST, Math.max(SMALLEST, differed / (crossed + differed)));
        for (int i = 0; i < tried.length; i++) {
            tried[i] *= MEMORY;
            kept[i] *= MEMORY;
        }
    }

    /** Success rate, drawn towards equality while little is known. */
    private double rate(Operator operator) {
        double prior = operator == Operator.DIFFERENTIAL ? START_SHARE : 1 - START_SHARE;
        return (kept[operator.ordinal()] + prior) / (tried[operator.ordinal()] + 1);
    }
}
