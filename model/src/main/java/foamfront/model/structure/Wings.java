package foamfront.model.structure;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.WingJoint;
import foamfront.model.fabrication.Joiner;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Spar;
import java.util.List;

/**
 * All wings of one airframe under its loads: each of a biplane's with its own lift, and its share of the mass by area.
 * Engines hang on the first. The push of a throw bends no wing whose boards reach across (StructureTest has the
 * sample's reserve in its own plane), but a plug-in tube bears it alone.
 *
 * @param limit limit load factor
 * @param strength stress at which the compressed paper fails, Pa
 */
record Wings(Airframe airframe, FlightLoads loads, Factors factors, WingBeam beam, double limit, double strength) {
    /** Leads, firewall and screws of an engine, kg (as its masses are itemised). */
    private static final double ENGINE_MOUNT = 0.020;

    /**
     * The wing that has least in hand, figure by figure.
     *
     * @param spans load of one half of each wing, in the airframe's order; what follows them is not read
     */
    WingMargins worst(List<SpanLoad> spans) {
        double area = 0;
        for (int j = 0; j < airframe.surfaces().size(); j++) {
            Surface surface = airframe.surfaces().get(j);
            area += surface.isWing() ? surface.area() : 0;
        }
        WingMargins worst = WingMargins.UNLOADED;
        int k = 0;
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            Surface surface = airframe.surfaces().get(i);
            if (surface.isWing()) {
                double mass = 0.5 * loads.wingMass() * surface.area() / area;
                WingMargins one = margins(surface, spans.get(k), mass, k == 0);
                worst = worst.worse(one);
                k++;
            }
        }
        return worst;
    }

    private WingMargins margins(Surface wing, SpanLoad load, double halfMass, boolean first) {
        WingStress.Forces forces = forces(halfMass, first);
        WingStress stress = WingStress.of(load, beam, wing, forces);
        double root = wing.panels().get(0).rootChord();
        double shear = WingReserve.shear(stress, beam, root, airframe.design().board(), factors);
        double joint = StructureMargins.UNLOADED;
        double deflection = Math.abs(stress.deflection()) / load.semispan();
        WingJoint kind = airframe.design().wing().build().joint();
        Spar tube = beam.spar();
        if (tube != null && kind == WingJoint.PLUG_IN) {
            double push = loads.push() * halfMass;
            JointTube plug = JointTube.of(
                    Math.max(stress.rootMoment(), push * load.arm()),
                    Math.max(stress.rootShear(), push),
                    tube.height(),
                    Joiner.plugged(wing, airframe.design().board().thickness(), tube));
            shear = Math.min(shear, WingReserve.jointShear(plug, tube));
            joint = WingReserve.joint(plug, tube);
        } else if (kind == WingJoint.FOLDING) {
            double down = forces.landing() * load.arm() + forces.engine() * forces.engineY();
            joint = FoldJoint.reserve(stress.rootMoment(), down, beam, root, strength);
            deflection += FoldJoint.turn(stress.rootMoment(), beam, root);
        }
        return new WingMargins(
                WingReserve.bending(stress, beam, strength),
                shear,
                WingReserve.glue(stress, factors),
                joint,
                deflection,
                stress.divergence(),
                stress.flutter());
    }

    private WingStress.Forces forces(double halfMass, boolean first) {
        double landing = LoadFactor.landing() * Atmosphere.GRAVITY;
        double engine = 0;
        double engineY = 0;
        if (first && airframe.design().power() instanceof Power.TwinTractor twin) {
            PowerPlant plant = twin.plant();
            engine = plant.motor().mass()
                    + plant.propeller().mass()
                    + plant.controller().mass()
                    + ENGINE_MOUNT;
            engineY = twin.y();
        }
        return new WingStress.Forces(
                limit * Atmosphere.GRAVITY * loads.mass(),
                limit * Atmosphere.GRAVITY * halfMass,
                landing * halfMass,
                landing * engine,
                engineY);
    }
}
