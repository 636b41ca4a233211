package foamfront.optimizer.front;

import foamfront.model.appraisal.Caveat;
import foamfront.model.appraisal.LimitCheck;
import foamfront.model.appraisal.MeasureValues;
import foamfront.model.design.Design;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Measure;
import foamfront.optimizer.genome.Genome;
import foamfront.optimizer.genome.Studies;
import foamfront.optimizer.study.Aim;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Rows with invented measures. */
final class Rows {
    static final List<Aim> AIMS = List.of(
            new Aim(Measure.PAYLOAD, true), new Aim(Measure.ENDURANCE, true), new Aim(Measure.BUILD_COST, false));

    private static final Genome GENOME = new Genome(Studies.wide());

    private Rows() {}

    static List<Row> random(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double[] genes = new double[GENOME.variables().size()];
            for (int k = 0; k < genes.length; k++) {
                int levels = GENOME.variables().get(k).levels();
                genes[k] = levels == 0 ? random.nextDouble() : random.nextInt(levels);
            }
            // Coarse figures, so that equal rows occur.
            double payload = 0.05 * random.nextInt(12);
            double endurance = 60 * random.nextInt(20);
            rows.add(row(GENOME.decode(genes), payload, endurance, 40 + random.nextInt(30)));
        }
        return rows;
    }

    static Row row(Design design, double payload, double endurance, double cost) {
        double[] values = new double[Measure.values().length];
        Arrays.fill(values, Double.NaN);
        values[Measure.PAYLOAD.ordinal()] = payload;
        values[Measure.ENDURANCE.ordinal()] = endurance;
        values[Measure.BUILD_COST.ordinal()] = cost;
        values[Measure.MASS.ordinal()] = 0.8 + payload;
        values[Measure.STALL_SPEED.ordinal()] = 7.25;
        Bound stall = Bound.atMost(Measure.STALL_SPEED, 9, "trainer practice");
        return new Row(
                design,
                new MeasureValues(values),
                List.of(new LimitCheck(stall, 7.25, stall.margin(7.25), "slow enough")),
                List.of(Caveat.TIP_STALL));
    }

    static Row named(String name, double payload, double endurance, double cost) {
        Design design = GENOME.decode(new double[GENOME.variables().size()]);
        return row(
                new Design(
                        name,
                        design.wing(),
                        design.tail(),
                        design.body(),
                        design.power(),
                        design.undercarriage(),
                        design.controls(),
                        design.board(),
                        design.covering(),
                        design.radio(),
                        design.loads()),
                payload,
                endurance,
                cost);
    }
}
