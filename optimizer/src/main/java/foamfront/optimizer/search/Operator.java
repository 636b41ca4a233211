package foamfront.optimizer.search;

/** What made a design. */
enum Operator {
    START,
    CROSSOVER,
    DIFFERENTIAL
}
