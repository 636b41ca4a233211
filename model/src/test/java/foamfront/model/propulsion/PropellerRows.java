package foamfront.model.propulsion;

import static foamfront.model.units.Unit.INCH;
import static foamfront.model.units.Unit.REVOLUTION_PER_MINUTE;

import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.PropellerRegression;
import foamfront.model.parts.Provenance;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * The propeller table of the catalogue, made from the measured collection. {@link #main} writes it; CataloguePropellersTest
 * makes it again and compares.
 */
final class PropellerRows {
    /** Where the catalogue lies, seen from the module. */
    static final Path FILE = Path.of("..", "studies", "catalogue", "propellers.csv");

    /** Zero thrust at 0.63 of its pitch ratio and static power 12 % off its fit: not one to plan with. */
    static final String LEFT_OUT = "V 5x3.5";

    /** Sizes between measured ones of the same line, and four with a third blade for little room below. */
    private static final List<Size> BETWEEN = List.of(
            new Size(BladeFamily.THIN_ELECTRIC, 9, 6, 2),
            new Size(BladeFamily.THIN_ELECTRIC, 10, 6, 2),
            new Size(BladeFamily.SLOW_FLYER, 8, 4.7, 2),
            new Size(BladeFamily.SLOW_FLYER, 10, 3.8, 2),
            new Size(BladeFamily.SPORT, 7, 4, 2),
            new Size(BladeFamily.SPORT, 7, 5, 2),
            new Size(BladeFamily.SPORT, 9, 5, 2),
            new Size(BladeFamily.SPORT, 10, 6, 2),
            new Size(BladeFamily.FOLDING, 12, 6, 2),
            new Size(BladeFamily.SPORT, 7, 4, 3),
            new Size(BladeFamily.SPORT, 8, 6, 3),
            new Size(BladeFamily.SPORT, 9, 7, 3),
            new Size(BladeFamily.SPORT, 10, 7, 3));

    /** Diameter and pitch in inches. */
    private record Size(BladeFamily family, double diameter, double pitch, int blades) {
        static Size of(MeasuredPropeller p) {
            return new Size(p.family(), INCH.fromSi(p.diameter()), INCH.fromSi(p.pitch()), 2);
        }

        String words() {
            return number(diameter) + "x" + number(pitch) + " " + family.words()
                    + (blades == 2 ? "" : " " + blades + "-blade");
        }
    }

    private static final String[] HEADER = {
        "# Propellers. C = a0 + a1 J + a2 J^2 + a3 J^3 + a4 J^4 + lambda (b0 + b1 J) with lambda = 2 (n - n0) / (n + n0) and n0 ="
                + " 6000 rpm; J = V/(nD); n held inside the measured speeds. Fitted to: J.B. Brandt and R.W. Deters and"
                + " G.K. Ananda and O.D. Dantsker and M.S. Selig: UIUC Propeller Database volumes 1-3. University of"
                + " Illinois at Urbana-Champaign. https://m-selig.ae.illinois.edu/props/propDB.html Rows marked regression"
                + " lie between measured sizes of the same family; a third blade counts 1.324 times in thrust and 1.402 in power (volume 2). Mass and price are plausible trade figures.",
        "name,family,diameter [in],pitch [in],blades,mass [g],price [USD],provenance,thrust a0,thrust a1,thrust a2,"
                + "thrust a3,thrust a4,thrust b0,thrust b1,power a0,power a1,power a2,power a3,power a4,power b0,power b1,"
                + "lowest speed [rpm],highest speed [rpm],furthest advance ratio,source"
    };

    private PropellerRows() {}

    static List<String> lines(Collection<MeasuredPropeller> all) {
        List<String> lines = new ArrayList<>(List.of(HEADER));
        List<Propeller> parts = new ArrayList<>();
        for (MeasuredPropeller p : all) {
            if (p.again() || p.name().equals(LEFT_OUT)) {
                continue;
            }
            CurveFit fit = CurveFit.of(p);
            String source = String.format(
                    Locale.ROOT,
                    "measured; fit RMS C_T %.1f %% and C_P %.1f %%",
                    100 * fit.thrustRms(),
                    100 * fit.powerRms());
            lines.add(line(Size.of(p), fit.curves(), Provenance.OPEN_DATA, source));
            parts.add(p.part());
        }
        PropellerRegression regression = new PropellerRegression(parts);
        for (Size size : BETWEEN) {
            PropellerCurves curves = regression.predict(
                    size.family(), INCH.toSi(size.diameter()), INCH.toSi(size.pitch()), size.blades());
            lines.add(line(
                    size,
                    rounded(curves),
                    Provenance.REGRESSION,
                    size.blades() == 2
                            ? "from the measured sizes of its family"
                            : "from the measured sizes of its family and measured ratios of blade numbers"));
        }
        return lines;
    }

    private static PropellerCurves rounded(PropellerCurves curves) {
        return new PropellerCurves(
                CurveFit.rounded(curves.thrustTerms()),
                CurveFit.rounded(curves.powerTerms()),
                curves.lowestSpeed(),
                curves.highestSpeed(),
                curves.furthestAdvance());
    }

    private static String line(Size size, PropellerCurves curves, Provenance provenance, String source) {
        StringBuilder row = new StringBuilder();
        row.append(size.words()).append(',').append(size.family().words());
        row.append(
                String.format(Locale.ROOT, ",%s,%s,%d", number(size.diameter()), number(size.pitch()), size.blades()));
        row.append(String.format(
                Locale.ROOT,
                ",%.1f,%.2f,%s",
                mass(size) * size.blades() / 2,
                price(size) * size.blades() / 2,
                provenance.words()));
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
    private static double mass(Size size) {
        double atTen = switch (size.family()) {
            case SLOW_FLYER, SOFT_SLOW_FLYER, DIRECT_DRIVE -> 13;
            case THIN_ELECTRIC -> 15;
            case SPORT, COMPOSITE, SMALL -> 19;
            case FOLDING -> 22;
        };
        double ratio = size.diameter() / 10;
        return atTen * ratio * ratio;
    }

    /** USD: 1.5 to 4 from 8 to 10 in, 1 to 2.5 at 5 in (from memory); folding blades with their hub twice as much. */
    private static double price(Size size) {
        double plain = 0.3 * size.diameter();
        return size.family() == BladeFamily.FOLDING ? 2 * plain : plain;
    }

    private static String number(double value) {
        double printed = Math.rint(100 * value) / 100;
        return printed == Math.rint(printed) ? String.format(Locale.ROOT, "%.0f", printed) : Double.toString(printed);
    }

    /** Writes the table to {@link #FILE}. */
    public static void main(String[] args) throws IOException {
        Files.writeString(
                FILE, String.join("\n", lines(MeasuredPropeller.all().values())) + "\n", StandardCharsets.UTF_8);
    }
}
