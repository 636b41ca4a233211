package foamfront.optimizer.study;

import foamfront.model.design.BodyKind;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.Power;
import foamfront.model.design.PowerKind;
import foamfront.model.design.UndercarriageKind;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Measure;
import foamfront.model.parts.Board;
import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.model.units.Range;
import foamfront.model.units.Unit;
import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.KeyTable;
import foamfront.optimizer.yaml.Value;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What can be seen to be impossible before any design is tried. */
final class Contradictions {
    /** Two measures of which {@code ratio} times the lower never exceeds the higher. */
    private record Pair(Measure lower, Measure higher, double ratio) {}

    private static final Pair[] ORDERED = {
        new Pair(Measure.STALL_SPEED, Measure.CRUISE_SPEED, 1),
        new Pair(Measure.STALL_SPEED, Measure.TOP_SPEED, 1),
        new Pair(Measure.CRUISE_SPEED, Measure.TOP_SPEED, 1),
        new Pair(Measure.EVERYDAY_FLIGHT, Measure.ENDURANCE, 1 / 0.45),
        new Pair(Measure.EMPTY_MASS, Measure.MASS, 1),
        new Pair(Measure.PAYLOAD, Measure.MASS, 1),
        new Pair(Measure.OUT_AND_BACK, Measure.RANGE, 1)
    };

    /** What nothing is known of without an obstacle. */
    private static final Measure[] OVER_OBSTACLE = {Measure.OBSTACLE_DISTANCE, Measure.LANDING_DISTANCE};

    private final Study study;
    private final Fields file;
    private final @Nullable Fields must;
    private final @Nullable Fields vary;

    private Contradictions(Study study, Fields file) {
        this.study = study;
        this.file = file;
        this.must = file.known(StudyKeys.MUST_KEY);
        this.vary = file.known(StudyKeys.VARY_KEY);
    }

    static void check(Study study, Fields file) {
        Contradictions contradictions = new Contradictions(study, file);
        contradictions.order();
        contradictions.payload();
        contradictions.packing();
        contradictions.sheet();
        contradictions.obstacle();
        contradictions.gliders();
        contradictions.thrown();
    }

    /** What is only ever thrown by hand has no take-off to be short of. */
    private void thrown() {
        Arrangements offered = study.arrangements();
        boolean rolls = offered.bodies().contains(BodyKind.BOAT_HULL)
                || offered.undercarriages().stream().anyMatch(kind -> kind != UndercarriageKind.NONE);
        if (!rolls && study.aims().stream().anyMatch(aim -> aim.measure() == Measure.TAKE_OFF_DISTANCE)) {
            file.fault(
                    StudyKeys.AIM_KEY,
                    "take-off distance: nothing offered takes off from ground or water",
                    "Offer an undercarriage under arrangements, or drop the aim.");
        }
    }

    /** What has no motor has no endurance, and its receiver no use for a flight battery. */
    private void gliders() {
        List<PowerKind> powers = study.arrangements().powers();
        if (!powers.contains(PowerKind.NONE)) {
            return;
        }
        if (study.stock().batteries().stream().noneMatch(battery -> battery.cells() <= Power.Unpowered.MOST_CELLS)) {
            file.fault(
                    StudyKeys.ARRANGEMENTS_KEY,
                    "power none feeds its receiver from at most " + Power.Unpowered.MOST_CELLS
                            + " cells, and no such battery is offered",
                    "Name one under batteries.");
        }
        if (powers.size() > 1) {
            return;
        }
        for (Aim aim : study.aims()) {
            if (Measure.motored().contains(aim.measure())) {
                file.fault(
                        StudyKeys.AIM_KEY,
                        "power none has no " + aim.measure().words(),
                        "Aim at glide ratio or sink rate, or offer another power.");
            }
        }
        for (Bound bound : study.limits()) {
            if (Measure.motored().contains(bound.measure())) {
                fault(
                        bound.measure(),
                        "power none has no " + bound.measure().words(),
                        "Delete the limit, or offer another power.");
            }
        }
    }

    private void order() {
        for (Pair pair : ORDERED) {
            Bound lower = bound(pair.lower);
            Bound higher = bound(pair.higher);
            if (lower != null && higher != null && lower.low() * pair.ratio > higher.high()) {
                fault(
                        pair.lower,
                        "at least " + print(pair.lower, lower.low()) + " contradicts " + pair.higher.words()
                                + ", at most " + print(pair.higher, higher.high()),
                        "Lower the one or raise the other.");
            }
        }
    }

    private void payload() {
        Bound bound = bound(Measure.PAYLOAD);
        if (bound == null) {
            return;
        }
        double least = 0;
        double most = 0;
        for (PayloadItem item : study.payload()) {
            least += item.mass().low();
            most += item.mass().high();
        }
        if (bound.low() > most || bound.high() < least) {
            fault(
                    Measure.PAYLOAD,
                    "the loads listed make " + new Range(least, most).print(Unit.GRAM),
                    "Change the limit, or the masses under payload.");
        }
    }

    private void packing() {
        Bound bound = bound(Measure.PACKED_LENGTH);
        Range length = study.vary().get(DesignVariable.BODY_LENGTH);
        Double fixed = study.fixed().get(DesignVariable.BODY_LENGTH);
        double least = length != null ? length.low() : fixed != null ? fixed : 0;
        if (bound != null && bound.high() < least) {
            fault(
                    Measure.PACKED_LENGTH,
                    "at most " + print(Measure.PACKED_LENGTH, bound.high()) + ", but the body is at least "
                            + print(Measure.PACKED_LENGTH, least) + " long",
                    "Allow a shorter body under vary, or a longer piece.");
        }
    }

    /** A chord is cut from one sheet. */
    private void sheet() {
        Range varied = study.vary().get(DesignVariable.ROOT_CHORD);
        Double fixed = study.fixed().get(DesignVariable.ROOT_CHORD);
        if (varied != null) {
            sheet(vary, StudyKeys.VARY, varied.high());
        } else if (fixed != null) {
            sheet(file.known(StudyKeys.FIX_KEY), StudyKeys.FIX, fixed);
        }
    }

    private void sheet(@Nullable Fields stated, KeyTable keys, double chord) {
        double widest = 0;
        for (Board board : study.stock().boards()) {
            widest = Math.max(widest, board.width());
        }
        Key key = keys.find(DesignVariable.ROOT_CHORD.words());
        Value value = stated == null || key == null ? null : stated.value(key);
        String text = value == null ? null : value.text();
        if (stated != null && key != null && text != null && chord > widest) {
            Unit unit = Quantities.unit(text, Dimension.LENGTH);
            stated.fault(
                    key,
                    Quantities.print(chord, unit) + " is wider than the " + Quantities.print(widest, unit) + " sheet",
                    "Use at most " + Quantities.print(widest, unit) + ", or name a wider board under boards.");
        }
    }

    private void obstacle() {
        if (study.site().obstacle() > 0) {
            return;
        }
        String advice = "Give its height under site: {obstacle: 2 m}.";
        for (Measure measure : OVER_OBSTACLE) {
            if (bound(measure) != null) {
                fault(measure, "the site has no obstacle", advice);
            }
            if (study.aims().stream().anyMatch(aim -> aim.measure() == measure)) {
                file.fault(StudyKeys.AIM_KEY, measure.words() + ": the site has no obstacle", advice);
            }
        }
    }

    private @Nullable Bound bound(Measure measure) {
        for (Bound bound : study.limits()) {
            if (bound.measure() == measure) {
                return bound;
            }
        }
        return null;
    }

    private void fault(Measure measure, String problem, String advice) {
        Key key = StudyKeys.MUST.find(measure.words());
        if (must != null && key != null) {
            must.fault(key, problem, advice);
        }
    }

    private String print(Measure measure, double value) {
        return Quantities.print(value, measure.unit(), study.currency());
    }
}
