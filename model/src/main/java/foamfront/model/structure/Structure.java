package foamfront.model.structure;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Design;
import foamfront.model.design.WingBuild;
import foamfront.model.factors.Factors;

/** The structure of one airframe at its limit load. */
public final class Structure {
    private Structure() {}

    /**
     * Reserves of wing, boom, tail and servos.
     *
     * @param load of the most loaded wing, one half; {@link SpanLoad#elliptic} where nothing better is known
     */
    public static StructureMargins margins(Airframe airframe, SpanLoad load, FlightLoads loads, Factors factors) {
        Design design = airframe.design();
        WingBuild build = design.wing().build();
        Surface wing = airframe.wing();
        Sandwich board = Sandwich.of(design.board(), factors).covered(design.covering());
        WingBeam beam = new WingBeam(board, build.section(), build.spar());
        double limit = LoadFactor.limit(loads, airframe.area(), wing.area() / wing.span());
        double weight = Atmosphere.GRAVITY * halfWing(airframe, loads);
        WingStress.Forces forces = new WingStress.Forces(
                limit * Atmosphere.GRAVITY * loads.mass(), limit * weight, LoadFactor.landing() * weight);
        WingStress stress = WingStress.of(load, beam, wing, forces);
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
                TailPlates.reserve(airframe, loads, limit, board, strength),
                ServoLoad.ratio(airframe, loads));
    }

    /** Mass of one half of one wing, kg. */
    private static double halfWing(Airframe airframe, FlightLoads loads) {
        int wings = 0;
        for (Surface surface : airframe.surfaces()) {
            wings += surface.role() == Surface.Role.WING || surface.role() == Surface.Role.SECOND_WING ? 1 : 0;
        }
        return 0.5 * loads.wingMass() / wings;
    }
}
