package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.WingShape;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Owned;
import foamfront.model.parts.CurveShape;
import foamfront.model.parts.Spar;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
            Map.entry("mission.site.runway", "what the take-off distance is held against, where a study states it"),
            Map.entry("power.fan.law.efficiency", "the curves, made once from the law, carry it"),
            Map.entry("power.fan.law.rotation", "the curves carry it"),
            Map.entry("power.fan.law.thrust", "the curves carry it"),
            Map.entry(
                    "power.fan.curves.lowestSpeed", "no coefficient of a fan changes with speed; outside is a caveat"),
            Map.entry("power.fan.curves.highestSpeed", "the same"),
            Map.entry("power.fan.motor.diameter", "the motor sits in the hub"),
            Map.entry("power.fan.motor.length", "the motor sits in the hub"),
            Map.entry("power.fan.motor.mass", "the unit's mass counts, and its stated continuous power"),
            Map.entry("power.fan.motor.price", "the unit's price counts"));

    /** Figures that no sample holds, and why. */
    private static final Map<String, String> ELSEWHERE = Map.ofEntries(
            Map.entry("Bound.low", "moves a margin and no measure: see everyLimitMovesItsMargin"),
            Map.entry("Bound.high", "likewise"));

    /** Records that no design holds: they only make ones that the samples do hold, a planform and a propeller. */
    private static final Set<Class<?>> MAKERS = Set.of(WingShape.class, CurveShape.class);

    /** One class of each package whose records hold figures. */
    private static final List<Class<?>> PACKAGES = List.of(Spar.class, Design.class, Mission.class, Factors.class);

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

    /** No record can gain a figure that the samples do not hold, so none can be forgotten here. */
    @Test
    void theSamplesHoldEveryFigureOfEveryRecord() throws IOException, URISyntaxException, ClassNotFoundException {
        Set<String> held = new TreeSet<>();
        samples().forEach(sample -> held.addAll(Records.owners(sample).values()));
        Set<String> all = new TreeSet<>();
        for (Class<?> neighbour : PACKAGES) {
            for (Class<?> type : classesBeside(neighbour)) {
                for (RecordComponent component : components(type)) {
                    if (component.getType() == double.class || component.getType() == int.class) {
                        all.add(Records.owner(type, component));
                    }
                }
            }
        }
        assertThat(all).hasSizeGreaterThan(100);
        all.removeAll(held);
        assertThat(all).containsExactlyInAnyOrderElementsOf(ELSEWHERE.keySet());
    }

    private static RecordComponent[] components(Class<?> type) {
        return type.isRecord() && !MAKERS.contains(type) ? type.getRecordComponents() : new RecordComponent[0];
    }

    private static List<Class<?>> classesBeside(Class<?> type)
            throws IOException, URISyntaxException, ClassNotFoundException {
        URL place = Objects.requireNonNull(type.getResource(type.getSimpleName() + ".class"));
        Path folder = Objects.requireNonNull(Path.of(place.toURI()).getParent());
        List<Class<?>> classes = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.class")) {
            for (Path file : files) {
                String name = String.valueOf(file.getFileName()).replace(".class", "");
                classes.add(Class.forName(type.getPackageName() + "." + name));
            }
        }
        return classes;
    }

    /** A limit moved by 5 % changes the room that some design has to it. */
    @Test
    void everyLimitMovesItsMargin() {
        Set<Measure> still = EnumSet.noneOf(Measure.class);
        for (Bound bound : Samples.mission().limits().all()) {
            if (Double.isFinite(bound.low())) {
                noteStill(bound, new Bound(bound.measure(), moved(bound.low()), bound.high(), ""), still);
            }
            if (Double.isFinite(bound.high())) {
                noteStill(bound, new Bound(bound.measure(), bound.low(), moved(bound.high()), ""), still);
            }
        }
        assertThat(still).isEmpty();
    }

    private static double moved(double limit) {
        return limit == 0 ? 1e-3 : MORE * limit;
    }

    /** Values on both sides of a bound stand for designs: of two ends only the nearer tells. */
    private static void noteStill(Bound bound, Bound changed, Set<Measure> still) {
        double low = Double.isFinite(bound.low()) ? bound.low() : bound.high() - 1;
        double high = Double.isFinite(bound.high()) ? bound.high() : bound.low() + 1;
        if (bound.margin(low - 1e-3) == changed.margin(low - 1e-3)
                && bound.margin(high + 1e-3) == changed.margin(high + 1e-3)) {
            still.add(bound.measure());
        }
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
        Case packs = new Case(Samples.trainer(), Samples.mission(), Factors.NOMINAL);
        cases.add(packs.with("power.plant.battery", Samples.battery().parallel(2)));
        Case owning = new Case(Samples.trainer(), Samples.mission(), Factors.NOMINAL);
        cases.add(owning.with("mission.drawer", List.of(new Owned("servo 9 g", 1))));
        // Where boards tie the skins the paper fails long before a stock spar; a plug-in tube has no boards beside it.
        Case plugged = new Case(Arrangements.of("plugged in"), Samples.mission(), Factors.NOMINAL);
        cases.add(plugged.with("wing.build.spar.spar.strength", 100e6));
        // A gust loads the wing more than a pull-up only where cruise is twice the stall speed.
        Load seed = new Load("seed", 0.1, 0.06, 0.04, 0.04, Place.BALANCE_POINT, true, 4, 0, 0);
        cases.add(new Case(Samples.trainer(), Samples.mission(), Factors.NOMINAL).with("loads", List.of(seed)));
        Case windy = new Case(Samples.trainer(), Samples.mission(), Factors.NOMINAL).with("mission.site.wind", 12.0);
        cases.add(windy.with("mission.site.gust", 5.0));
        Case rolling = new Case(Arrangements.of("tail wheel"), Samples.mission(), Factors.NOMINAL);
        cases.add(rolling.with("mission.site.headwind", 2.0));
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
