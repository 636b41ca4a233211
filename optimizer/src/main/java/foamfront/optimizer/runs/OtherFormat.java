package foamfront.optimizer.runs;

import java.nio.file.Path;

/** A checkpoint that is whole, and of a format that this version does not read. */
public final class OtherFormat extends RuntimeException {
    private static final long serialVersionUID = 1;

    OtherFormat(Path file, String then, String now) {
        super(file + " begins with \"" + then + "\", and this version reads \"" + now + "\"");
    }
}
