package foamfront.model.structure;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.design.WingBuild;
import foamfront.model.factors.Factors;
import java.util.List;

/** The structure of one airframe at its limit load. */
public final class Structure {
    private Structure() {}

    /**
     * Reserves of wings, boom, tail and servos.
     *
     * @param wings load of one half of each wing, in the airframe's order; {@link SpanLoad#elliptic} where nothing
     *     better is known
     * @param bead linear mass of a bead of glue, kg/m
     */
    public static StructureMargins margins(
            Airframe airframe, List<SpanLoad> wings, FlightLoads loads, double bead, Factors factors) {
        Design design = airframe.design();
        WingBuild build = design.wing().build();
        Surface wing = airframe.wing();
        Sandwich board = Sandwich.of(design.board(), factors).covered(design.covering());
        WingBeam beam = new WingBeam(board, build.section(), build.spar(), GlueBead.section(bead));
        double limit = LoadFactor.limit(loads, airframe.area(), wing.area() / wing.span());
        double strength = WingReserve.faceStrength(design.board(), board, factors);
        WingMargins worst = new Wings(airframe, loads, factors, beam, limit, strength).worst(wings);
        TailBoom boom = TailBoom.of(airframe, loads, limit, board, strength);
        double divergence = worst.divergence() / loads.liftSlope();
        return new StructureMargins(
                limit,
                worst.bending(),
                worst.shear(),
                worst.glue(),
                worst.joint(),
                worst.deflection(),
                Math.sqrt(2 * divergence / loads.density()),
                Math.sqrt(2 * worst.flutter() / loads.liftSlope() / loads.density()),
                boom.deflection(),
                boom.reserve(),
                TailPlates.reserve(airframe, loads, limit, board, strength),
                ServoLoad.ratio(airframe, loads));
    }
}
