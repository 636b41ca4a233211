package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Control;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import java.util.List;
import org.junit.jupiter.api.Test;

class ControlThrowTest {
    private static final Design TRAINER = Samples.trainer();
    private static final FlightLoads LOADS = new FlightLoads(0.8, 0.15, 0.04, 1.225, 7, 10, 16, 4, 4.5, 0, 0.05);

    private static ControlThrow of(Control.Kind kind) {
        List<ControlThrow> all = ControlThrow.of(Airframe.of(TRAINER), LOADS);
        return all.stream().filter(one -> one.kind() == kind).findFirst().orElseThrow();
    }

    @Test
    void theElevatorTakesItsShareOfTheTail() {
        Controls controls = TRAINER.controls();
        assertThat(of(Control.Kind.ELEVATOR).share()).isCloseTo(controls.elevatorChord(), within(1e-9));
        assertThat(of(Control.Kind.RUDDER).share()).isCloseTo(controls.rudderChord(), within(1e-9));
    }

    /** A control of 48 mm moves 8.3 mm at 10°. */
    @Test
    void throwsAreMeasuredAtTheTrailingEdge() {
        ControlThrow one = new ControlThrow(Control.Kind.ELEVATOR, 0.02, 0.4, 0.048, 0.1745, 0.349, 0.01);
        assertThat(one.atTrailingEdge(one.first())).isCloseTo(0.00833, within(5e-6));
    }

    @Test
    void firstThrowsAreGentlerThanFull() {
        for (ControlThrow one : ControlThrow.of(Airframe.of(TRAINER), LOADS)) {
            assertThat(one.first()).isLessThan(one.full());
            assertThat(one.hingeMoment()).isPositive();
        }
    }

    /** Elevon of 0.4 m by 40 mm, a fifth of the chord, 20° at 20 m/s: 0.0505 N m by thin-aerofoil theory, worked by hand. */
    @Test
    void hingeMomentOfAnElevon() {
        double pressure = 0.5 * 1.225 * 400;
        double perDegree = -HingeMoment.of(0.2).deflection() * Math.PI / 180;
        assertThat(perDegree).isCloseTo(0.01611, within(0.5e-5));
        assertThat(pressure * 0.4 * 0.04 * 0.04 * perDegree * 20).isCloseTo(0.0505, within(0.0005));
    }
}
