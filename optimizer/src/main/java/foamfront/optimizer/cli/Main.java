package foamfront.optimizer.cli;

/** Entry point. */
public final class Main {
    /** Version of the program. */
    static final String VERSION = "0.1.0";

    private Main() {}

    public static void main(String[] args) {
        System.exit(new Cli(Console.system()).run(args));
    }
}
