package foamfront.model.fabrication;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/**
 * Published packing instances with known optimum.
 *
 * @param name of the data set and number
 * @param strip whether the height of one strip counts, otherwise the number of bins
 * @param width of strip or bin
 * @param height of a bin, infinite for a strip
 * @param optimum height or number of bins
 * @param sides width and height of every rectangle, alternating
 */
record NestingInstances(String name, boolean strip, double width, double height, double optimum, List<Double> sides) {
    static List<NestingInstances> load() {
        InputStream stream =
                Objects.requireNonNull(NestingInstances.class.getResourceAsStream("nesting.csv"), "nesting.csv");
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("name,"))
                    .map(NestingInstances::parse)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static NestingInstances parse(String line) {
        List<String> cells = List.of(line.split(",", -1));
        boolean strip = cells.get(1).equals("strip");
        List<Double> sides = new java.util.ArrayList<>();
        for (String rectangle : cells.get(5).split(" ", -1)) {
            List<String> numbers = List.of(rectangle.split("x", -1));
            for (int i = 0; i < Integer.parseInt(numbers.get(2)); i++) {
                sides.add(Double.valueOf(numbers.get(0)));
                sides.add(Double.valueOf(numbers.get(1)));
            }
        }
        double height = strip ? Double.POSITIVE_INFINITY : Double.parseDouble(cells.get(3));
        return new NestingInstances(
                cells.get(0),
                strip,
                Double.parseDouble(cells.get(2)),
                height,
                Double.parseDouble(cells.get(4)),
                List.copyOf(sides));
    }

    /** A packer with the rectangles loaded. */
    RectanglePacker packer() {
        RectanglePacker packer = new RectanglePacker();
        packer.clear(width, height);
        for (int i = 0; i < sides.size(); i += 2) {
            packer.add(sides.get(i), sides.get(i + 1), true);
        }
        return packer;
    }

    @Override
    public String toString() {
        return name;
    }
}
