package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.aero.PropellerDrag.State;
import org.junit.jupiter.api.Test;

class FittingsTest {
    private static final double ROUNDING = 1e-15;
    private static final double VISCOSITY = 1.46e-5; // m²/s

    @Test
    void aWireDragsByItsReynoldsNumber() {
        // 1.5 mm at 10 m/s: Re 1027, 0.95 on 1.5 mm x 120 mm
        assertThat(WireDrag.dragArea(0.0015, 0.12, 10, VISCOSITY) / (0.0015 * 0.12))
                .isBetween(0.94, 0.97);
    }

    @Test
    void foamWheelsStandInTheirBand() {
        double area = 0.06 * 0.018;
        assertThat(WheelDrag.dragArea(0.06, 0.018) / area).isBetween(0.4, 0.8);
    }

    @Test
    void aPylonDragsMoreThanItsFrictionAndLessThanABluntBlock() {
        double pylon = Fittings.pylon(0.05, 0.08, 0.01, 12, VISCOSITY);
        double friction = 2 * 0.05 * 0.08 * SkinFriction.turbulent(12 * 0.08 / VISCOSITY);

        assertThat(pylon).isGreaterThan(1.2 * friction).isLessThan(0.8 * 0.05 * 0.01);
    }

    @Test
    void aBareMotorIsABluntRod() {
        assertThat(Fittings.bareMotor(0.028, 0.028) / (0.25 * Math.PI * 0.028 * 0.028))
                .isBetween(0.91, 1.02);
    }

    /** The cube's 1.05; a longer box less, until friction on its sides makes up for it. */
    @Test
    void aBoxDragsByItsLengthToo() {
        double face = 0.04 * 0.04;
        assertThat(box(0.04) / face).isCloseTo(1.05, within(1e-12));
        assertThat(box(0.08)).isBetween(0.8 * face, 0.95 * box(0.04));
        assertThat(box(0.40)).isGreaterThan(1.1 * box(0.16));
        double friction = SkinFriction.turbulent(12 * 0.4 / VISCOSITY) * 4 * 0.04 * (0.4 - 4.4 * 2 * 0.04 / 1.7725);
        assertThat(box(0.40) - box(0.16)).isBetween(friction, 1.2 * friction);
    }

    private static double box(double length) {
        return Fittings.box(length, 0.04, 0.04, 12, VISCOSITY);
    }

    @Test
    void coolingAirCostsItsMomentum() {
        // Half the stream's speed in, a third out of an outlet half as large again: 2 x 0.5 x 2/3 of the inlet.
        assertThat(Fittings.cooling(3e-4, 1.5)).isCloseTo(2e-4, within(ROUNDING));
        assertThat(Fittings.cooling(0, 1.5)).isZero();
    }

    @Test
    void bandsAddUp() {
        assertThat(Fittings.rubberBands(6, 0.003, 0.1, 12, VISCOSITY))
                .isCloseTo(6 * Fittings.rubberBands(1, 0.003, 0.1, 12, VISCOSITY), within(ROUNDING));
    }

    @Test
    void propellersDragByStateBladesAndTheSquareOfDiameter() {
        double stopped = PropellerDrag.dragArea(State.STOPPED, 0.2286, 2);
        assertThat(PropellerDrag.dragArea(State.FOLDED, 0.2286, 2)).isLessThan(0.2 * stopped);
        assertThat(PropellerDrag.dragArea(State.WINDMILLING, 0.2286, 2)).isGreaterThan(stopped);
        assertThat(PropellerDrag.dragArea(State.STOPPED, 2 * 0.2286, 2)).isCloseTo(4 * stopped, within(ROUNDING));
        assertThat(PropellerDrag.dragArea(State.STOPPED, 0.2286, 4)).isCloseTo(2 * stopped, within(ROUNDING));
    }
}
