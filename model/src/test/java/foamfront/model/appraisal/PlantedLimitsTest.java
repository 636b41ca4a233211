package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Arrangement;
import foamfront.model.design.Combination;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Measure;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Limits that no single figure of the samples isolates, each by an aeroplane found for it: with one figure moved it
 * passes from wholly sound with a tenth to spare to missing this limit, and no other, by a tenth.
 */
class PlantedLimitsTest {
    private static final double TENTH = 0.1;

    /** The figure is looked for between the two stated ones and half their distance beyond. */
    private static final double BEYOND = 0.5;

    private static final int HALVINGS = 40;

    /** The limits planted here, for the test that isolates the others. */
    static Set<Measure> planted() {
        Set<Measure> all = EnumSet.of(Measure.VIEW, Measure.TAKE_OFF_DISTANCE);
        Planting.all().forEach(planting -> all.add(planting.measure()));
        PlantingAfloat.all().forEach(planting -> all.add(planting.measure()));
        return all;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"foamfront.model.appraisal.Planting#all", "foamfront.model.appraisal.PlantingAfloat#all"})
    void refusesAloneATenthBeyondItsLimitAndNotATenthWithin(Planting planting) {
        double within = figure(planting, TENTH);
        double beyond = figure(planting, -TENTH);

        assertThat(Combination.refusal(Arrangement.of(planting.at(within).design())))
                .isNull();
        assertThat(misses(planting.at(within))).isEmpty();
        assertThat(misses(planting.at(beyond))).containsExactly(planting.measure());
    }

    /** An angle asked for is missing whole or not at all, so this limit has no tenth within. */
    @Test
    void aCameraBehindThePropellerIsRefusedForItsViewAlone() {
        Planting.Case blind = new Planting.Case(Samples.trainer(), Samples.mission());
        assertThat(misses(blind)).isEmpty();
        assertThat(misses(Records.with(blind, "design.loads[0].view", TENTH))).containsExactly(Measure.VIEW);
    }

    /** On land what only floats cannot take off at all, so this limit has no tenth beyond. */
    @Test
    void floatsAreRefusedALandSiteForTheirTakeOffAlone() {
        Planting spray = PlantingAfloat.all().stream()
                .filter(planting -> planting.measure() == Measure.SPRAY_LOAD)
                .findFirst()
                .orElseThrow();
        Planting.Case afloat = spray.at(spray.sound());
        assertThat(misses(afloat)).isEmpty();
        assertThat(misses(Records.with(afloat, "mission.site.ground", Ground.SHORT_GRASS)))
                .containsExactly(Measure.TAKE_OFF_DISTANCE);
    }

    /** The figure at which the measure has a margin, found by halving. */
    private static double figure(Planting planting, double margin) {
        double step = planting.planted() - planting.sound();
        double roomy = planting.sound() - BEYOND * step;
        double tight = planting.planted() + BEYOND * step;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (roomy + tight);
            if (margin(planting, middle) > margin) {
                roomy = middle;
            } else {
                tight = middle;
            }
        }
        assertThat(Math.abs(margin(planting, tight) - margin))
                .as("%s at %.6g has a margin of %.4f", planting, tight, margin(planting, tight))
                .isLessThan(0.1 * TENTH);
        return tight;
    }

    private static double margin(Planting planting, double figure) {
        Planting.Case found = planting.at(figure);
        Bound bound = found.mission().limits().of(planting.measure());
        return bound == null ? Double.NaN : bound.margin(run(found).get(planting.measure()));
    }

    private static Set<Measure> misses(Planting.Case found) {
        Workbench bench = run(found);
        Set<Measure> missed = EnumSet.noneOf(Measure.class);
        for (Bound bound : found.mission().limits().all()) {
            if (bench.applies(bound.measure()) && bound.violation(bench.get(bound.measure())) > 0) {
                missed.add(bound.measure());
            }
        }
        return missed;
    }

    private static Workbench run(Planting.Case found) {
        Workbench bench = new Workbench(found.design(), found.mission(), Factors.NOMINAL);
        for (int stage = 0; stage < Stages.count(); stage++) {
            bench.run(stage);
        }
        return bench;
    }
}
