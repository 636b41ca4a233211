package foamfront.model;

import foamfront.model.factors.Factors;
import foamfront.model.propulsion.Discharge;
import foamfront.model.propulsion.Outcome;
import foamfront.model.propulsion.PowerTrain;
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
 * The equilibrium of the sample trainer's power train, one thread: full throttle, a thrust held, a discharge. State of charge and
 * airspeed change from call to call, so that nothing remembered helps. Run with {@code ./test --bench PowerBenchmark}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PowerBenchmark {
    private static final int POINTS = 64;

    private final PowerTrain train = PowerTrain.of(Samples.plant(), 1, Factors.NOMINAL, 1.225, 0.3);
    private int turn;

    @Benchmark
    public Outcome fullThrottle() {
        return train.solveFullThrottle(speed(), charge());
    }

    @Benchmark
    public Outcome holdingAThrust() {
        return train.solveHolding(1.2, speed(), charge());
    }

    @Benchmark
    public double endurance() {
        return Discharge.endurance(train, 1.2, speed(), 0.9, Discharge.RESERVE);
    }

    private double speed() {
        turn = (turn + 1) % POINTS;
        return 6 + 0.1 * turn;
    }

    private double charge() {
        return 0.25 + 0.01 * turn;
    }
}
