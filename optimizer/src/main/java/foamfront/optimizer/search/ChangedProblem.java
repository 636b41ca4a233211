package foamfront.optimizer.search;

/** A state was kept of a problem that now judges the same designs otherwise. */
public final class ChangedProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    ChangedProblem(Evaluation then, Evaluation now) {
        super("a design was judged " + then + " then and " + now + " now");
    }
}
