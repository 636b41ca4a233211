package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A V-tail's force in yaw acts at its quarter chord. */
class VTailDampingTest {
    private static final double ROUNDING = 1e-12;

    /** Swept so that the mean quarter chord lies far behind the root's leading edge. C_nr = −2 C_nβ l / b of the tail alone. */
    @Test
    void yawDampingTakesTheArmOfTheQuarterChord() {
        Flights flown = Flights.of(Records.with(Arrangements.of("V-tail"), "tail.plane.sweep", 0.5), 7);
        Airframe airframe = Airframe.of(Records.with(Arrangements.of("V-tail"), "tail.plane.sweep", 0.5));
        double x = flown.balanceX;
        double damping =
                Stability.lateral(airframe, flown.lifting, x, 0, 0.05, 0.5, 0).yawDamping();
        double yaw = Math.abs(flown.lifting.lateral().yawStiffness(x));
        Panel panel = Objects.requireNonNull(airframe.tail()).panels().get(0);
        double taper = panel.tipChord() / panel.rootChord();
        // Of a straight-tapered panel the mean lies (1 + 2 λ) / 3 (1 + λ) of the way out.
        double out = (1 + 2 * taper) / (3 * (1 + taper));
        double quarter = panel.leadingEdge(out) + 0.25 * panel.chord(out);

        // The area's centre of quarter chords and that chord's own differ by the chord's spread: 0.1 % of the arm.
        assertThat(-damping * airframe.span() / (2 * yaw)).isCloseTo(quarter - x, within(1e-3 * (quarter - x)));
        assertThat(quarter).isGreaterThan(panel.rootX() + 0.02 + ROUNDING);
    }
}
