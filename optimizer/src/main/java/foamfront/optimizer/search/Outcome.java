package foamfront.optimizer.search;

import java.util.List;

/**
 * What a search found.
 *
 * @param front feasible designs that no evaluated one beats, to within the archive's boxes; sorted by objectives
 * @param nicheFronts the same for each niche alone
 * @param leastInfeasible where nothing feasible was found, the designs nearest to it, best first; otherwise empty
 * @param evaluations done
 * @param feasible how many of them were
 * @param stoppedEarly by the caller
 * @param faults the first {@value Appraiser#FAULTS_KEPT} of each island
 * @param faultCount all of them
 * @param history one entry per epoch
 */
public record Outcome(
        List<Member> front,
        List<List<Member>> nicheFronts,
        List<Member> leastInfeasible,
        long evaluations,
        long feasible,
        boolean stoppedEarly,
        List<Fault> faults,
        long faultCount,
        List<Progress> history) {
    public Outcome {
        front = List.copyOf(front);
        nicheFronts = List.copyOf(nicheFronts);
        leastInfeasible = List.copyOf(leastInfeasible);
        faults = List.copyOf(faults);
        history = List.copyOf(history);
    }
}
