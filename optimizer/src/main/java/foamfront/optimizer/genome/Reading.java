package foamfront.optimizer.genome;

import foamfront.model.design.Arrangement;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.Drive;
import foamfront.model.design.Fin;
import foamfront.model.design.Load;
import foamfront.model.design.Planform;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Tail;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingShape;
import foamfront.model.design.WingSpar;
import foamfront.model.parts.Part;
import foamfront.optimizer.genome.LayoutGenes.Digit;
import foamfront.optimizer.study.WingChoice;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads a design back into whole numbers: the nearest grid step of each dimension, the place of each part in its list. */
final class Reading {
    private Reading() {}

    static Expression of(Genome genome, Design design) {
        Arrangement layout = Arrangement.of(design);
        int[] digits = new int[Digit.values().length];
        for (Digit digit : Digit.values()) {
            digits[digit.ordinal()] = Math.max(0, genome.layouts.options(digit).indexOf(choice(layout, digit)));
        }
        int[] parts = new int[PartGenes.Kind.values().length];
        for (PartGenes.Kind kind : PartGenes.Kind.values()) {
            parts[kind.ordinal()] = place(genome.parts.list(kind), part(design, kind));
        }
        int[] steps = new int[DesignVariable.values().length];
        for (DesignVariable dimension : DesignVariable.values()) {
            Grid grid = genome.dimensions.grid(dimension);
            steps[dimension.ordinal()] = grid == null ? 0 : grid.indexOf(dimension(design, dimension));
        }
        int[] loads = new int[genome.masses.size()];
        for (int i = 0; i < loads.length; i++) {
            loads[i] = genome.masses
                    .get(i)
                    .indexOf(mass(design, genome.study.payload().get(i).name()));
        }
        return new Expression(digits, parts, steps, loads);
    }

    private static Object choice(Arrangement layout, Digit digit) {
        return switch (digit) {
            case WING -> wing(layout);
            case TAIL -> layout.tail();
            case POWER -> layout.power();
            case BODY -> layout.body();
            case UNDERCARRIAGE -> layout.undercarriage();
            case CONTROLS -> layout.controls();
            case SECTION -> layout.section();
            case JOINT -> layout.joint();
            case SPAR -> layout.spar();
            case HOLD_DOWN -> layout.holdDown();
            case COVERING -> layout.covering();
            case TIPS -> layout.tips();
            case NOSE -> layout.nose();
            case FIN_JOINT -> layout.finJoint();
        };
    }

    static WingChoice wing(Arrangement layout) {
        WingHeight height = layout.height();
        return new WingChoice(layout.wing(), height == null ? WingHeight.HIGH : height);
    }

    private static double mass(Design design, String name) {
        for (Load load : design.loads()) {
            if (load.name().equals(name)) {
                return load.mass();
            }
        }
        return 0;
    }

    private static int place(List<? extends Part> list, @Nullable Part part) {
        for (int i = 0; part != null && i < list.size(); i++) {
            if (list.get(i).name().equals(part.name())) {
                return i;
            }
        }
        return 0;
    }

    static @Nullable Part part(Design design, PartGenes.Kind kind) {
        Drive drive = design.power().drive();
        return switch (kind) {
            case BOARD -> design.board();
            case MOTOR -> drive instanceof PowerPlant plant ? plant.motor() : null;
            case PROPELLER -> drive instanceof PowerPlant plant ? plant.propeller() : null;
            case FAN -> drive instanceof Power.DuctedFan ducted ? ducted.fan() : null;
            case BATTERY -> drive == null ? null : drive.battery();
            case RECEIVER_BATTERY -> drive == null ? design.power().battery() : null;
            case CONTROLLER -> drive == null ? null : drive.controller();
            case SPAR -> design.wing().build().spar() instanceof WingSpar.Stock stock ? stock.spar() : null;
            case WHEEL -> design.undercarriage().wheel();
            case SERVO -> design.radio().servo();
            case RECEIVER -> design.radio().receiver();
            case BOOM -> design.body() instanceof Body.PodAndBoom pod ? pod.boom() : null;
        };
    }

    static double dimension(Design design, DesignVariable dimension) {
        Planform wing = design.wing().planform();
        WingShape shape = WingShape.of(wing);
        TailPlane plane = plane(design);
        Fin fin = fin(design);
        return switch (dimension) {
            case SPAN -> wing.span();
            case ROOT_CHORD -> shape.rootChord();
            case TAPER -> shape.taper();
            case SWEEP -> shape.sweep();
            case DIHEDRAL -> shape.dihedral();
            case OUTER_DIHEDRAL -> shape.outerDihedral();
            case BEND_POSITION -> stated(shape.bend(), dimension);
            case CUT_OUT_DEPTH -> shape.cutOutDepth();
            case CUT_OUT_BREADTH -> stated(shape.cutOutBreadth(), dimension);
            case WASHOUT -> wing.incidence() - wing.tipIncidence();
            case INCIDENCE -> wing.incidence();
            case SECTION_THICKNESS -> thickness(design.wing().build().section());
            case SECTION_CAMBER ->
                design.wing().build().section() instanceof WingSection.CurvedPlate plate ? plate.camber() : 0;
            case SECTION_STEP ->
                design.wing().build().section() instanceof WingSection.SteppedPlate plate ? plate.step() : 0;
            case GAP -> design.wing() instanceof Wing.Biplane two ? two.gap() : 0;
            case STAGGER -> design.wing() instanceof Wing.Biplane two ? two.stagger() : 0;
            case WING_POSITION -> design.wing().x() / design.body().length();
            case TAIL_SPAN -> plane == null ? 0 : plane.span();
            case TAIL_CHORD -> plane == null ? 0 : plane.chord();
            case TAIL_INCIDENCE -> plane == null ? 0 : plane.incidence();
            case TAIL_CANT -> plane == null ? 0 : plane.dihedral();
            case FIN_HEIGHT -> fin == null ? 0 : fin.height();
            case FIN_CHORD -> fin == null ? 0 : fin.chord();
            case BODY_LENGTH -> design.body().length();
            case POD_LENGTH -> design.body() instanceof Body.PodAndBoom pod ? pod.podLength() : 0;
            case BODY_WIDTH -> design.body().width();
            case BODY_HEIGHT -> design.body().height();
            case STEP_POSITION -> design.body() instanceof Body.BoatHull hull ? hull.step() : 0;
            case DEADRISE -> deadrise(design);
            case FLOAT_LENGTH -> design.undercarriage() instanceof Undercarriage.Floats floats ? floats.length() : 0;
            case FLOAT_BEAM -> design.undercarriage() instanceof Undercarriage.Floats floats ? floats.beam() : 0;
            case AILERON_SPAN -> design.controls().aileronSpan();
            case AILERON_CHORD -> design.controls().aileronChord();
            case FLAP_SPAN -> design.controls().flapSpan();
            case FLAP_CHORD -> design.controls().flapChord();
            case ELEVATOR_CHORD -> design.controls().elevatorChord();
            case RUDDER_CHORD -> design.controls().rudderChord();
        };
    }

    /** Where nothing bends or is cut, the least that can be chosen. */
    private static double stated(double value, DesignVariable dimension) {
        return Double.isNaN(value) ? dimension.workshop().low() : value;
    }

    private static double deadrise(Design design) {
        if (design.undercarriage() instanceof Undercarriage.Floats floats) {
            return floats.deadrise();
        }
        return design.body() instanceof Body.BoatHull hull ? hull.deadrise() : 0;
    }

    private static double thickness(WingSection section) {
        if (section instanceof WingSection.FoldedFlatBottom fold) {
            return fold.thickness();
        }
        return section instanceof WingSection.FoldedSymmetrical fold ? fold.thickness() : 0;
    }

    private static @Nullable TailPlane plane(Design design) {
        if (design.tail() instanceof Tail.Conventional tail) {
            return tail.plane();
        }
        if (design.tail() instanceof Tail.TTail tail) {
            return tail.plane();
        }
        return design.tail() instanceof Tail.VTail tail ? tail.plane() : null;
    }

    private static @Nullable Fin fin(Design design) {
        if (design.tail() instanceof Tail.Conventional tail) {
            return tail.fin();
        }
        if (design.tail() instanceof Tail.TTail tail) {
            return tail.fin();
        }
        return design.tail() instanceof Tail.None none ? none.fin() : null;
    }
}
