package foamfront.optimizer.cli;

import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.parts.Motor;
import foamfront.model.units.Dimension;
import foamfront.model.units.Unit;
import foamfront.optimizer.bench.BenchJson;
import foamfront.optimizer.bench.Chart;
import foamfront.optimizer.bench.Coefficients;
import foamfront.optimizer.bench.FitPage;
import foamfront.optimizer.bench.MotorFit;
import foamfront.optimizer.bench.Stand;
import foamfront.optimizer.bench.Sweep;
import foamfront.optimizer.bench.SweepTable;
import foamfront.optimizer.bench.Verdict;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.catalogue.MotorReading;
import foamfront.optimizer.catalogue.MotorReadings;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code bench}: a power plant's figures, a propeller's coefficients, a motor's constants from readings. */
@Command(
        name = "bench",
        description = {
            "A power plant on the bench: thrust, speed, current, power and efficiency against airspeed or throttle.",
            "With --propeller and --rpm alone: its coefficients. With --fit: a motor's constants from your own readings."
        },
        footer = {
            "",
            "Examples:",
            "  foamfront bench --motor 2212-920 --propeller '10x5 thin electric' \\",
            "    --battery '3S 2200'",
            "  foamfront bench --motor 2820-760 --propeller '12x8 folding' \\",
            "    --battery '2 x 3S 2200'",
            "  foamfront bench --fan '64 mm 3150' --battery '3S 2200'",
            "  foamfront bench --propeller '10x4.7 slow flyer' --rpm 6500",
            "  foamfront bench --fit readings.csv --name 2212-1000-mine --motor 2212-1000",
            "",
            "readings.csv has the columns voltage [V], current [A], speed [rpm], load: one",
            "row per reading at full throttle, measured at the controller's battery side;",
            "load is none with the propeller off, else its size. Take at least five, at two",
            "voltages and with two propellers; a few seconds each, so that nothing gets hot."
        },
        mixinStandardHelpOptions = true,
        version = "foamfront " + Main.VERSION)
final class BenchCommand implements Callable<Integer> {
    private static final double SEA_LEVEL = 288.15; // K
    private static final double COLDEST = 233.15; // K
    private static final double HOTTEST = 323.15; // K
    private static final double FASTEST = 100; // m/s

    private final Console console;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BenchParts parts = new BenchParts();

    @Option(names = "--motors", paramLabel = "COUNT", description = "how many share the battery, 1 or 2 (default: 1)")
    private int motors = 1;

    @Option(names = "--by", paramLabel = "AXIS", description = "airspeed (at full throttle; the default) or throttle")
    private Sweep.Axis by = Sweep.Axis.AIRSPEED;

    @Option(names = "--speed", paramLabel = "QUANTITY", description = "airspeed for --by throttle (default: at rest)")
    private @Nullable String speed;

    @Option(names = "--charge", paramLabel = "QUANTITY", description = "what is left in the battery (default: 80 %%)")
    private String charge = "80 %";

    @Option(names = "--temperature", paramLabel = "QUANTITY", description = "of the air (default: 15 degC)")
    private @Nullable String temperature;

    @Option(names = "--rpm", paramLabel = "RPM", description = "coefficients of the propeller at this speed")
    private @Nullable Double rpm;

    @Option(names = "--fit", paramLabel = "FILE", description = "fits a motor's three constants to readings")
    private @Nullable Path fit;

    @Option(names = "--name", paramLabel = "NAME", description = "of the fitted motor (default: my motor)")
    private String name = "my motor";

    @Option(names = "--csv", description = "the table for programs")
    private boolean csv;

    @Option(names = "--json", description = "for programs: stable keys, SI units")
    private boolean json;

    @Option(names = "--svg", paramLabel = "FILE", description = "writes the plot there as well")
    private @Nullable Path svg;

    @Option(names = "--catalogue", paramLabel = "FOLDER", description = "tables of your own (default: the program's)")
    private @Nullable Path folder;

    BenchCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Heard.check(spec.commandLine().getParseResult().matchedOptions().stream()
                .map(OptionSpec::longestName)
                .collect(Collectors.toSet()));
        if (speed != null && by != Sweep.Axis.THROTTLE) {
            throw new InputException(
                    "foamfront: --speed is for a table by throttle; by airspeed every speed has its row.",
                    "Add --by throttle, or leave --speed out.");
        }
        Catalogue catalogue = folder == null ? CatalogueReader.standard() : OwnTables.in(folder);
        if (fit != null) {
            fit(fit, catalogue);
        } else if (rpm != null) {
            coefficients(rpm, catalogue);
        } else {
            sweep(catalogue);
        }
        parts.notes().forEach(note -> console.err().println(note));
        return Exit.FINE;
    }

    private void sweep(Catalogue catalogue) {
        Arguments.within("--motors", motors, 1, 2);
        double left = Stated.between("--charge", charge, Dimension.NUMBER, 0.01, 1, "1 % to 100 %");
        double kelvin = temperature == null
                ? SEA_LEVEL
                : Stated.between(
                        "--temperature", temperature, Dimension.TEMPERATURE, COLDEST, HOTTEST, "-40 degC to 50 degC");
        double density = Atmosphere.at(0, kelvin).density();
        Stand stand = new Stand(parts.drive(catalogue), motors, density, kelvin, left, parts.massKnown());
        double airspeed =
                speed == null ? 0 : Stated.between("--speed", speed, Dimension.SPEED, 0, FASTEST, "0 to 100 m/s");
        Sweep sweep = by == Sweep.Axis.AIRSPEED ? Sweep.byAirspeed(stand) : Sweep.byThrottle(stand, airspeed);
        Chart chart = Chart.of(sweep);
        if (svg != null) {
            Pictures.write(svg, chart.svg());
        }
        if (json) {
            console.out().print(BenchJson.of(sweep));
        } else if (csv) {
            console.out().print(SweepTable.exact(sweep).csv());
        } else {
            console.out().println(Text.plain(Verdict.of(sweep)));
            console.out().println();
            console.out().print(chart.text());
            console.out().println();
            console.out().print(SweepTable.rounded(sweep).text());
            console.out().println();
            console.out().print(Verdict.cautions(sweep));
        }
    }

    private void coefficients(double speed, Catalogue catalogue) {
        if (!(speed >= 100 && speed <= 100_000)) {
            throw new InputException(
                    "foamfront: --rpm is " + speed + ".", "Use revolutions per minute, from 100 to 100000.");
        }
        Coefficients found = Coefficients.of(parts.propeller(catalogue), Unit.REVOLUTION_PER_MINUTE.toSi(speed));
        if (json) {
            console.out().print(found.json());
        } else if (csv) {
            console.out().print(found.exact().csv());
        } else {
            console.out().println(Text.plain(found.verdict()));
            console.out().println();
            console.out().print(found.rounded().text());
        }
    }

    private void fit(Path file, Catalogue catalogue) {
        List<MotorReading> readings = MotorReadings.read(file);
        double off = parts.controller == null ? 0 : parts.controller(catalogue).resistance();
        MotorFit found = MotorFit.of(readings, off);
        if (found == null) {
            throw new InputException(
                    "foamfront: " + file.getFileName() + ": the readings are too alike, or contradict each other.",
                    "Take them at two voltages and with two propellers, and check that no column is in a wrong unit.");
        }
        Motor named = parts.motor == null ? null : parts.motor(catalogue);
        double weighed = parts.mass(named == null ? found.expectedMass() : named.mass());
        Motor like = named == null ? FitPage.nearest(weighed, catalogue.motors()) : named;
        double rating = named == null ? 0 : named.continuousPower();
        String guessed = named == null ? FitPage.guessed(parts.motorMass != null, like) : "";
        FitPage page = new FitPage(found, readings.size());
        if (json) {
            console.out().print(page.json());
        } else if (csv) {
            console.out().print(page.row(name, weighed, like, rating, catalogue.currency()));
            console.err().print(guessed + page.doubt(weighed));
        } else {
            console.out().print(page.text());
            console.out().println();
            console.out()
                    .print(page.row(name, weighed, like, rating, catalogue.currency())
                            .replace("\r\n", System.lineSeparator()));
            console.out().println();
            console.out().print(FitPage.note(parts.controller != null));
            console.out().print(guessed + page.doubt(weighed));
        }
    }
}
