package foamfront.optimizer.cli;

import foamfront.model.design.Design;
import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.study.ClubEntry;
import foamfront.optimizer.study.DesignFile;
import foamfront.optimizer.study.DesignReader;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads what commands are given: numbers in range, files, rows of runs. */
final class Arguments {
    /** A study that asks for nothing: a design by itself is judged by the limits that always hold, on the usual field. */
    private static final String NOTHING_ASKED =
            "study: limits that always hold\nvary: {span: 1 m to 2 m}\naim: {most: [endurance]}\n";

    private Arguments() {}

    /**
     * A design and what it is judged by.
     *
     * @param study its run's, the one that its file names under {@code club}, or one that asks for nothing
     * @param file it was read from
     * @param ofRun whether a run left it
     * @param club what its file says of its place in the club
     */
    record Judged(Design design, Study study, Catalogue catalogue, Path file, boolean ofRun, ClubEntry club) {}

    static void within(String option, long value, long low, long high) {
        if (value < low || value > high) {
            throw new InputException(
                    "foamfront: " + option + " is " + value + ".",
                    "Use a whole number from " + low + " to " + high + ".");
        }
    }

    /** An option's quantity, SI, at least {@code low}. */
    static double quantity(String option, String text, Dimension dimension, double low) {
        try {
            double value = Quantities.parse(text, dimension);
            if (value >= low) {
                return value;
            }
        } catch (IllegalArgumentException e) {
            throw new InputException("foamfront: " + option + " " + text + ": " + e.getMessage(), "Check the figure.");
        }
        throw new InputException("foamfront: " + option + " " + text + " is too little.", "Check the figure.");
    }

    private static Path path(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new InputException("foamfront: this is no file name: " + e.getReason() + ".", "Check the argument.");
        }
    }

    /** A file's text. Faults of encoding were the reader's to tell. */
    static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new InputException("foamfront: " + file + " cannot be read.", "Check its name and your permissions.");
        }
    }

    /** The beginning of a file, one character a byte: enough to tell kinds of file apart. */
    static String firstBytes(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(1 << 16), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            return "";
        }
    }

    /**
     * A design file or {@code RUN#ROW}, judged by {@code study}, by its run's or by the one that its file names.
     *
     * @param own tables to read both with; null for those that belong to each
     */
    static Judged design(String argument, @Nullable Path study, Path results, @Nullable Catalogue own) {
        int hash = argument.lastIndexOf('#');
        Path file = hash > 0 && !Files.exists(path(argument))
                ? row(argument.substring(0, hash), argument.substring(hash + 1), results)
                : path(argument);
        Path run = run(file);
        Catalogue catalogue = own == null ? CatalogueReader.ofDesign(file) : own;
        DesignFile read = DesignReader.read(file, catalogue);
        Path asking = study != null ? study : asking(run, file, read.club());
        if (asking == null) {
            byte[] nothing = NOTHING_ASKED.getBytes(StandardCharsets.UTF_8);
            Study nobody = StudyReader.read("no study", nothing, catalogue);
            return new Judged(read.design(), nobody, catalogue, file, false, read.club());
        }
        boolean together = own != null || (run != null && study == null);
        Catalogue of = together ? catalogue : CatalogueReader.beside(asking);
        if (!of.currency().equals(catalogue.currency())) {
            throw new InputException(
                    "foamfront: " + file + " is priced in " + catalogue.currency() + " and " + asking + " in "
                            + of.currency() + ".",
                    "There are no exchange rates here: name one catalogue for both, --catalogue FOLDER.");
        }
        return new Judged(read.design(), StudyReader.read(asking, of), catalogue, file, run != null, read.club());
    }

    /** The study of a design's run, or the one that its file names; null for none. */
    private static @Nullable Path asking(@Nullable Path run, Path file, ClubEntry club) {
        if (run != null) {
            return run.resolve("study.yaml");
        }
        String named = club.study();
        return named == null ? null : file.resolveSibling(named);
    }

    /** The run that a design lies in; null for a design elsewhere. */
    private static @Nullable Path run(Path file) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        Path run = folder == null || !folder.endsWith("designs") ? null : folder.getParent();
        return run != null && Files.isRegularFile(run.resolve("study.yaml")) ? run : null;
    }

    private static Path row(String run, String row, Path results) {
        Path folder = folder(run, results);
        if (!row.matches("\\d{1,6}")) {
            throw new InputException(
                    "foamfront: '" + row + "' is no row of " + run + ".", "Write RUN#ROW, for example " + run + "#7.");
        }
        Path file = folder.resolve("designs").resolve(String.format(Locale.ROOT, "%03d.yaml", Integer.parseInt(row)));
        if (!Files.isRegularFile(file)) {
            throw new InputException(
                    "foamfront: " + folder + " has no row " + row + ".", "Its rows are numbered in front.csv.");
        }
        return file;
    }

    /** A run folder as given or under {@code results}; of a study's folder the latest run. */
    static Path folder(String run, Path results) {
        for (Path folder : List.of(path(run), results.resolve(run))) {
            if (isRun(folder)) {
                return folder;
            }
            Path latest = latest(folder);
            if (latest != null) {
                return latest;
            }
        }
        throw new InputException(
                "foamfront: there is no run " + run + ".",
                "Name its folder, for example " + results.resolve("my-study").resolve("001") + ".");
    }

    private static boolean isRun(Path folder) {
        return Files.isRegularFile(folder.resolve("study.yaml"));
    }

    private static @Nullable Path latest(Path folder) {
        if (!Files.isDirectory(folder)) {
            return null;
        }
        try (Stream<Path> runs = Files.list(folder)) {
            return runs.filter(Arguments::isRun)
                    .max(Comparator.comparing(Path::toString))
                    .orElse(null);
        } catch (IOException e) {
            return null;
        }
    }
}
