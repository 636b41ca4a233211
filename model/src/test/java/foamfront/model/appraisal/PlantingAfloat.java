package foamfront.model.appraisal;

import foamfront.model.mission.Ground;
import foamfront.model.mission.Measure;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The aeroplanes of the limits of the water: a hull or floats that meet every limit, and one figure of them. */
final class PlantingAfloat {
    /** Stated, not worked out: a planting that is lost shall be missed. */
    private static final Set<Measure> UNPLANTED = Collections.unmodifiableSet(EnumSet.of(
            Measure.WATER_TRIM, Measure.WATER_HEEL, Measure.WATER_CLEARANCE, Measure.HUMP_THRUST, Measure.HUMP_LIFT));

    private PlantingAfloat() {}

    static List<Planting> all() {
        return List.of(
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

    /** Those of the water that no aeroplane has been found for in which they refuse alone. */
    static Set<Measure> unplanted() {
        return UNPLANTED;
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
