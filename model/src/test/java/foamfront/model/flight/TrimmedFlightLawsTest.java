package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.design.Design;
import foamfront.model.design.Wing;
import foamfront.model.factors.Factors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of trimmed flights of random designs. */
class TrimmedFlightLawsTest {
    /** Sums of a few dozen terms. */
    private static final double ROUNDING = 1e-10;

    /** m. */
    private static final double FORWARD = 0.02;

    static LongStream seeds() {
        return LongStream.range(0, 54);
    }

    /** A stepped plate's drag is known to 30 %, a fold's to 20 %: the same factor moves it half as far again. */
    @Test
    void factorsReachFurtherWhereTheSectionIsKnownLess() {
        Factors more = Records.with(Factors.NOMINAL, "sectionDrag", 1.2);
        Factors less = Records.with(Factors.NOMINAL, "sectionDrag", 1 / 1.2);
        for (String name : new String[] {"trainer", "stepped plate"}) {
            TrimmedFlight plain = Flights.of(Arrangements.of(name), 7).flight;
            TrimmedFlight up = Flights.of(Arrangements.of(name), 7, more).flight;
            TrimmedFlight down = Flights.of(Arrangements.of(name), 7, less).flight;
            for (TrimmedFlight flight : new TrimmedFlight[] {plain, up, down}) {
                flight.drag(10, 0.4);
            }
            double ratio = up.profileDrag() / plain.profileDrag();
            // tail and fins are flat plates, known to 20 %
            assertThat(ratio).isBetween(1.2 - ROUNDING, name.equals("trainer") ? 1.2 + ROUNDING : 1.3);
            assertThat(ratio > 1.25).isEqualTo(name.equals("stepped plate"));
            assertThat(down.profileDrag()).isPositive().isLessThan(plain.profileDrag());
        }
    }

    /** The straight line in C_L against the lifting system itself. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void trimCarriesTheWeightAndLeavesNoMoment(long seed) {
        Design design = Arrangements.near(seed);
        // A delta's lift and moment are no straight lines: VortexTrimLawsTest.
        assumeThat(design.wing()).isNotInstanceOf(Wing.Delta.class);
        Flights f = Flights.of(design, 7);
        for (double lift : new double[] {0.1, 0.5, 0.9}) {
            double alpha = f.flight.incidence(lift);
            double elevator = f.flight.elevator(lift);
            double moment = f.lifting.fixedMoment(f.balanceX)
                    + (f.lifting.momentSlope(f.balanceX) + f.bodyMoment) * alpha
                    + f.lifting.elevatorMomentSlope(f.balanceX) * elevator;
            assertThat(f.lifting.liftCoefficient(alpha, elevator, 0)).isCloseTo(lift, within(ROUNDING));
            assertThat(moment).isCloseTo(0, within(ROUNDING));
        }
    }

    /** At one lift coefficient weight grows with the square of speed; induced drag's coefficient stays. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void forcesGrowWithTheSquareOfSpeed(long seed) {
        TrimmedFlight flight = Flights.of(Arrangements.near(seed), 7).flight;
        flight.drag(10, 0.5);
        double induced = flight.inducedDrag();
        flight.drag(20, 0.5);
        assertThat(flight.inducedDrag()).isEqualTo(induced).isPositive();
        assertThat(flight.speedAt(0.5) / flight.speedAt(2)).isCloseTo(2, within(ROUNDING));
        assertThat(Flights.of(Arrangements.near(seed), 28).flight.speedAt(0.5) / flight.speedAt(0.5))
                .isCloseTo(2, within(ROUNDING));
    }

    /** The parts of drag add up, and each falls or stays as the Reynolds number rises. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void dragPartsAddUpAndFallWithSpeed(long seed) {
        TrimmedFlight flight = Flights.of(Arrangements.near(seed), 7).flight;
        double before = Double.POSITIVE_INFINITY;
        for (double speed = 8; speed < 24; speed *= 1.1) {
            double drag = flight.drag(speed, 0.4);
            double parts = flight.profileDrag() + flight.inducedDrag() + flight.parasiteDrag();
            double pressureArea = 0.5 * flight.density() * speed * speed * flight.referenceArea();
            assertThat(drag).isCloseTo(pressureArea * parts, within(ROUNDING * drag));
            assertThat(parts).isLessThanOrEqualTo(before);
            before = parts;
        }
    }

    /** Level flight lifts the weight. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void levelFlightLiftsTheWeight(long seed) {
        TrimmedFlight flight = Flights.of(Arrangements.near(seed), 7).flight;
        double lift = flight.liftCoefficient(11);
        assertThat(0.5 * flight.density() * 11 * 11 * flight.referenceArea() * lift)
                .isCloseTo(7, within(ROUNDING));
        assertThat(flight.liftCoefficient(flight.stallSpeed())).isCloseTo(flight.maximumLift(), within(1e-3));
    }

    /** A balance point that moves forward in flight asks more elevator at the stall; level flight before it stays as it was. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void stallIsTakenAtTheForemostBalancePoint(long seed) {
        Design design = Arrangements.near(seed);
        Flights still = Flights.of(design, 7);
        Flights moving = Flights.moving(design, 7, FORWARD);
        Flights ahead = Flights.balanced(design, 7, still.balanceX - FORWARD);

        assertThat(moving.flight.maximumLift()).isEqualTo(ahead.flight.maximumLift());
        assertThat(moving.flight.stallSpeed()).isEqualTo(ahead.flight.stallSpeed());
        assertThat(moving.flight.elevatorAtStall())
                .isEqualTo(ahead.flight.elevator(ahead.flight.maximumLift()))
                .isLessThan(still.flight.elevatorAtStall());
        assertThat(moving.flight.drag(12)).isEqualTo(still.flight.drag(12));
        assertThat(moving.flight.elevator(0.5)).isEqualTo(still.flight.elevator(0.5));
    }
}
