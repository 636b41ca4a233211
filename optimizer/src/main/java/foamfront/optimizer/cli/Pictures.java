package foamfront.optimizer.cli;

import foamfront.optimizer.runs.CannotWrite;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Writes pages of pictures into a folder of the user's choosing. */
final class Pictures {
    private Pictures() {}

    static void write(Path folder, Map<String, String> pages) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new CannotWrite(folder, e);
        }
        for (Map.Entry<String, String> page : pages.entrySet()) {
            write(folder.resolve(page.getKey()), page.getValue());
        }
    }

    static void write(Path file, String page) {
        try {
            Files.writeString(file, page, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new CannotWrite(file, e);
        }
    }
}
