package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Undercarriage;
import foamfront.model.parts.Wheel;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When the tail touches. */
class GroundAttitudeTest {
    private static final double ROUNDING = 1e-12;
    private static final double BALANCE = 0.30; // m from the nose

    private static double most(Design design) {
        Wheel wheel = design.undercarriage() instanceof Undercarriage.TailWheel gear
                ? gear.wheel()
                : ((Undercarriage.Tricycle) design.undercarriage()).wheel();
        return GroundAttitude.most(Airframe.of(design), wheel, BALANCE);
    }

    /** Turned by the angle found, the point lies one wheel radius under the axle. */
    @Test
    void thePointTouchesTheGround() {
        GroundAttitude.Axle axle = new GroundAttitude.Axle(0.3, -0.11, 0.03);
        double angle = axle.touching(0.86, -0.035);
        double aft = 0.86 - 0.3;
        double up = -0.035 + 0.11;

        assertThat(up * StrictMath.cos(angle) - aft * StrictMath.sin(angle)).isCloseTo(-0.03, within(ROUNDING));
    }

    @Test
    void whatLiesAheadOfTheAxleNeverTouches() {
        GroundAttitude.Axle axle = new GroundAttitude.Axle(0.3, -0.11, 0.03);

        assertThat(axle.touching(0.2, -0.1)).isEqualTo(0.5 * Math.PI);
        assertThat(axle.touching(0.31, -0.1)).isEqualTo(0.5 * Math.PI);
    }

    /**
     * Wheels of no size: the angle in the triangle of axle, tail and ground, of a 0.86 m body on legs by the
     * propeller's clearance.
     */
    @Test
    void aTricycleTurnsUntilItsBodysEndTouches() {
        Design design = Arrangements.of("tricycle");
        Airframe airframe = Airframe.of(design);
        double ground = -airframe.stations().stance().groundZ();
        double aft = 0.86 - BALANCE - airframe.stations().stance().mainAxle();

        assertThat(most(design)).isBetween(StrictMath.atan2(ground - 0.035, aft), StrictMath.atan2(ground, aft));
    }

    @Test
    void aTailWheelStandsLowerThanItsBodysEnd() {
        Design design = Arrangements.of("tail wheel");
        Airframe airframe = Airframe.of(design);
        double ground = -airframe.stations().stance().groundZ();
        double aft = airframe.stations().stance().secondAxle()
                - BALANCE
                - airframe.stations().stance().mainAxle();

        assertThat(most(design)).isCloseTo(StrictMath.atan2(ground - 0.035 - 0.02, aft), within(0.01));
    }

    @Test
    void longerTailsAndLoadsBelowLeaveLess() {
        Design design = Arrangements.of("tricycle");
        assertThat(most(Records.with(design, "body.length", 1.0))).isLessThan(most(design));

        Load load = new Load("sack", 0.05, 0.4, 0.05, 0.09, Place.BELOW, false, 0, 0);
        assertThat(most(Records.with(design, "loads", List.of(load)))).isLessThan(most(design));
    }
}
