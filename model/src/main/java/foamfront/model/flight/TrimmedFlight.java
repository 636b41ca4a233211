package foamfront.model.flight;

import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.ParasiteDrag;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.factors.Factors;
import foamfront.model.propulsion.Slipstream;
import foamfront.model.section.SectionPolar;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One balanced aeroplane trimmed in pitch, at any level speed.
 *
 * <p>Lift and pitching moment of the lifting system are linear in incidence and elevator, so trim is too (derived): with
 * C_m(α, δ) = 0 about the balance point, body moment included,
 *
 * <pre>  α = α₀ + α₁ C_L,   δ = δ₀ + δ₁ C_L,   c_l = c₀ + c₁ C_L on every strip.</pre>
 *
 * Stall is the first strip of wing or tail to reach the end of its section at its own Reynolds number. Drag sums the strips' profile drag
 * at their own lift and Reynolds number, the far-wake induced drag of the trimmed loading (trim drag by construction), fins
 * and parasite drag. Lift is taken equal to weight; thrust's share is neglected.
 *
 * <p>Belongs to one worker; what it says stands until the next {@link #prepare}. Nothing is allocated after construction.
 */
public final class TrimmedFlight {
    private static final int MOST_STRIPS = 64;

    /** Fixed-point steps for the stall speed: maximum lift changes slowly with speed, so each step gains a digit. */
    private static final int STALL_STEPS = 6;

    /** Strips whose lift changes less than this with the aeroplane's never stall. */
    private static final double UNLOADED = 1e-6;

    private static final int SCRUBBING_ROUNDS = 2;

    private final double[] atRest = new double[MOST_STRIPS];
    private final double[] perLift = new double[MOST_STRIPS];
    private final double[] area = new double[MOST_STRIPS];
    private final double[] reynoldsShift = new double[MOST_STRIPS];
    private final double[] place = new double[MOST_STRIPS];
    private final SectionPolar[] polar = new SectionPolar[MOST_STRIPS];

    private LiftingSystem lifting;
    private Factors factors = Factors.NOMINAL;
    private int wingStrips;
    private int liftingStrips;
    private int strips;
    private double density;
    private double weight;
    private double reference;
    private double span;
    private int streams = 1;
    private @Nullable ParasiteDrag drags;

    private double incidenceAtRest;
    private double incidencePerLift;
    private double elevatorAtRest;
    private double elevatorPerLift;

    private double maximumLift;
    private double stallSpeed;
    private double stallPlace;

    private double cleanDrag;
    private double profile;
    private double induced;
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
     * @param bodyMoment dC_m/dα of the bodies, per rad, on reference area and chord
     * @param drags parasite drag area against speed
     * @param weight N
     */
    public void prepare(
            LiftingSystem lifting,
            List<Surface> surfaces,
            SectionPolar[] polars,
            double balanceX,
            double bodyMoment,
            ParasiteDrag drags,
            Atmosphere air,
            double weight,
            Factors factors) {
        this.lifting = lifting;
        this.factors = factors;
        this.weight = weight;
        density = air.density();
        reference = lifting.referenceArea();
        span = lifting.referenceSpan();
        this.drags = drags;
        trimLine(balanceX, bodyMoment);
        double logViscosity = StrictMath.log(air.kinematicViscosity());
        strips = 0;
        for (int s = 0; s < lifting.surfaceCount(); s++) {
            Surface surface = surfaces.get(lifting.listed(s));
            double semispan = 0.5 * surface.span();
            for (int i = lifting.firstStrip(s); i < lifting.endStrip(s); i++) {
                addStrip(i, polars[lifting.listed(s)], lifting.stripY(i) / semispan, logViscosity);
            }
            if (surface.role() != Surface.Role.TAIL) {
                wingStrips = strips;
            }
        }
        liftingStrips = strips;
        for (int i = 0; i < surfaces.size(); i++) {
            Surface surface = surfaces.get(i);
            if (surface.role() == Surface.Role.FIN) {
                addFin(surface, polars[i], logViscosity);
            }
        }
        stall();
    }

    private void trimLine(double balanceX, double bodyMoment) {
        double c0 = lifting.liftCoefficient(0, 0, 0);
        double ca = lifting.liftSlope();
        double cd = lifting.elevatorLiftSlope();
        double m0 = lifting.fixedMoment(balanceX);
        double ma = lifting.momentSlope(balanceX) + bodyMoment;
        double md = lifting.elevatorMomentSlope(balanceX);
        if (md == 0) {
            incidenceAtRest = -c0 / ca;
            incidencePerLift = 1 / ca;
            elevatorAtRest = 0;
            elevatorPerLift = 0;
            return;
        }
        // From C_m = 0: δ = -(m0 + ma α) / md; put into C_L = c0 + ca α + cd δ.
        double slope = ca - cd * ma / md;
        incidencePerLift = 1 / slope;
        incidenceAtRest = (cd * m0 / md - c0) / slope;
        elevatorAtRest = -(m0 + ma * incidenceAtRest) / md;
        elevatorPerLift = -ma * incidencePerLift / md;
    }

    private void addStrip(int strip, SectionPolar section, double share, double logViscosity) {
        double none = lifting.stripLiftCoefficient(strip, incidenceAtRest, elevatorAtRest, 0);
        double one = lifting.stripLiftCoefficient(
                strip, incidenceAtRest + incidencePerLift, elevatorAtRest + elevatorPerLift, 0);
        atRest[strips] = none;
        perLift[strips] = one - none;
        area[strips] = 2 * lifting.stripArea(strip);
        reynoldsShift[strips] = StrictMath.log(lifting.stripChord(strip)) - logViscosity;
        place[strips] = share;
        polar[strips] = section;
        strips++;
    }

    private void addFin(Surface fin, SectionPolar section, double logViscosity) {
        atRest[strips] = 0;
        perLift[strips] = 0;
        area[strips] = fin.area();
        reynoldsShift[strips] = StrictMath.log(fin.meanAerodynamicChord()) - logViscosity;
        place[strips] = 0;
        polar[strips] = section;
        strips++;
    }

    private void stall() {
        double speed = StrictMath.sqrt(2 * weight / (density * reference));
        for (int step = 0; step < STALL_STEPS; step++) {
            maximumLift = liftAtFirstStall(StrictMath.log(speed));
            speed = Math.sqrt(2 * weight / (density * reference * maximumLift));
        }
        stallSpeed = speed;
    }

    private double liftAtFirstStall(double logSpeed) {
        double least = 10;
        for (int i = 0; i < liftingStrips; i++) {
            double lift = liftAtStall(i, logSpeed + reynoldsShift[i]);
            if (lift < least) {
                least = lift;
                stallPlace = i < wingStrips ? place[i] : 0;
            }
        }
        return Math.max(0.05, least);
    }

    /** C_L at which one strip reaches the end of its section that more lift drives it to. */
    private double liftAtStall(int i, double logReynolds) {
        double slope = perLift[i];
        if (Math.abs(slope) < UNLOADED) {
            return Double.POSITIVE_INFINITY;
        }
        double end = slope > 0 ? polar[i].maximumLift(logReynolds) : polar[i].minimumLift(logReynolds);
        return (factors.maximumLift() * end - atRest[i]) / slope;
    }

    /** Level-flight drag at a speed (m/s), N; its parts then stand in {@link #profileDrag()} and so on. */
    public double drag(double speed) {
        return drag(speed, liftCoefficient(speed));
    }

    /** Drag at a speed (m/s) and lift coefficient, N. */
    public double drag(double speed, double lift) {
        double logSpeed = StrictMath.log(speed);
        double sum = 0;
        for (int i = 0; i < strips; i++) {
            sum += area[i] * polar[i].drag(atRest[i] + perLift[i] * lift, logSpeed + reynoldsShift[i]);
        }
        profile = factors.sectionDrag() * sum / reference;
        induced = lifting.inducedDrag(incidence(lift), elevator(lift), 0);
        parasite = factors.parasiteDrag() * drags(logSpeed) / reference;
        cleanDrag = 0.5 * density * speed * speed * reference * (profile + induced + parasite);
        return cleanDrag;
    }

    /**
     * Level-flight drag with a propeller ahead of the body, N: its slipstream scrubs the body and what of the wing lies behind the
     * disc with a higher dynamic pressure, {@link Slipstream} far behind for the thrust that balances the drag. The thrust
     * needed and the slipstream depend on each other; two rounds bring them within 1 % (derived: each round gains the ratio of
     * scrubbed to whole drag, about a fifth).
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

    /** How many discs share the area given to {@link #poweredDrag}: one lies ahead of the body, two ahead of the wing alone. */
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
        double added = Slipstream.far(thrust, speed, discArea, density);
        return (Slipstream.pressureRatio(speed, added) - 1) * scrubbed;
    }

    /** Whether every wing strip is inside its section's measured Reynolds numbers at a speed. */
    public boolean insideSectionData(double speed) {
        double logSpeed = StrictMath.log(speed);
        for (int i = 0; i < wingStrips; i++) {
            if (!polar[i].inside(logSpeed + reynoldsShift[i])) {
                return false;
            }
        }
        return true;
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
        return incidenceAtRest + incidencePerLift * lift;
    }

    /** Elevator (elevon) trimmed at a lift coefficient, trailing edge down positive, rad. */
    public double elevator(double lift) {
        return elevatorAtRest + elevatorPerLift * lift;
    }

    /** Trimmed maximum lift coefficient, power off. */
    public double maximumLift() {
        return maximumLift;
    }

    /** m/s. */
    public double stallSpeed() {
        return stallSpeed;
    }

    /** Where the stall begins, fraction of the semispan. */
    public double stallPlace() {
        return stallPlace;
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

    /** kg/m³. */
    public double density() {
        return density;
    }

    /** m². */
    public double referenceArea() {
        return reference;
    }
}
