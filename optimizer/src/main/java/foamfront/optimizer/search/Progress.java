package foamfront.optimizer.search;

/**
 * Where a search stands.
 *
 * @param evaluations done so far
 * @param total the budget
 * @param front designs in the merged front
 * @param hypervolume dominated share of the box between the best and the worst feasible values seen at the first merge with 20
 *     feasible designs, 0 before; never falls, and passes 1 where later designs beat the best of that merge
 * @param feasible share of the evaluated designs, 0 to 1
 */
public record Progress(long evaluations, long total, int front, double hypervolume, double feasible) {
    double[] row() {
        return new double[] {evaluations, total, front, hypervolume, feasible};
    }

    static Progress of(double[] row) {
        return new Progress((long) row[0], (long) row[1], (int) row[2], row[3], row[4]);
    }
}
