package foamfront.optimizer.catalogue;

import static foamfront.model.units.Dimension.CURRENT;
import static foamfront.model.units.Dimension.ROTATION;
import static foamfront.model.units.Dimension.VOLTAGE;

import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.faults.StudyException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Reads a builder's bench readings: columns {@code voltage [V], current [A], speed [rpm], load}, one row per reading at full
 * throttle; load is {@code none} without a propeller, otherwise its size, such as {@code 10x4.7}. Figures that no model motor gives are
 * refused with the unit that may have been meant.
 */
public final class MotorReadings {
    /** Three constants and two readings more to see the scatter by. */
    private static final int LEAST = 5;

    private static final String IDLE = "none";

    private static final String HEAD = "voltage [V],current [A],speed [rpm],load";

    /** Propellers by diameter and pitch, fans by diameter. */
    private static final Pattern SIZE = Pattern.compile("\\d+(\\.\\d+)?\\s*(x|mm|in)");

    private static final List<Column> COLUMNS = List.of(
            Column.of("voltage", VOLTAGE),
            Column.of("current", CURRENT),
            Column.of("speed", ROTATION),
            Column.text("load"));

    private MotorReadings() {}

    /** All rows of a file. */
    public static List<MotorReading> read(Path file) {
        Path name = file.getFileName();
        Faults faults = new Faults(name == null ? file.toString() : name.toString());
        List<MotorReading> readings = new ArrayList<>();
        List<Csv.Line> lines = Csv.read(bytes(file, faults), faults);
        if (faults.any()) {
            throw new StudyException(faults.all());
        }
        if (lines.isEmpty()) {
            faults.add(0, 0, "", "there is nothing in it", "Begin with the line " + HEAD + " and a row per reading.");
        } else if (parted(lines.get(0))) {
            faults.add(
                    lines.get(0).number(),
                    0,
                    "",
                    "the columns are not parted by commas",
                    "Save it as CSV with commas: " + HEAD + ".");
        } else {
            Header header = new Header(lines.get(0), COLUMNS, faults);
            for (Csv.Line line : lines.subList(1, faults.any() ? 1 : lines.size())) {
                readings.add(reading(new Row(header, line, faults)));
            }
        }
        if (!faults.any()) {
            enough(List.copyOf(new LinkedHashSet<>(readings)), faults);
        }
        if (faults.any()) {
            throw new StudyException(faults.all());
        }
        return readings;
    }

    /** Whether a header is parted by something else than commas. */
    private static boolean parted(Csv.Line header) {
        return header.cells().size() == 1 && header.cells().get(0).matches(".*[;\t].*");
    }

    private static byte[] bytes(Path file, Faults faults) {
        if (Files.isDirectory(file)) {
            faults.add(0, 0, "", "this is a folder", "Name the file with the readings in it.");
            return new byte[0];
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes((1 << 20) + 1);
        } catch (IOException e) {
            faults.add(0, 0, "", "the readings cannot be read", "Check the file's name and your permissions.");
            return new byte[0];
        }
    }

    private static MotorReading reading(Row row) {
        String load = row.text("load").toLowerCase(Locale.ROOT);
        if (!load.equals(IDLE) && !SIZE.matcher(load).lookingAt()) {
            row.fault(
                    "load",
                    "'" + load + "' is neither none nor a size",
                    "Write none with the propeller off, otherwise its size, for example 10x4.7.");
        }
        return new MotorReading(
                sane(row, "voltage", Unit.VOLT, 1, 60, "volts of a pack of 1 to 14 cells"),
                sane(row, "current", Unit.AMPERE, 0.05, 200, "amperes; milliamperes want the heading [mA]"),
                sane(
                        row,
                        "speed",
                        Unit.REVOLUTION_PER_MINUTE,
                        500,
                        100_000,
                        "rpm; revolutions per second want the heading [rev/s]"),
                !load.equals(IDLE));
    }

    /** SI value of a figure that must lie within bounds given in {@code unit}. */
    private static double sane(Row row, String column, Unit unit, double low, double high, String meant) {
        double si = row.si(column);
        double value = unit.fromSi(si);
        if (value < low || value > high) {
            row.fault(
                    column,
                    Numbers.significant(value, 6) + " " + unit.symbol() + " is outside " + low + " to " + high + " "
                            + unit.symbol() + " of model motors",
                    "This column is read in " + meant + ".");
        }
        return si;
    }

    private static void enough(List<MotorReading> readings, Faults faults) {
        long idle = readings.stream().filter(reading -> !reading.loaded()).count();
        if (readings.size() < LEAST) {
            faults.add(
                    0,
                    0,
                    "",
                    "three constants from " + readings.size()
                            + " different readings leave nothing to tell their error by",
                    "Take at least " + LEAST + ": some without a propeller, some with, at two voltages.");
        } else if (idle == 0) {
            faults.add(
                    0,
                    0,
                    "load",
                    "no reading is without a propeller",
                    "Take at least one with the propeller off and write none under load: it gives the no-load current.");
        } else if (readings.size() - idle < 2) {
            faults.add(
                    0,
                    0,
                    "load",
                    "fewer than two readings have a propeller",
                    "Take at least two under load: they give the resistance.");
        }
    }
}
