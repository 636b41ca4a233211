package foamfront.model.appraisal;

import foamfront.model.Samples;
import foamfront.model.design.Drive;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * All propulsion and flight points of one appraisal of the sample trainer, as an appraisal computes them: full throttle at rest,
 * in climb and at top speed, the throttles of level flight, the discharge, take-off and landing, handling. Weights, balance and
 * the aeroplane in trim are found once, outside the measurement. {@code points} is to stay below 12 µs (found: 9.9 µs of processor
 * time, 80 bytes); {@code stage} is all that the flight stage does besides. Run with {@code ./test --bench FlightBenchmark}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class FlightBenchmark {
    private final Workbench bench = flown();
    private final Drive drive = Objects.requireNonNull(bench.design.power().drive());

    private static Workbench flown() {
        Workbench bench = new Workbench(Samples.trainer(), Samples.mission(), Factors.NOMINAL);
        for (int stage = 0; stage < Stages.count(); stage++) {
            Stages.at(stage).run(bench);
        }
        return bench;
    }

    @Benchmark
    public double points() {
        FlightStage.solve(bench, drive);
        return bench.performance.level().endurance();
    }

    @Benchmark
    public double stage() {
        FlightStage.run(bench);
        return bench.get(Measure.ENDURANCE);
    }
}
