package foamfront.optimizer.search;

import java.util.HexFormat;
import java.util.List;

/** Writes the state of a search as lines: a name and how many items, then an item a line. */
final class Recorder implements Tape {
    /** Whole numbers up to this are written in decimals: most values of a design are such. */
    private static final double SHORT = 1e6;

    private static final HexFormat HEX = HexFormat.of();

    private final StringBuilder text = new StringBuilder();

    @Override
    public long whole(String name, long now) {
        text.append(name).append(' ').append(now).append('\n');
        return now;
    }

    @Override
    public List<double[]> rows(String name, List<double[]> now) {
        whole(name, now.size());
        now.forEach(this::append);
        return now;
    }

    @Override
    public List<String> texts(String name, List<String> now) {
        whole(name, now.size());
        now.forEach(line -> text.append(
                        line.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r"))
                .append('\n'));
        return now;
    }

    @Override
    public List<Fitness> designs(String name, List<Fitness> now) {
        rows(name, now.stream().map(FitnessRow::of).toList());
        return now;
    }

    private void append(double[] row) {
        for (int i = 0; i < row.length; i++) {
            append(row[i], i == 0 ? "" : " ");
        }
        text.append('\n');
    }

    /** Sixteen hexadecimal digits, or a sign and a short whole number. */
    private void append(double value, String before) {
        text.append(before);
        if (value == Math.rint(value)
                && Math.abs(value) < SHORT
                && Double.doubleToRawLongBits(value) != Long.MIN_VALUE) {
            text.append(value < 0 ? "" : "+").append((long) value);
        } else {
            text.append(HEX.toHexDigits(Double.doubleToRawLongBits(value)));
        }
    }

    String text() {
        return text.toString();
    }
}
