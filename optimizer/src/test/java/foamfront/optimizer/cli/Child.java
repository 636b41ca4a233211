package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A command in a process of its own. */
final class Child {
    /** Far beyond what a loaded machine needs, s; no check of speed. */
    static final int PATIENCE = 120;

    private final Process process;
    private final Path out;
    private final Path err;

    private Child(Process process, Path out, Path err) {
        this.process = process;
        this.out = out;
        this.err = err;
    }

    static Child start(Path folder, List<String> options, String... args) throws IOException {
        Path out = Files.createTempFile(folder, "out", ".txt");
        return start(Path.of(System.getProperty("java.home")), folder, out, options, args);
    }

    /**
     * @param home of the Java that runs it
     * @param out where its standard output goes
     */
    static Child start(Path home, Path folder, Path out, List<String> options, String... args) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(home.resolve("bin/java").toString());
        command.add("-XX:+UseSerialGC");
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "foamfront.optimizer.cli.Main"));
        command.addAll(List.of(args));
        Path err = Files.createTempFile(folder, "err", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectError(err.toFile())
                .redirectOutput(out.toFile())
                .start();
        return new Child(process, out, err);
    }

    /** Explores a study into the folder that it works in. */
    static Child exploring(Path folder, Path study, String evaluations) throws IOException {
        return start(
                folder,
                List.of(),
                "explore",
                study.toString(),
                "--evaluations",
                evaluations,
                "--out",
                folder.toString());
    }

    /** Sends a signal by name. */
    void signal(String name) throws IOException, InterruptedException {
        new ProcessBuilder("kill", "-" + name, Long.toString(process.pid()))
                .start()
                .waitFor();
    }

    int end() throws InterruptedException {
        try {
            assertThat(process.waitFor(PATIENCE, TimeUnit.SECONDS)).isTrue();
            return process.exitValue();
        } finally {
            process.destroyForcibly();
        }
    }

    /** True where it ended by itself within this time. */
    boolean endsWithin(long milliseconds) throws InterruptedException {
        return process.waitFor(milliseconds, TimeUnit.MILLISECONDS);
    }

    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    boolean isAlive() {
        return process.isAlive();
    }

    String out() throws IOException {
        return Files.readString(out);
    }

    String err() throws IOException {
        return Files.readString(err);
    }

    static void waitFor(Path file) throws InterruptedException {
        for (int i = 0; i < 20 * PATIENCE && !Files.exists(file); i++) {
            Thread.sleep(50);
        }
        assertThat(file).exists();
    }
}
