package foamfront.optimizer.cli;

import foamfront.model.design.DesignVariable;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Mission;
import foamfront.model.units.Numbers;
import foamfront.model.units.Range;
import foamfront.model.units.Unit;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.explore.Explanation;
import foamfront.optimizer.explore.Timing;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.genome.Genome;
import foamfront.optimizer.search.Variable;
import foamfront.optimizer.study.Aim;
import foamfront.optimizer.study.DesignFile;
import foamfront.optimizer.study.DesignReader;
import foamfront.optimizer.study.PayloadItem;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code check FILE}: every fault of a file, or what will be done with it. */
@Command(
        name = "check",
        description = "Reads a study or design and lists every fault; otherwise says what it means.",
        mixinStandardHelpOptions = true,
        version = "foamfront " + Main.VERSION)
final class CheckCommand implements Callable<Integer> {
    /** Longer lists are shown by their ends. */
    private static final int MOST = 8;

    private final Console console;

    @Parameters(paramLabel = "FILE", description = "a study or design file")
    private Path file = Path.of("");

    @Mixin
    private OwnTables tables = new OwnTables();

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (isDesign()) {
            Catalogue own = tables.read();
            design(DesignReader.read(file, own == null ? CatalogueReader.ofDesign(file) : own));
        } else {
            Catalogue catalogue = tables.beside(file);
            study(StudyReader.read(file, catalogue), catalogue);
        }
        return Exit.FINE;
    }

    /** A file with a line {@code design:} at its margin; everything else is read as a study. */
    private boolean isDesign() {
        return java.nio.file.Files.isRegularFile(file)
                && Arguments.firstBytes(file).lines().anyMatch(line -> line.matches("\\s*['\"]?design['\"]?\\s*:.*"));
    }

    private void design(DesignFile read) {
        console.out()
                .println(file.getFileName() + " can be read: " + read.design().name() + ".");
        table(
                "Values taken by workshop rule",
                List.of("key", "value", "rule"),
                read.taken().stream()
                        .map(taken -> List.of(taken.key(), taken.value(), taken.rule()))
                        .toList());
    }

    private void study(Study study, Catalogue catalogue) {
        Genome genome = new Genome(study);
        Show show = Show.of(study);
        console.out().println(file.getFileName() + " can be read: " + Text.plain(study.name()) + ".");
        console.out()
                .println("Wanted: "
                        + study.aims().stream().map(CheckCommand::words).collect(Collectors.joining(", ")) + ".");
        console.out().println("Open: " + about(genome.designs()) + " designs in " + genome.layouts() + " layouts.");
        double each = Timing.perDesign(genome, study.mission(catalogue.workshop()), System::nanoTime);
        int threads = Runtime.getRuntime().availableProcessors();
        double seconds = study.search().evaluations() * each / threads;
        console.out()
                .println("To try: " + study.search().evaluations() + " of them, about " + ProgressLine.duration(seconds)
                        + " on " + threads + (threads == 1 ? " thread." : " threads."));
        table("What is searched", List.of("choice", "from"), searched(genome, study, show));
        List<String> refusals = genome.refusals();
        if (!refusals.isEmpty()) {
            console.out().println();
            console.out().println("Layouts left out, for they cannot be built");
            refusals.forEach(reason -> console.out().println("* " + reason));
        }
        table("Rules taken", List.of("dimension", "rule"), rules(study));
        table("Limits", List.of("limit", "asked", "because"), limits(study.mission(catalogue.workshop()), show));
    }

    private void table(String title, List<String> heads, List<List<String>> rows) {
        if (!rows.isEmpty()) {
            console.out().println();
            console.out().println(title);
            console.out().print(new Table(heads.stream().map(Table.Column::text).toList(), rows).text());
        }
    }

    private static String words(Aim aim) {
        return (aim.most() ? "most " : "least ") + aim.measure().words();
    }

    private static String about(BigInteger designs) {
        if (designs.bitLength() < 20) {
            return designs.toString();
        }
        BigDecimal rounded = new BigDecimal(designs).round(new MathContext(2));
        int exponent = rounded.precision() - rounded.scale() - 1;
        return "up to about "
                + rounded.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
    }

    private static List<List<String>> searched(Genome genome, Study study, Show show) {
        List<List<String>> rows = new ArrayList<>();
        for (Variable variable : genome.variables()) {
            if (variable.levels() > 0) {
                rows.add(List.of(variable.name(), few(genome.words(variable))));
            }
        }
        study.vary()
                .forEach((dimension, range) ->
                        rows.add(List.of(dimension.words(), words(range, dimension.unit(), show))));
        for (PayloadItem load : study.payload()) {
            if (load.searched()) {
                rows.add(List.of("mass of " + load.name(), words(load.mass(), Unit.GRAM, show)));
            }
        }
        return rows;
    }

    /** All of a short list, both ends of a long one. */
    private static String few(List<String> words) {
        return words.size() <= MOST
                ? String.join(", ", words)
                : words.size() + ", from " + words.get(0) + " to " + words.get(words.size() - 1);
    }

    private static String words(Range range, Unit unit, Show show) {
        return show.quantity(range.low(), unit) + " to " + show.quantity(range.high(), unit);
    }

    private static List<List<String>> rules(Study study) {
        List<List<String>> rows = new ArrayList<>();
        for (DesignVariable dimension : DesignVariable.values()) {
            Double fixed = study.fixed().get(dimension);
            if (fixed != null) {
                rows.add(List.of(
                        dimension.words(),
                        Numbers.significant(dimension.unit().fromSi(fixed), 6) + " "
                                + dimension.unit().symbol() + " (as the study says)"));
            } else if (!study.vary().containsKey(dimension)) {
                rows.add(List.of(dimension.words(), dimension.rule()));
            }
        }
        return rows;
    }

    private static List<List<String>> limits(Mission mission, Show show) {
        List<List<String>> rows = new ArrayList<>();
        for (Bound bound : mission.limits().all()) {
            rows.add(List.of(bound.measure().words(), Explanation.asked(bound, show), bound.reason()));
        }
        return rows;
    }
}
