package foamfront.optimizer.cli;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.appraisal.Appraiser;
import foamfront.model.factors.Factors;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.pictures.AeroPictures;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code appraise DESIGN}: one design in full. */
@Command(
        name = "appraise",
        description = "Computes one design in full: measures, limits, masses, drag polar, power and shopping list.",
        mixinStandardHelpOptions = true,
        version = "foamfront " + Main.VERSION)
final class AppraiseCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "DESIGN", description = "a design file, or RUN#ROW for a row of a run")
    private String design = "";

    @Option(
            names = "--study",
            paramLabel = "STUDY",
            description = "judge by this study (default: the run's, or the one that the design names under 'club')")
    private @Nullable Path study;

    @Option(
            names = {"--results", "--out"},
            paramLabel = "FOLDER",
            description = "where runs are kept (default: results)")
    private Path results = Path.of("results");

    @Mixin
    private OwnTables tables = new OwnTables();

    @Option(names = "--json", description = "for programs: stable keys, SI units")
    private boolean json;

    @Option(
            names = "--svg",
            paramLabel = "FOLDER",
            description =
                    "draws section polars, one curve a picture, drag, trim and the lift along the wing there as well")
    private @Nullable Path svg;

    AppraiseCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Arguments.Judged judged = Arguments.design(design, study, results, tables.read());
        Appraisal appraisal = new Appraiser(List.of())
                .appraise(
                        judged.design(),
                        judged.study().mission(judged.catalogue().workshop()),
                        Factors.NOMINAL);
        if (svg != null) {
            Pictures.write(svg, AeroPictures.of(appraisal));
        }
        if (json) {
            console.out().print(AppraisalJson.of(appraisal, judged.catalogue().currency()));
        } else {
            console.out().print(AppraisalText.of(appraisal, judged.study().name(), Show.of(judged.study())));
        }
        return Exit.FINE;
    }
}
