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
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Provenance;
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

    @Test
    void theSampleItselfIsSound() {
        assertThat(misses(GOOD)).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("absurd")
    void isRefused(String what, Measure reason, Design design) {
        assertThat(misses(design)).as(what).contains(reason);
    }

    private static List<Measure> misses(Design design) {
        return new Appraiser(List.of())
                .appraise(design, Samples.mission(), Factors.NOMINAL).limits().stream()
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
