package foamfront.optimizer.explore;

import foamfront.optimizer.search.Problem;
import foamfront.optimizer.study.StudyReader;
import java.nio.file.Path;
import java.util.List;

/** Studies as search problems, through the evaluator of every exploration. */
public final class StudyProblems {
    private StudyProblems() {}

    /** The shipped studies. */
    public static List<String> names() {
        return Shipped.NAMES;
    }

    /** The problem of the study file of this name in {@code studies}. */
    public static Problem of(String study) {
        return of(task(Shipped.FOLDER.resolve(study + ".yaml")));
    }

    /** A study file made ready, with the parts that are shipped. */
    public static Task task(Path file) {
        return Task.of(StudyReader.read(file), Shipped.WORKSHOP);
    }

    public static Problem of(Task task) {
        return task.problem(List.of());
    }
}
