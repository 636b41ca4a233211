package foamfront.model.appraisal;

import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.Resolution;
import foamfront.model.aero.SectionLift;
import foamfront.model.airframe.Airframe;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Design;
import foamfront.model.design.Drive;
import foamfront.model.design.Tail;
import foamfront.model.fabrication.CarLoad;
import foamfront.model.fabrication.FlatPatterns;
import foamfront.model.fabrication.PartsList;
import foamfront.model.fabrication.SheetNester;
import foamfront.model.factors.Factors;
import foamfront.model.flight.Performance;
import foamfront.model.flight.SlipstreamLift;
import foamfront.model.flight.TrimmedFlight;
import foamfront.model.mass.Balance;
import foamfront.model.mass.MassBreakdown;
import foamfront.model.mishap.Mishap;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.propulsion.PowerTrain;
import foamfront.model.section.SectionPolar;
import foamfront.model.structure.FlightLoads;
import foamfront.model.structure.SpanLoad;
import foamfront.model.structure.StructureMargins;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One worker's scratch: kernels, the design in hand and what the stages have found of it so far. */
@SuppressWarnings(
        "NullAway.Init") // what the stages find is set by them, in their fixed order, before anything reads it
final class Workbench {
    private static final int MEASURES = Measure.values().length;

    /** No single limit may outweigh all others. */
    private static final double MOST = 3;

    final LiftingSystem lifting = new LiftingSystem(Resolution.DEFAULT);
    final TrimmedFlight flight = new TrimmedFlight(lifting);
    final Performance performance = new Performance();
    final SlipstreamLift slipstream = new SlipstreamLift();
    final FlatPatterns patterns = new FlatPatterns();
    final SheetNester nester = new SheetNester();
    final CarLoad car = new CarLoad();
    final double[] values = new double[MEASURES];

    /** Weighed anew for each design, until an appraisal takes it along. */
    MassBreakdown masses = new MassBreakdown();

    /** Not set. */
    private static final int UNKNOWN = -1;

    /** The stage that set a measure, and whether it does not apply to this design. */
    private final int[] known = new int[MEASURES];

    private final boolean[] inapplicable = new boolean[MEASURES];

    private @Nullable PowerTrain train;
    private @Nullable Mission airOf;
    private Atmosphere air = Atmosphere.standard(0);

    private int stage;

    // Set in beginning and by the stages in their order.
    Design design;
    Mission mission;
    Factors factors;
    Airframe airframe;
    PartsList parts;
    int sheets;
    SectionPolar[] polars = new SectionPolar[0];
    final List<SectionLift> sections = new ArrayList<>(6);
    /** Of a wing and of a biplane's second. */
    final List<SpanLoad> spanLoads = List.of(new SpanLoad(), new SpanLoad());
    /** C_l of full ailerons, flaps up; 0 without. */
    double rollPower;

    /** C_n of full rudder. */
    double rudderYaw;

    /** Fastest that flight goes, m/s: level at 30 % charge, or a glider's dive. */
    double topSpeed;

    double neutralPoint;
    Balance balance;
    double bodyMoment;
    StructureMargins structure;
    FlightLoads loads;
    Mishap mishap;

    Workbench(Design design, Mission mission, Factors factors) {
        begin(design, mission, factors);
    }

    /** Takes up another design. */
    void begin(Design design, Mission mission, Factors factors) {
        this.design = design;
        this.mission = mission;
        this.factors = factors;
        if (airOf == null || !airOf.site().equals(mission.site())) {
            airOf = mission;
            air = Atmosphere.at(mission.site().elevation(), mission.site().temperature());
        }
        Arrays.fill(values, Double.NaN);
        Arrays.fill(known, UNKNOWN);
        stage = 0;
        Arrays.fill(inapplicable, false);
    }

    /** Runs a stage; what it sets is its own. */
    void run(int stage) {
        this.stage = stage;
        Stages.at(stage).run(this);
    }

    Atmosphere air() {
        return air;
    }

    /** The power train, made on first use and turned into each design's after. */
    PowerTrain train(Drive plant, int motors, double auxiliaryCurrent) {
        PowerTrain ready = train;
        if (ready == null) {
            ready = PowerTrain.of(plant, motors, factors, air.density(), auxiliaryCurrent);
            train = ready;
        } else {
            ready.prepare(plant, motors, factors, air.density(), auxiliaryCurrent);
        }
        return ready;
    }

    void set(Measure measure, double value) {
        values[measure.ordinal()] = value;
        known[measure.ordinal()] = stage;
    }

    /** Says that the design cannot have this measure: no take-off without wheels. */
    void rule(Measure measure) {
        inapplicable[measure.ordinal()] = true;
        known[measure.ordinal()] = UNKNOWN;
    }

    double get(Measure measure) {
        return values[measure.ordinal()];
    }

    boolean applies(Measure measure) {
        return !inapplicable[measure.ordinal()];
    }

    /** The mission's limits for this design, in their order. */
    List<Bound> bounds() {
        return mission.limits().of(design.tail() instanceof Tail.None);
    }

    /** The violations of the limits of this design, summed by the stage that set the measure; one that none set is wholly missed. */
    double[] excesses() {
        double[] sums = new double[Stages.count()];
        List<Bound> bounds = bounds();
        for (int i = 0; i < bounds.size(); i++) {
            Bound bound = bounds.get(i);
            if (applies(bound.measure())) {
                int at = bound.measure().ordinal();
                sums[known[at] == UNKNOWN ? stage : known[at]] += Math.min(MOST, bound.violation(values[at]));
            }
        }
        return sums;
    }
}
