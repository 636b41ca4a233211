package foamfront.model;

import foamfront.model.design.Body;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FinJoint;
import foamfront.model.design.FlapKind;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Nose;
import foamfront.model.design.Planform;
import foamfront.model.design.Power;
import foamfront.model.design.Tail;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;

/** The sample trainer in other arrangements, and designs at random near each of them. */
public final class Arrangements {
    private static final double DEGREE = Math.PI / 180;

    /** How far a random design's figures lie from its arrangement's. */
    private static final double SHARE = 0.12;

    private static final Map<String, Design> ALL = Collections.unmodifiableMap(made());
    /** Those with a motor: most laws of flight are about power. */
    private static final List<Design> LIST =
            ALL.values().stream().filter(design -> design.power().motors() > 0).toList();

    private Arrangements() {}

    /** Every arrangement by name, the trainer first. */
    public static Map<String, Design> all() {
        return ALL;
    }

    private static Map<String, Design> made() {
        Design trainer = Samples.trainer();
        Map<String, Design> all = new LinkedHashMap<>();
        all.put("trainer", trainer);
        all.put("tail wheel", Records.with(trainer, "undercarriage", new Undercarriage.TailWheel(wheel())));
        all.put("tricycle", Records.with(trainer, "undercarriage", new Undercarriage.Tricycle(wheel())));
        all.put("floats", Records.with(trainer, "undercarriage", new Undercarriage.Floats(0.6, 0.10, 0.26)));
        all.put("hull", hull(trainer));
        all.put("pusher", Records.with(trainer, "power", new Power.Pusher(Samples.plant())));
        all.put("countering twin", Records.with(trainer, "power", new Power.TwinTractor(Samples.plant(), 0.2, true)));
        all.put("twin", Records.with(trainer, "power", new Power.TwinTractor(Samples.plant(), 0.2, false)));
        all.put("fan", fan(trainer));
        all.put("glider", glider(trainer));
        all.put("biplane", biplane(trainer));
        all.put("V-tail", Records.with(trainer, "tail", new Tail.VTail(plane(trainer, 35 * DEGREE))));
        all.put("T-tail", Records.with(trainer, "tail", new Tail.TTail(plane(trainer, 0), fin())));
        all.put("flying wing", flyingWing(trainer));
        all.put("delta", delta(trainer));
        all.put("pod and boom", Records.with(trainer, "body", podAndBoom()));
        all.put("two bays", Records.with(trainer, "body", new Body.TwoBayTube(0.86, 0.07, 0.1, Nose.REPLACEABLE)));
        all.put("profile", Records.with(trainer, "body", new Body.ProfileBoard(0.86, 0.0045, 0.07, Nose.FIXED)));
        all.put("stepped plate", section(trainer, new WingSection.SteppedPlate(0.5)));
        all.put("curved plate", section(trainer, new WingSection.CurvedPlate(0.06)));
        all.put("symmetrical", section(trainer, new WingSection.FoldedSymmetrical(0.12)));
        all.put("plugged in", Records.with(trainer, "wing.build.joint", WingJoint.PLUG_IN));
        Design banded = Records.with(trainer, "wing.build.holdDown", HoldDown.RUBBER_BANDS);
        Design strip = Records.with(banded, "wing.build.spar", new WingSpar.BoardStrip());
        all.put("folding wing", Records.with(strip, "wing.build.joint", WingJoint.FOLDING));
        all.put("folding fin", Records.with(trainer, "tail.fin.joint", FinJoint.FOLDING));
        all.put("broken wing", Records.with(trainer, "wing.planform", broken()));
        all.put("flaps", flapped(Objects.requireNonNull(all.get("tail wheel")), FlapKind.FLAPS));
        all.put("flaperons", flapped(trainer, FlapKind.FLAPERONS));
        return all;
    }

    private static Design flapped(Design design, FlapKind kind) {
        return Records.with(design, "controls", new Controls(true, true, kind, 0.45, 0.25, 0.35, 0.4, 0.4, 0.25));
    }

    /** A hull on its pusher's step. */
    private static Design hull(Design trainer) {
        Design hull = Records.with(trainer, "power", new Power.Pusher(Samples.plant()));
        hull = Records.with(hull, "body", new Body.BoatHull(0.9, 0.11, 0.10, Nose.FIXED, 0.40, 0.26));
        return Records.with(hull, "undercarriage", new Undercarriage.Amphibian(wheel()));
    }

    /** Without a motor, on the smallest pack; a longer nose balances it. */
    private static Design glider(Design trainer) {
        return Records.with(trainer, "power", new Power.Unpowered(Samples.receiverBattery()));
    }

    /** A shoulder-high body round a 64 mm fan on 3 cells. */
    private static Design fan(Design trainer) {
        Power power = new Power.DuctedFan(
                Samples.fan(), Samples.plant().battery(), Samples.plant().controller());
        return Records.with(
                Records.with(trainer, "power", power), "body", new Body.SquareTube(0.9, 0.084, 0.084, Nose.FIXED));
    }

    public static Design of(String name) {
        return Objects.requireNonNull(all().get(name));
    }

    /** A design with a motor at random, its arrangement in turn. */
    public static Design near(long seed) {
        return near(LIST.get((int) (seed % LIST.size())), seed);
    }

    /** A design at random near another. */
    public static Design near(Design design, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Design shaken = Records.shaken(design, SHARE, random);
        // A sheet longer than wide, a tube wider than its bore: parts stay as they are sold.
        return Records.with(
                Records.with(Records.with(shaken, "board", Samples.board()), "power", design.power()),
                "name",
                "r" + seed);
    }

    public static Wheel wheel() {
        return new Wheel("wheel 60", 0.06, 0.018, 0.008, 3, Provenance.INVENTED);
    }

    private static Design section(Design trainer, WingSection section) {
        return Records.with(
                Records.with(trainer, "wing.build.section", section), "wing.build.spar", new WingSpar.BoardStrip());
    }

    private static Design biplane(Design trainer) {
        Planform plan = new Planform(0.95, 0.16, 1, 0, 3 * DEGREE, 2 * DEGREE, 2 * DEGREE, List.of());
        return Records.with(
                trainer, "wing", new Wing.Biplane(plan, trainer.wing().build(), 0.22, -0.03, 0.16, 0.03));
    }

    /** Swept and washed out enough to fly with its elevons near neutral. */
    private static Design flyingWing(Design trainer) {
        Planform plan = new Planform(1.08, 0.265, 0.9, 21 * DEGREE, 3 * DEGREE, 0, -6.5 * DEGREE, List.of());
        Design glued = Records.with(trainer, "wing.build.holdDown", HoldDown.GLUED);
        Design thin = Records.with(glued, "wing.build.section", new WingSection.FoldedFlatBottom(0.08));
        Design tailless =
                Records.with(thin, "wing", new Wing.FlyingWing(plan, thin.wing().build(), 0.07, 0.035));
        Design short_ = Records.with(tailless, "body", new Body.SquareTube(0.51, 0.07, 0.07, Nose.FIXED));
        Design elevons =
                Records.with(short_, "controls", new Controls(true, false, FlapKind.NONE, 0.75, 0.19, 0.35, 0.4));
        return Records.with(elevons, "tail", new Tail.None(new Fin(2, 0.23, 0.175, 0.8, FinJoint.FIXED)));
    }

    /** A profile board in front, two fins folded up at the tips. */
    private static Design delta(Design trainer) {
        Planform plan = new Planform(0.54, 0.46, 0.25, StrictMath.atan2(0.75 * 0.345, 0.27), 0, 0, 0, List.of());
        Design flat = section(trainer, new WingSection.FlatPlate());
        Design glued = Records.with(flat, "wing.build.holdDown", HoldDown.GLUED);
        Design delta =
                Records.with(glued, "wing", new Wing.Delta(plan, glued.wing().build(), 0.16, 0.02));
        Design body = Records.with(delta, "body", new Body.ProfileBoard(0.66, 0.0045, 0.07, Nose.FIXED));
        Design elevons =
                Records.with(body, "controls", new Controls(true, false, FlapKind.NONE, 0.75, 0.15, 0.35, 0.4));
        return Records.with(elevons, "tail", new Tail.None(new Fin(2, 0.09, 0.10, 0.7, FinJoint.FIXED)));
    }

    private static Planform broken() {
        return new Planform(
                1.2,
                0.20,
                0.7,
                0,
                1 * DEGREE,
                2 * DEGREE,
                1 * DEGREE,
                List.of(new Planform.Break(0.6, 0.19, 3 * DEGREE, 8 * DEGREE)));
    }

    private static Body podAndBoom() {
        Spar boom = new Spar(
                "tube 10/8", Spar.Shape.ROUND, 10e-3, 10e-3, 8e-3, 127e9, 600e6, 1500, 1, 9, Provenance.OPEN_DATA);
        return new Body.PodAndBoom(0.86, 0.07, 0.07, Nose.FIXED, 0.42, boom);
    }

    private static TailPlane plane(Design trainer, double dihedral) {
        TailPlane plane = ((Tail.Conventional) trainer.tail()).plane();
        return Records.with(plane, "dihedral", dihedral);
    }

    private static Fin fin() {
        return ((Tail.Conventional) Samples.trainer().tail()).fin();
    }
}
