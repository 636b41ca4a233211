package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.parts.CurveShape;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.validation.ErrorStatistics;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The fitted curves against the published figures they were fitted to, read at the published speed. Source: Brandt,
 * Deters, Ananda, Dantsker and Selig, UIUC Propeller Database, volumes 1-3.
 */
class CurveFitExternalTest {
    /** Two RMS residuals of the worst accepted fit; a second test of one type differs by 6 % in C_T. */
    private static final double STATIC_THRUST = 0.055;

    private static final double STATIC_POWER = 0.055;

    /** The 5x3.5 is the worst fit of all in C_P (5.9 % RMS) and is not in the catalogue. */
    private static final double SMALL_STATIC_POWER = 0.12;

    /** Judgement: half the acceptance of an unseen propeller. */
    private static final double PEAK_EFFICIENCY = 0.03;

    /** Peaks are flat: within 1 % of the best efficiency over about this range of J. */
    private static final double PEAK_ADVANCE = 0.06;

    /** The project's target for measured propellers. */
    private static final double TARGET_RMS = 0.035;

    /** Share of two-blade propellers within the target in C_T and in C_P when the fits were made, rounded down. */
    private static final double SHARE_WITHIN_TARGET = 0.95;

    /** Worst RMS residual when the fits were made, rounded up: C_T of A 9x4.5, C_P of V 5x3.5. */
    private static final double WORST_RMS = 0.06;

    /** Zero-thrust advance ratio over pitch ratio, judgement. */
    private static final double LEAST_ZERO_THRUST = 0.95;

    private static final double MOST_ZERO_THRUST = 1.5;

    private static final double ZERO_THRUST_BEYOND = 0.07;

    /** Largest and RMS error over all measured propellers when the fits were made, rounded up. */
    private static final double[] ALL_THRUST = {0.09, 0.03};

    private static final double[] ALL_POWER = {0.09, 0.03};
    private static final double[] ALL_EFFICIENCY = {0.025, 0.01};
    private static final double[] ALL_ADVANCE = {0.045, 0.018};

    private static final Validation FITS = Validation.of(
            Subject.PROPULSION,
            "Fitted propellers",
            "Brandt, Deters, Ananda, Dantsker and Selig, UIUC Propeller Database, volumes 1-3, at the published speed.");

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "A 10x5, 0.0994, 0.0379, 6708, 0.665, 0.492, 6710",
        "A 10x7, 0.1139, 0.0512, 6542, 0.714, 0.575, 6519",
        "A 8x4, 0.0978, 0.0401, 6989, 0.635, 0.491, 7011",
        "A 8x6, 0.1181, 0.0760, 6700, 0.706, 0.700, 6712",
        "B 10x4.7, 0.1299, 0.0531, 6528, 0.657, 0.445, 6512",
        "B 8x3.8, 0.1143, 0.0481, 7015, 0.628, 0.434, 7013",
        "B 11x4.7, 0.1259, 0.0493, 6021, 0.647, 0.416, 6006",
        "D 9x5, 0.1043, 0.0394, 6797, 0.614, 0.399, 6811",
        "G 12x8, 0.1178, 0.0441, 7473, 0.763, 0.545, 5038",
        "V 5x3.5, 0.1118, 0.0471, 7850, 0.497, 0.285, 8039"
    })
    void fitMeetsThePublishedFigures(
            String name, double ct0, double cp0, double staticRpm, double eta, double j, double peakRpm) {
        CurveFit fit =
                CurveFit.of(Objects.requireNonNull(MeasuredPropeller.all().get(name)));
        CurveShape atRest = CurveShape.at(fit.curves(), staticRpm / 60);
        CurveShape advancing = CurveShape.at(fit.curves(), peakRpm / 60);
        FITS.relative(name + ", C_T at rest", ct0, atRest.staticThrust(), STATIC_THRUST, "");
        double power = name.startsWith("V") ? SMALL_STATIC_POWER : STATIC_POWER;
        FITS.relative(name + ", C_P at rest", cp0, atRest.staticPower(), power, "")
                .value(name + ", best efficiency", eta, advancing.peakEfficiency(), PEAK_EFFICIENCY, "")
                .value(name + ", advance ratio of it", j, advancing.peakAdvance(), PEAK_ADVANCE, "");
    }

    /** The 10x7 of line A gains 16 % of static C_T from 1975 to 6542 rpm. */
    @Test
    void coefficientsGrowWithSpeedAsMeasured() {
        CurveFit fit =
                CurveFit.of(Objects.requireNonNull(MeasuredPropeller.all().get("A 10x7")));
        double slow = CurveShape.at(fit.curves(), 1975 / 60.0).staticThrust();
        double fast = CurveShape.at(fit.curves(), 6542 / 60.0).staticThrust();
        double early = CurveShape.at(fit.curves(), 4007 / 60.0).peakEfficiency();
        double late = CurveShape.at(fit.curves(), 6519 / 60.0).peakEfficiency();
        FITS.value("A 10x7, gain of C_T from 1975 to 6542 rpm", 0.16, fast / slow - 1, STATIC_THRUST, "")
                .value(
                        "A 10x7, gain of best efficiency from 4007 to 6519 rpm",
                        0.034,
                        late - early,
                        PEAK_EFFICIENCY,
                        "");
    }

    @Test
    void residualsAreThoseFoundWhenTheFitsWereMade() {
        List<CurveFit> fits = fits();
        ErrorStatistics thrusts = new ErrorStatistics();
        ErrorStatistics powers = new ErrorStatistics();
        fits.forEach(f -> thrusts.add(f.thrustRms()));
        fits.forEach(f -> powers.add(f.powerRms()));
        FITS.set("each propeller's RMS residual of C_T, relative", thrusts, WORST_RMS, TARGET_RMS, "")
                .set("each propeller's RMS residual of C_P, relative", powers, WORST_RMS, TARGET_RMS, "");
        long within = fits.stream()
                .filter(f -> f.thrustRms() <= TARGET_RMS && f.powerRms() <= TARGET_RMS)
                .count();
        long thrust = fits.stream().filter(f -> f.thrustRms() <= TARGET_RMS).count();
        long power = fits.stream().filter(f -> f.powerRms() <= TARGET_RMS).count();
        assertThat(Math.min(thrust, power) / (double) fits.size())
                .as("C_T %d, C_P %d, both %d of %d", thrust, power, within, fits.size())
                .isGreaterThanOrEqualTo(SHARE_WITHIN_TARGET);
        assertThat(fits).allSatisfy(f -> {
            assertThat(f.thrustRms()).isLessThan(WORST_RMS);
            assertThat(f.powerRms()).isLessThan(WORST_RMS);
        });
    }

    /**
     * No thrust near the pitch's own advance ratio, at each propeller's highest speed: 0.95 to 1.5 times it. Three measured ones lie
     * outside, at 0.942, 1.501 and 1.566; the first and last were left out of the catalogue once, and are shown now as they are.
     */
    @Test
    void thrustVanishesNearThePitchAdvance() {
        ErrorStatistics outside = new ErrorStatistics();
        List<String> beyond = new ArrayList<>();
        for (Propeller p : Plants.PROPELLERS) {
            double end = CurveShape.at(p.curves(), p.curves().highestSpeed()).zeroThrustAdvance();
            double ratio = end * p.diameter() / p.pitch();
            double over = Math.max(0, Math.max(LEAST_ZERO_THRUST - ratio, ratio - MOST_ZERO_THRUST));
            if (over > 0) {
                beyond.add(p.name());
            }
            outside.add(over);
        }
        FITS.set("advance ratio without thrust over P/D, beyond 0.95 to 1.5", outside, ZERO_THRUST_BEYOND, 0.01, "");
        assertThat(beyond).containsExactlyInAnyOrder("10x8 soft slow flyer", "10x4 sport", "11x4 sport");
    }

    /** Every catalogue propeller that was measured, at the speeds of its top static row and of its best efficiency. */
    @Test
    void everyFitMeetsItsOwnPropeller() {
        ErrorStatistics[] errors = {
            new ErrorStatistics(), new ErrorStatistics(), new ErrorStatistics(), new ErrorStatistics()
        };
        for (MeasuredPropeller p : MeasuredPropeller.all().values()) {
            if (p.again() || p.name().equals(PropellerRows.LEFT_OUT)) {
                continue;
            }
            PropellerCurves curves = CurveFit.of(p).curves();
            MeasuredPropeller.Point still = p.topStatic();
            MeasuredPropeller.Point best = p.peak();
            CurveShape atRest = CurveShape.at(curves, still.rotation());
            CurveShape advancing = CurveShape.at(curves, best.rotation());
            errors[0].add(atRest.staticThrust() / still.thrust() - 1);
            errors[1].add(atRest.staticPower() / still.power() - 1);
            errors[2].add(advancing.peakEfficiency() - best.efficiency());
            errors[3].add(advancing.peakAdvance() - best.j());
        }
        FITS.set("C_T at rest, relative", errors[0], ALL_THRUST[0], ALL_THRUST[1], "")
                .set("C_P at rest, relative", errors[1], ALL_POWER[0], ALL_POWER[1], "")
                .set("best efficiency", errors[2], ALL_EFFICIENCY[0], ALL_EFFICIENCY[1], "")
                .set("advance ratio of it", errors[3], ALL_ADVANCE[0], ALL_ADVANCE[1], "");
    }

    /** Propellers of one diameter and pitch lie 30 % about their middle apart in static thrust, so that size alone cannot do better. */
    @Test
    void familiesOfOneSizeLieApart() {
        Map<String, double[]> extremes = new LinkedHashMap<>();
        for (MeasuredPropeller p : MeasuredPropeller.all().values()) {
            double thrust = CurveShape.at(CurveFit.of(p).curves(), p.topStatic().rotation())
                    .staticThrust();
            double[] size =
                    extremes.computeIfAbsent(p.diameter() + " " + p.pitch(), key -> new double[] {Double.MAX_VALUE, 0});
            size[0] = Math.min(size[0], thrust);
            size[1] = Math.max(size[1], thrust);
        }
        double widest = extremes.values().stream()
                .mapToDouble(e -> (e[1] - e[0]) / (e[1] + e[0]))
                .max()
                .orElseThrow();
        FITS.value("C_T at rest of one size about its middle, widest between families", 0.30, widest, 0.10, "");
    }

    /**
     * Medians over the two-blade propellers of 8 in and more, by pitch over diameter from 0.35 to 1.00 in six classes: C_T and C_P at
     * rest, best efficiency and its J, J without thrust over P/D, figure of merit at rest.
     */
    private static final double[][] MEDIANS = {
        {0.35, 0.45, .088, .031, .58, .37, 1.36, .68},
        {0.45, 0.55, .111, .042, .64, .46, 1.33, .66},
        {0.55, 0.65, .110, .041, .69, .51, 1.22, .68},
        {0.65, 0.75, .116, .054, .72, .57, 1.18, .60},
        {0.75, 0.85, .126, .071, .72, .64, 1.15, .52},
        {0.85, 1.001, .117, .082, .74, .70, 1.14, .38}
    };

    /** Half a printed digit of the smallest, the fits' own errors, and that a median jumps from one propeller to its neighbour. */
    private static final double MEDIAN = 0.10;

    @Test
    void mediansByPitchAreThoseOfTheCollection() {
        String[] names = {
            "C_T at rest",
            "C_P at rest",
            "best efficiency",
            "advance ratio of it",
            "advance ratio without thrust",
            "figure of merit"
        };
        List<MeasuredPropeller> large = MeasuredPropeller.all().values().stream()
                .filter(p -> p.diameter() > 0.2)
                .toList();
        for (int k = 0; k < names.length; k++) {
            ErrorStatistics errors = new ErrorStatistics();
            for (double[] row : MEDIANS) {
                int figure = k;
                double[] values = large.stream()
                        .filter(p -> p.pitchRatio() >= row[0] && p.pitchRatio() < row[1])
                        .mapToDouble(p -> figures(p)[figure])
                        .sorted()
                        .toArray();
                double median = 0.5 * (values[(values.length - 1) / 2] + values[values.length / 2]);
                errors.add(median / row[k + 2] - 1);
            }
            FITS.set("medians of six classes of pitch, " + names[k] + ", relative", errors, MEDIAN, 0.06, "");
        }
    }

    private static double[] figures(MeasuredPropeller p) {
        PropellerCurves curves = CurveFit.of(p).curves();
        CurveShape still = CurveShape.at(curves, p.topStatic().rotation());
        CurveShape best = CurveShape.at(curves, p.peak().rotation());
        return new double[] {
            still.staticThrust(),
            still.staticPower(),
            best.peakEfficiency(),
            best.peakAdvance(),
            best.zeroThrustAdvance() / p.pitchRatio(),
            still.figureOfMerit()
        };
    }

    private static List<CurveFit> fits() {
        List<CurveFit> fits = new ArrayList<>();
        for (Map.Entry<String, MeasuredPropeller> entry :
                MeasuredPropeller.all().entrySet()) {
            fits.add(CurveFit.of(entry.getValue()));
        }
        return fits;
    }
}
