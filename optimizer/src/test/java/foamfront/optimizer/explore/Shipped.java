package foamfront.optimizer.explore;

import foamfront.model.parts.Workshop;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The club's studies as shipped, each explored once on one thread at its own budget and seed. */
final class Shipped {
    static final Path FOLDER = Path.of("..", "studies");
    static final Workshop WORKSHOP = CatalogueReader.standard().workshop();

    private static final Map<String, Found> FOUND = new ConcurrentHashMap<>();

    private Shipped() {}

    static Study study(String name) {
        return StudyReader.read(FOLDER.resolve(name + ".yaml"));
    }

    static Found found(String name) {
        return FOUND.computeIfAbsent(name, key -> explore(study(key), 1));
    }

    static Found explore(Study study, int threads) {
        Task task = Task.of(study, WORKSHOP);
        long evaluations = study.search().evaluations();
        return Exploration.run(
                task, List.of(), evaluations, study.search().seed(), threads, Listener.NONE, () -> false);
    }
}
