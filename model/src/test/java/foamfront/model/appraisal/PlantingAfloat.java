package foamfront.model.appraisal;

import foamfront.model.mission.Bound;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Measure;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The aeroplanes of the limits of the water: a hull or floats that meet every limit, and one figure of them. */
final class PlantingAfloat {
    /** Floats on a wing whose span decides whether they hold it upright; the same step well. */
    private static final Map<String, Object> HEELING = Map.ofEntries(
            Map.entry("design.wing.planform.rootChord", 0.21592),
            Map.entry("design.wing.planform.taper", 0.83878),
            Map.entry("design.wing.planform.sweep", 0.020223),
            Map.entry("design.wing.planform.dihedral", 0.071412),
            Map.entry("design.wing.planform.incidence", 0.035522),
            Map.entry("design.wing.planform.tipIncidence", 0.017226),
            Map.entry("design.wing.build.section.thickness", 0.10341),
            Map.entry("design.wing.x", 0.23314),
            Map.entry("design.wing.z", 0.036163),
            Map.entry("design.tail.plane.span", 0.38720),
            Map.entry("design.tail.plane.chord", 0.15362),
            Map.entry("design.tail.plane.taper", 1.0513),
            Map.entry("design.tail.plane.sweep", 0.025191),
            Map.entry("design.tail.plane.dihedral", 0.019670),
            Map.entry("design.tail.plane.incidence", -0.020976),
            Map.entry("design.tail.plane.x", 0.67788),
            Map.entry("design.tail.plane.z", 0.029942),
            Map.entry("design.tail.fin.height", 0.21725),
            Map.entry("design.tail.fin.chord", 0.11617),
            Map.entry("design.tail.fin.taper", 0.58915),
            Map.entry("design.body.length", 0.77471),
            Map.entry("design.body.width", 0.056988),
            Map.entry("design.body.height", 0.054063),
            Map.entry("design.power.plant.motor.mass", 0.045404),
            Map.entry("design.power.plant.motor.speedConstant", 104.74),
            Map.entry("design.power.plant.propeller.diameter", 0.24231),
            Map.entry("design.power.plant.propeller.pitch", 0.11085),
            Map.entry("design.power.plant.battery.capacity", 3706.0),
            Map.entry("design.undercarriage.length", 0.53214),
            Map.entry("design.undercarriage.beam", 0.085668),
            Map.entry("design.undercarriage.deadrise", 0.32585),
            Map.entry("design.controls.aileronSpan", 0.44737),
            Map.entry("design.controls.aileronChord", 0.28825),
            Map.entry("design.controls.elevatorChord", 0.22854),
            Map.entry("design.controls.rudderChord", 0.55449),
            Map.entry("design.board.thickness", 0.0044284),
            Map.entry("design.loads[0].mass", 0.030874));

    private PlantingAfloat() {}

    static List<Planting> all() {
        return List.of(
                // Where it has thrust for the climb it has it for the hump, unless a study asks less of its climb and
                // top speed.
                afloat(
                        "hull",
                        Measure.HUMP_THRUST,
                        Map.ofEntries(
                                Map.entry("mission.limits", lazy()),
                                Map.entry("design.body.width", 0.07205),
                                Map.entry("design.wing.build.section.thickness", 0.1441),
                                Map.entry("design.wing.planform.span", 1.116),
                                Map.entry("design.wing.planform.rootChord", 0.16024),
                                Map.entry("design.wing.planform.taper", 0.67810),
                                Map.entry("design.wing.planform.dihedral", 0.070021),
                                Map.entry("design.wing.planform.incidence", 0.027449),
                                Map.entry("design.wing.planform.tipIncidence", 0.016949),
                                Map.entry("design.wing.x", 0.20792),
                                Map.entry("design.wing.z", 0.046751),
                                Map.entry("design.tail.plane.span", 0.64753),
                                Map.entry("design.tail.plane.chord", 0.10184),
                                Map.entry("design.tail.plane.taper", 0.77202),
                                Map.entry("design.tail.plane.sweep", 0.022760),
                                Map.entry("design.tail.plane.dihedral", 0.020000),
                                Map.entry("design.tail.plane.incidence", -0.012109),
                                Map.entry("design.tail.plane.x", 0.83712),
                                Map.entry("design.tail.plane.z", 0.038392),
                                Map.entry("design.tail.fin.height", 0.20853),
                                Map.entry("design.tail.fin.chord", 0.11246),
                                Map.entry("design.tail.fin.taper", 0.76642),
                                Map.entry("design.body.height", 0.065884),
                                Map.entry("design.body.step", 0.39598),
                                Map.entry("design.body.deadrise", 0.29369),
                                Map.entry("design.power.plant.motor.mass", 0.060613),
                                Map.entry("design.power.plant.propeller.diameter", 0.18436),
                                Map.entry("design.power.plant.propeller.pitch", 0.12709),
                                Map.entry("design.power.plant.battery.capacity", 4395.9),
                                Map.entry("design.undercarriage.wheel.diameter", 0.074723),
                                Map.entry("design.undercarriage.wheel.width", 0.020834),
                                Map.entry("design.undercarriage.wheel.mass", 0.0072524),
                                Map.entry("design.controls.aileronSpan", 0.44146),
                                Map.entry("design.controls.aileronChord", 0.20690),
                                Map.entry("design.controls.elevatorChord", 0.32007),
                                Map.entry("design.controls.rudderChord", 0.26751),
                                Map.entry("design.board.thickness", 0.0044285),
                                Map.entry("design.loads[0].mass", 0.034335)),
                        "design.power.plant.motor.speedConstant",
                        97.7434,
                        90.4066),
                afloat(
                        "hull",
                        Measure.WATER_CLEARANCE,
                        Map.ofEntries(
                                Map.entry("design.wing.planform.span", 1.0761),
                                Map.entry("design.wing.planform.rootChord", 0.19247),
                                Map.entry("design.wing.planform.taper", 0.65508),
                                Map.entry("design.wing.planform.sweep", 0.014922),
                                Map.entry("design.wing.planform.dihedral", 0.043965),
                                Map.entry("design.wing.planform.incidence", 0.029155),
                                Map.entry("design.wing.planform.tipIncidence", 0.013424),
                                Map.entry("design.wing.build.section.thickness", 0.13967),
                                Map.entry("design.wing.x", 0.24928),
                                Map.entry("design.wing.z", 0.035837),
                                Map.entry("design.tail.plane.span", 0.61054),
                                Map.entry("design.tail.plane.chord", 0.10919),
                                Map.entry("design.tail.plane.taper", 0.56721),
                                Map.entry("design.tail.plane.sweep", 0.094975),
                                Map.entry("design.tail.plane.dihedral", 0.012378),
                                Map.entry("design.tail.plane.incidence", -0.020549),
                                Map.entry("design.tail.plane.x", 0.78378),
                                Map.entry("design.tail.plane.z", 0.030200),
                                Map.entry("design.tail.fin.height", 0.17533),
                                Map.entry("design.tail.fin.chord", 0.13399),
                                Map.entry("design.tail.fin.taper", 0.56677),
                                Map.entry("design.body.length", 0.88219),
                                Map.entry("design.body.width", 0.064989),
                                Map.entry("design.body.step", 0.40902),
                                Map.entry("design.body.deadrise", 0.21911),
                                Map.entry("design.power.plant.motor.mass", 0.033504),
                                Map.entry("design.power.plant.motor.speedConstant", 55.386),
                                Map.entry("design.power.plant.propeller.diameter", 0.28240),
                                Map.entry("design.power.plant.propeller.pitch", 0.28405),
                                Map.entry("design.power.plant.battery.capacity", 5064.4),
                                Map.entry("design.undercarriage.wheel.diameter", 0.10704),
                                Map.entry("design.undercarriage.wheel.width", 0.016912),
                                Map.entry("design.undercarriage.wheel.mass", 0.0032462),
                                Map.entry("design.controls.aileronSpan", 0.62174),
                                Map.entry("design.controls.aileronChord", 0.30843),
                                Map.entry("design.controls.elevatorChord", 0.33347),
                                Map.entry("design.controls.rudderChord", 0.45906),
                                Map.entry("design.board.thickness", 0.0041275),
                                Map.entry("design.loads[0].mass", 0.022111)),
                        "design.body.height",
                        0.0623179,
                        0.0521319),
                // Floats with their reserve lie within 5 degrees, whoever carries them; a study that asks for half of
                // it, and
                // less against spray, lets the stern go under.
                floats(
                        Measure.WATER_TRIM,
                        Map.ofEntries(
                                Map.entry("mission.limits", small()),
                                Map.entry("design.wing.planform.span", 1.2162),
                                Map.entry("design.wing.planform.rootChord", 0.21132),
                                Map.entry("design.wing.planform.taper", 0.63733),
                                Map.entry("design.wing.planform.dihedral", 0.051678),
                                Map.entry("design.wing.planform.incidence", 0.056480),
                                Map.entry("design.wing.x", 0.20206),
                                Map.entry("design.wing.z", 0.034851),
                                Map.entry("design.tail.plane.span", 0.29982),
                                Map.entry("design.tail.plane.chord", 0.13032),
                                Map.entry("design.tail.plane.incidence", -0.016595),
                                Map.entry("design.tail.plane.x", 0.73329),
                                Map.entry("design.tail.fin.height", 0.13849),
                                Map.entry("design.tail.fin.chord", 0.13378),
                                Map.entry("design.body.length", 0.89907),
                                Map.entry("design.body.width", 0.046279),
                                Map.entry("design.body.height", 0.071040),
                                Map.entry("design.undercarriage.length", 0.60142),
                                Map.entry("design.undercarriage.beam", 0.039988),
                                Map.entry("design.board.thickness", 0.0040948),
                                Map.entry("design.power.plant.motor.mass", 0.054979),
                                Map.entry("design.power.plant.motor.speedConstant", 93.678),
                                Map.entry("design.power.plant.propeller.diameter", 0.23001),
                                Map.entry("design.power.plant.propeller.pitch", 0.11149),
                                Map.entry("design.power.plant.battery.capacity", 4257.7),
                                Map.entry("design.controls.elevatorChord", 0.35327),
                                Map.entry("design.controls.rudderChord", 0.40888),
                                Map.entry("design.controls.aileronSpan", 0.42674),
                                Map.entry("design.loads[0].mass", 0.033114),
                                Map.entry("design.wing.build.section.thickness", 0.11531)),
                        "design.undercarriage.deadrise",
                        0.0920,
                        0.0850),
                floats(Measure.WATER_HEEL, HEELING, "design.wing.planform.span", 0.901775, 0.871918),
                floats(
                        Measure.STEP_ELEVATOR,
                        with(HEELING, "design.wing.planform.span", 0.901775),
                        "design.tail.plane.chord",
                        0.19,
                        0.107),
                floats(
                        Measure.HUMP_LIFT,
                        Map.ofEntries(
                                Map.entry("design.wing.planform.rootChord", 0.2095),
                                Map.entry("design.wing.planform.span", 1.2008),
                                Map.entry("design.wing.planform.taper", 0.62875),
                                Map.entry("design.wing.planform.sweep", 0.018551),
                                Map.entry("design.wing.planform.dihedral", 0.035282),
                                Map.entry("design.wing.planform.incidence", 0.054493),
                                Map.entry("design.wing.planform.tipIncidence", 0.015036),
                                Map.entry("design.wing.x", 0.15954),
                                Map.entry("design.wing.z", 0.023381),
                                Map.entry("design.tail.plane.span", 0.34552),
                                Map.entry("design.tail.plane.chord", 0.14962),
                                Map.entry("design.tail.plane.taper", 0.98354),
                                Map.entry("design.tail.plane.sweep", 0.022867),
                                Map.entry("design.tail.plane.dihedral", 0.0082937),
                                Map.entry("design.tail.plane.incidence", -0.017246),
                                Map.entry("design.tail.plane.x", 0.72882),
                                Map.entry("design.tail.plane.z", 0.040366),
                                Map.entry("design.tail.fin.height", 0.15151),
                                Map.entry("design.tail.fin.chord", 0.15769),
                                Map.entry("design.tail.fin.taper", 0.83900),
                                Map.entry("design.body.length", 0.82590),
                                Map.entry("design.body.width", 0.043999),
                                Map.entry("design.body.height", 0.047597),
                                Map.entry("design.power.plant.motor.mass", 0.057192),
                                Map.entry("design.power.plant.propeller.diameter", 0.20058),
                                Map.entry("design.power.plant.propeller.pitch", 0.10949),
                                Map.entry("design.power.plant.battery.capacity", 4160.8),
                                Map.entry("design.undercarriage.length", 0.68763),
                                Map.entry("design.undercarriage.beam", 0.045391),
                                Map.entry("design.undercarriage.deadrise", 0.14640),
                                Map.entry("design.controls.aileronSpan", 0.41484),
                                Map.entry("design.controls.aileronChord", 0.26060),
                                Map.entry("design.controls.elevatorChord", 0.37629),
                                Map.entry("design.controls.rudderChord", 0.37368),
                                Map.entry("design.board.thickness", 0.0041289),
                                Map.entry("design.loads[0].mass", 0.018462)),
                        "design.wing.build.section.thickness",
                        0.145943,
                        0.18478),
                floats(
                        Measure.BUOYANCY_RESERVE,
                        Map.of(
                                "design.body.width",
                                0.04599,
                                "design.tail.fin.height",
                                0.13951,
                                "design.tail.plane.span",
                                0.30948,
                                "design.undercarriage.deadrise",
                                0.10962,
                                "design.undercarriage.length",
                                0.6541,
                                "design.wing.build.section.thickness",
                                0.11531,
                                "design.wing.planform.incidence",
                                0.05648,
                                "design.wing.planform.rootChord",
                                0.2095,
                                "design.wing.planform.span",
                                1.1692,
                                "design.wing.planform.taper",
                                0.62567),
                        "design.undercarriage.beam",
                        0.04254,
                        0.04068),
                hull(Measure.STEP_ANGLE, "design.wing.x", 0.2256, 0.2221),
                floats(
                        Measure.SPRAY_LOAD,
                        Map.of(
                                "design.undercarriage.beam",
                                0.0778,
                                "design.wing.build.section.thickness",
                                0.10797,
                                "design.wing.planform.rootChord",
                                0.2095),
                        "design.undercarriage.length",
                        0.5233,
                        0.4694),
                floats(
                        Measure.HUMP_TRIM,
                        Map.ofEntries(
                                Map.entry("design.body.height", 0.05233),
                                Map.entry("design.body.length", 1.12543),
                                Map.entry("design.body.width", 0.06109),
                                Map.entry("design.loads[0].mass", 0.01583),
                                Map.entry("design.power.plant.motor.speedConstant", 103.05),
                                Map.entry("design.tail.plane.x", 0.99543),
                                Map.entry("design.tail.plane.z", 0.02617),
                                Map.entry("design.undercarriage.beam", 0.06626),
                                Map.entry("design.wing.build.section.thickness", 0.13511),
                                Map.entry("design.wing.planform.rootChord", 0.1668),
                                Map.entry("design.wing.planform.span", 1.29038),
                                Map.entry("design.wing.planform.taper", 0.82302),
                                Map.entry("design.wing.x", 0.17714),
                                Map.entry("design.wing.z", 0.02617)),
                        "design.undercarriage.length",
                        1.0046,
                        1.2287),
                floats(
                        Measure.HULL_STRENGTH,
                        Map.of("design.undercarriage.beam", 0.0778, "design.wing.planform.rootChord", 0.2095),
                        "design.undercarriage.deadrise",
                        0.250,
                        0.2038));
    }

    private static Limits small() {
        return Limits.standing()
                .with(Bound.atLeast(Measure.BUOYANCY_RESERVE, 0.4, "a pond's"))
                .with(Bound.atMost(Measure.SPRAY_LOAD, 0.12, "a pond's"));
    }

    private static Limits lazy() {
        return Limits.standing()
                .with(Bound.atLeast(Measure.CLIMB_RATE, 0.4, "a pond's"))
                .with(Bound.atLeast(Measure.TOP_SPEED_RATIO, 1.2, "a pond's"));
    }

    private static Map<String, Object> with(Map<String, Object> changes, String path, double value) {
        Map<String, Object> all = new TreeMap<>(changes);
        all.put(path, value);
        return all;
    }

    private static Planting floats(
            Measure measure, Map<String, Object> changes, String path, double sound, double planted) {
        return afloat("floats", measure, changes, path, sound, planted);
    }

    private static Planting hull(Measure measure, String path, double sound, double planted) {
        Map<String, Object> changes = Map.of(
                "design.body.height",
                0.074,
                "design.body.width",
                0.07205,
                "design.loads[0].mass",
                0.0345,
                "design.tail.plane.chord",
                0.11505,
                "design.tail.plane.span",
                0.6342,
                "design.tail.plane.x",
                0.78495,
                "design.tail.plane.z",
                0.037,
                "design.wing.build.section.thickness",
                0.1441,
                "design.wing.planform.rootChord",
                0.184,
                "design.wing.planform.span",
                1.116);
        Map<String, Object> all = new TreeMap<>(changes);
        all.put("design.wing.planform.taper", 0.702);
        all.put("design.wing.z", 0.037);
        return afloat("hull", measure, all, path, sound, planted);
    }

    private static Planting afloat(
            String sample, Measure measure, Map<String, Object> changes, String path, double sound, double planted) {
        Map<String, Object> all = new TreeMap<>(changes);
        all.put("mission.site.ground", Ground.WATER);
        return new Planting(measure, sample, all, path, sound, planted);
    }
}
