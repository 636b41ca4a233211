package foamfront.model.structure;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Nose;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import foamfront.model.mass.MassBreakdown;
import foamfront.model.mass.MassGroup;
import foamfront.model.mass.MassItem;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Measure;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Each margin of the structure on one worked example, figured by hand from its closed form with the figures that the example's
 * name gives. A margin without one fails.
 */
class MarginsExternalTest {
    private static final String DERIVED = "Closed forms worked by hand (derived).";
    private static final double SEMISPAN = 0.6;
    private static final FlightLoads LOADS = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0, 0);
    private static final Sandwich BOARD = Sandwich.of(Examples.BOARD, Factors.NOMINAL);

    /** Board that bears nothing, so that the tube is alone. */
    private static final Sandwich NOTHING = new Sandwich(0.15e-3, 4.5e-3, 1e-3, 1e-3, 1e15);

    private static final Map<String, Runnable> WORKED = Map.ofEntries(
            entry("limitLoad", MarginsExternalTest::limitLoad),
            entry("wingBending", MarginsExternalTest::wingBending),
            entry("sparShear", MarginsExternalTest::sparShear),
            entry("webGlue", MarginsExternalTest::webGlue),
            entry("joint", MarginsExternalTest::joint),
            entry("tipDeflection", MarginsExternalTest::tipDeflection),
            entry("divergenceSpeed", MarginsExternalTest::torsion),
            entry("flutterSpeed", MarginsExternalTest::torsion),
            entry("boomDeflection", MarginsExternalTest::boom),
            entry("boomBending", MarginsExternalTest::boom),
            entry("tailBending", MarginsExternalTest::tail),
            entry("servoTorque", MarginsExternalTest::servo),
            entry("nose joint", MarginsExternalTest::noseJoint),
            entry("hull", MarginsExternalTest::hull));

    private static final List<Measure> LIMITED = List.of(
            Measure.WING_BENDING,
            Measure.SPAR_SHEAR,
            Measure.TIP_DEFLECTION,
            Measure.DIVERGENCE_SPEED,
            Measure.BOOM_STIFFNESS,
            Measure.BOOM_STRENGTH,
            Measure.TAIL_STRENGTH,
            Measure.NOSE_JOINT,
            Measure.HULL_STRENGTH,
            Measure.SERVO_TORQUE);

    @Test
    void everyMarginHasItsWorkedExample() {
        Set<String> margins = Arrays.stream(StructureMargins.class.getRecordComponents())
                .map(RecordComponent::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        margins.addAll(List.of("nose joint", "hull"));
        assertThat(new TreeSet<>(WORKED.keySet())).isEqualTo(margins);
        WORKED.values().forEach(Runnable::run);
    }

    @Test
    void everyMarginIsAStandingLimit() {
        assertThat(Limits.standing().all()).extracting(Bound::measure).containsAll(LIMITED);
    }

    private static Validation margins() {
        return Validation.of(Subject.STRUCTURE, "Margins, worked", DERIVED);
    }

    private static WingStress tubeAlone(double lift) {
        return WingStress.of(SpanLoad.elliptic(SEMISPAN, 0.5), tube(), wing(), new WingStress.Forces(lift, 0, 0, 0, 0));
    }

    private static WingBeam tube() {
        return new WingBeam(NOTHING, new WingSection.FlatPlate(), new WingSpar.Stock(Examples.TUBE), Examples.BEAD);
    }

    /** 4 g is common practice of 3 to 4, a landing 3 to 5; the gust has a heading of its own. */
    private static void limitLoad() {
        double mass = 40 * 0.25 / Atmosphere.GRAVITY;
        FlightLoads calm = new FlightLoads(mass, 0, 0, 1.225, 6, 10, 15, 2, 4.5, 0, 0);
        Validation.of(Subject.STRUCTURE, "Load factors of models", "Common practice.")
                .band("pull-up of a gentle model", 3, 4, LoadFactor.limit(calm, 0.25, 0.2), "g")
                .band("landing of a hand-thrown model", 3, 5, LoadFactor.landing(), "g");
    }

    /** 1.0 kg, 1.2 m, 4 g: 4.996 N m at the root; 145.4 MPa in a tube of 8/6 mm that bears 600. */
    private static void wingBending() {
        double lift = 4 * Atmosphere.GRAVITY;
        WingStress stress = tubeAlone(lift);
        margins()
                .value("root moment of 1 kg, 1.2 m, 4 g", 4.996, stress.rootMoment(), 4e-3, "N m")
                .value("root shear of the same", 19.62, stress.rootShear(), 1e-2, "N")
                .value("stress in a tube of 8/6 mm", 145.4, stress.spar() / 1e6, 0.1, "MPa")
                .value("its reserve at 600 MPa", 4.127, WingReserve.bending(stress, tube(), 1e12), 4e-3, "");
        // An even load has n W b / 8, and the wedge n W b / 12: here per newton of lift.
        SpanLoad even = even();
        Surface wing = wing();
        WingStress flat = WingStress.of(even, tube(), wing, new WingStress.Forces(1, 0, 0, 0, 0));
        double stiffness = 127e9 * Examples.TUBE.secondMoment();
        margins()
                .value("root moment of an even load over W b", 0.125, flat.rootMoment() / 1.2, 1e-6, "")
                .value("its tip over W b^3 / EI", 0.0078125, flat.deflection() * stiffness / 1.728, 1e-6, "");
    }

    private static Surface wing() {
        return new Surface(
                Surface.Role.WING,
                new WingSection.FlatPlate(),
                List.of(new Panel(0, 0, 0, 0.2, 0, 0, SEMISPAN, 0, 0.2, 0)),
                true,
                List.of());
    }

    private static SpanLoad even() {
        int n = 60;
        double[] y = new double[n];
        double[] width = new double[n];
        double[] share = new double[n];
        for (int i = 0; i < n; i++) {
            y[i] = (i + 0.5) / n * SEMISPAN;
            width[i] = SEMISPAN / n;
            share[i] = 0.5 / n;
        }
        SpanLoad load = new SpanLoad();
        for (int i = 0; i < y.length; i++) {
            load.add(y[i], width[i], share[i]);
        }
        return load;
    }

    /** V / (H t): 15.7 N on a strip 22 mm high, 2 x 0.15 mm of paper: 2.38 MPa against half of 12.5. */
    private static void sparShear() {
        WingBeam beam =
                new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), new WingSpar.BoardStrip(), Examples.BEAD);
        double chord = (0.022 + 2 * 4.8e-3) / 0.12;
        WingStress stress = new WingStress(0, 15.7, 0, 0, 0, 0, 0, 0);
        double reserve = WingReserve.shear(stress, beam, chord, Examples.BOARD, Factors.NOMINAL);
        margins()
                .value("shear in a board strip 22 mm high, 15.7 N", 2.38, 6.25 / reserve, 5e-3, "MPa")
                .value("its reserve at 6.25 MPa", 2.627, reserve, 5e-3, "");
    }

    /**
     * Shear flow V / H = 19.6 N / 22 mm = 0.89 N/mm, on an edge of 5 mm without fillets 0.18 MPa. A bead of 4.3 g/m (4.526 mm²) fills
     * 0.2 mm under a board of 4.8 mm and leaves 3.566 mm², two fillets of 1.888 mm: 8.577 mm. 15.7 N on skins 26.8 mm apart, at
     * h = 0.1018 c 0.5885 of V / h = 344.7 N/m: 40.19 kPa against 100.
     */
    private static void webGlue() {
        double plain = 19.6 * WebGlue.fold(false, 0.022, 1e6, 0.005, 0.2e-3 * 0.005) / 0.7134;
        WingBeam beam =
                new WingBeam(BOARD, new WingSection.FoldedFlatBottom(0.12), new WingSpar.BoardStrip(), Examples.BEAD);
        double chord = (0.022 + 2 * 4.8e-3) / 0.12;
        double stress = 15.7 * beam.glue(chord);
        double reserve = WingReserve.glue(new WingStress(0, 15.7, 0, 0, stress, 0, 0, 0), Factors.NOMINAL);
        margins()
                .value("glue under a board's edge, no fillets, V / H", 0.18, plain / 1e6, 5e-3, "MPa")
                .value("glue along a board strip 22 mm high, 15.7 N", 40.19, stress / 1000, 5e-3, "kPa")
                .value("its reserve at 100 kPa", 2.488, reserve, 1e-3, "");
    }

    /** 6 M / (d l²): 5 N m in 8 mm over 150 mm: 166.7 kPa against 450; the tube's 20.62 N m hold 4.1 times. */
    private static void joint() {
        double reserve = WingReserve.joint(JointTube.of(5, 0, 0.008, 0.150), Examples.TUBE);
        margins().value("joint tube of 8 mm over 150 mm, 5 N m", 2.700, reserve, 1e-3, "");
    }

    private static void tipDeflection() {
        margins()
                .value(
                        "tip of 1 kg, 1.2 m, 4 g on that tube",
                        23.5,
                        1000 * tubeAlone(39.2266).deflection(),
                        0.05,
                        "mm");
    }

    /**
     * A plate of 0.2 m chord, half span 0.6 m, papers of 0.15 mm 4.65 mm apart: GJ = 1.2974 N m²; it diverges at π² GJ / (4 l² e c²
     * a), 18.0 m/s at a = 4.5. At 60 g/m and r² = c²/12 it twists at 211 rad/s; κ = 0.6414, and b ω √(r² / 2κ (½ + a + x)) = 15.2
     * m/s. Rayleigh's quotient lies 0.13 % high in
     * pressure, sixteen strips another 0.17 %.
     */
    private static void torsion() {
        WingBeam plate = new WingBeam(BOARD, new WingSection.FlatPlate(), new WingSpar.BoardStrip(), Examples.BEAD);
        WingStress stress =
                WingStress.of(SpanLoad.elliptic(SEMISPAN, 0.5), plate, wing(), new WingStress.Forces(30, 0, 0, 0, 0));
        margins()
                .value("divergence of a plate", 17.961, speed(stress.divergence(), 4.5), 0.03, "m/s")
                .value("flutter of a plate of 60 g/m", 15.200, speed(stress.flutter(), 2 * Math.PI), 0.03, "m/s");
    }

    private static double speed(double pressure, double liftSlope) {
        return Math.sqrt(2 * pressure / liftSlope / 1.225);
    }

    /**
     * Tail plate of 0.0567 m² at C_L 0.7 and 14 m/s: 4.765 N on 0.355 m of tube 8/6: 20.62 N m over 1.6915. It sinks by 0.75 % of
     * the arm of 0.54 m, but a fin of 0.01792 m² whose middle stands 84 mm over the boom twists it by 0.03216.
     */
    private static void boom() {
        Airframe pod = Airframe.of(Examples.with(
                Examples.trainer(), new Body.PodAndBoom(0.96, 0.075, 0.08, Nose.FIXED, 0.5, Examples.TUBE)));
        TailBoom boom = TailBoom.of(pod, LOADS, 4, BOARD, 12.5e6);
        TailBoom finless =
                TailBoom.of(Airframe.of(Records.with(pod.design(), "tail.fin.height", 1e-3)), LOADS, 4, BOARD, 12.5e6);
        margins()
                .value("boom of 8/6 mm, strength", 12.188, boom.reserve(), 5e-3, "")
                .value("its twist under the fin's load", 3.216, 100 * boom.deflection(), 1e-3, "%")
                .value("its bending under the tail's", 0.7539, 100 * finless.deflection(), 1e-4, "%");
    }

    /** 84.04 Pa on a half of 0.21 m less half of the body's 70 mm: 1.287 N over the papers' 7.63 N. */
    private static void tail() {
        Design square =
                Records.with(Records.with(Samples.trainer(), "tail.plane.taper", 1.0), "controls.elevatorChord", 0.6);
        FlightLoads loads = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 11, 40, 4, 4.5, 0, 0);
        Sandwich board = Sandwich.of(Samples.board(), Factors.NOMINAL);
        double reserve = TailPlates.reserve(Airframe.of(square), loads, 4, board, 12.5e6);
        margins().value("stabiliser of 0.42 m at its greatest lift", 5.930, reserve, 5e-3, "");
    }

    /** An elevon of 0.4 m x 40 mm of a chord of 0.2 m, 20 degrees, 20 m/s asks 0.0505 N m of a servo that has 0.17. */
    private static void servo() {
        Surface half = new Surface(
                Surface.Role.WING,
                new WingSection.FlatPlate(),
                List.of(new Panel(0, 0, 0, 0.2, 0, 0, 0.4, 0, 0.2, 0)),
                true,
                List.of());
        double moment = ServoLoad.moment(half, new Control(Control.Kind.ELEVON, 0.2, 0, 1), LOADS);
        margins()
                .value("elevon's hinge moment", 0.0505, moment, 0.5e-4, "N m")
                .value("its servo's reserve", 3.366, StructureMargins.reserve(0.17, moment), 4e-3, "");
    }

    /** Bands of 40 N: 10 N of thrust; 60 g 100 mm ahead at 4.4 g on half of 80 mm. */
    private static void noseJoint() {
        MassItem battery = new MassItem("battery", 0.18, 0, 0, 0, 0.1, 0.03, 0.02, MassGroup.BATTERY, false);
        MassBreakdown motor =
                new MassBreakdown(List.of(MassItem.point("motor", 0.060, 0.02, 0, 0, MassGroup.POWER)), battery);
        double thrust = NoseJoint.reserve(new MassBreakdown(List.of(), battery), 0.3, 0.4, 0.12, 0.08, 10);
        double landing = NoseJoint.reserve(motor, 0.3, 0.4, 0.12, 0.08, 0);
        margins()
                .value("nose bands under 10 N of thrust", 4, thrust, 1e-9, "")
                .value("nose bands in landing", 6.18, landing, 0.02, "");
    }

    /**
     * 1 kg at 8 m/s on a bottom of 0.26 rad, beam 110 mm: n 5.390, 13.35 kPa; a half of 56.9 mm clamped both sides: 5.90 MPa in
     * papers of 0.14 mm, 87.1 kPa in the core against 100.
     */
    private static void hull() {
        Airframe boat = Airframe.of(Arrangements.of("hull"));
        WaterLanding landing =
                WaterLanding.of(boat, Objects.requireNonNull(boat.stations().flotation()), 1.0, 8, Factors.NOMINAL);
        Validation.of(
                        Subject.STRUCTURE,
                        "Hull alighting, worked",
                        "14 CFR 25.527 and 25.533(b) (constants from memory), figures worked by hand.")
                .value("load factor", 5.390, landing.factor(), 1e-3, "g")
                .value("pressure at the keel", 13.35, landing.pressure() / 1000, 5e-3, "kPa")
                .value("reserve of the bottom's core", 1.1477, landing.reserve(), 1e-4, "");
    }
}
