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

    private final Tally crossed = new Tally(1 - START_SHARE);
    private final Tally differed = new Tally(START_SHARE);
    private double differential = START_SHARE;

    /** Share of the pairs that differential variation makes; crossover makes the rest. */
    double differential() {
        return differential;
    }

    void count(Operator operator, boolean enteredArchive) {
        if (operator == Operator.CROSSOVER) {
            crossed.count(enteredArchive);
        } else if (operator == Operator.DIFFERENTIAL) {
            differed.count(enteredArchive);
        }
    }

    /** Moves the share at the end of a generation, then fades the counts. */
    void renew() {
        double share = differed.rate() / (crossed.rate() + differed.rate());
        differential = Math.min(1 - SMALLEST, Math.max(SMALLEST, share));
        crossed.fade();
        differed.fade();
    }

    void exchange(Tape tape) {
        differential = tape.real("differential", differential);
        crossed.exchange(tape);
        differed.exchange(tape);
    }

    /** Recent children of one operator. */
    private static final class Tally {
        private final double prior;
        private double tried;
        private double kept;

        Tally(double prior) {
            this.prior = prior;
        }

        void count(boolean enteredArchive) {
            tried++;
            kept += enteredArchive ? 1 : 0;
        }

        /** Share that entered the archive, drawn towards the start while little is known. */
        double rate() {
            return (kept + prior) / (tried + 1);
        }

        void exchange(Tape tape) {
            double[] counts = tape.row("tally", tried, kept);
            tried = counts[0];
            kept = counts[1];
        }

        void fade() {
            tried *= MEMORY;
            kept *= MEMORY;
        }
    }
}
