package foamfront.model;

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
import foamfront.model.mission.CarSpace;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Launch;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Site;
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
import foamfront.model.parts.Workshop;
import foamfront.model.units.Currency;
import java.util.List;

/** One plain high-wing trainer with its parts, for tests; figures as in the catalogue of 2026. */
public final class Samples {
    private static final double DEGREE = Math.PI / 180;

    private Samples() {}

    public static Board board() {
        return new Board(
                "white 5 mm", 4.5e-3, 0.300, 0.762, 0.508, 0.14e-3, 3.2e9, 12.5e6, 8e6, 3e6, 1.5, Provenance.OPEN_DATA);
    }

    public static Spar spar() {
        return new Spar("tube 6/4", Spar.Shape.ROUND, 6e-3, 6e-3, 4e-3, 127e9, 600e6, 1500, 1, 6, Provenance.OPEN_DATA);
    }

    public static Motor motor() {
        return new Motor(
                "2212-1000",
                0.0533,
                27.5e-3,
                25e-3,
                1000 * Math.PI / 30,
                0.131,
                0.67,
                10,
                0,
                13.33,
                Provenance.REGRESSION);
    }

    /** A 64 mm fan with its motor of 3150 rpm/V, as in the catalogue. */
    public static Fan fan() {
        Motor motor = new Motor(
                "motor of 64 mm 3150",
                0.0533,
                24e-3,
                30e-3,
                3150 * Math.PI / 30,
                0.0261,
                2.11,
                10,
                426,
                0,
                Provenance.INVENTED);
        FanLaw law = new FanLaw(0.064, 0.026, 0.9, 0.8, 7.1, 550);
        return new Fan("64 mm 3150", law, 0.091, motor, 24, Provenance.INVENTED);
    }

    /** A measured 9x4.5 of the thin electric family. */
    public static Propeller propeller() {
        return new Propeller(
                "9x4.5 thin electric",
                BladeFamily.THIN_ELECTRIC,
                9 * 0.0254,
                4.5 * 0.0254,
                2,
                0.0122,
                new PropellerCurves(
                        new double[] {0.10142, -0.03377, -0.40590, 0.33032, 0, 0.01643, -0.01274},
                        new double[] {0.03918, 0.03247, -0.17217, 0.07797, 0, 0.00172, 0.00664},
                        2499 / 60.0,
                        6922 / 60.0,
                        0.672),
                2.7,
                Provenance.OPEN_DATA);
    }

    public static Battery battery() {
        return new Battery(
                "3S 1300", 3, 1300 * 3.6, 45, 0.107, 0.090, 0.030, 0.020, 9.2e-3, 25.71, Provenance.REGRESSION);
    }

    /** The smallest pack of the catalogue, which feeds the radio of a model without a motor. */
    public static Battery receiverBattery() {
        return new Battery(
                "2S 450", 2, 450 * 3.6, 60, 0.027, 0.063, 0.021, 0.011, 26.7e-3, 16.16, Provenance.REGRESSION);
    }

    public static Controller controller() {
        return new Controller("20 A", 20, 2, 0.021, 0.042, 0.024, 0.008, 8e-3, 11, Provenance.INVENTED);
    }

    public static PowerPlant plant() {
        return new PowerPlant(motor(), propeller(), battery(), controller());
    }

    public static Radio radio() {
        return new Radio(
                new Receiver("receiver 6ch", 6, 0.008, 0.06, 0.043, 0.023, 0.012, 15, Provenance.INVENTED),
                new Servo("servo 9 g", 0.0105, 0.17, 0.07, 0.023, 0.0125, 0.027, 7.5, Provenance.INVENTED));
    }

    public static Workshop workshop() {
        return new Workshop(
                new Currency("USD"),
                2.0e-3,
                0.07,
                4.3e-3,
                10,
                0.8,
                1.5,
                0.4,
                0.5,
                3,
                2,
                3,
                600,
                420,
                900,
                300,
                60,
                300,
                0.05,
                new Difficulty(1, 1, 0.5, 10));
    }

    /** A 1.2 m high-wing trainer with ailerons, thrown by hand. */
    public static Design trainer() {
        Planform plan = new Planform(1.2, 0.20, 0.9, 0, 3 * DEGREE, 2 * DEGREE, 1 * DEGREE, List.of());
        double x = 0.22;
        double height = 0.07;
        double length = 0.86;
        return new Design(
                "sample trainer",
                new Wing.Monoplane(
                        WingHeight.HIGH,
                        plan,
                        new WingBuild(
                                new WingSection.FoldedFlatBottom(0.11),
                                WingJoint.ONE_PIECE,
                                new WingSpar.Stock(spar()),
                                HoldDown.RUBBER_BANDS,
                                WingTips.PLAIN),
                        x,
                        0.5 * height),
                new Tail.Conventional(
                        new TailPlane(0.42, 0.13, 0.9, 0, 0, -1 * DEGREE, length - 0.13, 0.5 * height),
                        new Fin(1, 0.17, 0.14, 0.8, FinJoint.FIXED)),
                new Body.SquareTube(length, 0.07, height, Nose.FIXED),
                new Power.NoseTractor(plant()),
                new Undercarriage.None(),
                new Controls(true, true, FlapKind.NONE, 0.45, 0.25, 0.35, 0.4),
                board(),
                Covering.BARE,
                radio(),
                List.of(new Load("camera", 0.03, 0.03, 0.03, 0.025, Place.NOSE, false, 0, 0)));
    }

    public static Mission mission() {
        return new Mission(
                new Site(2, 288.15, Ground.SHORT_GRASS, 60, 2, 4, 0, 4, 30, Launch.NORMAL),
                Limits.standing(),
                List.of(),
                new CarSpace(1.6, 1.0, 0.8, false),
                workshop());
    }
}
