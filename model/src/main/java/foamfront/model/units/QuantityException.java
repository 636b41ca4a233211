package foamfront.model.units;

/** A quantity that cannot be read: what is wrong with it, and what would be right. */
public final class QuantityException extends IllegalArgumentException {
    private final String problem;
    private final String advice;

    public QuantityException(String problem, String advice) {
        super(problem + ". " + advice);
        this.problem = problem;
        this.advice = advice;
    }

    /** What is wrong, starting with the text as written, without a full stop. */
    public String problem() {
        return problem;
    }

    /** What would be right, a sentence. */
    public String advice() {
        return advice;
    }
}
