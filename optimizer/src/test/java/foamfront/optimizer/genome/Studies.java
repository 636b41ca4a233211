package foamfront.optimizer.genome;

import foamfront.model.design.BodyKind;
import foamfront.model.design.ControlLayout;
import foamfront.model.design.Covering;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.FinJoint;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Nose;
import foamfront.model.design.Place;
import foamfront.model.design.PowerKind;
import foamfront.model.design.SectionKind;
import foamfront.model.design.SparKind;
import foamfront.model.design.TailKind;
import foamfront.model.design.UndercarriageKind;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingKind;
import foamfront.model.design.WingTips;
import foamfront.model.mission.CarSpace;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Launch;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Site;
import foamfront.model.parts.Battery;
import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Board;
import foamfront.model.parts.Controller;
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
import foamfront.model.units.Currency;
import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.model.units.Range;
import foamfront.optimizer.study.Aim;
import foamfront.optimizer.study.Arrangements;
import foamfront.optimizer.study.PayloadItem;
import foamfront.optimizer.study.SearchSettings;
import foamfront.optimizer.study.ShowIn;
import foamfront.optimizer.study.Stock;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.WingChoice;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Small studies made in code; parts are invented. */
public final class Studies {
    private static final Provenance INVENTED = Provenance.INVENTED;

    private Studies() {}

    /** Every kind the model computes, several dimensions and a searched load. */
    public static Study wide() {
        return study("wide study", "5 mm", "900 mm to 1300 mm", "150 mm to 250 mm");
    }

    /** The same with wings that bend along their span and have their centre cut out. */
    public static Study bent() {
        Study wide = wide();
        Map<DesignVariable, Range> vary = new EnumMap<>(DesignVariable.class);
        vary.putAll(wide.vary());
        vary.put(DesignVariable.OUTER_DIHEDRAL, Quantities.range("-5 deg to 20 deg", Dimension.ANGLE));
        vary.put(DesignVariable.BEND_POSITION, new Range(0.2, 0.7));
        vary.put(DesignVariable.CUT_OUT_DEPTH, new Range(0, 0.4));
        vary.put(DesignVariable.CUT_OUT_BREADTH, new Range(0.1, 0.4));
        vary.put(DesignVariable.SWEEP, Quantities.range("-5 deg to 25 deg", Dimension.ANGLE));
        return new Study(
                "bent wings",
                wide.about(),
                wide.currency(),
                wide.site(),
                wide.payload(),
                wide.carSpace(),
                wide.arrangements(),
                vary,
                wide.fixed(),
                wide.stock(),
                wide.drawer(),
                wide.limits(),
                wide.aims(),
                wide.prefer(),
                wide.showIn(),
                wide.increment(),
                wide.search(),
                null,
                null,
                "01");
    }

    /** The same ranges of span and chord as any text that {@link Quantities} reads. */
    public static Study study(String name, String increment, String span, String chord) {
        return new Study(
                name,
                "",
                new Currency("USD"),
                new Site(2, 288.15, Ground.SHORT_GRASS, 40, 0, 4, 0, 4, 30, Launch.NORMAL),
                List.of(
                        new PayloadItem(
                                "seed bags",
                                new Range(0, 0.6),
                                400,
                                Double.NaN,
                                0.06,
                                0.06,
                                Place.BALANCE_POINT,
                                true,
                                0,
                                0,
                                0),
                        new PayloadItem(
                                "camera",
                                new Range(0.03, 0.03),
                                Double.NaN,
                                0.03,
                                0.03,
                                0.025,
                                Place.NOSE,
                                false,
                                0,
                                2,
                                0)),
                new CarSpace(1, 0.5, 0.4, false),
                arrangements(),
                Map.ofEntries(
                        Map.entry(DesignVariable.SPAN, Quantities.range(span, Dimension.LENGTH)),
                        Map.entry(DesignVariable.ROOT_CHORD, Quantities.range(chord, Dimension.LENGTH)),
                        Map.entry(DesignVariable.BODY_LENGTH, new Range(0.7, 1.1)),
                        Map.entry(DesignVariable.WING_POSITION, new Range(0.2, 0.35)),
                        Map.entry(DesignVariable.DIHEDRAL, Quantities.range("0 deg to 8 deg", Dimension.ANGLE)),
                        Map.entry(DesignVariable.SECTION_THICKNESS, new Range(0.08, 0.14)),
                        Map.entry(DesignVariable.SECTION_CAMBER, new Range(0.02, 0.08)),
                        Map.entry(DesignVariable.SECTION_STEP, new Range(0.4, 0.6)),
                        Map.entry(DesignVariable.AILERON_CHORD, new Range(0.15, 0.3)),
                        Map.entry(DesignVariable.TAIL_CANT, Quantities.range("30 deg to 45 deg", Dimension.ANGLE)),
                        Map.entry(DesignVariable.GAP, new Range(0.15, 0.25)),
                        Map.entry(DesignVariable.TAIL_SPAN, new Range(0.3, 0.5))),
                Map.of(DesignVariable.TAPER, 0.8),
                stock(),
                List.of(),
                List.of(),
                List.of(
                        new Aim(Measure.PAYLOAD, true),
                        new Aim(Measure.ENDURANCE, true),
                        new Aim(Measure.BUILD_COST, false)),
                List.of(),
                ShowIn.METRIC,
                Quantities.parse(increment, Dimension.LENGTH),
                new SearchSettings(1000, 7, 100),
                null,
                null,
                "00");
    }

    private static Arrangements arrangements() {
        return new Arrangements(
                List.of(
                        new WingChoice(WingKind.MONOPLANE, WingHeight.HIGH),
                        new WingChoice(WingKind.MONOPLANE, WingHeight.SHOULDER),
                        new WingChoice(WingKind.MONOPLANE, WingHeight.LOW),
                        new WingChoice(WingKind.BIPLANE, WingHeight.HIGH),
                        new WingChoice(WingKind.FLYING_WING, WingHeight.HIGH)),
                List.of(TailKind.CONVENTIONAL, TailKind.T_TAIL, TailKind.V_TAIL, TailKind.NONE),
                List.of(BodyKind.SQUARE_TUBE, BodyKind.TWO_BAY_TUBE),
                List.of(PowerKind.values()),
                List.of(UndercarriageKind.NONE, UndercarriageKind.TAIL_WHEEL, UndercarriageKind.TRICYCLE),
                List.of(Covering.BARE, Covering.BOTH_FACES),
                List.of(WingTips.values()),
                List.of(SectionKind.values()),
                List.of(WingJoint.values()),
                List.of(SparKind.BOARD_STRIP, SparKind.STOCK),
                List.of(HoldDown.GLUED, HoldDown.RUBBER_BANDS),
                List.of(ControlLayout.RUDDER_ELEVATOR, ControlLayout.AILERONS, ControlLayout.ELEVONS),
                List.of(Nose.values()),
                List.of(FinJoint.values()));
    }

    private static Stock stock() {
        return new Stock(
                List.of(board("white 5 mm", 0.005, 0.35), board("brown 3 mm", 0.003, 0.25)),
                List.of(spar("tube 8/6", 0.008), spar("tube 6/4", 0.006)),
                List.of(motor("2212-920", 0.06, 920), motor("2216-1100", 0.075, 1100), motor("2205-1500", 0.03, 1500)),
                List.of(propeller("10x4.5", 10, 4.5), propeller("9x5", 9, 5), propeller("8x4", 8, 4)),
                List.of(fan("64 mm", 0.064, 7), fan("50 mm", 0.05, 4)),
                List.of(
                        battery("3S 2200", 3, 2.2, 0.18),
                        battery("2S 1300", 2, 1.3, 0.08),
                        battery("3S 1300", 3, 1.3, 0.12)),
                List.of(controller("30 A", 30, 0.03), controller("20 A", 20, 0.02)),
                List.of(new Servo("servo 9 g", 0.009, 0.15, 0.1, 0.023, 0.012, 0.025, 4, INVENTED)),
                List.of(new Receiver("receiver 6ch", 6, 0.009, 0.05, 0.04, 0.02, 0.01, 10, INVENTED)),
                List.of(new Wheel("wheel 65", 0.065, 0.02, 0.01, 2, INVENTED)));
    }

    private static Board board(String name, double thickness, double density) {
        return new Board(name, thickness, density, 0.762, 0.508, 2e-4, 3e9, 12.5e6, 6e6, 3e6, 4, INVENTED);
    }

    private static Spar spar(String name, double width) {
        return new Spar(name, Spar.Shape.ROUND, width, width, width - 0.002, 70e9, 300e6, 1600, 1, 5, INVENTED);
    }

    private static Motor motor(String name, double mass, double rpmPerVolt) {
        return new Motor(name, mass, 0.028, 0.03, rpmPerVolt * Math.PI / 30, 0.1, 0.8, 10, 0, 15, INVENTED);
    }

    private static Fan fan(String name, double diameter, double thrust) {
        FanLaw law = new FanLaw(diameter, 0.4 * diameter, 0.9, 0.8, thrust, 600);
        return new Fan(name, law, 0.09, motor(name, 0.05, 3000), 20, INVENTED);
    }

    private static Propeller propeller(String name, double diameter, double pitch) {
        PropellerCurves curves = new PropellerCurves(
                new double[] {0.1, -0.05, -0.1, 0, 0, 0, 0}, new double[] {0.04, 0, -0.03, 0, 0, 0, 0}, 40, 150, 0.8);
        return new Propeller(
                name, BladeFamily.THIN_ELECTRIC, diameter * 0.0254, pitch * 0.0254, 2, 0.012, curves, 3, INVENTED);
    }

    private static Battery battery(String name, int cells, double ampereHours, double mass) {
        return new Battery(name, cells, ampereHours * 3600, 30, mass, 0.1, 0.034, 0.025, 0.008, 20, INVENTED);
    }

    private static Controller controller(String name, double current, double mass) {
        return new Controller(name, current, 3, mass, 0.05, 0.025, 0.01, 0.005, 12, INVENTED);
    }
}
