package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Servos;
import foamfront.model.design.FinJoint;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Nose;
import foamfront.model.design.Wing;
import foamfront.model.design.WingJoint;
import java.util.List;

/**
 * Small things bought by the handful, which no catalogue row stands for: counted here, weighed where the equipment is,
 * priced by the workshop's table.
 *
 * @param linkages horn, pushrod and lead of each servo, and a biplane's links to its upper wing
 * @param powerSets leads, firewall plate and screws of each motor
 * @param switches switch and regulator of the radio of what has no motor
 * @param straps one round each pack
 * @param harnesses leads that join one more pack each
 * @param bandSets rubber bands with their pegs or hooks: a banded wing, a folding one, a replaceable nose
 * @param hinges fins that fold: nothing is bought for them, but each is fitted
 */
public record SmallFittings(
        int linkages, int powerSets, int switches, int straps, int harnesses, int bandSets, int hinges) {
    /** Name of a linkage in a bill and in a drawer. */
    public static final String LINKAGE = "horns, pushrods and leads";

    public static final String POWER_SET = "power leads and screws";
    public static final String SWITCH = "switch and regulator";
    public static final String STRAP = "battery strap";
    public static final String HARNESS = "battery harness";
    public static final String BAND_SET = "rubber bands with pegs";

    /** What may lie in a drawer without standing in a parts table. */
    public static final List<String> NAMES = List.of(LINKAGE, POWER_SET, SWITCH, STRAP, HARNESS, BAND_SET);

    public static SmallFittings of(Airframe airframe) {
        var design = airframe.design();
        Servos servos = airframe.servos();
        int links = design.wing() instanceof Wing.Biplane ? servos.wing() : 0;
        var build = design.wing().build();
        int bands = (build.holdDown() == HoldDown.RUBBER_BANDS ? 1 : 0)
                + (build.joint() == WingJoint.FOLDING ? 1 : 0)
                + (design.body().nose() == Nose.REPLACEABLE ? 1 : 0);
        int hinges =
                design.tail().finJoint() == FinJoint.FOLDING ? airframe.fins().size() : 0;
        int packs = design.power().battery().packs();
        int motors = design.power().motors();
        return new SmallFittings(servos.total() + links, motors, motors == 0 ? 1 : 0, packs, packs - 1, bands, hinges);
    }
}
