package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Nose;
import foamfront.model.design.Place;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Each standing limit refuses by itself: some sound aeroplane, with one figure moved until it misses that limit by a
 * tenth, misses no other, and with the figure moved less meets them all. The figure is looked for among all figures of
 * all arrangements; the limits that need an aeroplane of their own have it in {@link PlantedLimitsTest}.
 */
class SingleLimitTest {
    /** Margins to plant at: a tenth, or what is left where a tenth takes another limit with it. */
    private static final double[] MISSED = {-0.1, -0.03};

    private static final double FAR = 3;
    private static final int HALVINGS = 25;

    /** A margin found by halving, of the limit's size. */
    private static final double CLOSE = 0.01;

    private static final double[] FACTORS = {0.3, 0.5, 0.7, 0.85, 1.15, 1.4, 2, 4};

    /** Limits that no figure of these samples isolates; each has an aeroplane of its own. */
    private static final Set<Measure> ELSEWHERE = PlantedLimitsTest.planted();

    private static final Spar BOOM =
            new Spar("tube 10/8", Spar.Shape.ROUND, 10e-3, 10e-3, 8e-3, 127e9, 600e6, 1500, 1, 9, Provenance.OPEN_DATA);

    private @Nullable Workbench bench;

    @Test
    void everyStandingLimitRefusesAlone() {
        Map<Measure, String> found = new EnumMap<>(Measure.class);
        Set<Measure> missing = EnumSet.noneOf(Measure.class);
        Samples.mission().limits().all().forEach(bound -> missing.add(bound.measure()));
        missing.removeAll(ELSEWHERE);
        for (Case sound : sound()) {
            for (String path : Records.numbers(sound)) {
                if (!missing.isEmpty()) {
                    probe(sound, path, found);
                    missing.removeAll(found.keySet());
                }
            }
        }

        assertThat(missing).as("isolated: %s", found).isEmpty();
    }

    /** Samples from which one figure's way to each limit is short, those first that show a limit no other does. */
    private List<Case> sound() {
        Case trainer = new Case("trainer", Samples.trainer(), Samples.mission(), Factors.NOMINAL);
        Load cargo = new Load("cargo", 0.05, 0.2, 0.03, 0.03, Place.BEHIND_NOSE, false, 0, 0);
        Case rudder = trainer.with("design.controls.ailerons", false);
        Case twin = trainer.with("design", Arrangements.of("twin"));
        Wheel wheel = Records.with(Arrangements.wheel(), "diameter", 0.075);
        List<Case> cases = new ArrayList<>();
        cases.add(trainer);
        for (double length : new double[] {0.9, 0.95}) {
            Case reached = trainer.with("design.body", new Body.PodAndBoom(0.86, 0.07, 0.07, Nose.FIXED, 0.5, BOOM));
            Case pod = reached.with("design.power.plant.battery.length", 0.09 * length);
            cases.add(pod);
            // Of a softer boom, as of glass: it bends long before it breaks.
            cases.add(pod.with("design.body.boom.modulus", 41e9));
        }
        for (String name : List.of("twin", "plugged in", "V-tail", "flying wing")) {
            cases.add(trainer.with("design", Arrangements.of(name)));
        }
        for (double dihedral = 0.04; dihedral < 0.13; dihedral += 0.02) {
            cases.add(rudder.with("design.wing.planform.dihedral", dihedral));
        }
        cases.add(trainer.with("design.loads[0].power", 15.0));
        Case released = trainer.with("design.loads[0].released", true);
        cases.add(released);
        // A wider wing loses less stability to its propeller than lies between the limits without power and with it.
        double span = Samples.trainer().wing().planform().span();
        cases.add(released.with("design.wing.planform.span", 1.2 * span));
        cases.add(trainer.with("design.loads", List.of(cargo)));
        cases.add(trainer.with("design.loads", List.of(Records.with(cargo, "place", Place.BELOW))));
        cases.add(trainer.with("design.undercarriage", new Undercarriage.TailWheel(wheel)));
        cases.add(twin.with("design.controls.aileronSpan", 0.25).with("design.controls.aileronChord", 0.18));
        cases.add(trainer.with("design.controls.elevatorChord", 0.2).with("design.radio.servo.torque", 0.18));
        Load longer = Records.with(cargo, "length", 0.1);
        cases.add(trainer.with("design.loads", List.of(longer)));
        cases.add(trainer.with("design.loads", List.of(Records.with(longer, "place", Place.BALANCE_POINT))));
        cases.add(trainer.with("design.loads", List.of(Records.with(longer, "place", Place.ON_TOP))));
        Case wheels = trainer.with("design.undercarriage", new Undercarriage.TailWheel(wheel));
        cases.add(wheels.with("design.loads", List.of(Records.with(longer, "place", Place.BELOW))));
        cases.add(trainer.with("design.wing.build.spar", new WingSpar.BoardStrip()));
        cases.add(trainer.with("design", Arrangements.of("pod and boom")));
        cases.add(pusher());
        for (Nose nose : Nose.values()) {
            // What rides in a nose that comes off turns its joint in landing.
            Case nosed = trainer.with("design.body.nose", nose).with("design.wing.x", 0.2);
            cases.add(nosed.with("design.loads", List.of(Records.with(cargo, "length", 0.05))));
        }
        // A wide thin tube of little strength shears in its sleeve before it bends.
        Spar thin = new Spar(
                "tube 10/9.6", Spar.Shape.ROUND, 10e-3, 10e-3, 9.6e-3, 127e9, 600e6, 1500, 1, 9, Provenance.INVENTED);
        cases.add(trainer.with("design", Arrangements.of("plugged in"))
                .with("design.wing.build.spar", new WingSpar.Stock(thin)));
        cases.removeIf(sample -> !misses(sample).isEmpty());
        return cases;
    }

    /** Its chord is short for its propeller, so that a little sweep takes the hand's room. */
    private static Case pusher() {
        return new Case("pusher", Arrangements.of("pusher"), Samples.mission(), Factors.NOMINAL)
                .with("design.body.length", 1.0)
                .with("design.tail.plane.x", 0.87)
                .with("design.tail.plane.span", 0.46)
                .with("design.wing.x", 0.44)
                .with("design.wing.planform.rootChord", 0.17)
                .with("design.wing.planform.sweep", 0.1);
    }

    private void probe(Case sound, String path, Map<Measure, String> found) {
        for (double factor : FACTORS) {
            Case changed = scaled(sound, path, factor);
            if (changed != null) {
                for (Measure measure : misses(changed)) {
                    for (double missed : MISSED) {
                        if (!found.containsKey(measure) && !ELSEWHERE.contains(measure)) {
                            double edge = edge(sound, path, factor, measure, missed);
                            if (!Double.isNaN(edge)) {
                                found.put(measure, sound.name + ", " + path + " x " + edge + ", " + missed);
                            }
                        }
                    }
                }
            }
        }
    }

    /** The factor at which the measure, and nothing else, misses its limit by a tenth; NaN where there is none. */
    private double edge(Case sound, String path, double wild, Measure measure, double missed) {
        double good = 1;
        double bad = wild;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (good + bad);
            Case changed = scaled(sound, path, middle);
            if (changed == null) {
                return Double.NaN;
            }
            if (margin(changed, measure) > missed) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        Case planted = scaled(sound, path, bad);
        boolean alone = planted != null
                && Math.abs(margin(planted, measure) - missed) < CLOSE
                && misses(planted).equals(EnumSet.of(measure))
                && meetsSomewhere(sound, path, bad);
        return alone ? bad : Double.NaN;
    }

    /** Whether the design is wholly sound on the way from the sample to the edge. */
    private boolean meetsSomewhere(Case sound, String path, double bad) {
        for (double share = 0.9; share > -0.05; share -= 0.1) {
            Case between = scaled(sound, path, 1 + share * (bad - 1));
            if (between != null && misses(between).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private double margin(Case sample, Measure measure) {
        Workbench w = run(sample);
        Bound bound = sample.mission.limits().of(measure);
        return bound == null || !w.applies(measure) ? FAR : bound.margin(w.get(measure));
    }

    private Set<Measure> misses(Case sample) {
        Workbench w = run(sample);
        Set<Measure> missed = EnumSet.noneOf(Measure.class);
        for (Bound bound : sample.mission.limits().all()) {
            if (w.applies(bound.measure()) && bound.violation(w.get(bound.measure())) > 0) {
                missed.add(bound.measure());
            }
        }
        return missed;
    }

    private Workbench run(Case sample) {
        Workbench w = bench;
        if (w == null) {
            w = new Workbench(sample.design, sample.mission, sample.factors);
            bench = w;
        } else {
            w.begin(sample.design, sample.mission, sample.factors);
        }
        for (int stage = 0; stage < Stages.count(); stage++) {
            w.run(stage);
        }
        return w;
    }

    private static @Nullable Case scaled(Case sample, String path, double factor) {
        try {
            return Records.scaled(sample, path, factor);
        } catch (IllegalArgumentException refused) {
            return null; // no such part, says its constructor
        }
    }

    private record Case(String name, Design design, Mission mission, Factors factors) {
        Case with(String path, Object value) {
            Case changed = Records.with(this, path, value);
            return new Case(name + " with another " + path, changed.design, changed.mission, changed.factors);
        }
    }
}
