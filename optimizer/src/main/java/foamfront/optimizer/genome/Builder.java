package foamfront.optimizer.genome;

import foamfront.model.design.Arrangement;
import foamfront.model.design.Body;
import foamfront.model.design.ControlLayout;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.Fin;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Load;
import foamfront.model.design.Planform;
import foamfront.model.design.Power;
import foamfront.model.design.PowerKind;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Radio;
import foamfront.model.design.SparKind;
import foamfront.model.design.Tail;
import foamfront.model.design.TailKind;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingKind;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingShape;
import foamfront.model.design.WingSpar;
import foamfront.model.design.WorkshopRules;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Board;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Wheel;
import java.util.ArrayList;
import java.util.List;

/** Puts a design together from what a genome says; one method per component. */
final class Builder {
    private final Genome genome;
    private final Expression said;
    private final Arrangement layout;
    private final WingHeight height;
    private final double[] dimension = WorkshopRules.open();

    private Builder(Genome genome, Expression said) {
        this.genome = genome;
        this.said = said;
        this.layout = genome.layouts.arrangement(said.digits());
        this.height = layout.height() == null ? WingHeight.HIGH : layout.height();
        for (DesignVariable variable : Genome.DIMENSIONS) {
            Grid grid = genome.dimensions.grid(variable);
            if (grid != null) {
                dimension[variable.ordinal()] = grid.value(said.steps()[variable.ordinal()]);
            }
        }
        genome.dimensions.complete(dimension, layout.wing(), height, Kinds.hasAilerons(layout.controls()));
    }

    static Design design(Genome genome, Expression said) {
        Builder builder = new Builder(genome, said);
        return new Design(
                genome.study.name(),
                builder.wing(),
                builder.tail(),
                builder.body(),
                builder.power(),
                builder.undercarriage(),
                builder.controls(),
                builder.board(),
                builder.layout.covering(),
                new Radio(
                        genome.parts.receivers.get(builder.part(PartGenes.Kind.RECEIVER)),
                        genome.parts.servos.get(builder.part(PartGenes.Kind.SERVO))),
                builder.loads());
    }

    /**
     * Whether a wing bends along its span and has a piece cut out; where not, the places of either do not matter.
     */
    record Bent(boolean bends, boolean isCut) {}

    static Bent bent(Genome genome, Expression said) {
        Builder builder = new Builder(genome, said);
        boolean flat = builder.layout.wing() == WingKind.DELTA;
        return new Bent(
                !flat && builder.of(DesignVariable.OUTER_DIHEDRAL) != builder.of(DesignVariable.DIHEDRAL),
                !flat && builder.of(DesignVariable.CUT_OUT_DEPTH) > 0);
    }

    private double of(DesignVariable variable) {
        return dimension[variable.ordinal()];
    }

    private Board board() {
        return genome.parts.boards.get(part(PartGenes.Kind.BOARD));
    }

    private int part(PartGenes.Kind kind) {
        return said.parts()[kind.ordinal()];
    }

    private Wing wing() {
        double incidence = of(DesignVariable.INCIDENCE);
        boolean flat = layout.wing() == WingKind.DELTA;
        WingShape shape = new WingShape(
                of(DesignVariable.ROOT_CHORD),
                of(DesignVariable.TAPER),
                of(DesignVariable.SWEEP),
                flat ? 0 : of(DesignVariable.DIHEDRAL),
                of(DesignVariable.BEND_POSITION),
                flat ? 0 : of(DesignVariable.OUTER_DIHEDRAL),
                flat ? 0 : of(DesignVariable.CUT_OUT_DEPTH),
                of(DesignVariable.CUT_OUT_BREADTH));
        double tipIncidence = flat ? incidence : incidence - of(DesignVariable.WASHOUT);
        Planform planform = shape.planform(of(DesignVariable.SPAN), incidence, tipIncidence);
        WingBuild build = new WingBuild(section(), layout.joint(), spar(), layout.holdDown(), layout.tips());
        double x =
                wingX(of(DesignVariable.WING_POSITION), of(DesignVariable.BODY_LENGTH), genome.dimensions.increment());
        double z = WorkshopRules.wingZ(height, of(DesignVariable.BODY_HEIGHT));
        return switch (layout.wing()) {
            case MONOPLANE -> new Wing.Monoplane(height, planform, build, x, z);
            case BIPLANE ->
                new Wing.Biplane(
                        planform,
                        build,
                        x,
                        WorkshopRules.wingZ(WingHeight.LOW, of(DesignVariable.BODY_HEIGHT)),
                        of(DesignVariable.GAP),
                        of(DesignVariable.STAGGER));
            case FLYING_WING -> new Wing.FlyingWing(planform, build, x, z);
            case DELTA ->
                new Wing.Delta(planform, build, x, WorkshopRules.deltaZ(layout.body(), of(DesignVariable.BODY_HEIGHT)));
        };
    }

    /** Of the root's leading edge, m from the nose, snapped. */
    static double wingX(double position, double bodyLength, double increment) {
        return Grid.snap(position * bodyLength, increment);
    }

    private WingSection section() {
        return switch (layout.section()) {
            case FLAT_PLATE -> new WingSection.FlatPlate();
            case STEPPED_PLATE -> new WingSection.SteppedPlate(of(DesignVariable.SECTION_STEP));
            case CURVED_PLATE -> new WingSection.CurvedPlate(of(DesignVariable.SECTION_CAMBER));
            case FOLDED_FLAT_BOTTOM -> new WingSection.FoldedFlatBottom(of(DesignVariable.SECTION_THICKNESS));
            case FOLDED_SYMMETRICAL -> new WingSection.FoldedSymmetrical(of(DesignVariable.SECTION_THICKNESS));
        };
    }

    private WingSpar spar() {
        return layout.spar() == SparKind.STOCK
                ? new WingSpar.Stock(genome.parts.spars.get(part(PartGenes.Kind.SPAR)))
                : new WingSpar.BoardStrip();
    }

    private Tail tail() {
        double chord = of(DesignVariable.TAIL_CHORD);
        Fin fin = new Fin(
                layout.tail() == TailKind.NONE ? WorkshopRules.TAILLESS_FINS : 1,
                of(DesignVariable.FIN_HEIGHT),
                finChord(),
                WorkshopRules.FIN_TAPER,
                layout.finJoint());
        TailPlane plane = new TailPlane(
                of(DesignVariable.TAIL_SPAN),
                chord,
                1,
                0,
                layout.tail() == TailKind.V_TAIL ? of(DesignVariable.TAIL_CANT) : 0,
                of(DesignVariable.TAIL_INCIDENCE),
                WorkshopRules.tailX(of(DesignVariable.BODY_LENGTH), chord),
                WorkshopRules.tailZ(layout.tail(), layout.body(), body().tailHeight(), of(DesignVariable.FIN_HEIGHT)));
        if (layout.tail() == TailKind.CONVENTIONAL) {
            return new Tail.Conventional(plane, fin);
        }
        if (layout.tail() == TailKind.T_TAIL) {
            return new Tail.TTail(plane, fin);
        }
        if (layout.tail() == TailKind.V_TAIL) {
            return new Tail.VTail(plane);
        }
        return new Tail.None(fin);
    }

    /** No deeper at its foot than the tip that is folded up. */
    private double finChord() {
        double chord = of(DesignVariable.FIN_CHORD);
        return layout.wing() == WingKind.DELTA
                ? Math.min(chord, of(DesignVariable.TAPER) * of(DesignVariable.ROOT_CHORD))
                : chord;
    }

    private Body body() {
        double length = of(DesignVariable.BODY_LENGTH);
        double width = of(DesignVariable.BODY_WIDTH);
        double tall = of(DesignVariable.BODY_HEIGHT);
        return switch (layout.body()) {
            case SQUARE_TUBE -> new Body.SquareTube(length, width, tall, layout.nose());
            case TWO_BAY_TUBE -> new Body.TwoBayTube(length, width, tall, layout.nose());
            case PROFILE_BOARD -> new Body.ProfileBoard(length, board().thickness(), tall, layout.nose());
            case POD_AND_BOOM ->
                new Body.PodAndBoom(
                        length,
                        width,
                        tall,
                        layout.nose(),
                        of(DesignVariable.POD_LENGTH),
                        genome.parts.booms.get(part(PartGenes.Kind.BOOM)));
            case BOAT_HULL ->
                new Body.BoatHull(
                        length,
                        width,
                        tall,
                        layout.nose(),
                        of(DesignVariable.STEP_POSITION),
                        of(DesignVariable.DEADRISE));
            default -> throw unsupported(layout.body().words());
        };
    }

    private Power power() {
        if (layout.power() == PowerKind.NONE) {
            return new Power.Unpowered(genome.parts.receiverBatteries.get(part(PartGenes.Kind.RECEIVER_BATTERY)));
        }
        Battery battery = genome.parts.batteries.get(part(PartGenes.Kind.BATTERY));
        Controller controller = genome.parts.controllers.get(part(PartGenes.Kind.CONTROLLER));
        if (layout.power() == PowerKind.DUCTED_FAN) {
            return new Power.DuctedFan(genome.parts.fans.get(part(PartGenes.Kind.FAN)), battery, controller);
        }
        PowerPlant plant = new PowerPlant(
                genome.parts.motors.get(part(PartGenes.Kind.MOTOR)),
                genome.parts.propellers.get(part(PartGenes.Kind.PROPELLER)),
                battery,
                controller);
        return switch (layout.power()) {
            case NOSE_TRACTOR -> new Power.NoseTractor(plant);
            case PUSHER -> new Power.Pusher(plant);
            case TWIN_TRACTOR, COUNTER_TWIN ->
                new Power.TwinTractor(
                        plant,
                        Grid.snap(
                                WorkshopRules.motorStation(plant.propeller(), body().width()),
                                genome.dimensions.increment()),
                        layout.power() == PowerKind.COUNTER_TWIN);
            default -> throw unsupported(layout.power().words());
        };
    }

    private Undercarriage undercarriage() {
        return switch (layout.undercarriage()) {
            case NONE -> new Undercarriage.None();
            case TAIL_WHEEL -> new Undercarriage.TailWheel(wheel());
            case TRICYCLE -> new Undercarriage.Tricycle(wheel());
            case FLOATS ->
                new Undercarriage.Floats(
                        of(DesignVariable.FLOAT_LENGTH), of(DesignVariable.FLOAT_BEAM), of(DesignVariable.DEADRISE));
            case AMPHIBIAN -> new Undercarriage.Amphibian(wheel());
        };
    }

    private Wheel wheel() {
        return genome.parts.wheels.get(part(PartGenes.Kind.WHEEL));
    }

    private Controls controls() {
        return new Controls(
                Kinds.hasAilerons(layout.controls()),
                layout.controls() != ControlLayout.ELEVONS,
                layout.flaps(),
                layout.flaps() == FlapKind.FLAPS
                        ? Math.min(of(DesignVariable.AILERON_SPAN), Controls.MOST_AILERON_BESIDE_FLAPS)
                        : of(DesignVariable.AILERON_SPAN),
                of(DesignVariable.AILERON_CHORD),
                of(DesignVariable.ELEVATOR_CHORD),
                of(DesignVariable.RUDDER_CHORD),
                of(DesignVariable.FLAP_SPAN),
                of(DesignVariable.FLAP_CHORD));
    }

    private List<Load> loads() {
        List<Load> loads = new ArrayList<>(said.loads().length);
        for (int i = 0; i < said.loads().length; i++) {
            Load load = genome.study.payload().get(i).at(genome.masses.get(i).value(said.loads()[i]));
            if (load != null) {
                loads.add(load);
            }
        }
        return loads;
    }

    /** The layout table lets none of these through. */
    private static IllegalArgumentException unsupported(String kind) {
        return new IllegalArgumentException(kind + " is not computed yet");
    }
}
