package foamfront.model.fabrication;

import static foamfront.model.mass.Examples.BATTERY;
import static foamfront.model.mass.Examples.BODY;
import static foamfront.model.mass.Examples.CONTROLLER;
import static foamfront.model.mass.Examples.CURVES;
import static foamfront.model.mass.Examples.FAN;
import static foamfront.model.mass.Examples.MOTOR;
import static foamfront.model.mass.Examples.RADIO;
import static foamfront.model.mass.Examples.TAIL;
import static foamfront.model.mass.Examples.TUBE;
import static foamfront.model.mass.Examples.WHEEL;

import foamfront.model.design.Body;
import foamfront.model.design.Controls;
import foamfront.model.design.Covering;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FinJoint;
import foamfront.model.design.FlapKind;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Nose;
import foamfront.model.design.Planform;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Tail;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.design.WingTips;
import foamfront.model.mission.CarSpace;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Launch;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Owned;
import foamfront.model.mission.Site;
import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Board;
import foamfront.model.parts.Difficulty;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Workshop;
import foamfront.model.units.Currency;
import java.util.List;
import java.util.stream.Stream;

/**
 * Aeroplanes of many arrangements round the parts of {@link foamfront.model.mass.Examples}, invented for the tests of
 * this package.
 */
final class TestAeroplanes {
    private static final Provenance P = Provenance.INVENTED;

    static final Board BOARD =
            new Board("light 5 mm", 0.005, 0.2971, 0.762, 0.508, 0.00015, 3e9, 12.5e6, 8e6, 3e6, 1.5, P);

    static final Workshop WORKSHOP = new Workshop(
            new Currency("USD"),
            0.002,
            0.08,
            0.0043,
            10,
            0.8,
            1.5,
            0.4,
            0.5,
            3,
            2,
            3,
            600,
            400,
            900,
            300,
            60,
            300,
            0.05,
            new Difficulty(1, 1, 0.5, 10));

    static final CarSpace CAR = new CarSpace(1.1, 0.8, 0.5, false);

    private static final PowerPlant PLANT = new PowerPlant(
            MOTOR,
            new Propeller("8x4", BladeFamily.DIRECT_DRIVE, 0.203, 0.102, 2, 0.010, CURVES, 3, P),
            BATTERY,
            CONTROLLER);
    static final WingSection FOLDED = new WingSection.FoldedFlatBottom(0.12);
    private static final WingSpar STRIP = new WingSpar.BoardStrip();
    private static final WingSpar CARBON = new WingSpar.Stock(TUBE);

    private TestAeroplanes() {}

    static Stream<Design> all() {
        return Stream.of(
                trainer(1.2),
                slowFlyer(),
                beginner(),
                glider(),
                biplane(),
                flyingWing(),
                delta(),
                cargoTwin(),
                amphibian(),
                fanJet(),
                largeCarrier());
    }

    /** Tapered folded wing of board, pusher on a pylon, two-bay body. */
    static Design trainer(double span) {
        return of(
                "trainer",
                monoplane(span, 0.20, 0.75, 0.05, build(FOLDED, WingJoint.ONE_PIECE, STRIP, HoldDown.RUBBER_BANDS)),
                TAIL,
                new Body.TwoBayTube(0.96, 0.075, 0.10, Nose.REPLACEABLE),
                new Power.Pusher(PLANT),
                new Undercarriage.None(),
                true);
    }

    private static Design slowFlyer() {
        WingSection section = new WingSection.CurvedPlate(0.05);
        return of(
                "slow flyer",
                monoplane(1.0, 0.24, 1, 0.08, build(section, WingJoint.ONE_PIECE, CARBON, HoldDown.RUBBER_BANDS)),
                TAIL,
                new Body.ProfileBoard(0.9, 0.005, 0.09, Nose.FIXED),
                new Power.NoseTractor(PLANT),
                new Undercarriage.TailWheel(WHEEL),
                false);
    }

    /** Rectangular wing that comes whole out of one sheet. */
    private static Design beginner() {
        return of(
                "beginner",
                monoplane(0.75, 0.18, 1, 0, build(FOLDED, WingJoint.ONE_PIECE, STRIP, HoldDown.RUBBER_BANDS)),
                TAIL,
                BODY,
                new Power.NoseTractor(PLANT),
                new Undercarriage.Tricycle(WHEEL),
                true);
    }

    private static Design glider() {
        return of(
                "glider",
                monoplane(
                        2.0,
                        0.20,
                        0.7,
                        0.06,
                        build(
                                new WingSection.FoldedSymmetrical(0.11),
                                WingJoint.PLUG_IN,
                                CARBON,
                                HoldDown.RUBBER_BANDS)),
                new Tail.VTail(new TailPlane(0.5, 0.12, 0.7, 0.1, 0.6, 0, 0.95, 0.02)),
                new Body.PodAndBoom(1.1, 0.06, 0.07, Nose.FIXED, 0.45, TUBE),
                new Power.NoseTractor(PLANT),
                new Undercarriage.None(),
                true);
    }

    private static Design biplane() {
        WingSection section = new WingSection.SteppedPlate(0.4);
        return of(
                "biplane",
                new Wing.Biplane(
                        new Planform(0.85, 0.17, 1, 0, 0, 0.02, 0.02, List.of()),
                        build(section, WingJoint.ONE_PIECE, CARBON, HoldDown.GLUED),
                        0.2,
                        -0.03,
                        0.16,
                        0.03),
                TAIL,
                BODY,
                new Power.NoseTractor(PLANT),
                new Undercarriage.TailWheel(WHEEL),
                true);
    }

    private static Design flyingWing() {
        Planform plan = new Planform(1.2, 0.28, 0.6, 0.4, 0.02, 0, -0.05, List.of());
        return of(
                "flying wing",
                new Wing.FlyingWing(plan, build(FOLDED, WingJoint.PLUG_IN, CARBON, HoldDown.GLUED), 0.1, 0),
                new Tail.None(new Fin(2, 0.15, 0.16, 0.6, FinJoint.FIXED)),
                new Body.SquareTube(0.5, 0.08, 0.07, Nose.FIXED),
                new Power.Pusher(PLANT),
                new Undercarriage.None(),
                true);
    }

    private static Design delta() {
        WingSection section = new WingSection.FlatPlate();
        Planform plan = new Planform(0.5, 0.48, 0.3, 0.65, 0, 0, 0, List.of());
        return of(
                "delta",
                new Wing.Delta(plan, build(section, WingJoint.ONE_PIECE, STRIP, HoldDown.GLUED), 0.1, 0),
                new Tail.None(new Fin(2, 0.12, 0.14, 0.6, FinJoint.FIXED)),
                new Body.SquareTube(0.45, 0.07, 0.06, Nose.FIXED),
                new Power.Pusher(PLANT),
                new Undercarriage.None(),
                true);
    }

    /** Broken planform with flaps and chords too wide to fold from one sheet. */
    private static Design cargoTwin() {
        Planform plan = new Planform(1.4, 0.28, 0.7, 0, 0, 0.03, 0.01, List.of(new Planform.Break(0.5, 0.28, 0, 0.06)));
        Controls controls = new Controls(true, true, FlapKind.FLAPS, 0.45, 0.22, 0.35, 0.4);
        return new Design(
                "cargo twin",
                new Wing.Monoplane(
                        WingHeight.HIGH, plan, build(FOLDED, WingJoint.ONE_PIECE, STRIP, HoldDown.GLUED), 0.3, 0.05),
                TAIL,
                new Body.TwoBayTube(1.05, 0.14, 0.15, Nose.FIXED),
                new Power.TwinTractor(PLANT, 0.25, false),
                new Undercarriage.Tricycle(WHEEL),
                controls,
                BOARD,
                Covering.BOTH_FACES,
                RADIO,
                List.of());
    }

    private static Design amphibian() {
        return of(
                "amphibian",
                monoplane(1.2, 0.2, 0.9, 0.04, build(FOLDED, WingJoint.FOLDING, STRIP, HoldDown.RUBBER_BANDS)),
                new Tail.TTail(
                        new TailPlane(0.45, 0.13, 0.8, 0, 0, 0, 0.85, 0.2),
                        new Fin(1, 0.18, 0.16, 0.8, FinJoint.FIXED)),
                new Body.BoatHull(0.98, 0.10, 0.09, Nose.FIXED, 0.45, 0.26),
                new Power.Pusher(PLANT),
                new Undercarriage.Amphibian(WHEEL),
                true);
    }

    private static Design fanJet() {
        Planform plan = new Planform(0.8, 0.26, 0.5, 0.35, 0, 0, 0, List.of());
        WingSection section = new WingSection.FlatPlate();
        return of(
                "fan jet",
                new Wing.Monoplane(
                        WingHeight.SHOULDER, plan, build(section, WingJoint.ONE_PIECE, CARBON, HoldDown.GLUED), 0.3, 0),
                TAIL,
                new Body.SquareTube(0.95, 0.09, 0.09, Nose.FIXED),
                new Power.DuctedFan(FAN, BATTERY, CONTROLLER),
                new Undercarriage.None(),
                true);
    }

    /** Wing halves longer than a sheet, on floats. */
    private static Design largeCarrier() {
        WingBuild winglets = new WingBuild(FOLDED, WingJoint.PLUG_IN, CARBON, HoldDown.RUBBER_BANDS, WingTips.WINGLETS);
        return of(
                "large carrier",
                monoplane(2.2, 0.24, 0.8, 0.03, winglets),
                TAIL,
                new Body.TwoBayTube(1.3, 0.12, 0.14, Nose.FIXED),
                new Power.Pusher(PLANT),
                new Undercarriage.Floats(0.7, 0.09, 0.26),
                true);
    }

    static WingBuild build(WingSection section, WingJoint joint, WingSpar spar, HoldDown hold) {
        return new WingBuild(section, joint, spar, hold, WingTips.PLAIN);
    }

    static Wing monoplane(double span, double chord, double taper, double dihedral, WingBuild build) {
        return new Wing.Monoplane(
                WingHeight.HIGH,
                new Planform(span, chord, taper, 0, dihedral, 0.03, 0.01, List.of()),
                build,
                0.26,
                0.04);
    }

    private static Design of(
            String name, Wing wing, Tail tail, Body body, Power power, Undercarriage gear, boolean ailerons) {
        return new Design(
                name,
                wing,
                tail,
                body,
                power,
                gear,
                new Controls(ailerons, true, FlapKind.NONE, 0.5, 0.22, 0.35, 0.4),
                BOARD,
                Covering.TAPED_EDGES,
                RADIO,
                List.of());
    }

    static Mission mission(Owned... drawer) {
        Site site = new Site(0, 288.15, Ground.SHORT_GRASS, 60, 0, 4, 0, 4, 30, Launch.NORMAL);
        return new Mission(site, Limits.standing(), List.of(drawer), CAR, WORKSHOP);
    }
}
