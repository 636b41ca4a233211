package foamfront.optimizer.explore;

import foamfront.optimizer.search.Problem;
import java.util.List;

/** The shipped studies as search problems, through the evaluator of every exploration. */
public final class StudyProblems {
    private StudyProblems() {}

    /** The problem of the study file of this name in {@code studies}. */
    public static Problem of(String study) {
        return Task.of(Shipped.study(study), Shipped.WORKSHOP).problem(List.of());
    }
}
