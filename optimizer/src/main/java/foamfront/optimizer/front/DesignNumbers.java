package foamfront.optimizer.front;

import foamfront.model.design.Body;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Planform;
import foamfront.model.design.Power;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingShape;
import foamfront.model.units.Unit;
import foamfront.optimizer.front.DesignColumns.Figure;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The dimensions of a design, in table order. */
final class DesignNumbers {
    static final List<Figure> ALL = List.of(
            wing("span", Unit.MILLIMETRE, Planform::span),
            wing("root chord", Unit.MILLIMETRE, Planform::rootChord),
            wing("taper", Unit.RATIO, Planform::taper),
            wing("sweep", Unit.DEGREE, Planform::sweep),
            wing("dihedral", Unit.DEGREE, Planform::dihedral),
            shape("outer dihedral", Unit.DEGREE, s -> Double.isNaN(s.bend()) ? Double.NaN : s.outerDihedral()),
            shape("bend position", Unit.RATIO, WingShape::bend),
            shape("cut-out depth", Unit.RATIO, s -> s.cutOutDepth() > 0 ? s.cutOutDepth() : Double.NaN),
            shape("cut-out breadth", Unit.RATIO, WingShape::cutOutBreadth),
            wing("incidence", Unit.DEGREE, Planform::incidence),
            wing("tip incidence", Unit.DEGREE, Planform::tipIncidence),
            new Figure("section thickness", Unit.PERCENT, DesignNumbers::sectionThickness),
            section("section camber", WingSection.CurvedPlate.class, WingSection.CurvedPlate::camber),
            section("section step", WingSection.SteppedPlate.class, WingSection.SteppedPlate::step),
            new Figure("wing x", Unit.MILLIMETRE, design -> design.wing().x()),
            new Figure("wing z", Unit.MILLIMETRE, design -> design.wing().z()),
            new Figure(
                    "gap",
                    Unit.MILLIMETRE,
                    design -> design.wing() instanceof Wing.Biplane two ? two.gap() : Double.NaN),
            new Figure(
                    "stagger",
                    Unit.MILLIMETRE,
                    design -> design.wing() instanceof Wing.Biplane two ? two.stagger() : Double.NaN),
            tail("tail span", Unit.MILLIMETRE, TailPlane::span),
            tail("tail chord", Unit.MILLIMETRE, TailPlane::chord),
            tail("tail taper", Unit.RATIO, TailPlane::taper),
            tail("tail sweep", Unit.DEGREE, TailPlane::sweep),
            tail("tail dihedral", Unit.DEGREE, TailPlane::dihedral),
            tail("tail incidence", Unit.DEGREE, TailPlane::incidence),
            tail("tail x", Unit.MILLIMETRE, TailPlane::x),
            tail("tail z", Unit.MILLIMETRE, TailPlane::z),
            fin("fin count", Unit.COUNT, Fin::count),
            fin("fin height", Unit.MILLIMETRE, Fin::height),
            fin("fin chord", Unit.MILLIMETRE, Fin::chord),
            fin("fin taper", Unit.RATIO, Fin::taper),
            new Figure("body length", Unit.MILLIMETRE, design -> design.body().length()),
            new Figure("body width", Unit.MILLIMETRE, design -> design.body().width()),
            new Figure("body height", Unit.MILLIMETRE, design -> design.body().height()),
            new Figure(
                    "pod length",
                    Unit.MILLIMETRE,
                    design -> design.body() instanceof Body.PodAndBoom pod ? pod.podLength() : Double.NaN),
            new Figure(
                    "hull step",
                    Unit.RATIO,
                    design -> design.body() instanceof Body.BoatHull hull ? hull.step() : Double.NaN),
            new Figure(
                    "motor station",
                    Unit.MILLIMETRE,
                    design -> design.power() instanceof Power.TwinTractor twin ? twin.y() : Double.NaN),
            new Figure(
                    "float length",
                    Unit.MILLIMETRE,
                    design -> design.undercarriage() instanceof Undercarriage.Floats floats
                            ? floats.length()
                            : Double.NaN),
            new Figure(
                    "float beam",
                    Unit.MILLIMETRE,
                    design ->
                            design.undercarriage() instanceof Undercarriage.Floats floats ? floats.beam() : Double.NaN),
            new Figure("deadrise", Unit.DEGREE, DesignNumbers::deadrise),
            new Figure("aileron span", Unit.RATIO, design -> design.controls().aileronSpan()),
            new Figure("aileron chord", Unit.RATIO, design -> design.controls().aileronChord()),
            new Figure("elevator chord", Unit.RATIO, design -> design.controls().elevatorChord()),
            new Figure("rudder chord", Unit.RATIO, design -> design.controls().rudderChord()),
            new Figure("flap span", Unit.RATIO, design -> flap(design, Controls::flapSpan)),
            new Figure("flap chord", Unit.RATIO, design -> flap(design, Controls::flapChord)));

    private DesignNumbers() {}

    private static double flap(Design design, ToDoubleFunction<Controls> of) {
        return design.controls().flaps() == FlapKind.FLAPS ? of.applyAsDouble(design.controls()) : Double.NaN;
    }

    private static double deadrise(Design design) {
        if (design.undercarriage() instanceof Undercarriage.Floats floats) {
            return floats.deadrise();
        }
        return design.body() instanceof Body.BoatHull hull ? hull.deadrise() : Double.NaN;
    }

    private static Figure wing(String words, Unit unit, ToDoubleFunction<Planform> of) {
        return new Figure(words, unit, design -> of.applyAsDouble(design.wing().planform()));
    }

    /** What only a wing with a bend or a cut-out has. */
    private static Figure shape(String words, Unit unit, ToDoubleFunction<WingShape> of) {
        return new Figure(
                words,
                unit,
                design -> of.applyAsDouble(WingShape.of(design.wing().planform())));
    }

    private static Figure tail(String words, Unit unit, ToDoubleFunction<TailPlane> of) {
        return new Figure(words, unit, design -> {
            TailPlane plane = DesignTexts.plane(design);
            return plane == null ? Double.NaN : of.applyAsDouble(plane);
        });
    }

    private static Figure fin(String words, Unit unit, ToDoubleFunction<Fin> of) {
        return new Figure(words, unit, design -> {
            Fin fin = DesignTexts.fin(design);
            return fin == null ? Double.NaN : of.applyAsDouble(fin);
        });
    }

    /** What only one kind of section has, as a share of the chord. */
    private static <S extends WingSection> Figure section(String words, Class<S> kind, ToDoubleFunction<S> of) {
        return new Figure(words, Unit.PERCENT, design -> {
            WingSection section = design.wing().build().section();
            return kind.isInstance(section) ? of.applyAsDouble(kind.cast(section)) : Double.NaN;
        });
    }

    /** Outside thickness of a folded section over the chord; a plate's is its boards'. */
    private static double sectionThickness(Design design) {
        WingSection section = design.wing().build().section();
        if (section instanceof WingSection.FoldedFlatBottom fold) {
            return fold.thickness();
        }
        return section instanceof WingSection.FoldedSymmetrical fold ? fold.thickness() : Double.NaN;
    }
}
