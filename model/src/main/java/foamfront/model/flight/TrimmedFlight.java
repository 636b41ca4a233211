package foamfront.model.flight;

import foamfront.model.aero.LeadingEdgeVortex;
import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.ParasiteDrag;
import foamfront.model.aero.Winglets;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.factors.Factors;
import foamfront.model.factors.Spread;
import foamfront.model.propulsion.Slipstream;
import foamfront.model.section.SectionPolar;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * One balanced aeroplane trimmed in pitch, at any level speed.
 *
 * <p>Trim and the lift of every strip are straight lines in C_L ({@link TrimLine}, {@link Strips}). Stall is the first strip of
 * wing or tail to reach the end of its section at its own Reynolds number; it is taken at the foremost balance point that
 * flight can reach, where trim asks the most of the elevator and takes the most lift. Drag sums the strips' profile drag at their
 * own lift and Reynolds number, the far-wake induced drag of the trimmed loading (trim drag by construction), fins and
 * parasite drag, all at the balance point of take-off. Over a delta's edge vortices ({@link LeadingEdgeVortex}) trim is
 * {@link VortexTrim}'s, maximum lift its usable incidence's, and C_L tan α takes the place of induced drag and of what sections
 * drag for lift; in proportion where the vortices are partial. Lift is taken equal to weight; thrust's share is neglected.
 *
 * <p>Belongs to one worker; what it says stands until the next {@link #prepare}. Nothing is allocated after construction.
 */
public final class TrimmedFlight {
    /** A balance point that moves less than this stays, m. */
    private static final double LEAST_SHIFT = 1e-6;

    private static final int SCRUBBING_ROUNDS = 2;

    private final TrimLine trim = new TrimLine();
    private final Strips strips = new Strips();
    private final TrimLine forwardTrim = new TrimLine();
    private final Strips forwardStrips = new Strips();

    private final VortexTrim vortexTrim = new VortexTrim();
    private final VortexTrim forwardVortexTrim = new VortexTrim();

    private LiftingSystem lifting;
    private @Nullable LeadingEdgeVortex edge;
    private Factors factors = Factors.NOMINAL;
    private double density;
    private double weight;
    private double reference;
    private double span;
    private int streams = 1;
    private @Nullable ParasiteDrag drags;

    private final StallPoint stall = new StallPoint();
    private final DoubleUnaryOperator vortices = this::withVortices;
    private final HighLift highLift = new HighLift(this);
    private List<Surface> surfaces = List.of();
    private SectionPolar[] polars = new SectionPolar[0];
    private double balanceX;
    private double forwardX;
    private double bodyMoment;
    private double viscosity;
    private double flaps = Double.NaN;

    private double cleanDrag;
    private double profile;
    private double induced;
    private double inducedShare = 1;
    private double parasite;

    public TrimmedFlight(LiftingSystem lifting) {
        this.lifting = lifting;
    }

    /**
     * Takes over a solved lifting system.
     *
     * @param surfaces as solved
     * @param polars of each surface's section
     * @param balanceX balance point from the nose, m
     * @param forwardX foremost balance point that flight can reach, at most {@code balanceX}, m
     * @param bodyMoment dC_m/dα of the bodies, per rad, on reference area and chord
     * @param edge vortices of a delta, or null
     * @param drags parasite drag area against speed
     * @param weight N
     */
    public void prepare(
            LiftingSystem lifting,
            List<Surface> surfaces,
            SectionPolar[] polars,
            double balanceX,
            double forwardX,
            double bodyMoment,
            @Nullable LeadingEdgeVortex edge,
            ParasiteDrag drags,
            Atmosphere air,
            double weight,
            Factors factors) {
        this.lifting = lifting;
        this.factors = factors;
        this.weight = weight;
        this.edge = edge;
        streams = 1;
        flaps = Double.NaN;
        density = air.density();
        reference = lifting.referenceArea();
        span = lifting.referenceSpan();
        this.drags = drags;
        // A delta's fins stand on its tips, too short there for winglets.
        inducedShare = edge == null ? Winglets.inducedShare(Winglets.heightOverSpan(surfaces)) : 1;
        viscosity = air.kinematicViscosity();
        this.surfaces = surfaces;
        this.polars = polars;
        this.balanceX = balanceX;
        this.forwardX = Math.min(forwardX, balanceX);
        this.bodyMoment = bodyMoment;
        trim.solve(lifting, balanceX, bodyMoment);
        strips.lay(lifting, surfaces, polars, trim, 0, viscosity, factors);
        if (edge != null) {
            vortexTrim.solve(lifting, edge, balanceX, bodyMoment);
            forwardVortexTrim.solve(lifting, edge, this.forwardX, bodyMoment);
        }
        if (balanceX - forwardX < LEAST_SHIFT) {
            stall.find(trim, strips, weight, density, reference, vortices);
        } else {
            forwardTrim.solve(lifting, forwardX, bodyMoment);
            forwardStrips.lay(lifting, surfaces, polars, forwardTrim, 0, viscosity, factors);
            stall.find(forwardTrim, forwardStrips, weight, density, reference, vortices);
        }
    }

    /** The same aeroplane with flaps let down to a deflection (rad); stands until the next such call. */
    public HighLift lowered(double deflection) {
        // Several stages ask for the same setting one after the other.
        if (deflection != flaps) {
            highLift.lower(lifting, surfaces, polars, balanceX, forwardX, bodyMoment, deflection);
            flaps = deflection;
        }
        return highLift;
    }

    /** Maximum lift of attached flow raised to that of the vortices, in proportion to their share. */
    private double withVortices(double attached) {
        LeadingEdgeVortex vortices = edge;
        if (vortices == null) {
            return attached;
        }
        double ratio = LeadingEdgeVortex.MOST_LIFT_SPREAD / LeadingEdgeVortex.MOST_LIFT;
        double factor = Strips.widened(factors.maximumLift(), ratio / Spread.MAXIMUM_LIFT.halfWidth());
        double flown = forwardVortexTrim.liftAtUsable(vortices.usable());
        double most = Math.max(Strips.LEAST_LIFT, Math.min(factor * LeadingEdgeVortex.MOST_LIFT, flown));
        return attached + vortices.share() * (most - attached);
    }

    /** Level-flight drag at a speed (m/s), N; its parts then stand in {@link #profileDrag()} and so on. */
    public double drag(double speed) {
        return drag(speed, liftCoefficient(speed));
    }

    /** Drag at a speed (m/s) and lift coefficient, N. */
    public double drag(double speed, double lift) {
        double logSpeed = StrictMath.log(speed);
        profile = strips.dragArea(lift, logSpeed) / reference;
        induced = inducedDrag(lift);
        if (edge != null) {
            profile += edge.share() * (strips.idleDragArea(logSpeed) / reference - profile);
            induced += edge.share() * (vortexTrim.normalForceDrag(lift) - induced);
        }
        parasite = parasiteDrag(logSpeed);
        cleanDrag = 0.5 * density * speed * speed * reference * (profile + induced + parasite);
        return cleanDrag;
    }

    /**
     * Level-flight drag with a propeller ahead of the body, N: its slipstream scrubs the body and what of the wing lies
     * behind the disc with a higher dynamic pressure, {@link Slipstream} far behind for the thrust that balances the
     * drag. The thrust needed and the slipstream depend on each other; two rounds bring them within 1 % (derived: each
     * round gains the ratio of scrubbed to whole drag, about a fifth).
     *
     * @param discArea of the propeller, m²; 0 where nothing lies in its stream
     */
    public double poweredDrag(double speed, double discArea) {
        double clean = drag(speed);
        double scrubbed = scrubbed(speed, discArea);
        double drag = clean;
        for (int round = 0; round < SCRUBBING_ROUNDS && discArea > 0; round++) {
            drag = clean + slipstreamDrag(scrubbed, drag, speed, discArea);
        }
        return drag;
    }

    /** Drag at a lift coefficient with the slipstream of a given thrust (N) of a propeller ahead of the body, N. */
    public double pulledDrag(double thrust, double speed, double lift, double discArea) {
        double clean = drag(speed, lift);
        return clean + slipstreamDrag(scrubbed(speed, discArea), thrust, speed, discArea);
    }

    /** How many discs share the area given to {@link #poweredDrag}, 1 after {@link #prepare}: one lies ahead of the body, two ahead of the wing alone. */
    public void streams(int count) {
        streams = count;
    }

    /** Of the last {@link #drag}, taken at this speed, what lies in the stream of a propeller ahead, N. */
    double scrubbed(double speed, double discArea) {
        double share = Math.min(1, 2 * streams * Math.sqrt(discArea / streams / Math.PI) / span);
        double bodyShare = streams == 1 ? 1 : 0;
        return discArea > 0 ? 0.5 * density * speed * speed * reference * (bodyShare * parasite + share * profile) : 0;
    }

    /** What a slipstream of this thrust adds to scrubbed drag, N. */
    double slipstreamDrag(double scrubbed, double thrust, double speed, double discArea) {
        if (scrubbed == 0) {
            return 0;
        }
        return Slipstream.pressureGain(thrust, speed, discArea, density) * scrubbed;
    }

    /** Whether every wing strip is inside its section's measured Reynolds numbers at a speed. */
    public boolean insideSectionData(double speed) {
        return strips.insideSectionData(StrictMath.log(speed));
    }

    /** Lowest Reynolds number of a strip of wing or tail at a speed (m/s). */
    public double leastReynolds(double speed) {
        return strips.leastReynolds(StrictMath.log(speed));
    }

    /** Largest lift of a strip of wing or tail in level flight at a speed (m/s), over that of its section's stall. */
    public double greatestLiftShare(double speed) {
        double lift = liftCoefficient(speed);
        double attached = strips.greatestLiftShare(lift, StrictMath.log(speed));
        return edge == null ? attached : attached + edge.share() * (lift / maximumLift() - attached);
    }

    /** Induced drag coefficient trimmed at a lift coefficient, flaps up. */
    public double inducedDrag(double lift) {
        return inducedDrag(incidence(lift), elevator(lift), 0);
    }

    double inducedDrag(double alpha, double elevator, double flap) {
        return inducedShare * lifting.inducedDrag(alpha, elevator, flap);
    }

    double parasiteDrag(double logSpeed) {
        return factors.parasiteDrag() * drags(logSpeed) / reference;
    }

    private double drags(double logSpeed) {
        ParasiteDrag sum = drags;
        return sum == null ? 0 : sum.dragArea(logSpeed);
    }

    /** C_L that carries the weight at a speed. */
    public double liftCoefficient(double speed) {
        return 2 * weight / (density * speed * speed * reference);
    }

    /** Speed at which a lift coefficient carries the weight, m/s. */
    public double speedAt(double lift) {
        return Math.sqrt(2 * weight / (density * reference * lift));
    }

    /** Incidence of the body axis trimmed at a lift coefficient, rad. */
    public double incidence(double lift) {
        return edge == null ? trim.incidence(lift) : vortexTrim.incidence(lift);
    }

    /** Elevator (elevon) trimmed at a lift coefficient, trailing edge down positive, rad. */
    public double elevator(double lift) {
        return edge == null ? trim.elevator(lift) : vortexTrim.elevator(lift);
    }

    /** dC_L/dα with the elevator held where it trims a lift coefficient, per rad. */
    public double liftSlope(double lift) {
        return edge == null ? lifting.liftSlope() : vortexTrim.liftSlope(lift);
    }

    /** dC_m/dα likewise, about the balance point and bodies included, per rad. */
    public double momentSlope(double lift) {
        return edge == null ? lifting.momentSlope(balanceX) + bodyMoment : vortexTrim.momentSlope(lift);
    }

    /** Incidence at which the linear system with the trimmed elevator carries a lift coefficient, rad: for its spread of load. */
    public double loadIncidence(double lift) {
        return edge == null ? trim.incidence(lift) : lifting.incidence(lift, elevator(lift), 0);
    }

    /** Elevator (elevon) trimmed at maximum lift, trailing edge down positive, rad. */
    public double elevatorAtStall() {
        return edge == null ? stall.elevator() : forwardVortexTrim.elevator(stall.maximumLift());
    }

    /** Trimmed maximum lift coefficient, power off. */
    public double maximumLift() {
        return stall.maximumLift();
    }

    /** The same at the Reynolds numbers of a speed, m/s. */
    double maximumLift(double speed) {
        boolean apart = balanceX - forwardX >= LEAST_SHIFT;
        return (apart ? forwardStrips : strips).liftAtFirstStall(StrictMath.log(speed));
    }

    /** m/s. */
    public double stallSpeed() {
        return stall.speed();
    }

    /** Where the stall begins, fraction of the semispan. */
    public double stallPlace() {
        return stall.place();
    }

    /** What the wing tips, outboard of 0.7 of the semispan, have left of their sections' lift where the stall begins, share. */
    public double tipReserve() {
        return stall.tipReserve();
    }

    /** Power-off drag that the last {@link #drag} or {@link #poweredDrag} found, N. */
    double lastDrag() {
        return cleanDrag;
    }

    /** Profile drag coefficient of the last {@link #drag}. */
    public double profileDrag() {
        return profile;
    }

    /** Induced drag coefficient of the last {@link #drag}. */
    public double inducedDrag() {
        return induced;
    }

    /** Parasite drag coefficient of the last {@link #drag}. */
    public double parasiteDrag() {
        return parasite;
    }

    /** N. */
    public double weight() {
        return weight;
    }

    double kinematicViscosity() {
        return viscosity;
    }

    Factors factors() {
        return factors;
    }

    /** kg/m³. */
    public double density() {
        return density;
    }

    /** m². */
    public double referenceArea() {
        return reference;
    }
}
