package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.aero.PlainFlap;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.FlapKind;
import org.junit.jupiter.api.Test;

/** What flaps do to stall, trim and drag. */
class HighLiftLawsTest {
    private static final double WEIGHT = 10; // N
    private static final double ROUNDING = 1e-9;

    /** Each step of the stall speed gains a digit, and there are six. */
    private static final double FIXED_POINT = 1e-6;

    private static final Design FLAPS = Arrangements.of("flaps");
    private static final Design FLAPERONS = Arrangements.of("flaperons");

    private static HighLift lowered(Flights flights, FlapSetting setting, FlapKind kind) {
        return flights.flight.lowered(setting.deflection(kind));
    }

    @Test
    void flapsUpIsTheCleanAeroplane() {
        Flights flights = Flights.of(FLAPS, WEIGHT);
        HighLift none = flights.flight.lowered(0);
        assertThat(none.stallSpeed()).isCloseTo(flights.flight.stallSpeed(), within(FIXED_POINT));
        assertThat(none.elevatorAtStall()).isCloseTo(flights.flight.elevatorAtStall(), within(FIXED_POINT));
        double drag = flights.flight.drag(9, 0.6);
        double pressure = 0.5 * flights.flight.density() * 81 * flights.flight.referenceArea();
        assertThat(none.dragCoefficient(0.6, 9)).isCloseTo(drag / pressure, within(ROUNDING));
    }

    @Test
    void flapsStallSlowerThanNoneAndLandingSlowerThanTakeOff() {
        for (Design design : new Design[] {FLAPS, FLAPERONS}) {
            FlapKind kind = design.controls().flaps();
            Flights flights = Flights.of(design, WEIGHT);
            double clean = flights.flight.stallSpeed();
            double takeOff = lowered(flights, FlapSetting.TAKE_OFF, kind).stallSpeed();
            double landing = lowered(flights, FlapSetting.LANDING, kind).stallSpeed();
            assertThat(takeOff).isLessThan(0.995 * clean);
            assertThat(landing).isLessThan(takeOff);
        }
    }

    @Test
    void flapsAskForElevatorAndDrag() {
        Flights flights = Flights.of(FLAPS, WEIGHT);
        HighLift landing = lowered(flights, FlapSetting.LANDING, FlapKind.FLAPS);
        assertThat(Math.abs(landing.elevator(0.7) - flights.flight.elevator(0.7)))
                .isGreaterThan(Math.toRadians(0.2));
        assertThat(landing.incidence(0.7)).isLessThan(flights.flight.incidence(0.7));
        assertThat(landing.dragCoefficient(0.7, 8))
                .isGreaterThan(flights.flight.drag(8, 0.7)
                        / (0.5 * flights.flight.density() * 64 * flights.flight.referenceArea()));
    }

    @Test
    void widerFlapsDoMore() {
        Controls c = FLAPS.controls();
        double narrow = maximum(c.withFlaps(0.15, 0.25));
        double wide = maximum(c.withFlaps(0.45, 0.25));
        double deep = maximum(c.withFlaps(0.45, 0.35));
        assertThat(wide).isGreaterThan(narrow);
        assertThat(deep).isGreaterThan(wide);
    }

    private static double maximum(Controls controls) {
        Flights flights = Flights.of(Records.with(FLAPS, "controls", controls), WEIGHT);
        return lowered(flights, FlapSetting.LANDING, FlapKind.FLAPS).maximumLift();
    }

    @Test
    void aFlapIsWorthNoMoreBeyondSeparation() {
        double full = PlainFlap.worth(Math.toRadians(25));
        assertThat(PlainFlap.worth(Math.toRadians(40))).isCloseTo(full, within(ROUNDING));
        assertThat(PlainFlap.worth(-0.1)).isCloseTo(-PlainFlap.worth(0.1), within(ROUNDING));
        assertThat(PlainFlap.worth(Math.toRadians(15))).isLessThan(full);
    }
}
