package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.parts.Spar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Nothing is decoration: every figure of parts, design, mission and factors, moved by 5 % (whole numbers by one), moves some
 * measure of some sample. A figure that only counts when it is the tightest of several has a sample in which it is.
 */
class DecorationTest {
    private static final double MORE = 1.05;
    private static final double LESS = 0.95;

    /** More than the body is wide, m. */
    private static final double HUGE = 0.09;

    /** What moves nothing, and why that is so. Whoever makes one of them count takes it off this list. */
    private static final Map<String, String> SPARE = Map.ofEntries(
            Map.entry("radio.receiver.channels", "a search only offers receivers with channels enough"),
            Map.entry("power.plant.controller.length", "the controller lies beside the battery, not in the row"),
            Map.entry("power.controller.length", "the same for a fan's"),
            Map.entry("power.fan.law.efficiency", "the curves, made once from the law, carry it"),
            Map.entry("power.fan.law.rotation", "the curves carry it"),
            Map.entry("power.fan.law.thrust", "the curves carry it"),
            Map.entry(
                    "power.fan.curves.lowestSpeed", "no coefficient of a fan changes with speed; outside is a caveat"),
            Map.entry("power.fan.curves.highestSpeed", "the same"),
            Map.entry("power.fan.motor.diameter", "the motor sits in the hub"),
            Map.entry("power.fan.motor.length", "the motor sits in the hub"),
            Map.entry("power.fan.motor.mass", "the unit's mass counts, and its stated continuous power"),
            Map.entry("power.fan.motor.price", "the unit's price counts"),
            Map.entry("body.boom.length", "tails longer than a stock tube are not refused"),
            Map.entry(
                    "mission.site.runway",
                    "take-off distance is a measure, and no standing limit holds it against the field"));

    private static final Spar STRIP = new Spar(
            "strip",
            Spar.Shape.STRIP,
            3e-3,
            8e-3,
            0,
            10e9,
            60e6,
            600,
            1,
            2,
            Samples.spar().provenance());

    private final Appraiser appraiser = new Appraiser(List.of(Measure.values()));

    @Test
    void everyFigureMovesSomeMeasure() {
        Set<String> still = new TreeSet<>();
        Set<String> moved = new TreeSet<>();
        for (Case sample : samples()) {
            for (String path : sample.paths()) {
                if (!moved.contains(path)) {
                    (moves(sample, path) ? moved : still).add(path);
                }
            }
        }
        still.removeAll(moved);

        assertThat(still).containsExactlyInAnyOrderElementsOf(SPARE.keySet());
    }

    private boolean moves(Case sample, String path) {
        MeasureValues base = measures(sample);
        return !measures(sample.scaled(path, MORE)).equals(base)
                || !measures(sample.scaled(path, LESS)).equals(base);
    }

    private MeasureValues measures(Case sample) {
        return appraiser.appraise(sample.design, sample.mission, sample.factors).measures();
    }

    private static List<Case> samples() {
        List<Case> cases = new ArrayList<>();
        for (Design design : Arrangements.all().values()) {
            cases.add(new Case(design, Samples.mission(), Factors.NOMINAL));
        }
        tightest().forEach((path, value) -> {
            Case plain = new Case(Samples.trainer(), Samples.mission(), Factors.NOMINAL);
            cases.add(plain.with(path, value));
        });
        Case twin = new Case(Arrangements.of("twin"), Samples.mission(), Factors.NOMINAL);
        cases.add(twin.with("power.y", 0.16));
        Case fan = new Case(Arrangements.of("fan"), Samples.mission(), Factors.NOMINAL);
        for (String part : List.of("power.battery", "power.controller")) {
            cases.add(fan.with(part + ".width", HUGE));
            cases.add(fan.with(part + ".height", HUGE));
        }
        Case boom = new Case(Arrangements.of("pod and boom"), Samples.mission(), Factors.NOMINAL);
        cases.add(boom.with("body.boom", STRIP));
        cases.add(boom.with("body.boom.length", 0.46));
        // A gust loads the wing more than a pull-up only where cruise is twice the stall speed.
        Case windy = new Case(Samples.trainer(), Samples.mission(), Factors.NOMINAL).with("mission.site.wind", 12.0);
        cases.add(windy.with("mission.site.gust", 5.0));
        return cases;
    }

    /** One figure of the trainer or its mission changed so that figures of the same part count. */
    private static Map<String, Object> tightest() {
        Map<String, Object> changes = new LinkedHashMap<>();
        changes.put("wing.build.spar.spar", STRIP);
        changes.put("power.plant.propeller.curves.lowestSpeed", 100.0);
        for (String part : List.of("power.plant.battery", "power.plant.controller", "radio.servo", "radio.receiver")) {
            changes.put(part + ".width", HUGE);
            changes.put(part + ".height", HUGE);
        }
        changes.put("loads[0].height", HUGE);
        changes.put("loads[0].mass", 0.5);
        changes.put("mission.car.width", 0.21);
        changes.put("mission.car.height", 0.21);
        return changes;
    }

    /** A design under a mission; paths of the mission and the factors begin with their names. */
    private record Case(Design design, Mission mission, Factors factors) {
        List<String> paths() {
            return Records.numbers(this).stream()
                    .map(path -> path.startsWith("design.") ? path.substring("design.".length()) : path)
                    .toList();
        }

        Case scaled(String path, double factor) {
            return Records.scaled(this, full(path), factor);
        }

        Case with(String path, Object value) {
            return Records.with(this, full(path), value);
        }

        private static String full(String path) {
            return path.startsWith("mission.") || path.startsWith("factors.") ? path : "design." + path;
        }
    }
}
