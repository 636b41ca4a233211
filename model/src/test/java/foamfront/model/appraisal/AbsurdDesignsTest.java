package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FinJoint;
import foamfront.model.design.Load;
import foamfront.model.design.Nose;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Tail;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.MassBreakdown;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.parts.Battery;
import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What an optimiser would love and nobody should build is refused for the right reason. */
class AbsurdDesignsTest {
    private static final Design GOOD = Samples.trainer();
    private static final String DIAMETER = "power.plant.propeller.diameter";
    private static final String FAMILY = "power.plant.propeller.family";
    private static final String SPAR = "wing.build.spar";

    /** Leads 12 g, screws 8 g, strap 5 g, and a horn of 3 g and a lead of 4 g for each of four servos, kg. */
    private static final double FITTINGS = 0.053;

    static Stream<Arguments> absurd() {
        return Stream.of(
                Arguments.of("a tail as large as a wing", Measure.TAIL_SIZE, tail(1.1, 0.30, 0.56)),
                Arguments.of("a sliver of a tail", Measure.LEAST_CHORD, tail(0.42, 0.05, 0.80)),
                Arguments.of("no tail to speak of", Measure.HORIZONTAL_TAIL_VOLUME, tail(0.2, 0.08, 0.77)),
                Arguments.of("a tail behind the body's end", Measure.BODY_REACH, tail(0.42, 0.13, 1.4)),
                Arguments.of("a wing ahead of the nose", Measure.BODY_REACH, Records.with(GOOD, "wing.x", -0.02)),
                Arguments.of(
                        "a boom longer than its stock",
                        Measure.BODY_REACH,
                        Records.with(Arrangements.of("pod and boom"), "body.boom.length", 0.5)),
                Arguments.of(
                        "a hull whose step lies ahead of its bow's foot",
                        Measure.BODY_REACH,
                        Records.with(Records.with(Arrangements.of("hull"), "body.step", 0.2), "body.height", 0.5)),
                Arguments.of(
                        "floats as broad as they are long",
                        Measure.BODY_REACH,
                        Records.with(Arrangements.of("floats"), "undercarriage.beam", 0.59)),
                Arguments.of(
                        "a tail in a pusher's propeller",
                        Measure.PROPELLER_CLEARANCE,
                        Records.with(Arrangements.of("pusher"), "tail.plane.x", 0.45)),
                Arguments.of(
                        "a pusher held by its propeller",
                        Measure.LAUNCH_GRIP,
                        Records.with(Arrangements.of("pusher"), "wing.planform.rootChord", 0.12)),
                Arguments.of(
                        "two loads in one place",
                        Measure.BAY_LENGTH,
                        Records.with(
                                GOOD,
                                "loads",
                                List.of(
                                        new Load("seed", 0.1, 0.16, 0.04, 0.04, Place.NOSE, false, 0, 0),
                                        new Load("water", 0.1, 0.15, 0.04, 0.04, Place.BALANCE_POINT, false, 0, 0)))),
                Arguments.of("a fin like a mast", Measure.TAIL_SIZE, fin(0.6, 0.08)),
                Arguments.of(
                        "a fin that cuts into the wing",
                        Measure.BODY_REACH,
                        Records.with(fin(0.2, 0.5), "wing.z", 0.1)),
                Arguments.of("a fin like a coin", Measure.YAW_STIFFNESS, fin(0.06, 0.07)),
                Arguments.of(
                        "a load longer than the body, below a floor",
                        Measure.BAY_LENGTH,
                        carrying(
                                new Body.TwoBayTube(0.86, 0.07, 0.10, Nose.FIXED),
                                new Load("pole", 0.3, 2, 0.02, 0.02, Place.BALANCE_POINT, false, 0, 0))),
                Arguments.of(
                        "a load wider than the body",
                        Measure.CLEARANCE,
                        carrying(
                                GOOD.body(), new Load("crate", 0.1, 0.05, 0.12, 0.05, Place.BEHIND_NOSE, false, 0, 0))),
                Arguments.of(
                        "a plank under the belly",
                        Measure.OUTSIDE_ROOM,
                        carrying(GOOD.body(), new Load("plank", 0.2, 1.5, 0.06, 0.06, Place.BELOW, false, 0, 0))),
                Arguments.of(
                        "a camera that looks through the propeller",
                        Measure.VIEW,
                        carrying(GOOD.body(), new Load("camera", 0.03, 0.03, 0.03, 0.03, Place.NOSE, false, 2, 1.5))),
                Arguments.of(
                        "two kilograms thrown by hand",
                        Measure.LAUNCH_HEIGHT,
                        carrying(
                                GOOD.body(),
                                new Load("lead", 1.5, 0.05, 0.04, 0.04, Place.BALANCE_POINT, false, 0, 0))),
                Arguments.of("a battery that cannot feed the motor", Measure.BATTERY_LOAD, battery(200 * 3.6, 0.02)),
                Arguments.of("a flight of a minute", Measure.ENDURANCE, battery(200 * 3.6, 0.02)),
                Arguments.of("castors in the grass", Measure.WHEEL_SIZE, wheels(0.03)));
    }

    /** Each absurdity that some standing limit is there for, in the words of that limit. */
    static Stream<Arguments> figures() {
        Load lead = new Load("lead", 5, 0.1, 0.05, 0.05, Place.BALANCE_POINT, false, 0, 0);
        WingSection thin = new WingSection.FoldedFlatBottom(0.03);
        Design rudder = Records.with(GOOD, "controls.ailerons", false);
        // As far aft as its lift is ahead of the swept wing's, so that the battery balances it, with fins for their
        // short arm.
        Design straight = Records.with(Arrangements.of("flying wing"), "wing.x", 0.18);
        Design finned = Records.with(straight, "tail.fin.height", 0.3);
        Design plank = Records.with(finned, "wing.planform.tipIncidence", 0.0);
        Design slender = Records.with(GOOD, "wing.planform.rootChord", 0.09);
        Design unspared = Records.with(GOOD, "wing.build.section", new WingSection.FlatPlate());
        Spar match = new Spar("match", Spar.Shape.ROUND, 2e-3, 2e-3, 0, 10e9, 60e6, 600, 1, 1, Provenance.INVENTED);
        return Stream.of(
                figure("a wing at the nose, the masses behind it", Measure.STATIC_MARGIN, "wing.x", 0.02),
                figure("a balance no battery can reach", Measure.BALANCE_SHIFT, "wing.x", 0.02),
                figure("a fin of two fingers", Measure.VERTICAL_TAIL_VOLUME, "tail.fin.height", 0.05),
                row("a rudder with no dihedral to turn by", Measure.RUDDER_ROLL, rudder, "wing.planform.dihedral", 0.0),
                figure("token ailerons", Measure.ROLL_RESPONSE, "controls.aileronSpan", 0.1),
                row("tailless without reflex or sweep", Measure.ELEVON_TRIM, plank, "wing.planform.sweep", 0.0),
                figure("a brick that stalls at a gallop", Measure.STALL_SPEED, "loads[0].mass", 1.0),
                figure("a heavy glider thrown by hand", Measure.LAUNCH_HEIGHT, "loads[0].mass", 1.0),
                figure("a starved motor climbs", Measure.CLIMB_RATE, "power.plant.motor.speedConstant", 40.0),
                figure("a starved motor pulls", Measure.THRUST_TO_WEIGHT, "power.plant.motor.speedConstant", 35.0),
                figure("a motor of a matchbox", Measure.MOTOR_LOAD, "power.plant.motor.mass", 0.015),
                figure("a propeller too large for its motor", Measure.MOTOR_LOAD, DIAMETER, 0.33),
                figure("a controller that melts", Measure.CONTROLLER_LOAD, "power.plant.controller.current", 5.0),
                figure("servos on a starved supply", Measure.SUPPLY_LOAD, "power.plant.controller.supply", 0.1),
                figure("a battery of low rate", Measure.BATTERY_LOAD, "power.plant.battery.rating", 5.0),
                figure("cells that sag", Measure.CELL_VOLTAGE, "power.plant.battery.cellResistance", 0.1),
                figure("slow blades spun fast", Measure.TIP_SPEED, FAMILY, BladeFamily.SLOW_FLYER),
                row("propellers in the body", Measure.PROPELLER_CLEARANCE, Arrangements.of("twin"), "power.y", 0.1),
                figure("payload of nine tenths", Measure.ENDURANCE, "loads", List.of(lead)),
                figure("a flight of twenty seconds", Measure.ENDURANCE, "power.plant.battery.capacity", 40 * 3.6),
                figure("a needle for a body", Measure.CLEARANCE, "body.width", 0.012),
                figure("a paper-thin wing", Measure.CHORD_FIT, "wing.build.section", thin),
                figure("a wing tip for a wren", Measure.LEAST_CHORD, "wing.planform.taper", 0.12),
                figure("a chord wider than the sheet", Measure.SHEET_FIT, "wing.planform.rootChord", 0.6),
                figure("a featherweight wing", Measure.WING_BENDING, "board.faceThickness", 0.02e-3),
                row("an extreme aspect ratio", Measure.TIP_DEFLECTION, slender, "wing.planform.span", 2.4),
                row("a wing that winds itself up", Measure.DIVERGENCE_SPEED, slender, "wing.planform.span", 2.4),
                row("a long board without a spar", Measure.WING_BENDING, unspared, SPAR, new WingSpar.BoardStrip()),
                row("a tail on a match", Measure.BOOM_STRENGTH, Arrangements.of("pod and boom"), "body.boom", match),
                row("a tail on a spring", Measure.BOOM_STIFFNESS, Arrangements.of("pod and boom"), "body.boom", match),
                figure("a tail of wrapping paper", Measure.TAIL_STRENGTH, "board.thickness", 0.5e-3),
                figure("a toy servo", Measure.SERVO_TORQUE, "radio.servo.torque", 0.005),
                figure("a body for another car", Measure.CAR_ROOM, "body.length", 1.9));
    }

    private static Arguments figure(String what, Measure reason, String path, Object value) {
        return row(what, reason, GOOD, path, value);
    }

    private static Arguments row(String what, Measure reason, Design design, String path, Object value) {
        return Arguments.of(what, reason, Records.with(design, path, value));
    }

    /** An aeroplane that the wind outruns cannot come home, however sound it is. */
    @Test
    void whatCannotComeHomeIsRefused() {
        Mission windy = Records.with(Samples.mission(), "site.wind", 12.0);
        assertThat(misses(GOOD, windy)).containsExactly(Measure.TOP_SPEED_RATIO);
    }

    /** Board and spar of no mass still carry glue, tape, leads, horns, straps and screws: no airframe weighs 30 g. */
    @Test
    void anAirframeOfNothingStillWeighsItsFittings() {
        Design nothing =
                Records.with(Records.with(GOOD, "board.arealDensity", 1e-6), "wing.build.spar.spar.density", 1e-6);
        MassBreakdown masses = new Appraiser(List.of())
                .appraise(nothing, Samples.mission(), Factors.NOMINAL)
                .masses();
        PowerPlant plant = Samples.plant();
        double bought = plant.motor().mass()
                + plant.propeller().mass()
                + plant.controller().mass()
                + Samples.radio().receiver().mass()
                + 4 * Samples.radio().servo().mass();
        assertThat(masses.emptyMass() - bought).isGreaterThan(FITTINGS);
    }

    /** Sections and propellers outside what was measured of them are told as caveats. */
    @Test
    void extrapolationIsTold() {
        Design anvil = Records.with(GOOD, "loads[0].mass", 20.0);
        Design outrun = Records.with(GOOD, "power.plant.propeller.curves.highestSpeed", 50.0);
        assertThat(caveats(GOOD)).doesNotContain(Caveat.SECTION_RANGE);
        assertThat(caveats(anvil)).contains(Caveat.SECTION_RANGE);
        assertThat(caveats(outrun)).contains(Caveat.PROPELLER_RANGE);
    }

    private static List<Caveat> caveats(Design design) {
        return new Appraiser(List.of())
                .appraise(design, Samples.mission(), Factors.NOMINAL)
                .caveats();
    }

    @Test
    void theSampleItselfIsSound() {
        assertThat(misses(GOOD)).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"absurd", "figures"})
    void isRefused(String what, Measure reason, Design design) {
        assertThat(misses(design)).as(what).contains(reason);
    }

    private static List<Measure> misses(Design design) {
        return misses(design, Samples.mission());
    }

    private static List<Measure> misses(Design design, Mission mission) {
        return new Appraiser(List.of())
                .appraise(design, mission, Factors.NOMINAL).limits().stream()
                        .filter(check -> !check.holds())
                        .map(check -> check.bound().measure())
                        .toList();
    }

    private static Design tail(double span, double chord, double x) {
        Tail.Conventional old = (Tail.Conventional) GOOD.tail();
        TailPlane plane = new TailPlane(span, chord, 1, 0, 0, 0, x, old.plane().z());
        return with(
                new Tail.Conventional(plane, old.fin()), GOOD.body(), GOOD.power(), GOOD.undercarriage(), GOOD.loads());
    }

    private static Design fin(double height, double chord) {
        Tail.Conventional old = (Tail.Conventional) GOOD.tail();
        Fin fin = new Fin(1, height, chord, 0.9, FinJoint.FIXED);
        return with(
                new Tail.Conventional(old.plane(), fin), GOOD.body(), GOOD.power(), GOOD.undercarriage(), GOOD.loads());
    }

    private static Design carrying(Body body, Load load) {
        return with(GOOD.tail(), body, GOOD.power(), GOOD.undercarriage(), List.of(load));
    }

    private static Design battery(double capacity, double mass) {
        PowerPlant plant = Samples.plant();
        Battery small = new Battery("tiny", 3, capacity, 30, mass, 0.04, 0.02, 0.012, 0.06, 8, Provenance.INVENTED);
        return with(
                GOOD.tail(),
                GOOD.body(),
                new Power.NoseTractor(new PowerPlant(plant.motor(), plant.propeller(), small, plant.controller())),
                GOOD.undercarriage(),
                GOOD.loads());
    }

    private static Design wheels(double diameter) {
        Wheel wheel = new Wheel("castor", diameter, 0.01, 0.005, 1, Provenance.INVENTED);
        return with(GOOD.tail(), GOOD.body(), GOOD.power(), new Undercarriage.TailWheel(wheel), GOOD.loads());
    }

    private static Design with(Tail tail, Body body, Power power, Undercarriage gear, List<Load> loads) {
        return new Design(
                "absurd",
                GOOD.wing(),
                tail,
                body,
                power,
                gear,
                GOOD.controls(),
                GOOD.board(),
                GOOD.covering(),
                GOOD.radio(),
                loads);
    }
}
