package foamfront.optimizer.cli;

/** What the command tells its caller. */
final class Exit {
    static final int FINE = 0;
    static final int OUR_BUG = 1;
    static final int USER_INPUT = 2;
    static final int NOTHING_FEASIBLE = 3;
    static final int CANNOT_WRITE = 4;

    private Exit() {}
}
