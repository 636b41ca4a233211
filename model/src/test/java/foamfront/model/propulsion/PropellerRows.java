package foamfront.model.propulsion;

import static foamfront.model.units.Unit.INCH;
import static foamfront.model.units.Unit.REVOLUTION_PER_MINUTE;

import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.PropellerCurves;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * The propeller table of the catalogue, made from the measured collection. {@link #main} writes it; CataloguePropellersTest
 * makes it again and compares.
 */
final class PropellerRows {
    /** Where the catalogue lies, seen from the module. */
    static final Path FILE = Path.of("..", "studies", "catalogue", "propellers.csv");

    private static final String[] MEASURED = {
        "A 8x4",
        "A 8x6",
        "A 9x4.5",
        "A 10x5",
        "A 10x7",
        "A 11x7",
        "A 11x8",
        "B 8x3.8",
        "B 9x3.8",
        "B 9x6",
        "B 10x4.7",
        "B 10x7",
        "B 11x4.7",
        "B 11x7",
        "C 8x4.3",
        "C 9x4.7",
        "C 8x6",
        "D 9x5",
        "D 10x6",
        "E 7x6",
        "E 8x5",
        "E 9x6",
        "E 10x5",
        "E 11x7",
        "G 9x5",
        "G 10x4",
        "G 11x4",
        "G 12x8",
        "W 5x4",
        "X 5.12x2.76"
    };

    /** Sizes between measured ones of the same line. */
    private static final String[] BETWEEN = {
        "A 9x6", "A 10x6", "B 8x4.7", "B 10x3.8", "E 7x4", "E 7x5", "E 9x5", "E 10x6", "G 12x6"
    };

    private static final String[] HEADER = {
        "# Propellers. C = a0 + a1 J + a2 J^2 + a3 J^3 + lambda (b0 + b1 J) with lambda = 2 (n - n0) / (n + n0) and n0 ="
                + " 6000 rpm; J = V/(nD); n held inside the measured speeds. Fitted to: J.B. Brandt and R.W. Deters and"
                + " G.K. Ananda and O.D. Dantsker and M.S. Selig: UIUC Propeller Database volumes 1-3. University of"
                + " Illinois at Urbana-Champaign. https://m-selig.ae.illinois.edu/props/propDB.html Rows marked regression"
                + " lie between measured sizes of the same product line. Mass and price are plausible trade figures.",
        "name,family,diameter [in],pitch [in],blades,mass [g],price [USD],provenance,thrust a0,thrust a1,thrust a2,"
                + "thrust a3,thrust b0,thrust b1,power a0,power a1,power a2,power a3,power b0,power b1,"
                + "lowest speed [rpm],highest speed [rpm],furthest advance ratio,source"
    };

    /** The project's own acceptance, less room for rounding. */
    private static final double MOST_MERIT = 0.789;

    private static final double MOST_EFFICIENCY = 0.799;

    private PropellerRows() {}

    static BladeFamily family(char line) {
        return switch (line) {
            case 'A' -> BladeFamily.THIN_ELECTRIC;
            case 'B', 'C' -> BladeFamily.SLOW_FLYER;
            case 'D' -> BladeFamily.DIRECT_DRIVE;
            case 'E', 'F' -> BladeFamily.SPORT;
            case 'G' -> BladeFamily.FOLDING;
            default -> BladeFamily.SMALL;
        };
    }

    static List<String> lines(Map<String, MeasuredPropeller> all) {
        List<String> lines = new ArrayList<>(List.of(HEADER));
        for (String name : MEASURED) {
            CurveFit fit = CurveFit.of(Objects.requireNonNull(all.get(name)));
            String source = String.format(
                    Locale.ROOT,
                    "measured; fit RMS C_T %.1f %% and C_P %.1f %%",
                    100 * fit.thrustRms(),
                    100 * fit.powerRms());
            lines.add(line(name, fit.curves(), "open data", source));
        }
        LineRegression regression = LineRegression.over(all.values());
        for (String name : BETWEEN) {
            lines.add(line(
                    name,
                    predicted(regression, all, name),
                    "regression",
                    "from the measured sizes of its product line"));
        }
        return lines;
    }

    private static PropellerCurves predicted(
            LineRegression regression, Map<String, MeasuredPropeller> all, String name) {
        char line = name.charAt(0);
        double lowest = 0;
        double highest = Double.MAX_VALUE;
        for (MeasuredPropeller p : all.values()) {
            if (p.line() == line) {
                PropellerCurves curves = CurveFit.of(p).curves();
                lowest = Math.max(lowest, curves.lowestSpeed());
                highest = Math.min(highest, curves.highestSpeed());
            }
        }
        double[] size = size(name);
        return credible(regression.predict(line, INCH.toSi(size[0]), INCH.toSi(size[1]), lowest, highest));
    }

    /** With power raised until figure of merit and efficiency are no better than measured propellers reach. */
    private static PropellerCurves credible(PropellerCurves curves) {
        double excess = 1;
        for (double n : new double[] {curves.lowestSpeed(), curves.highestSpeed()}) {
            CurveShape shape = CurveShape.at(curves, n);
            excess = Math.max(excess, shape.figureOfMerit() / MOST_MERIT);
            excess = Math.max(excess, shape.peakEfficiency() / MOST_EFFICIENCY);
        }
        double[] power = curves.powerTerms();
        for (int i = 0; i < power.length; i++) {
            power[i] *= excess;
        }
        return new PropellerCurves(
                curves.thrustTerms(),
                CurveFit.rounded(power),
                curves.lowestSpeed(),
                curves.highestSpeed(),
                curves.furthestAdvance());
    }

    private static double[] size(String name) {
        String[] parts = name.split(" ", -1)[1].split("x", -1);
        return new double[] {Double.parseDouble(parts[0]), Double.parseDouble(parts[1])};
    }

    private static String line(String name, PropellerCurves curves, String provenance, String source) {
        double[] size = size(name);
        BladeFamily family = family(name.charAt(0));
        StringBuilder row = new StringBuilder();
        row.append(name.split(" ", -1)[1]).append(' ').append(family.words());
        row.append(',').append(family.words());
        row.append(String.format(Locale.ROOT, ",%s,%s,2", number(size[0]), number(size[1])));
        row.append(
                String.format(Locale.ROOT, ",%.1f,%.2f,%s", mass(family, size[0]), price(family, size[0]), provenance));
        for (double c : curves.thrustTerms()) {
            row.append(String.format(Locale.ROOT, ",%.5f", c));
        }
        for (double c : curves.powerTerms()) {
            row.append(String.format(Locale.ROOT, ",%.5f", c));
        }
        row.append(String.format(
                Locale.ROOT,
                ",%.0f,%.0f,%.4f,%s",
                REVOLUTION_PER_MINUTE.fromSi(curves.lowestSpeed()),
                REVOLUTION_PER_MINUTE.fromSi(curves.highestSpeed()),
                curves.furthestAdvance(),
                source));
        return row.toString();
    }

    /** Grams: 13 g for a 10 in slow flyer, 8 to 20 g from 8 to 10 in, 3 to 6 g at 5 in (from memory). */
    private static double mass(BladeFamily family, double inches) {
        double atTen = switch (family) {
            case SLOW_FLYER, DIRECT_DRIVE -> 13;
            case THIN_ELECTRIC -> 15;
            case SPORT, SMALL -> 19;
            case FOLDING -> 22;
        };
        double ratio = inches / 10;
        return atTen * ratio * ratio;
    }

    /** USD: 1.5 to 4 from 8 to 10 in, 1 to 2.5 at 5 in (from memory); folding blades with their hub twice as much. */
    private static double price(BladeFamily family, double inches) {
        double plain = 0.3 * inches;
        return family == BladeFamily.FOLDING ? 2 * plain : plain;
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }

    /** Writes the table to {@link #FILE}. */
    public static void main(String[] args) throws IOException {
        Files.writeString(FILE, String.join("\n", lines(MeasuredPropeller.all())) + "\n", StandardCharsets.UTF_8);
    }
}
