package foamfront.model.appraisal;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.WingSpar;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Launch;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import foamfront.model.propulsion.Plants;
import java.util.List;
import java.util.Map;

/**
 * One limit's aeroplane.
 *
 * @param sample the arrangement it starts from
 * @param changes what is different about it
 * @param path the figure that is moved
 * @param sound where it has about a tenth to spare
 * @param planted where it misses by about a tenth
 */
record Planting(
        Measure measure, String sample, Map<String, Object> changes, String path, double sound, double planted) {
    private static final Spar GLASS =
            new Spar("rod 4", Spar.Shape.ROUND, 4e-3, 4e-3, 0, 30e9, 600e6, 1900, 1, 2, Provenance.OPEN_DATA);
    private static final Spar DOWEL =
            new Spar("dowel 16", Spar.Shape.ROUND, 16e-3, 16e-3, 0, 10e9, 40e6, 400, 1, 2, Provenance.OPEN_DATA);

    /** A design under a mission that a figure of either may be moved of. */
    record Case(Design design, Mission mission) {}

    Case at(double figure) {
        Case changed = new Case(Arrangements.of(sample), Samples.mission());
        // Parts and sections first: figures of theirs may be changed too.
        for (boolean figures : new boolean[] {false, true}) {
            for (Map.Entry<String, Object> change : changes.entrySet()) {
                if (change.getValue() instanceof Number == figures) {
                    changed = Records.with(changed, change.getKey(), change.getValue());
                }
            }
        }
        return Records.with(changed, path, figure);
    }

    @Override
    public String toString() {
        return measure.words() + " by " + path;
    }

    /** All that are planted. */
    static List<Planting> all() {
        return List.of(
                // A long nose with its cargo balances the sample glider's light pack.
                new Planting(
                        Measure.WIND_GLIDE,
                        "glider",
                        Map.ofEntries(
                                Map.entry(
                                        "design.loads",
                                        List.of(new Load(
                                                "cargo", 0.27122, 0.1, 0.03, 0.03, Place.BEHIND_NOSE, false, 0, 0))),
                                Map.entry("design.body.length", 1.08695),
                                Map.entry("design.tail.fin.chord", 0.146887),
                                Map.entry("design.tail.fin.height", 0.213545),
                                Map.entry("design.tail.plane.chord", 0.115964),
                                Map.entry("design.tail.plane.incidence", 0.00973773),
                                Map.entry("design.tail.plane.span", 0.392802),
                                Map.entry("design.tail.plane.x", 0.960989),
                                Map.entry("design.wing.planform.incidence", 0.00781488),
                                Map.entry("design.wing.planform.rootChord", 0.168084),
                                Map.entry("design.wing.planform.span", 1.34088),
                                Map.entry("design.wing.build.section.thickness", 0.122),
                                Map.entry("design.wing.x", 0.1745)),
                        "mission.site.wind",
                        8.0,
                        9.5),
                new Planting(
                        Measure.VERTICAL_TAIL_VOLUME,
                        "broken wing",
                        Map.of(
                                "design.loads",
                                List.of(new Load("cargo", 0.05, 0.1, 0.03, 0.03, Place.BALANCE_POINT, false, 0, 0)),
                                "design.board.thickness",
                                0.0022,
                                "design.body.height",
                                0.042,
                                "design.body.length",
                                0.8,
                                "design.tail.fin.height",
                                0.12,
                                "design.tail.plane.span",
                                0.27,
                                "design.wing.planform.breaks[0].chord",
                                0.2,
                                "design.wing.planform.rootChord",
                                0.22),
                        "design.tail.fin.chord",
                        0.115,
                        0.091),
                // A wing folded round its spar breaks before it bends so far; a plate on a glass rod bends first.
                new Planting(
                        Measure.TIP_DEFLECTION,
                        "curved plate",
                        Map.ofEntries(
                                Map.entry("design.wing.build.spar", new WingSpar.Stock(GLASS)),
                                Map.entry("design.board.faceStrength", 20e6),
                                Map.entry("design.board.faceThickness", 0.2e-3),
                                Map.entry("design.board.thickness", 4.1e-3),
                                Map.entry("design.body.height", 0.05),
                                Map.entry("design.body.length", 0.8),
                                Map.entry("design.body.width", 0.05),
                                Map.entry("design.loads[0].mass", 0.02),
                                Map.entry("design.power.plant.motor.speedConstant", 70.0),
                                Map.entry("design.tail.plane.chord", 0.1),
                                Map.entry("design.tail.plane.span", 0.5),
                                Map.entry("design.tail.plane.x", 0.7),
                                Map.entry("design.wing.build.section.camber", 0.03),
                                Map.entry("design.wing.planform.rootChord", 0.21),
                                Map.entry("design.wing.planform.taper", 0.5),
                                Map.entry("design.wing.x", 0.14)),
                        "design.wing.planform.span",
                        1.192,
                        1.312),
                new Planting(
                        Measure.DIVERGENCE_SPEED,
                        "curved plate",
                        Map.of(
                                "mission.site.launch",
                                Launch.STRONG,
                                "design.board.faceThickness",
                                0.24e-3,
                                "design.board.thickness",
                                2.5e-3,
                                "design.body.length",
                                0.8,
                                "design.wing.x",
                                0.214,
                                "design.wing.build.section.camber",
                                0.068,
                                "design.power.plant.motor.speedConstant",
                                70.0),
                        "design.wing.planform.span",
                        0.774,
                        0.936),
                // A tail set nose up asks for its elevator at every speed, and most at the stall.
                new Planting(
                        Measure.TRIM_TRAVEL,
                        "trainer",
                        Map.of("design.body.length", 0.7, "design.tail.plane.span", 0.3, "design.tail.plane.x", 0.6),
                        "design.tail.plane.incidence",
                        0.061,
                        0.098),
                // Without the washout that is its reflex, a swept wing hangs on its elevons.
                new Planting(
                        Measure.ELEVON_TRIM,
                        "flying wing",
                        Map.of(),
                        "design.wing.planform.tipIncidence",
                        -0.111,
                        -0.025),
                new Planting(Measure.YAW_STIFFNESS, "trainer", Map.of(), "design.tail.fin.height", 0.138, 0.1285),
                // A wing moved aft keeps a short tail's aeroplane in balance.
                new Planting(
                        Measure.HORIZONTAL_TAIL_VOLUME,
                        "trainer",
                        Map.of("design.wing.x", 0.232),
                        "design.tail.plane.span",
                        0.245,
                        0.2),
                // A light load lies at the balance point below the battery's floor, so its length moves nothing else.
                new Planting(
                        Measure.BAY_LENGTH,
                        "two bays",
                        Map.of(
                                "design.loads",
                                List.of(new Load("cargo", 0.03, 0.1, 0.03, 0.03, Place.BALANCE_POINT, false, 0, 0))),
                        "design.loads[0].length",
                        0.46,
                        0.475),
                new Planting(
                        Measure.BOOM_STRENGTH,
                        "pod and boom",
                        Map.of("design.body.boom", DOWEL, "design.body.podLength", 0.4, "design.wing.x", 0.17),
                        "design.body.boom.strength",
                        6.5e6,
                        5.3e6),
                new Planting(
                        Measure.TIP_SPEED,
                        "twin",
                        Map.of(
                                "mission.site.launch",
                                Launch.STRONG,
                                "design.power.plant",
                                Plants.of("1811-1200", "9x3.8 slow flyer", "2S 2200", "20 A"),
                                "design.body.length",
                                0.73,
                                "design.body.width",
                                0.05,
                                "design.loads[0].mass",
                                0.02,
                                "design.power.plant.motor.mass",
                                0.02,
                                "design.tail.plane.chord",
                                0.072,
                                "design.tail.plane.x",
                                0.69,
                                "design.wing.planform.taper",
                                0.8),
                        "design.power.plant.motor.resistance",
                        0.329,
                        0.126),
                new Planting(
                        Measure.SPAR_SHEAR,
                        "trainer",
                        Map.of(
                                "design.wing.build.spar",
                                new WingSpar.BoardStrip(),
                                "design.board.thickness",
                                9e-3,
                                "design.body.length",
                                0.7,
                                "design.tail.plane.x",
                                0.61,
                                "design.wing.planform.taper",
                                1.2),
                        "design.wing.build.section.thickness",
                        0.132,
                        0.124),
                // A pusher's thrust above the balance point asks for more elevator than the stall does.
                new Planting(
                        Measure.POWER_TRIM,
                        "pusher",
                        Map.of(
                                "design.body.height",
                                0.06,
                                "design.body.length",
                                1.03,
                                "design.body.width",
                                0.06,
                                "design.loads[0].length",
                                0.02,
                                "design.loads[0].mass",
                                0.04,
                                "design.tail.plane.chord",
                                0.104,
                                "design.tail.plane.x",
                                0.97,
                                "design.wing.planform.rootChord",
                                0.18,
                                "design.wing.planform.span",
                                1.0,
                                "design.wing.x",
                                0.3),
                        "design.tail.plane.incidence",
                        0.045,
                        0.09),
                new Planting(
                        Measure.TORQUE_ROLL,
                        "T-tail",
                        Map.of(
                                "mission.site.launch",
                                Launch.STRONG,
                                "design.body.length",
                                0.8,
                                "design.controls.aileronChord",
                                0.1,
                                "design.power.plant.motor.speedConstant",
                                90.0,
                                "design.tail.plane.x",
                                0.7),
                        "design.wing.planform.span",
                        0.988,
                        0.893),
                new Planting(
                        Measure.STALL_SPEED,
                        "tail wheel",
                        Map.of(
                                "design.loads",
                                List.of(new Load("cargo", 0.05, 0.1, 0.03, 0.03, Place.BELOW, false, 0, 0)),
                                "design.undercarriage.wheel.diameter",
                                0.075,
                                "design.body.length",
                                0.8,
                                "design.tail.plane.span",
                                0.29,
                                "design.wing.build.section.thickness",
                                0.21),
                        "design.wing.planform.rootChord",
                        0.193,
                        0.132),
                // Static thrust is a full battery's and climb one's at 30 %, which turns four fifths of it: at a third
                // of the weight a model climbs too little first, unless a study asks less of it, as of one that goes
                // up on the slope's wind.
                new Planting(
                        Measure.THRUST_TO_WEIGHT,
                        "tail wheel",
                        Map.of(
                                "mission.limits",
                                standingBut(Bound.atLeast(Measure.CLIMB_RATE, 0.4, "a slope's")),
                                "design.wing.build.spar",
                                new WingSpar.BoardStrip(),
                                "design.power.plant",
                                Plants.of("2210-1200", "7x6 sport", "3S 2200", "60 A"),
                                "design.body.height",
                                0.05,
                                "design.body.width",
                                0.06,
                                "design.undercarriage.wheel.diameter",
                                0.063,
                                "design.wing.build.section.thickness",
                                0.12,
                                "design.wing.planform.span",
                                1.27),
                        "design.power.plant.motor.resistance",
                        0.32,
                        0.45),
                // Ahead of these wings a propeller takes no more than some 3 % of the chord from the margin, and 5 % at
                // least are asked of it without power: only where a study asks less of that does this limit speak
                // alone. What is dropped from the nose leaves the balance point behind; the tail stands out of the
                // stream.
                new Planting(
                        Measure.POWER_ON_MARGIN,
                        "T-tail",
                        Map.of(
                                "mission.limits",
                                standingBut(new Bound(Measure.STATIC_MARGIN, 0.02, 0.20, "an expert's")),
                                "design.loads",
                                List.of(new Load("cargo", 0.1, 0.1, 0.03, 0.03, Place.BEHIND_NOSE, true, 0, 0)),
                                "design.body.length",
                                0.8,
                                "design.tail.plane.x",
                                0.7,
                                "design.tail.plane.z",
                                0.2,
                                "design.wing.planform.span",
                                1.0,
                                "design.wing.x",
                                0.2),
                        "design.loads[0].mass",
                        0.0451,
                        0.0505),
                // At the least chord cut by hand an aeroplane would have to stall at 3 m/s to be without any section's
                // figures, and none of these boards and parts is so light: only where a study asks less of the chord
                // does this limit speak alone.
                new Planting(
                        Measure.SECTION_REYNOLDS,
                        "trainer",
                        Map.ofEntries(
                                Map.entry(
                                        "mission.limits",
                                        standingBut(Bound.atLeast(Measure.LEAST_CHORD, 0.015, "a jig's"))),
                                Map.entry("design.body.height", 0.05),
                                Map.entry("design.body.length", 0.8),
                                Map.entry("design.body.width", 0.06),
                                Map.entry("design.loads[0].mass", 0.016),
                                Map.entry("design.tail.fin.chord", 0.08),
                                Map.entry("design.tail.plane.span", 0.65),
                                Map.entry("design.tail.plane.x", 0.77),
                                Map.entry("design.wing.planform.rootChord", 0.157),
                                Map.entry("design.wing.planform.span", 1.1),
                                Map.entry("design.wing.planform.taper", 0.95),
                                Map.entry("design.wing.x", 0.166)),
                        "design.tail.plane.chord",
                        0.0279,
                        0.0227));
    }

    private static Limits standingBut(Bound own) {
        return Samples.mission().limits().with(own);
    }
}
