package foamfront.model.mass;

import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Body;
import foamfront.model.design.Controls;
import foamfront.model.design.Covering;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FinJoint;
import foamfront.model.design.FlapKind;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Load;
import foamfront.model.design.Nose;
import foamfront.model.design.Place;
import foamfront.model.design.Planform;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Radio;
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
import foamfront.model.fabrication.FlatPatterns;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Battery;
import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Board;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Difficulty;
import foamfront.model.parts.Fan;
import foamfront.model.parts.FanLaw;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;
import foamfront.model.parts.Workshop;
import foamfront.model.units.Currency;
import java.util.List;

/** A plausible trainer with its parts, and variations of it: plain figures to check by hand, invented for tests. */
public final class Examples {
    private static final Provenance P = Provenance.INVENTED;

    public static final Board BOARD =
            new Board("light 5 mm", 0.0048, 0.31, 0.762, 0.508, 0.00015, 3e9, 12.5e6, 8e6, 3e6, 1.5, P);

    public static final Spar TUBE =
            new Spar("tube 8/6", Spar.Shape.ROUND, 0.008, 0.008, 0.006, 127e9, 600e6, 1500, 1, 9, P);

    public static final Wheel WHEEL = new Wheel("60 mm", 0.06, 0.02, 0.018, 2, P);

    public static final Workshop WORKSHOP = new Workshop(
            new Currency("USD"),
            0.002,
            0.08,
            0.0076,
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

    /** A bead of glue as the workshop's catalogue has it, kg/m, and its section, m². */
    public static final double GLUE = 0.0043;

    public static final double BEAD = GLUE / 950;

    public static final Battery BATTERY = new Battery("3S 2200", 3, 7920, 30, 0.18, 0.105, 0.034, 0.024, 0.006, 18, P);

    public static final Motor MOTOR = new Motor("2212-920", 0.053, 0.028, 0.030, 96.3, 0.10, 0.5, 10, 0, 14, P);

    public static final Controller CONTROLLER = new Controller("20 A", 20, 2, 0.022, 0.045, 0.025, 0.010, 0.006, 10, P);

    public static final PropellerCurves CURVES = new PropellerCurves(
            new double[] {0.11, -0.05, -0.1, 0, 0, 0, 0}, new double[] {0.045, 0.02, -0.06, 0, 0, 0, 0}, 30, 120, 0.8);

    public static final PowerPlant PLANT = new PowerPlant(
            MOTOR,
            new Propeller("10x4.7", BladeFamily.SLOW_FLYER, 0.254, 0.119, 2, 0.013, CURVES, 3, P),
            BATTERY,
            CONTROLLER);

    public static final Fan FAN = new Fan("64 mm", new FanLaw(0.064, 0.026, 0.9, 0.8, 7.1, 600), 0.091, MOTOR, 25, P);

    public static final Radio RADIO = new Radio(
            new Receiver("six channels", 6, 0.008, 0.05, 0.045, 0.025, 0.014, 15, P),
            new Servo("9 g", 0.009, 0.17, 0.1, 0.023, 0.012, 0.028, 4, P));

    public static final Tail TAIL = new Tail.Conventional(
            new TailPlane(0.45, 0.14, 0.8, 0, 0, 0, 0.82, 0.02), new Fin(1, 0.16, 0.14, 0.6, FinJoint.FIXED));

    public static final Body BODY = new Body.SquareTube(0.96, 0.075, 0.08, Nose.FIXED);

    private Examples() {}

    /** Load of 200 g with its size, at a place. */
    public static Load load(Place place, boolean released) {
        return new Load("water", 0.2, 0.10, 0.05, 0.05, place, released, 0, 0);
    }

    /** The trainer with loads aboard. */
    public static Design trainer(Load... loads) {
        return design(
                1.2, new WingSection.FoldedFlatBottom(0.12), new WingSpar.BoardStrip(), WingJoint.ONE_PIECE, loads);
    }

    public static Design design(double span, WingSection section, WingSpar spar, WingJoint joint, Load... loads) {
        return new Design(
                "trainer",
                new Wing.Monoplane(
                        WingHeight.HIGH,
                        new Planform(span, 0.22, 0.8, 0, 0.05, 0.03, 0.01, List.of()),
                        new WingBuild(section, joint, spar, HoldDown.RUBBER_BANDS, WingTips.PLAIN),
                        0.26,
                        0.04),
                TAIL,
                BODY,
                new Power.NoseTractor(PLANT),
                new Undercarriage.TailWheel(WHEEL),
                new Controls(true, true, FlapKind.NONE, 0.5, 0.22, 0.35, 0.4),
                BOARD,
                Covering.TAPED_EDGES,
                RADIO,
                List.of(loads));
    }

    public static Design with(Design design, Body body) {
        return Records.with(design, "body", body);
    }

    public static Design with(Design design, Power power) {
        return Records.with(design, "power", power);
    }

    public static Design with(Design design, Undercarriage gear) {
        return Records.with(design, "undercarriage", gear);
    }

    public static Design with(Design design, Wing wing, Tail tail) {
        return Records.with(Records.with(design, "wing", wing), "tail", tail);
    }

    public static Design with(Design design, Controls controls) {
        return Records.with(design, "controls", controls);
    }

    public static MassBreakdown masses(Airframe airframe) {
        return MassBreakdown.of(airframe, FlatPatterns.of(airframe), WORKSHOP, Factors.NOMINAL);
    }
}
