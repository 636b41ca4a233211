package foamfront.model;

import foamfront.model.aero.BodyMoment;
import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.ParasiteBuildUp;
import foamfront.model.aero.ParasiteDrag;
import foamfront.model.aero.PlainFlap;
import foamfront.model.aero.Resolution;
import foamfront.model.aero.SectionLift;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.flight.TrimmedFlight;
import foamfront.model.section.SectionPolar;
import java.util.ArrayList;
import java.util.List;
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
 * The aerodynamic set-up of a wing with its tail, from surfaces to an aeroplane that can be flown at any speed: strips, matrix,
 * factorisation, right-hand sides, far wake, the antisymmetric half, the body beside the wings, trim lines, strip data and the
 * stall. {@code setUp} is all of it, its own geometry (nodes, control points, normals, twist, flaps of every strip) included, and
 * allocates nothing. {@code solve} is the lifting system alone. {@code geometry} is no part of it: the airframe, from which masses,
 * patterns and structure start as well, made once a design of immutable records, its only allocation. Run with
 * {@code ./test --bench Lift}; allocation by JMH's gc profiler.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class LiftBenchmark {
    private static final double WEIGHT = 8; // N
    private static final double BALANCE = 0.28; // m
    private static final double FORWARD = 0.27; // m

    private final Design design = Samples.trainer();
    private final Airframe airframe = Airframe.of(design);
    private final List<Surface> surfaces = airframe.surfaces();
    private final Atmosphere air = Atmosphere.standard(0);
    private final LiftingSystem lifting = new LiftingSystem(Resolution.DEFAULT);
    private final TrimmedFlight flight = new TrimmedFlight(lifting);
    private final ParasiteDrag drags = ParasiteBuildUp.of(airframe, air);
    private final SectionPolar[] polars = new SectionPolar[surfaces.size()];
    private final List<SectionLift> sections = new ArrayList<>();

    public LiftBenchmark() {
        for (int i = 0; i < polars.length; i++) {
            Surface surface = surfaces.get(i);
            polars[i] = SectionPolar.of(surface.section(), design.board().thickness(), surface.meanAerodynamicChord());
            sections.add(new SectionLift(polars[i].zeroLiftAngle(), 0.95, polars[i].momentCoefficient()));
        }
    }

    @Benchmark
    public Airframe geometry() {
        return Airframe.of(design);
    }

    @Benchmark
    public double solve() {
        lifting.solve(surfaces, sections, PlainFlap.SMALL_ANGLE_EFFICIENCY);
        return lifting.liftSlope();
    }

    @Benchmark
    public double setUp() {
        lifting.solve(surfaces, sections, PlainFlap.SMALL_ANGLE_EFFICIENCY);
        double body = BodyMoment.pitchSlope(airframe, lifting);
        flight.prepare(
                lifting, surfaces, polars, BALANCE, FORWARD, body, null, drags, air, WEIGHT, Factors.NOMINAL);
        return flight.stallSpeed();
    }
}
