package foamfront.optimizer.genome;

import foamfront.model.design.BodyKind;
import foamfront.model.design.Choice;
import foamfront.model.design.ControlLayout;
import foamfront.model.design.Design;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.FlapKind;
import foamfront.model.design.PowerKind;
import foamfront.model.design.SectionKind;
import foamfront.model.design.TailKind;
import foamfront.model.design.WingKind;
import foamfront.model.parts.Part;
import foamfront.optimizer.genome.LayoutGenes.Digit;
import foamfront.optimizer.search.Variable;
import foamfront.optimizer.search.Variable.Condition;
import foamfront.optimizer.study.PayloadItem;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.WingChoice;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The variables of a study, and designs from their values. Immutable after construction and safe to share between threads.
 *
 * <p>Values are those of {@code search}: the index of a choice or part, a fraction in [0, 1] of a dimension's or mass's grid.
 */
public final class Genome {
    /** The list of dimensions; asking the type for it makes a new array each time. */
    static final DesignVariable[] DIMENSIONS = DesignVariable.values();

    private static final int NONE = -1;

    /** Loads are weighed to this, kg. */
    private static final double MASS_STEP = 0.005;

    /** Throttle, elevator, rudder, ailerons; a drop takes one more, and so do flaps or ailerons that droop. */
    private static final int CHANNELS = 4;

    final Study study;
    final LayoutGenes layouts;
    final PartGenes parts;
    final DimensionRules dimensions;
    final List<Grid> masses = new ArrayList<>();
    private final List<WingKind> wings;
    private final List<FlapKind> flaps;

    private final List<Variable> variables = new ArrayList<>();
    private final int[] ofDigit = filled(Digit.values().length);
    private final int[] ofDimension = filled(DIMENSIONS.length);
    private final int[] ofPart = filled(PartGenes.Kind.values().length);
    private final int[] ofLoad;

    public Genome(Study study) {
        this.study = study;
        layouts = new LayoutGenes(study.arrangements());
        parts = new PartGenes(study.stock(), channels(study));
        dimensions = new DimensionRules(study);
        wings = study.arrangements().wings().stream()
                .map(WingChoice::kind)
                .distinct()
                .toList();
        flaps = study.arrangements().controls().stream()
                .map(ControlLayout::flaps)
                .distinct()
                .toList();
        for (PayloadItem load : study.payload()) {
            masses.add(Grid.of(load.mass(), MASS_STEP));
        }
        ofLoad = filled(masses.size());
        for (Digit digit : Digit.values()) {
            if (layouts.levels(digit) > 1) {
                ofDigit[digit.ordinal()] = add(new Variable.Category(digit.words, layouts.levels(digit)));
            }
        }
        for (PartGenes.Kind kind : PartGenes.Kind.values()) {
            addPart(kind);
        }
        for (DesignVariable dimension : DIMENSIONS) {
            addDimension(dimension);
        }
        for (int i = 0; i < ofLoad.length; i++) {
            if (!masses.get(i).fixed()) {
                ofLoad[i] = add(
                        new Variable.Real("mass of " + study.payload().get(i).name()));
            }
        }
    }

    private static int channels(Study study) {
        return CHANNELS
                + (study.payload().stream().anyMatch(PayloadItem::released) ? 1 : 0)
                + (study.arrangements().controls().stream().anyMatch(layout -> layout.flaps() != FlapKind.NONE)
                        ? 1
                        : 0);
    }

    private static int[] filled(int length) {
        int[] result = new int[length];
        Arrays.fill(result, NONE);
        return result;
    }

    private int add(Variable variable) {
        variables.add(variable);
        return variables.size() - 1;
    }

    private void addPart(PartGenes.Kind kind) {
        int count = parts.list(kind).size();
        // The spar is not tied to its kind here: a repaired joint may bring a stock spar back.
        List<Condition> when = switch (kind) {
            case WHEEL -> when(Digit.UNDERCARRIAGE, Kinds::hasWheels);
            case MOTOR, PROPELLER -> when(Digit.POWER, Kinds::hasPropeller);
            case FAN -> when(Digit.POWER, power -> power == PowerKind.DUCTED_FAN);
            case BATTERY, CONTROLLER -> when(Digit.POWER, Kinds::hasMotor);
            case RECEIVER_BATTERY -> when(Digit.POWER, power -> !Kinds.hasMotor(power));
            case BOOM -> when(Digit.BODY, Kinds::hasBoom);
            default -> List.of();
        };
        if (count > 1 && when != null) {
            ofPart[kind.ordinal()] = add(new Variable.Ordinal(kind.words, count, when));
        }
    }

    private void addDimension(DesignVariable dimension) {
        Grid grid = dimensions.grid(dimension);
        if (grid == null || grid.fixed()) {
            return;
        }
        List<Condition> when = switch (dimension) {
            case AILERON_SPAN, AILERON_CHORD -> whenAny(Digit.CONTROLS, Kinds::hasAilerons);
            case FLAP_SPAN, FLAP_CHORD -> whenAny(Digit.CONTROLS, controls -> controls == ControlLayout.FLAPS);
            case SECTION_THICKNESS -> when(Digit.SECTION, Kinds::isFolded);
            case SECTION_CAMBER -> when(Digit.SECTION, section -> section == SectionKind.CURVED_PLATE);
            case SECTION_STEP -> when(Digit.SECTION, section -> section == SectionKind.STEPPED_PLATE);
            case STEP_POSITION -> when(Digit.BODY, Kinds::isHull);
            case FLOAT_LENGTH, FLOAT_BEAM -> when(Digit.UNDERCARRIAGE, Kinds::isFloats);
            case DEADRISE -> whenWet();
            case GAP, STAGGER -> when(Digit.WING, Kinds::isBiplane);
            case POD_LENGTH -> when(Digit.BODY, Kinds::hasBoom);
            case BODY_WIDTH -> when(Digit.BODY, body -> body != BodyKind.PROFILE_BOARD);
            case DIHEDRAL, OUTER_DIHEDRAL, BEND_POSITION, CUT_OUT_DEPTH, CUT_OUT_BREADTH, WASHOUT ->
                when(Digit.WING, wing -> !Kinds.isDelta(wing));
            case TAIL_CANT -> whenAny(Digit.TAIL, Kinds::isCanted);
            case FIN_HEIGHT, FIN_CHORD -> whenAny(Digit.TAIL, tail -> !Kinds.isCanted(tail));
            case TAIL_SPAN, TAIL_CHORD, TAIL_INCIDENCE, ELEVATOR_CHORD -> whenAny(Digit.TAIL, Kinds::isTail);
            case RUDDER_CHORD -> whenAny(Digit.TAIL, tail -> Kinds.isTail(tail) && !Kinds.isCanted(tail));
            default -> List.of();
        };
        if (when != null) {
            ofDimension[dimension.ordinal()] = add(new Variable.Real(dimension.words(), when));
        }
    }

    /** The condition that a kind is one of those that pass; none where all do, null where none does. */
    private @Nullable List<Condition> when(Digit digit, Predicate<Object> passes) {
        List<?> options = layouts.options(digit);
        List<Integer> values = IntStream.range(0, options.size())
                .filter(i -> passes.test(options.get(i)))
                .boxed()
                .toList();
        if (values.isEmpty()) {
            return null;
        }
        return values.size() == options.size() ? List.of() : List.of(new Condition(ofDigit[digit.ordinal()], values));
    }

    /** The same, but always active where a tailless choice may turn the kind into another when it is repaired. */
    private @Nullable List<Condition> whenAny(Digit digit, Predicate<Object> passes) {
        List<Condition> when = when(digit, passes);
        boolean repaired = layouts.options(Digit.TAIL).contains(TailKind.NONE)
                && (wings.size() > 1 || layouts.levels(Digit.TAIL) > 1);
        return when == null || !repaired ? when : List.of();
    }

    /** The bottom of a hull or of floats; always active where a study opens both, as conditions are never alternatives. */
    private @Nullable List<Condition> whenWet() {
        List<Condition> hulls = when(Digit.BODY, Kinds::isHull);
        List<Condition> floats = when(Digit.UNDERCARRIAGE, Kinds::isFloats);
        if (hulls == null) {
            return floats;
        }
        return floats == null ? hulls : List.of();
    }

    /** One per open choice: kinds, then parts, then dimensions, then load masses. */
    public List<Variable> variables() {
        return Collections.unmodifiableList(variables);
    }

    /** What a category or part variable chooses from, in words, in the order of its levels. */
    public List<String> words(Variable variable) {
        int index = variables.indexOf(variable);
        for (Digit digit : Digit.values()) {
            if (ofDigit[digit.ordinal()] == index) {
                return layouts.options(digit).stream().map(Genome::words).toList();
            }
        }
        for (PartGenes.Kind kind : PartGenes.Kind.values()) {
            if (ofPart[kind.ordinal()] == index) {
                return parts.list(kind).stream().map(Part::name).toList();
            }
        }
        return List.of();
    }

    private static String words(Object option) {
        if (option instanceof WingChoice wing) {
            return wing.kind() == WingKind.MONOPLANE
                    ? wing.kind().words() + " (" + wing.height().words() + ")"
                    : wing.kind().words();
        }
        return ((Choice) option).words();
    }

    /** The design that values stand for. */
    public Design decode(double[] values) {
        return Builder.design(this, express(values));
    }

    /** What the values say, choice by choice. */
    Expression express(double[] values) {
        int[] digits = new int[ofDigit.length];
        for (int i = 0; i < digits.length; i++) {
            digits[i] = ofDigit[i] == NONE ? 0 : (int) values[ofDigit[i]];
        }
        layouts.repair(digits);
        int[] partIndices = new int[ofPart.length];
        for (int i = 0; i < partIndices.length; i++) {
            partIndices[i] = ofPart[i] == NONE ? 0 : (int) values[ofPart[i]];
        }
        int[] steps = new int[ofDimension.length];
        for (DesignVariable dimension : DIMENSIONS) {
            int i = dimension.ordinal();
            Grid grid = dimensions.grid(dimension);
            steps[i] = grid == null || ofDimension[i] == NONE ? 0 : grid.index(values[ofDimension[i]]);
        }
        int[] loadSteps = new int[ofLoad.length];
        for (int i = 0; i < loadSteps.length; i++) {
            loadSteps[i] = ofLoad[i] == NONE ? 0 : masses.get(i).index(values[ofLoad[i]]);
        }
        return new Expression(digits, partIndices, steps, loadSteps).neutral(this);
    }

    /** Values that stand for an expression. */
    double[] values(Expression e) {
        double[] values = new double[variables.size()];
        put(values, ofDigit, e.digits());
        put(values, ofPart, e.parts());
        for (DesignVariable dimension : DIMENSIONS) {
            Grid grid = dimensions.grid(dimension);
            int i = dimension.ordinal();
            if (grid != null && ofDimension[i] != NONE) {
                values[ofDimension[i]] = grid.fraction(e.steps()[i]);
            }
        }
        for (int i = 0; i < ofLoad.length; i++) {
            if (ofLoad[i] != NONE) {
                values[ofLoad[i]] = masses.get(i).fraction(e.loads()[i]);
            }
        }
        return values;
    }

    private static void put(double[] values, int[] places, int[] indices) {
        for (int i = 0; i < places.length; i++) {
            if (places[i] != NONE) {
                values[places[i]] = indices[i];
            }
        }
    }

    /** The values that the decoded design really has: repaired, snapped, and 0 for what does not matter. */
    public double[] canonical(double[] values) {
        return values(express(values));
    }

    /** Values of a design of this study; what lies outside is moved to the nearest inside. */
    public double[] encode(Design design) {
        return canonical(values(Reading.of(this, design)));
    }

    /** Numbers in [0, 1], one per variable, that the search decodes to these values. */
    public double[] genes(double[] values) {
        double[] genes = values.clone();
        for (int i = 0; i < genes.length; i++) {
            Variable variable = variables.get(i);
            if (variable.levels() > 0) {
                genes[i] = (values[i] - variable.lowest() + 0.5) / variable.levels();
            }
        }
        return genes;
    }

    /** Number of kinds of wing, tail, power and flaps together. */
    public int niches() {
        return wings.size() * layouts.levels(Digit.TAIL) * layouts.levels(Digit.POWER) * flaps.size();
    }

    /** Kind of wing, tail, power and flaps of canonical values, as one index. */
    public int niche(double[] canonical) {
        WingChoice choice = study.arrangements().wings().get(digit(canonical, Digit.WING));
        int wing = wings.indexOf(choice.kind());
        int tail = digit(canonical, Digit.TAIL);
        int power = digit(canonical, Digit.POWER);
        int flap = flaps.indexOf(study.arrangements()
                .controls()
                .get(digit(canonical, Digit.CONTROLS))
                .flaps());
        return ((wing * layouts.levels(Digit.TAIL) + tail) * layouts.levels(Digit.POWER) + power) * flaps.size() + flap;
    }

    private int digit(double[] values, Digit digit) {
        int place = ofDigit[digit.ordinal()];
        return place == NONE ? 0 : (int) values[place];
    }

    /** An upper bound on the number of different designs: buildable layouts times parts times grid steps. */
    public BigInteger designs() {
        BigInteger product = BigInteger.valueOf(layouts.buildable());
        for (PartGenes.Kind kind : PartGenes.Kind.values()) {
            product = product.multiply(BigInteger.valueOf(
                    ofPart[kind.ordinal()] == NONE
                            ? 1
                            : Math.max(1, parts.list(kind).size())));
        }
        for (DesignVariable dimension : DIMENSIONS) {
            Grid grid = dimensions.grid(dimension);
            product = product.multiply(BigInteger.valueOf(grid == null ? 1 : grid.count()));
        }
        for (Grid mass : masses) {
            product = product.multiply(BigInteger.valueOf(mass.count()));
        }
        return product;
    }

    /** How many layouts of this study can be built. */
    public int layouts() {
        return layouts.buildable();
    }

    /** Why the others cannot, each reason once. */
    public List<String> refusals() {
        return layouts.refusals();
    }
}
