package foamfront.model.units;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Rows of numbers from a class-path resource: comma-separated, lines that start with # name the source and the columns. The
 * one reader through which the model reaches data kept beside its classes.
 */
public final class MeasuredTable {
    private final List<double[]> rows;

    private MeasuredTable(List<double[]> rows) {
        this.rows = rows;
    }

    /**
     * Reads a resource once; callers keep what they need of it.
     *
     * @param beside a class of the package that holds the resource
     * @param name file name
     */
    public static MeasuredTable read(Class<?> beside, String name) {
        try (InputStream stream = beside.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalArgumentException("no resource " + name + " beside " + beside.getName());
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            List<double[]> rows = new ArrayList<>();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.startsWith("#")) {
                    rows.add(numbers(line));
                }
            }
            return new MeasuredTable(rows);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name + " beside " + beside.getName(), e);
        }
    }

    private static double[] numbers(String line) {
        String[] words = line.split(",", -1);
        double[] numbers = new double[words.length];
        for (int i = 0; i < words.length; i++) {
            numbers[i] = Double.parseDouble(words[i].trim());
        }
        return numbers;
    }

    public int rows() {
        return rows.size();
    }

    /** A number by row and column, both from 0. */
    public double at(int row, int column) {
        return rows.get(row)[column];
    }

    /** A copy of one column, from 0. */
    public double[] column(int column) {
        double[] values = new double[rows.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = rows.get(i)[column];
        }
        return values;
    }
}
