package foamfront.optimizer.search;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.List;

/** Reads what a {@link Recorder} wrote, in the same order. */
final class Player implements Tape {
    private final Iterator<String> lines;
    private final Schema schema;

    Player(String text, Schema schema) {
        this.lines = text.lines().iterator();
        this.schema = schema;
    }

    @Override
    public long whole(String name, long now) {
        String line = line(name);
        if (!line.startsWith(name + " ")) {
            throw new IllegalArgumentException("the state has '" + line + "' in place of " + name);
        }
        return Long.parseLong(line.substring(name.length() + 1));
    }

    private String line(String name) {
        if (!lines.hasNext()) {
            throw new IllegalArgumentException("the state ends before " + name);
        }
        return lines.next();
    }

    @Override
    public List<double[]> rows(String name, List<double[]> now) {
        List<double[]> rows = new ArrayList<>();
        for (long k = whole(name, 0); k > 0; k--) {
            rows.add(numbers(line(name)));
        }
        return rows;
    }

    @Override
    public List<String> texts(String name, List<String> now) {
        List<String> texts = new ArrayList<>();
        for (long k = whole(name, 0); k > 0; k--) {
            texts.add(line(name)
                    .replace("\\\\", "\0")
                    .replace("\\n", "\n")
                    .replace("\\r", "\r")
                    .replace("\0", "\\"));
        }
        return texts;
    }

    @Override
    public List<Fitness> designs(String name, List<Fitness> now) {
        List<Fitness> designs = new ArrayList<>();
        for (double[] row : rows(name, List.of())) {
            designs.add(FitnessRow.read(row, 0, schema));
        }
        return designs;
    }

    private static double[] numbers(String line) {
        if (line.isEmpty()) {
            return new double[0];
        }
        String[] words = line.split(" ", -1);
        double[] numbers = new double[words.length];
        for (int i = 0; i < words.length; i++) {
            char first = words[i].charAt(0);
            numbers[i] = first == '+' || first == '-'
                    ? Long.parseLong(words[i])
                    : Double.longBitsToDouble(HexFormat.fromHexDigitsToLong(words[i]));
        }
        return numbers;
    }
}
