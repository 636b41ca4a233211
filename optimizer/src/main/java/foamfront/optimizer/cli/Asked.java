package foamfront.optimizer.cli;

import foamfront.model.design.Design;
import foamfront.model.mission.Bound;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.explore.Task;
import foamfront.optimizer.genome.Kept;
import foamfront.optimizer.study.DesignReader;
import foamfront.optimizer.study.Digest;
import foamfront.optimizer.study.KeepFrom;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A study with all that it names.
 *
 * @param asRead before anything was kept from another design
 * @param text of the study file
 * @param texts of the design files that it names, by the name they have in a run
 * @param starts designs the search starts from
 * @param task ready to search
 */
record Asked(
        Study asRead, String text, Catalogue catalogue, Map<String, String> texts, List<Design> starts, Task task) {
    private static final String KEEP = "keep-from.yaml";
    private static final String START = "start-from.yaml";

    /** From a study file and its catalogue. */
    static Asked of(Path file, Catalogue catalogue) {
        Study study = StudyReader.read(file, catalogue);
        KeepFrom keep = study.keepFrom();
        String start = study.startFrom();
        return read(
                file,
                study,
                catalogue,
                file.resolveSibling(keep == null ? KEEP : keep.design()),
                file.resolveSibling(start == null ? START : start));
    }

    /** From a run's own copies. */
    static Asked in(Path run) {
        Catalogue catalogue = CatalogueReader.folder(run.resolve("catalogue"));
        Path file = run.resolve("study.yaml");
        return read(file, StudyReader.read(file, catalogue), catalogue, run.resolve(KEEP), run.resolve(START));
    }

    private static Asked read(Path file, Study asRead, Catalogue catalogue, Path keepFile, Path startFile) {
        Map<String, String> texts = new TreeMap<>();
        Study study = asRead;
        KeepFrom keep = asRead.keepFrom();
        if (keep != null) {
            study = Kept.apply(asRead, DesignReader.read(keepFile, catalogue).design(), keep.parts());
            texts.put(KEEP, Arguments.text(keepFile));
        }
        List<Design> starts = List.of();
        if (asRead.startFrom() != null) {
            starts = List.of(DesignReader.read(startFile, catalogue).design());
            texts.put(START, Arguments.text(startFile));
        }
        return new Asked(asRead, Arguments.text(file), catalogue, texts, starts, Task.of(study, catalogue.workshop()));
    }

    /** The same with another region of interest in its report alone: the search goes on as it began. */
    Asked reporting(List<Bound> region) {
        return new Asked(asRead, text, catalogue, texts, starts, task.reporting(region));
    }

    /** The same with another region of interest. */
    Asked preferring(List<Bound> region) {
        Study study = task.study().preferring(region);
        return new Asked(asRead, text, catalogue, texts, starts, Task.of(study, catalogue.workshop()));
    }

    String designsDigest() {
        return Digest.of(texts.toString());
    }
}
