package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.mass.MassBreakdown;
import foamfront.model.mass.MassGroup;
import foamfront.model.mass.MassItem;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoseJointTest {
    private static final MassItem BATTERY =
            new MassItem("battery", 0.18, 0, 0, 0, 0.1, 0.03, 0.02, MassGroup.BATTERY, false);

    private static MassBreakdown masses(double motor) {
        return new MassBreakdown(List.of(MassItem.point("motor", motor, 0.02, 0, 0, MassGroup.POWER)), BATTERY);
    }

    @Test
    void thrustPullsAtTheBands() {
        assertThat(NoseJoint.reserve(masses(0), 0.3, 0.4, 0.12, 0.08, 10)).isCloseTo(40.0 / 10, within(1e-12));
    }

    /** 60 g 100 mm ahead, 4.4 g: 0.259 N m against 40 N on half of 80 mm, 1.6 N m; what lies behind does not count. */
    @Test
    void landingTurnsWhatRidesAhead() {
        double moment = LoadFactor.landing() * 9.80665 * 0.060 * 0.100;
        assertThat(moment).isCloseTo(0.259, within(0.0005));
        assertThat(NoseJoint.reserve(masses(0.060), 0.3, 0.4, 0.12, 0.08, 0)).isCloseTo(1.6 / moment, within(1e-9));
        assertThat(NoseJoint.reserve(masses(0.060), 0.05, 0.4, 0.12, 0.08, 0))
                .as("the battery ahead of the joint")
                .isLessThan(1.6 / moment);
    }
}
