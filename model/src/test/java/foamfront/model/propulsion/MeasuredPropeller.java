package foamfront.model.propulsion;

import static foamfront.model.units.Unit.INCH;
import static foamfront.model.units.Unit.REVOLUTION_PER_MINUTE;

import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Provenance;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One propeller of the wind-tunnel collection, as published.
 *
 * @param name product line and size, for example {@code B 10x4.7}
 * @param diameter m
 * @param pitch m
 * @param points every published point
 */
record MeasuredPropeller(String name, double diameter, double pitch, List<Point> points) {
    /** What ends the name of a second test. */
    static final String AGAIN = " retest";

    /**
     * One published row.
     *
     * @param rotation rev/s
     * @param j advance ratio, 0 when static
     */
    record Point(double rotation, double j, double thrust, double power) {
        double efficiency() {
            return power > 0 ? j * thrust / power : 0;
        }
    }

    /** Product line, one letter. */
    char line() {
        return name.charAt(0);
    }

    double pitchRatio() {
        return pitch / diameter;
    }

    BladeFamily family() {
        return switch (line()) {
            case 'A' -> BladeFamily.THIN_ELECTRIC;
            case 'B' -> BladeFamily.SLOW_FLYER;
            case 'C' -> BladeFamily.SOFT_SLOW_FLYER;
            case 'D' -> BladeFamily.DIRECT_DRIVE;
            case 'E' -> BladeFamily.SPORT;
            case 'F' -> BladeFamily.COMPOSITE;
            case 'G' -> BladeFamily.FOLDING;
            default -> BladeFamily.SMALL;
        };
    }

    /** As a part, with the curves fitted to it; what it weighs and costs stays open. */
    Propeller part() {
        return new Propeller(
                name, family(), diameter, pitch, 2, 0.01, CurveFit.of(this).curves(), 0, Provenance.OPEN_DATA);
    }

    /** Whether this is the second test of a type. */
    boolean again() {
        return !name.equals(type());
    }

    /** The name without the mark of a second test. */
    String type() {
        return name.replace(AGAIN, "");
    }

    /** The static row at the highest speed. */
    Point topStatic() {
        return points.stream()
                .filter(p -> p.j() == 0)
                .max(Comparator.comparingDouble(Point::rotation))
                .orElseThrow();
    }

    /** The row of best measured efficiency. */
    Point peak() {
        return points.stream()
                .max(Comparator.comparingDouble(Point::efficiency))
                .orElseThrow();
    }

    /** Every two-blade propeller of the resource, in its order. */
    static Map<String, MeasuredPropeller> all() {
        Map<String, List<Point>> rows = new LinkedHashMap<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(MeasuredPropeller.class.getResourceAsStream("/propellers/measured.csv")),
                StandardCharsets.UTF_8))) {
            in.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("propeller,"))
                    .forEach(line -> add(rows, line.split(",", -1)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, MeasuredPropeller> all = new LinkedHashMap<>();
        rows.forEach((name, points) -> {
            String[] size = name.split(" ", -1)[1].split("x", -1);
            all.put(
                    name,
                    new MeasuredPropeller(
                            name,
                            INCH.toSi(Double.parseDouble(size[0])),
                            INCH.toSi(Double.parseDouble(size[1])),
                            List.copyOf(points)));
        });
        return all;
    }

    private static void add(Map<String, List<Point>> rows, String[] cells) {
        rows.computeIfAbsent(cells[0], name -> new ArrayList<>())
                .add(new Point(
                        REVOLUTION_PER_MINUTE.toSi(Double.parseDouble(cells[1])),
                        Double.parseDouble(cells[2]),
                        Double.parseDouble(cells[3]),
                        Double.parseDouble(cells[4])));
    }
}
