package foamfront.model.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What each part outside adds to the whole. */
class ParasiteBuildUpTest {
    /** Sums of some dozen terms, on drag areas of some 1e-3 m². */
    private static final double ROUNDING = 1e-12;

    /** Interference and rough build, ParasiteDrag. */
    private static final double RAISED = 1.05 * 1.20;

    private static final Atmosphere AIR = Atmosphere.standard(0);

    /** The middle of the speeds that the sum is taken at, where nothing is interpolated, m/s. */
    private static final double SPEED = 12;

    private static double area(Design design) {
        return ParasiteBuildUp.of(Airframe.of(design), AIR).dragArea(StrictMath.log(SPEED));
    }

    private static double carrying(double length, Place place) {
        Load load = new Load("box", 0.05, length, 0.03, 0.03, place, false, 0, 0);
        return area(Records.with(Samples.trainer(), "loads", List.of(load)));
    }

    @Test
    void aLoadOutsideDragsByItsLengthAndOneInsideDoesNot() {
        double inside = carrying(0.2, Place.BALANCE_POINT);

        assertThat(carrying(0.3, Place.BALANCE_POINT)).isEqualTo(inside);
        assertThat(carrying(0.3, Place.BELOW)).isGreaterThan(carrying(0.2, Place.BELOW));
        assertThat(carrying(0.3, Place.ON_TOP)).isEqualTo(carrying(0.3, Place.BELOW));
        double box = Fittings.box(0.2, 0.03, 0.03, SPEED, AIR.kinematicViscosity());
        assertThat(carrying(0.2, Place.BELOW) - inside).isCloseTo(RAISED * box, within(ROUNDING));
    }

    /** The track is a fifth of the span: twelve centimetres of leg outward on each side of the trainer, less half its body. */
    @Test
    void aWiderTrackMakesLongerLegs() {
        for (String gear : List.of("tail wheel", "tricycle")) {
            Design narrow = Arrangements.of(gear);
            Design wide = Records.with(narrow, "wing.planform.span", 1.6);
            double wheelless = area(Samples.trainer());
            double wheellessWide = area(Records.with(Samples.trainer(), "wing.planform.span", 1.6));
            double height = -Airframe.of(narrow).stations().stance().groundZ() - 0.035 - 0.03;
            double longer = 2 * (leg(height, 0.16 - 0.035) - leg(height, 0.12 - 0.035));

            assertThat((area(wide) - wheellessWide) - (area(narrow) - wheelless))
                    .as(gear)
                    .isCloseTo(RAISED * longer, within(ROUNDING));
            assertThat(longer).isPositive();
        }
    }

    private static double leg(double down, double out) {
        return WireDrag.dragArea(0.003, Math.sqrt(down * down + out * out), SPEED, AIR.kinematicViscosity());
    }
}
