package foamfront.model.section;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;

/** Rows of a measured data file beside the tests, and the error statistics taken against it. */
final class MeasuredTable {
    private double sumOfSquares;
    private double largest;
    private int count;

    static double[][] rows(String name) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(MeasuredTable.class.getResourceAsStream(name), name), StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> Arrays.stream(line.split(",", -1))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void add(double error) {
        sumOfSquares += error * error;
        largest = Math.max(largest, Math.abs(error));
        count++;
    }

    double largest() {
        return largest;
    }

    double rms() {
        return Math.sqrt(sumOfSquares / count);
    }
}
