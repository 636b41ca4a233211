package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.Tail;
import foamfront.model.design.Wing;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Owned;
import foamfront.model.propulsion.PowerTrain;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold between two appraisals, over two hundred random designs; the packages below have such laws of their own. */
class AppraisalRelationsLawsTest {
    private static final Mission MISSION = Missions.unlimited(Samples.mission());

    /** Sums of some dozen terms. */
    private static final double ROUNDING = 1e-9;

    /** Speeds at which something is least jump with the corners of measured polars; see SpeedTableLawsTest. */
    private static final double TABLE = 0.01;

    /** The top speed's bracket is a millimetre a second wide; of drag. */
    private static final double BRACKET = 1e-3;

    /** State of charge of the reported power curve. */
    private static final double HALF_CHARGE = 0.6;

    private final Appraiser appraiser = new Appraiser(List.of(Measure.values()));

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    private MeasureValues measures(Design design, Factors factors) {
        return appraiser.appraise(design, MISSION, factors).measures();
    }

    private MeasureValues measures(Design design) {
        return measures(design, Factors.NOMINAL);
    }

    /** More parasite drag never flies faster, climbs better, glides farther or lasts longer. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreParasiteDragNeverFliesFasterNorLonger(long seed) {
        Design design = Arrangements.near(seed);
        MeasureValues clean = measures(design);
        MeasureValues draggy = measures(design, Records.with(Factors.NOMINAL, "parasiteDrag", 1.2));

        for (Measure measure : List.of(Measure.TOP_SPEED, Measure.CLIMB_RATE, Measure.GLIDE_RATIO)) {
            assertThat(draggy.of(measure)).as(measure.words()).isLessThanOrEqualTo(clean.of(measure));
        }
        assertThat(draggy.of(Measure.ENDURANCE)).isLessThanOrEqualTo((1 + TABLE) * clean.of(Measure.ENDURANCE));
        assertThat(draggy.of(Measure.STALL_SPEED)).isEqualTo(clean.of(Measure.STALL_SPEED));
    }

    /** Thrust is drag at the top speed, unless the curve of thrust ends before. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void thrustIsDragAtTheTopSpeed(long seed) {
        Workbench bench = new Workbench(Arrangements.near(seed), MISSION, Factors.NOMINAL);
        for (int stage = 0; stage < Stages.count(); stage++) {
            bench.run(stage);
        }
        double top = bench.performance.fullThrottle().topSpeed();
        if (top > 0) {
            double drag = bench.flight.poweredDrag(top, FlightStage.streamArea(bench));
            assertThat(bench.performance.fullThrottle().thrust(top)).isCloseTo(drag, within(BRACKET * drag));
        }
    }

    /** At every reported point lift is weight, and the thrust told is the drag's wherever the motor can give it. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyReportedPointIsInEquilibrium(long seed) {
        Workbench bench = new Workbench(Arrangements.near(seed), MISSION, Factors.NOMINAL);
        for (int stage = 0; stage < Stages.count(); stage++) {
            bench.run(stage);
        }
        double weight = bench.flight.weight();
        double area = bench.flight.referenceArea();
        Appraisal found = Findings.of(bench);
        for (int i = 0; i < found.polar().size(); i++) {
            PolarPoint point = found.polar().get(i);
            PowerPoint power = found.power().get(i);
            double pressureArea = 0.5 * bench.flight.density() * point.speed() * point.speed() * area;
            double coefficient = point.profileDrag() + point.inducedDrag() + point.parasiteDrag();
            assertThat(pressureArea * point.liftCoefficient()).isCloseTo(weight, within(ROUNDING * weight));
            assertThat(point.drag()).isCloseTo(pressureArea * coefficient, within(ROUNDING * weight));
            double pulled = bench.flight.pulledDrag(
                    power.available(), point.speed(), point.liftCoefficient(), FlightStage.streamArea(bench));
            double excess = (power.available() - pulled) * point.speed() / weight;
            assertThat(power.climb()).isCloseTo(excess, within(ROUNDING));
            assertThat(power.required()).isGreaterThanOrEqualTo(point.drag());
            if (!Double.isNaN(power.throttle())) {
                PowerTrain train = FlightStage.train(bench);
                train.solveHolding(power.required(), point.speed(), HALF_CHARGE);
                assertThat(train.thrust()).isCloseTo(power.required(), within(ROUNDING * weight));
                assertThat(power.throttle()).isBetween(0.0, 1.0);
            }
        }
    }

    /** What is added is what the scales show; it climbs worse and, where it still balances at the same point, stalls faster. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void addedMassIsAdded(long seed) {
        Design design = Arrangements.near(seed);
        double receiver = design.radio().receiver().mass();
        MeasureValues light = measures(design);
        MeasureValues heavy = measures(Records.with(design, "radio.receiver.mass", receiver + 0.02));

        assertThat(heavy.of(Measure.MASS)).isCloseTo(light.of(Measure.MASS) + 0.02, within(ROUNDING));
        assertThat(heavy.of(Measure.EMPTY_MASS)).isCloseTo(light.of(Measure.EMPTY_MASS) + 0.02, within(ROUNDING));
        if (light.of(Measure.BALANCE_SHIFT) == 0 && heavy.of(Measure.BALANCE_SHIFT) == 0) {
            assertThat(heavy.of(Measure.STALL_SPEED)).isGreaterThan(light.of(Measure.STALL_SPEED));
        }
        assertThat(heavy.of(Measure.CLIMB_RATE)).isLessThan(light.of(Measure.CLIMB_RATE));
    }

    /** The neutral point knows nothing of where the masses are. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theNeutralPointDoesNotKnowTheCentreOfGravity(long seed) {
        Design design = Arrangements.near(seed);
        Load load = design.loads().get(0);
        Load behind = Records.with(load, "place", Place.BALANCE_POINT);
        Appraisal ahead = appraiser.appraise(design, MISSION, Factors.NOMINAL);
        Appraisal moved = appraiser.appraise(Records.with(design, "loads", List.of(behind)), MISSION, Factors.NOMINAL);

        assertThat(moved.neutralPoint()).isEqualTo(ahead.neutralPoint());
    }

    /** A tail of more chord moves the neutral point aft. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aBiggerTailMovesTheNeutralPointAft(long seed) {
        Design design = Arrangements.near(seed);
        if (!(design.tail() instanceof Tail.None)) {
            double small = neutralPoint(design);
            assertThat(neutralPoint(Records.scaled(design, "tail.plane.chord", 1.1)))
                    .isGreaterThan(small);
        }
    }

    private double neutralPoint(Design design) {
        return appraiser.appraise(design, MISSION, Factors.NOMINAL).neutralPoint();
    }

    /** A bigger tail moves it aft, by the closed form h = 1/4 + (a_t / a)(1 - dε/dα) V_H. */
    @Test
    void aBiggerTailMovesTheNeutralPointAftAsTheClosedFormSays() {
        Design trainer = Samples.trainer();
        double before = Double.NEGATIVE_INFINITY;
        for (double factor = 0.8; factor < 1.5; factor *= 1.1) {
            Appraisal found =
                    appraiser.appraise(Records.scaled(trainer, "tail.plane.chord", factor), MISSION, Factors.NOMINAL);
            double place = found.neutralPoint() / found.airframe().chord();
            assertThat(place).isGreaterThan(before);
            before = place;
        }
        Appraisal small = appraiser.appraise(trainer, MISSION, Factors.NOMINAL);
        Appraisal large =
                appraiser.appraise(Records.scaled(trainer, "tail.plane.chord", 1.2), MISSION, Factors.NOMINAL);
        double moved =
                (large.neutralPoint() - small.neutralPoint()) / small.airframe().chord();
        double volume = large.measures().of(Measure.HORIZONTAL_TAIL_VOLUME)
                - small.measures().of(Measure.HORIZONTAL_TAIL_VOLUME);
        // a_t / a = 0.80 and dε/dα = 0.45 for aspect ratios 3 and 6.3; slopes fall as the tail's aspect ratio does.
        assertThat(moved / volume).isBetween(0.2, 0.6);
    }

    /**
     * Twice the charge at the same mass lasts at least twice as long, since climb and reserve are paid once. Mass alone
     * never helps.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void twiceTheChargeLastsTwiceAsLong(long seed) {
        Design design = Arrangements.near(seed);
        double once = measures(design).of(Measure.ENDURANCE);
        String battery = design.power() instanceof Power.DuctedFan ? "power.battery" : "power.plant.battery";
        double twice =
                measures(Records.scaled(design, battery + ".capacity", 2)).of(Measure.ENDURANCE);
        MeasureValues heavier = measures(Records.scaled(design, battery + ".mass", 1.2));

        assertThat(twice).isGreaterThanOrEqualTo(2 * once);
        // Out of balance a heavier battery also changes the trim.
        if (measures(design).of(Measure.BALANCE_SHIFT) == 0 && heavier.of(Measure.BALANCE_SHIFT) == 0) {
            assertThat(heavier.of(Measure.ENDURANCE)).isLessThanOrEqualTo((1 + TABLE) * once);
        }
    }

    /** A wider gap brings two wings nearer to what each would do alone. */
    @Test
    void aWiderGapGainsSpanEfficiency() {
        Design biplane = Arrangements.of("biplane");
        double before = 1;
        for (double gap = 0.08; gap < 0.5; gap *= 1.3) {
            Wing wing = Records.with(biplane.wing(), "gap", gap);
            List<LiftingSummary> all = appraiser
                    .appraise(Records.with(biplane, "wing", wing), MISSION, Factors.NOMINAL)
                    .surfaces();
            double gain = all.get(all.size() - 1).spanEfficiency() / all.get(0).spanEfficiency();
            assertThat(gain).isBetween(before, 2.0);
            before = gain;
        }
    }

    /** Price k, cost k; hours k, hours k; a drawer's order does not matter. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costFollowsPriceAndTimeItsFactor(long seed) {
        Design design = Arrangements.near(seed);
        MeasureValues plain = measures(design);
        MeasureValues dear = measures(design, Records.with(Factors.NOMINAL, "price", 1.5));
        MeasureValues slow = measures(design, Records.with(Factors.NOMINAL, "time", 1.5));

        double cost = plain.of(Measure.BUILD_COST);
        double time = plain.of(Measure.BUILD_TIME);
        assertThat(dear.of(Measure.BUILD_COST)).isCloseTo(1.5 * cost, within(ROUNDING * cost));
        assertThat(slow.of(Measure.BUILD_TIME)).isCloseTo(1.5 * time, within(ROUNDING * time));
        assertThat(owning(design, "3S 1300", "2212-1000"))
                .isEqualTo(owning(design, "2212-1000", "3S 1300"))
                .isLessThan(cost);
    }

    private double owning(Design design, String first, String second) {
        Mission mission = Records.with(MISSION, "drawer", List.of(new Owned(first, 1), new Owned(second, 1)));
        return appraiser.appraise(design, mission, Factors.NOMINAL).measures().of(Measure.BUILD_COST);
    }
}
