package foamfront.optimizer.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.optimizer.catalogue.MotorReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MotorFitTest {
    /** Readings made by the law itself leave only rounding. */
    private static final double ROUNDING = 1e-9;

    /** Errors asked for: three of four within two standard errors is far below the 95 % expected of them. */
    private static final double SHARE = 0.75;

    private static final double KV = 100;
    private static final double R = 0.2;
    private static final double I0 = 0.7;

    @Test
    void readingsOfAKnownMotorGiveItsConstantsBack() {
        MotorFit fit = Objects.requireNonNull(MotorFit.of(readings(0, 1), 0));
        assertThat(fit.speedConstant()).isCloseTo(KV, within(ROUNDING * KV));
        assertThat(fit.resistance()).isCloseTo(R, within(ROUNDING));
        // The idle readings' own mean voltage stands in for no-load speed times 1/K_v, I R apart.
        assertThat(fit.noLoadCurrent()).isCloseTo(I0, within(0.01 * I0));
        assertThat(fit.catalogueResistance()).isCloseTo(R / 1.8, within(ROUNDING));
    }

    @Test
    void theControllersResistanceIsTakenOff() {
        MotorFit whole = Objects.requireNonNull(MotorFit.of(readings(0, 1), 0));
        MotorFit less = Objects.requireNonNull(MotorFit.of(readings(0, 1), 0.006));
        assertThat(whole.resistance() - less.resistance()).isCloseTo(0.006, within(ROUNDING));
    }

    @Test
    void theStatedErrorCoversTheTruth() {
        int inside = 0;
        int all = 40;
        for (long seed = 1; seed <= all; seed++) {
            MotorFit fit = Objects.requireNonNull(MotorFit.of(readings(0.05, seed), 0));
            inside += Math.abs(fit.resistance() - R) < 2 * fit.resistanceError() ? 1 : 0;
        }
        assertThat(inside).isGreaterThanOrEqualTo((int) (SHARE * all));
    }

    @Test
    void readingsAllAlikeTellNothing() {
        MotorReading one = new MotorReading(11, 8, 150, true);
        assertThat(MotorFit.of(List.of(one, one, one, one, new MotorReading(11, 8, 150, false)), 0))
                .isNull();
    }

    private static List<MotorReading> readings(double noise, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<MotorReading> all = new ArrayList<>();
        for (double volts : new double[] {7.4, 11.1}) {
            double quoted = 9.25 * KV;
            for (double amperes : new double[] {0, 4, 8, 12}) {
                double current = amperes == 0 ? idle(volts, quoted) : amperes;
                double rotation = KV * (volts - current * R) / (2 * Math.PI);
                all.add(new MotorReading(volts + noise * (random.nextDouble() - 0.5), current, rotation, amperes > 0));
            }
        }
        return all;
    }

    /** The no-load current at its own speed: half of it constant, half with speed. */
    private static double idle(double volts, double quoted) {
        double current = I0;
        for (int i = 0; i < 50; i++) {
            current = I0 * (0.5 + 0.5 * KV * (volts - current * R) / quoted);
        }
        return current;
    }
}
