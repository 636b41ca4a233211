package foamfront.optimizer.genome;

import foamfront.model.design.Arrangement;
import foamfront.model.design.Design;
import foamfront.model.design.DesignVariable;
import foamfront.model.parts.Part;
import foamfront.model.units.Range;
import foamfront.optimizer.study.Arrangements;
import foamfront.optimizer.study.Stock;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.WingChoice;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A study with some parts taken over from another aeroplane: they are no choice any more. Parts are keys of the design file. */
public final class Kept {
    private static final Map<String, Set<DesignVariable>> DIMENSIONS = Map.of(
            "wing", EnumSet.range(DesignVariable.SPAN, DesignVariable.STAGGER),
            "tail", EnumSet.range(DesignVariable.TAIL_SPAN, DesignVariable.FIN_CHORD),
            "body", EnumSet.range(DesignVariable.BODY_LENGTH, DesignVariable.BODY_HEIGHT),
            "controls", EnumSet.range(DesignVariable.AILERON_SPAN, DesignVariable.RUDDER_CHORD));

    private final Study study;
    private final Design design;
    private final List<String> parts;

    private Kept(Study study, Design design, List<String> parts) {
        this.study = study;
        this.design = design;
        this.parts = parts;
    }

    /** The study with these parts of {@code design} fixed. */
    public static Study apply(Study study, Design design, List<String> parts) {
        return new Kept(study, design, parts).study();
    }

    private Study study() {
        Map<DesignVariable, Range> vary = new EnumMap<>(DesignVariable.class);
        vary.putAll(study.vary());
        Map<DesignVariable, Double> fixed = new EnumMap<>(DesignVariable.class);
        fixed.putAll(study.fixed());
        for (String part : parts) {
            for (DesignVariable dimension : DIMENSIONS.getOrDefault(part, Set.of())) {
                vary.remove(dimension);
                fixed.put(dimension, Reading.dimension(design, dimension));
            }
        }
        return new Study(
                study.name(),
                study.about(),
                study.currency(),
                study.site(),
                study.payload(),
                study.carSpace(),
                arrangements(),
                vary,
                fixed,
                stock(),
                study.drawer(),
                study.limits(),
                study.aims(),
                study.prefer(),
                study.showIn(),
                study.increment(),
                study.search(),
                study.keepFrom(),
                study.startFrom(),
                study.digest());
    }

    private Arrangements arrangements() {
        Arrangement other = Arrangement.of(design);
        Arrangements open = study.arrangements();
        WingChoice wing = Reading.wing(other);
        return new Arrangements(
                kept("wing", wing, open.wings()),
                kept("tail", other.tail(), open.tails()),
                kept("body", other.body(), open.bodies()),
                kept("power", other.power(), open.powers()),
                kept("undercarriage", other.undercarriage(), open.undercarriages()),
                kept("covering", other.covering(), open.coverings()),
                kept("wing", other.tips(), open.tips()),
                kept("wing", other.section(), open.sections()),
                kept("wing", other.joint(), open.joints()),
                kept("wing", other.spar(), open.spars()),
                kept("wing", other.holdDown(), open.holdDowns()),
                kept("controls", other.controls(), open.controls()),
                kept("body", other.nose(), open.noses()),
                kept("tail", other.finJoint(), open.finJoints()));
    }

    private Stock stock() {
        Stock open = study.stock();
        return new Stock(
                kept("board", design.board(), open.boards()),
                keptPart("wing", PartGenes.Kind.SPAR, open.spars()),
                keptPart("power", PartGenes.Kind.MOTOR, open.motors()),
                keptPart("power", PartGenes.Kind.PROPELLER, open.propellers()),
                keptPart("power", PartGenes.Kind.FAN, open.fans()),
                kept("power", design.power().battery(), open.batteries()),
                keptPart("power", PartGenes.Kind.CONTROLLER, open.controllers()),
                kept("radio", design.radio().servo(), open.servos()),
                kept("radio", design.radio().receiver(), open.receivers()),
                keptPart("undercarriage", PartGenes.Kind.WHEEL, open.wheels()));
    }

    private <T> List<T> kept(String part, T theirs, List<T> open) {
        return parts.contains(part) ? List.of(theirs) : open;
    }

    /** The other aeroplane's part, whether or not this study would have allowed it. */
    @SuppressWarnings("unchecked") // a list of one kind of part gets a part of that kind
    private <P extends Part> List<P> keptPart(String part, PartGenes.Kind kind, List<P> open) {
        @Nullable Part theirs = Reading.part(design, kind);
        return theirs == null ? open : kept(part, (P) theirs, open);
    }
}
