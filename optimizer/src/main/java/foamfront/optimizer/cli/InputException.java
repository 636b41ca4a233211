package foamfront.optimizer.cli;

/** Something the user asked for that cannot be had; the message says what to do. */
final class InputException extends RuntimeException {
    private static final long serialVersionUID = 1;

    InputException(String problem, String advice) {
        super(problem + "\n" + advice);
    }
}
