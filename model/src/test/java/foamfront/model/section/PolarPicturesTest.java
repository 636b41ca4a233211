package foamfront.model.section;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.WingSection;
import foamfront.model.design.WingSection.CurvedPlate;
import foamfront.model.design.WingSection.FlatPlate;
import foamfront.model.design.WingSection.FoldedFlatBottom;
import foamfront.model.design.WingSection.FoldedSymmetrical;
import foamfront.model.design.WingSection.SteppedPlate;
import foamfront.model.units.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Draws every polar, one curve a picture, under target/polars, and holds them to having no kinks: between neighbouring points
 * of a drag curve the slope changes by no more than the steepest bend that the drag rise has.
 */
class PolarPicturesTest {
    private static final Path FOLDER = Path.of("target", "polars");
    private static final int POINTS = 240;
    private static final double[] REYNOLDS = {40e3, 60e3, 100e3, 200e3, 350e3};

    /** Steepest bend of drag over lift, per unit of lift squared: 12 · 11 · b / room² at the stall, room at least 0.3. */
    private static final double BEND = 20.5;

    static Stream<WingSection> kinds() {
        return Stream.of(
                new FlatPlate(),
                new SteppedPlate(0.5),
                new CurvedPlate(0.06),
                new FoldedFlatBottom(0.11),
                new FoldedSymmetrical(0.11));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void dragOverLiftHasNoKink(WingSection section) throws IOException {
        SectionPolar polar = Sections.polar(section);
        for (double reynolds : REYNOLDS) {
            double log = StrictMath.log(reynolds);
            double from = polar.minimumLift(log);
            double to = polar.maximumLift(log);
            double[] lift = even(from, to);
            double[] drag = of(lift, c -> polar.drag(c, log));
            String name = String.format(
                    Locale.ROOT, "%s drag over lift, Re %.0f", section.kind().words(), reynolds);
            PolarPicture.write(file(name), name + " (across: lift, up: drag)", lift, drag);

            double step = lift[1] - lift[0];
            for (int i = 1; i < POINTS; i++) {
                double bend = (drag[i + 1] - 2 * drag[i] + drag[i - 1]) / (step * step);
                assertThat(bend).as(name + " at " + lift[i]).isBetween(-1e-6, BEND);
            }
        }
    }

    /** Straight through no lift at the zero-lift angle, then over the stall at no more than twice the slope before it. */
    @ParameterizedTest
    @MethodSource("kinds")
    void liftOverIncidenceHasNoJump(WingSection section) throws IOException {
        SectionPolar polar = Sections.polar(section);
        for (double reynolds : REYNOLDS) {
            double log = StrictMath.log(reynolds);
            double[] angle = even(-20, 30);
            double[] lift = of(angle, a -> polar.lift(Unit.DEGREE.toSi(a), log));
            String name = String.format(
                    Locale.ROOT,
                    "%s lift over incidence, Re %.0f",
                    section.kind().words(),
                    reynolds);
            PolarPicture.write(file(name), name + " (across: degrees, up: lift)", angle, lift);

            assertThat(polar.lift(polar.zeroLiftAngle(), log)).as(name).isZero();
            double slope = 2 * Math.PI * polar.slopeRatio(log) * Unit.DEGREE.toSi(angle[1] - angle[0]);
            for (int i = 1; i <= POINTS; i++) {
                assertThat(Math.abs(lift[i] - lift[i - 1]))
                        .as(name + " at " + angle[i])
                        .isLessThan(2 * slope);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void figuresAgainstReynoldsNumberRiseOrFallSteadily(WingSection section) throws IOException {
        SectionPolar polar = Sections.polar(section);
        double[] log = even(StrictMath.log(30e3), StrictMath.log(400e3));
        double[] most = of(log, polar::maximumLift);
        double[] least = of(log, l -> leastDrag(polar, l));
        double[] best = of(log, l -> bestRatio(polar, l));
        String kind = section.kind().words();
        PolarPicture.write(file(kind + " maximum lift"), kind + " maximum lift over ln Re", log, most);
        PolarPicture.write(file(kind + " least drag"), kind + " least drag over ln Re", log, least);
        PolarPicture.write(file(kind + " best ratio"), kind + " best lift over drag over ln Re", log, best);

        for (int i = 1; i <= POINTS; i++) {
            assertThat(most[i]).isGreaterThanOrEqualTo(most[i - 1]);
            assertThat(least[i]).isLessThan(least[i - 1]);
            assertThat(best[i]).isGreaterThan(best[i - 1]);
        }
        // no foam-board section is known to do better than smooth sections of like Reynolds number
        assertThat(best[POINTS]).isLessThan(60);
    }

    private static Path file(String name) {
        return FOLDER.resolve(name.replace(' ', '-').replace(",", "") + ".png");
    }

    private static double[] even(double from, double to) {
        double[] x = new double[POINTS + 1];
        for (int i = 0; i <= POINTS; i++) {
            x[i] = from + (to - from) * i / POINTS;
        }
        return x;
    }

    private static double[] of(double[] x, DoubleUnaryOperator f) {
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            y[i] = f.applyAsDouble(x[i]);
        }
        return y;
    }

    private static double leastDrag(SectionPolar polar, double log) {
        double least = Double.POSITIVE_INFINITY;
        for (double lift = polar.minimumLift(log); lift < polar.maximumLift(log); lift += 0.002) {
            least = Math.min(least, polar.drag(lift, log));
        }
        return least;
    }

    private static double bestRatio(SectionPolar polar, double log) {
        double best = 0;
        for (double lift = 0.1; lift < polar.maximumLift(log); lift += 0.002) {
            best = Math.max(best, lift / polar.drag(lift, log));
        }
        return best;
    }
}
