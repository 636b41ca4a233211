package foamfront.optimizer.search;

import java.util.List;

/**
 * What a search found.
 *
 * @param front feasible designs of which none beats another, at most one in each box of the problem's resolution: the archive
 *     and what the last populations add where its boxes have grown; sorted by objectives
 * @param nicheFronts the archived front of each niche alone, up to a hundred designs and the best in each objective
 * @param leastInfeasible where nothing feasible was found, the designs nearest to it, best first; otherwise empty
 * @param evaluations calls of the evaluator
 * @param feasible how many of them were
 * @param stoppedEarly by the caller
 * @param stalled whether it ended because the front stood still
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
        boolean stalled,
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
