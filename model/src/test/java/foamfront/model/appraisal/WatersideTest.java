package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.aero.PlainFlap;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.airframe.Stance;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.Undercarriage;
import foamfront.model.factors.Factors;
import foamfront.model.flight.FlapSetting;
import foamfront.model.flight.Handling;
import foamfront.model.flight.HighLift;
import foamfront.model.flight.WaterRun;
import foamfront.model.mass.MassItem;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.water.Floating;
import foamfront.model.water.Planing;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hull and floats where they meet the rest of the aeroplane: launch, loads, propeller, balance, flaps and trim. */
class WatersideTest {
    private static final double ROUNDING = 1e-9;
    private static final Design FLOATS = Arrangements.of("floats");
    private static final Design BOAT = Records.with(Arrangements.of("hull"), "undercarriage", new Undercarriage.None());
    private static final Mission LAND = Samples.mission();
    private static final Mission WATER = Records.with(LAND, "site.ground", Ground.WATER);

    private static Workbench run(Design design, Mission mission) {
        Workbench w = new Workbench(design, mission, Factors.NOMINAL);
        for (int stage = 0; stage < Stages.count(); stage++) {
            Stages.at(stage).run(w);
        }
        return w;
    }

    private static Flotation flotation(Workbench w) {
        return Objects.requireNonNull(w.airframe.stations().flotation());
    }

    @Test
    void whatOnlyFloatsNeverLeavesLand() {
        double allowed = Objects.requireNonNull(LAND.limits().of(Measure.TAKE_OFF_DISTANCE))
                .high();
        for (Design design : List.of(FLOATS, BOAT)) {
            assertThat(run(design, LAND).get(Measure.TAKE_OFF_DISTANCE)).isGreaterThan(allowed);
            assertThat(run(design, WATER).applies(Measure.TAKE_OFF_DISTANCE)).isFalse();
        }
        assertThat(run(Arrangements.of("hull"), LAND).get(Measure.TAKE_OFF_DISTANCE))
                .isLessThan(allowed);
    }

    @Test
    void aLoadBelowHangsClearOfTheWaterAndNotOfTheKeel() {
        Load low = new Load("cargo", 0.05, 0.1, 0.03, 0.1, Place.BELOW, false, 0, 0);
        Workbench w = run(Records.with(FLOATS, "loads", List.of(low)), WATER);
        Flotation flotation = flotation(w);
        double behind = flotation.stepBehind(w.balance.x());
        Floating rest = Floating.of(flotation, w.balance.mass(), behind, w.balance.z() - flotation.keel());
        double belly = -0.5 * w.airframe.body().height() - flotation.keel();
        // Nose up the water stands highest at the load's rear end.
        double free = belly - rest.surface(-behind + 0.05) - Stance.GROUND_CLEARANCE;

        assertThat(rest.trim()).isPositive();
        assertThat(w.get(Measure.OUTSIDE_ROOM)).isCloseTo(free - 0.1, within(ROUNDING));
        assertThat(run(Records.with(BOAT, "loads", List.of(low)), WATER).get(Measure.OUTSIDE_ROOM))
                .isCloseTo(-0.1, within(ROUNDING));
    }

    /** Broad deep floats reach up beside a twin's discs: 0.1 m of radius about y = 0.2, floats about y = 0.15. */
    @Test
    void floatsAreFoamToAPropeller() {
        Design twin = Records.with(FLOATS, "power", new Power.TwinTractor(Samples.plant(), 0.2, false));
        Design broad = Records.with(twin, "undercarriage", new Undercarriage.Floats(1.0, 0.25, 0.1));
        Workbench w = run(broad, WATER);
        Flotation flotation = flotation(w);
        PlaningForm form = flotation.form();
        double deck = flotation.keel() + form.vee() + form.depth();
        double disc = w.airframe.stations().shaft().z()
                - w.airframe.stations().shaft().radius();

        assertThat(deck).isGreaterThan(disc);
        assertThat(w.get(Measure.PROPELLER_CLEARANCE)).isNegative();
    }

    @Test
    void floatsWeighWhereTheBalancePointPutsThem() {
        Workbench w = run(Records.with(FLOATS, "loads[0].mass", 0.2), WATER);
        PlaningForm form = flotation(w).form();
        MassItem stem = w.masses.items().stream()
                .filter(item -> item.name().equals("float stem"))
                .findFirst()
                .orElseThrow();

        assertThat(stem.fromBalancePoint()).isTrue();
        assertThat(stem.x()).isCloseTo(flotation(w).step() - form.step(), within(ROUNDING));
    }

    @Test
    void flapsLowerTheNoseForLiftOffFromWater() {
        Design flapped = Records.with(
                FLOATS, "controls", new Controls(true, true, FlapKind.FLAPS, 0.45, 0.25, 0.35, 0.4, 0.4, 0.25));
        Workbench w = run(flapped, WATER);
        HighLift flaps = w.flight.lowered(FlapSetting.TAKE_OFF.deflection(FlapKind.FLAPS));
        double incidence = flaps.incidence(w.flight.liftCoefficient(1.2 * flaps.stallSpeed()));

        assertThat(w.get(Measure.GROUND_ATTITUDE))
                .isCloseTo(flotation(w).form().sternpost() - incidence, within(ROUNDING));
    }

    /** The whole balance of moments, written out anew from the lifting system: with the elevator found nothing is left over. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.06, 0, 0.06})
    void theElevatorOnTheStepBalancesWaterAirAndThrust(double tail) {
        Workbench w = run(Records.with(FLOATS, "tail.plane.incidence", tail), WATER);
        Flotation flotation = flotation(w);
        PlaningForm form = flotation.form();
        double speed = 0.7 * 1.2 * w.flight.stallSpeed();
        double trim = w.get(Measure.STEP_TRIM);
        double pressure = 0.5 * w.flight.density() * speed * speed * w.airframe.area();
        double untrimmed = w.flight.incidence(0);
        double lift = (trim - untrimmed) / (w.flight.incidence(1) - untrimmed);
        double carried = Math.min(w.flight.maximumLift(), lift);
        double load = w.flight.weight() - pressure * carried;
        Planing planing = Planing.of(form.beam(), form.deadrise(), 0.5 * load, trim, speed, Planing.Fluid.FRESH);
        double x = w.balance.x();
        double above = w.balance.z() - flotation.keel();
        // Nose up: pressed up ahead of the balance point, pulled aft by friction halfway up the vee below it.
        double lever = (planing.centre() - flotation.stepBehind(x)) * Math.cos(trim);
        double below = above - 0.25 * form.beam() * Math.tan(form.deadrise());
        double water = load * lever - 2 * planing.friction() * below;
        double line = w.airframe.stations().shaft().z() - w.balance.z();
        double thrust = w.performance.fullThrottle().thrust(speed) * line;
        double full = PlainFlap.worth(Handling.FULL_TRAVEL) / PlainFlap.SMALL_ANGLE_EFFICIENCY;
        double left = Double.POSITIVE_INFINITY;
        for (int sign = -1; sign <= 1; sign += 2) {
            double elevator = sign * full * w.get(Measure.STEP_ELEVATOR);
            double air = w.lifting.fixedMoment(x)
                    + (w.lifting.momentSlope(x) + w.bodyMoment) * trim
                    + w.lifting.elevatorMomentSlope(x) * elevator;
            double sum = pressure * w.lifting.referenceChord() * air + water - thrust;
            left = Math.min(left, Math.abs(sum));
        }

        assertThat(left).isLessThan(ROUNDING);
    }

    /** A pilot has the trim of least drag where three quarters of the elevator hold it, else as near to it as they do. */
    @ParameterizedTest
    @ValueSource(doubles = {0.04, 0.08, 0.12, 0.16})
    void theStepTrimIsTheNearestThatTheElevatorHolds(double above) {
        Design high = Records.with(Arrangements.of("hull"), "wing.z", above);
        Workbench w = run(high, WATER);
        double wanted = WaterRun.runningTrim(flotation(w).form());
        double trim = w.get(Measure.STEP_TRIM);
        double elevator = w.get(Measure.STEP_ELEVATOR);

        assertThat(trim)
                .isBetween(StepTrim.LEAST, WaterRun.humpTrim(flotation(w).form()));
        if (trim == wanted) {
            assertThat(elevator).isLessThanOrEqualTo(StepTrim.HELD);
        } else {
            assertThat(elevator).isGreaterThan(StepTrim.HELD - 1e-6);
        }
    }

    /** Savitsky's drag at the trim found is what the run counts: a bottom held near level drags more than one at six degrees. */
    @Test
    void theTrimOnTheStepSetsTheRun() {
        Workbench w = run(FLOATS, WATER);
        double flat = WaterRun.of(w.flight, w.performance, flotation(w), StepTrim.LEAST, 0)
                .distance();
        double best = WaterRun.of(
                        w.flight,
                        w.performance,
                        flotation(w),
                        WaterRun.runningTrim(flotation(w).form()),
                        0)
                .distance();
        assertThat(flat).isGreaterThan(best);
        assertThat(w.get(Measure.WATER_RUN))
                .isEqualTo(WaterRun.of(w.flight, w.performance, flotation(w), w.get(Measure.STEP_TRIM), 0)
                        .distance());
    }

    /** A tail like a sliver holds the bow at no trim, and the limit refuses it. */
    @Test
    void aSmallTailIsRefusedForItsElevatorOnTheStep() {
        double most =
                Objects.requireNonNull(WATER.limits().of(Measure.STEP_ELEVATOR)).high();

        assertThat(run(FLOATS, WATER).get(Measure.STEP_ELEVATOR)).isLessThan(most);
        assertThat(run(Records.with(FLOATS, "tail.plane.span", 0.2), WATER).get(Measure.STEP_ELEVATOR))
                .isGreaterThan(most);
    }
}
