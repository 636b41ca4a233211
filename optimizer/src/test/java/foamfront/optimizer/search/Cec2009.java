package foamfront.optimizer.search;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.Random;
import org.moeaframework.core.Solution;

/**
 * The UF and CF families as the MOEA Framework computes them, with the fronts sampled in its own files: Zhang, Zhou, Zhao,
 * Suganthan, Liu, Tiwari, Multiobjective optimization test instances for the CEC 2009 special session and competition,
 * University of Essex CES-487 (2008).
 */
final class Cec2009 {
    /** Of a front of three objectives in their files, ten thousand points; enough for its volume to 0.3 per cent. */
    private static final int LONGEST = 4000;

    private Cec2009() {}

    static Benchmark of(String name) {
        return Benchmark.sampled(name, FrameworkProblems.of(name), front(name));
    }

    private static double[][] front(String name) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Solution.class.getResourceAsStream("/pf/" + name + ".pf")),
                StandardCharsets.UTF_8))) {
            double[][] points = reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> Arrays.stream(line.trim().split("\\s+"))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new);
            if (points.length <= LONGEST) {
                return points;
            }
            java.util.Collections.shuffle(Arrays.asList(points), new Random(1));
            return Arrays.copyOf(points, LONGEST);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
