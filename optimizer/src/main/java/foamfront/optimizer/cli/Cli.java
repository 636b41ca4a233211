package foamfront.optimizer.cli;

import foamfront.optimizer.faults.StudyException;
import foamfront.optimizer.runs.CannotWrite;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;

/** The commands together; every way to fail ends here as a message and an exit code. */
final class Cli {
    /** The words before any command. */
    @Command(
            name = "foamfront",
            description = "Explores foam-board model aeroplanes: from a study file to the best trade-offs.",
            version = "foamfront " + Main.VERSION,
            mixinStandardHelpOptions = true,
            subcommandsRepeatable = false,
            synopsisSubcommandLabel = "COMMAND",
            footer = {
                "",
                "Exit codes: 0 fine, 1 a bug of foamfront, 2 something in your input, 3 no design meets every limit,",
                "4 a file could not be written, 130 interrupted (the front so far is kept)."
            })
    private static final class Root implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.@org.jspecify.annotations.Nullable CommandSpec spec;

        @Override
        public void run() {
            if (spec != null) {
                throw new CommandLine.ParameterException(spec.commandLine(), "Name a command.");
            }
        }
    }

    private final Console console;

    Cli(Console console) {
        this.console = console;
    }

    int run(String... args) {
        CommandLine line = new CommandLine(new Root())
                .addSubcommand(new ExploreCommand(console))
                .addSubcommand(new CheckCommand(console))
                .addSubcommand(new AppraiseCommand(console))
                .addSubcommand(new LineUpCommand(console))
                .addSubcommand(new BenchCommand(console))
                .addSubcommand(new PartsCommand(console))
                .addSubcommand(new CommandLine.HelpCommand())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(console.err(), true, StandardCharsets.UTF_8))
                .setColorScheme(Help.defaultColorScheme(console.colour() ? Help.Ansi.ON : Help.Ansi.OFF))
                .setExitCodeExceptionMapper(thrown -> Exit.OUR_BUG)
                .setParameterExceptionHandler(this::misused)
                .setExecutionExceptionHandler((thrown, command, parsed) -> failed(thrown, args));
        int code = line.execute(args);
        if (console.failed() && code == Exit.FINE) {
            console.err().println("foamfront: standard output could not be written");
            return Exit.CANNOT_WRITE;
        }
        return code;
    }

    private int misused(CommandLine.ParameterException thrown, String[] args) {
        String command = thrown.getCommandLine().getCommandSpec().qualifiedName();
        console.err().println("foamfront: " + plain(firstLine(thrown)));
        console.err().println("Try '" + command + " --help'.");
        return Exit.USER_INPUT;
    }

    private int failed(Exception thrown, String[] args) {
        if (thrown instanceof StudyException || thrown instanceof InputException) {
            console.err().println(thrown.getMessage());
            return Exit.USER_INPUT;
        }
        if (thrown instanceof CannotWrite) {
            console.err().println("foamfront: " + firstLine(thrown));
            return Exit.CANNOT_WRITE;
        }
        console.err().println(BugReport.write(thrown, args));
        return Exit.OUR_BUG;
    }

    /** The library names Java's types where a reader expects words. */
    private static String plain(String message) {
        return message.replaceFirst(" is not an? (long|int)$", " is not a whole number")
                .replaceFirst(" is not a double$", " is not a number");
    }

    private static String firstLine(Exception thrown) {
        String message = thrown.getMessage();
        return message == null
                ? thrown.getClass().getSimpleName()
                : message.lines().findFirst().orElse("");
    }
}
