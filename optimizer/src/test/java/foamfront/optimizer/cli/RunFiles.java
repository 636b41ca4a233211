package foamfront.optimizer.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What a run leaves for its reader: every file by name, but for run.json, which holds times, and the checkpoints. */
final class RunFiles {
    private RunFiles() {}

    static Map<String, String> of(Path run) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(run)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = run.relativize(file).toString();
                if (!name.startsWith("checkpoint") && !name.equals("run.json")) {
                    texts.put(name, Files.readString(file));
                }
            }
        }
        return texts;
    }
}
