package foamfront.optimizer.explore;

import foamfront.model.parts.Workshop;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.genome.Kept;
import foamfront.optimizer.search.Listener;
import foamfront.optimizer.study.DesignReader;
import foamfront.optimizer.study.KeepFrom;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The club's studies as shipped, each explored once on one thread at its own budget and seed. */
final class Shipped {
    static final Path FOLDER = Path.of("..", "studies");
    static final Catalogue CATALOGUE = CatalogueReader.standard();
    static final Workshop WORKSHOP = CATALOGUE.workshop();

    /** One for each role, and one that leaves the role open. */
    static final List<String> NAMES = List.of(
            "school-trainer",
            "lapwing-camera",
            "class-pusher",
            "sluice-jet",
            "marsh-dart",
            "dyke-glider",
            "far-reed-wing",
            "hall-moth",
            "dyke-sower",
            "gravel-pit-amphibian",
            "fete-biplane",
            "towpath-hopper",
            "island-post");

    private static final Map<String, Found> FOUND = new ConcurrentHashMap<>();

    private Shipped() {}

    static Study study(String name) {
        return StudyReader.read(FOLDER.resolve(name + ".yaml"));
    }

    static List<String> names() {
        return NAMES;
    }

    static Found found(String name) {
        return FOUND.computeIfAbsent(name, key -> explore(study(key), 1));
    }

    /** The study with what it keeps from another design fixed. */
    static Study kept(Study study, Path file) {
        KeepFrom keep = study.keepFrom();
        return keep == null
                ? study
                : Kept.apply(
                        study,
                        DesignReader.read(file.resolveSibling(keep.design()), CATALOGUE)
                                .design(),
                        keep.parts());
    }

    static Found explore(Study study, int threads) {
        Task task = Task.of(study, WORKSHOP);
        long evaluations = study.search().evaluations();
        return Exploration.run(
                task, List.of(), evaluations, study.search().seed(), threads, Listener.NONE, () -> false);
    }
}
