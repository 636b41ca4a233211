package foamfront.optimizer.study;

import java.util.List;

/**
 * Parts to share with another aeroplane.
 *
 * @param design its design file
 * @param parts which, as the design file's keys name them
 */
public record KeepFrom(String design, List<String> parts) {
    public KeepFrom {
        parts = List.copyOf(parts);
    }
}
