package foamfront.model.structure;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.design.WingBuild;
import foamfront.model.factors.Factors;

/** The structure of one airframe at its limit load. */
public final class Structure {
    private Structure() {}

    /**
     * Reserves of wing, boom and servos.
     *
     * @param load of the most loaded wing, one half; {@link SpanLoad#elliptic} where nothing better is known
     */
    public static StructureMargins margins(Airframe airframe, SpanLoad load, FlightLoads loads, Factors factors) {
        Design design = airframe.design();
        WingBuild build = design.wing().build();
        Surface wing = airframe.wing();
        Sandwich board = Sandwich.of(design.board(), factors);
        WingBeam beam = new WingBeam(board, build.section(), build.spar());
        double limit = LoadFactor.limit(loads, airframe.area(), wing.area() / wing.span());
        WingStress stress =
                WingStress.of(load, beam, wing, limit * LoadFactor.GRAVITY * carried(airframe, load, loads));
        double strength = WingReserve.faceStrength(design.board(), board, factors);
        double root = wing.panels().get(0).rootChord();
        TailBoom boom = TailBoom.of(airframe, loads, limit, board, strength);
        double divergence = stress.divergence() / loads.liftSlope();
        return new StructureMargins(
                limit,
                WingReserve.bending(stress, beam, build, strength),
                WingReserve.shear(stress, beam, root, design.board(), factors),
                WingReserve.joint(stress, beam, build, Math.min(root, load.semispan())),
                Math.abs(stress.deflection()) / load.semispan(),
                Math.sqrt(2 * divergence / loads.density()),
                boom.deflection(),
                boom.reserve(),
                ServoLoad.ratio(airframe, loads));
    }

    /**
     * Mass whose weight bends the wing, kg: all but the wing's own, which is spread like the lift. Of two wings
     * each relieves itself with half of theirs.
     */
    private static double carried(Airframe airframe, SpanLoad load, FlightLoads loads) {
        double wings = 0;
        for (Surface surface : airframe.surfaces()) {
            wings += surface.role() == Surface.Role.WING || surface.role() == Surface.Role.SECOND_WING ? 1 : 0;
        }
        double relief = loads.wingMass() * 0.5 / (wings * load.share());
        return Math.max(0, loads.mass() - relief);
    }
}
