package foamfront.model.airframe;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Surfaces that stand in each other are named; those that only come close are not. */
class CrossingTest {
    private static String crossing(Design design) {
        Crossing crossing = Crossing.of(Airframe.of(design));
        return crossing == null ? "clear" : crossing.words();
    }

    @Test
    void soundAeroplanesStandClear() {
        for (Map.Entry<String, Design> one : Arrangements.all().entrySet()) {
            assertThat(Crossing.of(Airframe.of(one.getValue())))
                    .as(one.getKey())
                    .isNull();
        }
    }

    @Test
    void aTailInsideTheWingIsNamed() {
        Design trainer = Samples.trainer();
        double x = trainer.wing().x() + 0.05;
        double z = trainer.wing().z();
        Design inside = Records.with(Records.with(trainer, "tail.plane.x", x), "tail.plane.z", z);
        assertThat(crossing(inside)).isEqualTo("the tail stands in the wing");
        Design above = Records.with(inside, "tail.plane.z", z + 0.1);
        assertThat(crossing(above)).doesNotContain("tail stands");
    }

    @Test
    void aFinThroughTheWingIsNamed() {
        Design trainer = Samples.trainer();
        Design ahead = Records.with(trainer, "tail.plane.x", trainer.wing().x() + 0.05);
        assertThat(crossing(Records.with(ahead, "wing.z", 0.1))).isEqualTo("a fin stands in the wing");
    }

    @Test
    void wingsOfABiplaneThatTouchAreNamed() {
        assertThat(crossing(Records.with(Arrangements.of("biplane"), "wing.gap", 0.01)))
                .isEqualTo("the upper wing stands in the wing");
    }

    /** A wing that bends down through a tail that stands beside it. */
    @Test
    void surfacesThatCrossFurtherOutAreNamed() {
        Design trainer = Samples.trainer();
        Design drooped = Records.with(trainer, "wing.planform.dihedral", -0.5);
        Design beside = Records.with(
                Records.with(drooped, "tail.plane.x", trainer.wing().x()),
                "tail.plane.z",
                trainer.wing().z() - 0.06);
        assertThat(crossing(beside)).isEqualTo("the tail stands in the wing");
    }
}
