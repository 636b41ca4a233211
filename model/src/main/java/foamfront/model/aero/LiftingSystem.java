package foamfront.model.aero;

import foamfront.model.airframe.Surface;
import java.util.Arrays;
import java.util.List;

/**
 * Lift, pitching moment and induced drag of wing, second wing and tail, level or canted, in one linear system;
 * {@link #lateral} has its rolling and yawing.
 *
 * <p>Extended lifting line: horseshoe vortices on the quarter-chord of each chordwise row, no flow through the surface
 * at the row's three-quarter point, trailing legs straight aft along the body axis. One row is Weissinger's method
 * (J. Weissinger, "The Lift Distribution of Swept-Back Wings", NACA TM-1120, 1947, from memory), several rows the vortex
 * lattice. Only mirrored surfaces that are not fins carry lift here; the end-plate effect of tip fins is left out.
 *
 * <p>The flow is linear in four columns - unit incidence, fixed twist and camber, unit elevator or elevon, unit flap - so
 * every condition is α × incidence + fixed + δₑ × elevator + δ_f × flap, δ_f what is left of the flap's deflection
 * ({@link PlainFlap#worth}). Induced drag is the far-wake quadratic form
 * D / q = -2 Σ Γᵢ wᵢ Δsᵢ over the half wake (M. M. Munk, NACA R-121, 1921), kept as a 4 × 4 matrix.
 *
 * <p>A surface's share ({@link #surfaceLift}) is its lift with the others beside it; for a wing alone solve the wing
 * alone. Lift limits of strips are linear in α too: {@link #stripLiftSlope} and {@link #stripLiftCoefficient} at α = 0.
 *
 * <p>Owned by one worker; results stand until the next {@link #solve}. Areas and lengths in m, angles in rad; forces are
 * divided by dynamic pressure. Nothing is allocated after construction.
 */
public final class LiftingSystem {
    /** Surfaces besides fins that one aeroplane can have. */
    public static final int MOST_SURFACES = 4;

    private static final int COLUMNS = 4;
    private static final int INCIDENCE = 0;
    private static final int FIXED = 1;
    private static final int ELEVATOR = 2;
    private static final int FLAP = 3;

    private final int rows;
    private final Lattice lattice;
    private final Influence influence;
    private final LateralSystem lateral;
    private final WingFlow wingFlow = new WingFlow();
    private final double[] matrix;

    /** Circulation per unit speed of each strip, summed over its rows, by columns, m. */
    private final double[] strength;

    /** Lift, moment about the origin and lift times height, over dynamic pressure: whole, then by surface. */
    private final double[] lift = new double[COLUMNS * (1 + MOST_SURFACES)];

    private final double[] nose = new double[COLUMNS * (1 + MOST_SURFACES)];

    /** What the sections' own moments are of it. */
    private final double[] section = new double[COLUMNS * (1 + MOST_SURFACES)];

    private final double[] height = new double[COLUMNS * (1 + MOST_SURFACES)];
    private final double[] drag = new double[COLUMNS * COLUMNS];
    private double referenceArea;
    private double referenceChord;
    private double referenceSpan;

    public LiftingSystem(Resolution resolution) {
        rows = resolution.rows();
        int strips = MOST_SURFACES * resolution.mostStrips();
        lattice = new Lattice(resolution, MOST_SURFACES);
        influence = new Influence(resolution, lattice, strips);
        lateral = new LateralSystem(lattice, strips);
        matrix = new double[rows * strips * (rows * strips + COLUMNS)];
        strength = new double[COLUMNS * strips];
    }

    /** Solves for a new aeroplane whose controls keep their whole theoretical effectiveness. */
    public void solve(List<Surface> surfaces, List<SectionLift> sections) {
        solve(surfaces, sections, 1);
    }

    /**
     * Solves for a new aeroplane.
     *
     * @param surfaces all surfaces; fins and unmirrored ones are passed over
     * @param sections one per surface, in the same order
     * @param elevatorEfficiency share of the theoretical effectiveness that elevator and elevons keep, see {@link PlainFlap}
     */
    public void solve(List<Surface> surfaces, List<SectionLift> sections, double elevatorEfficiency) {
        lattice.fill(surfaces, sections, elevatorEfficiency);
        int n = rows * lattice.strips;
        int stride = n + COLUMNS;
        influence.fill(matrix, stride, lateral.matrix(), lateral.stride());
        conditions(n, stride);
        DenseSolver.solve(matrix, n, stride);
        references(surfaces);
        lateral.solve(referenceArea, referenceSpan);
        loads(n, stride);
        wakeDrag();
    }

    /** The stream's velocity through the surface, with its sign turned. */
    private void conditions(int n, int stride) {
        int strips = lattice.strips;
        for (int r = 0; r < rows; r++) {
            for (int i = 0; i < strips; i++) {
                int at = (r * strips + i) * stride + n;
                matrix[at + INCIDENCE] = -lattice.normalZ[i];
                matrix[at + FIXED] = -lattice.incidence[i];
                matrix[at + ELEVATOR] = -lattice.elevator[i];
                matrix[at + FLAP] = -lattice.flap[i];
            }
        }
    }

    private void references(List<Surface> surfaces) {
        referenceArea = 0;
        referenceChord = 0;
        referenceSpan = 0;
        for (int i = 0; i < surfaces.size(); i++) {
            Surface surface = surfaces.get(i);
            if (surface.role() == Surface.Role.WING || surface.role() == Surface.Role.SECOND_WING) {
                double area = surface.area();
                referenceArea += area;
                referenceChord += area * surface.meanAerodynamicChord();
                referenceSpan = Math.max(referenceSpan, surface.span());
            }
        }
        referenceChord /= referenceArea;
    }

    private void loads(int n, int stride) {
        Arrays.fill(lift, 0);
        Arrays.fill(nose, 0);
        Arrays.fill(section, 0);
        Arrays.fill(height, 0);
        for (int s = 0; s < lattice.surfaces; s++) {
            int of = COLUMNS * (1 + s);
            for (int i = lattice.firstStrip[s]; i < lattice.firstStrip[s + 1]; i++) {
                addSection(i, of);
                for (int b = 0; b < COLUMNS; b++) {
                    strength[COLUMNS * i + b] = addVortices(i, s, b, n, stride);
                }
            }
            for (int b = 0; b < COLUMNS; b++) {
                lift[b] += lift[of + b];
                nose[b] += nose[of + b];
                height[b] += height[of + b];
            }
        }
    }

    /** Adds the strip's rows to its surface's loads; their circulation together. */
    private double addVortices(int i, int s, int b, int n, int stride) {
        int strips = lattice.strips;
        int node = i + s;
        double width = lattice.nodeY[node + 1] - lattice.nodeY[node];
        double sum = 0;
        double moment = 0;
        for (int r = 0; r < rows; r++) {
            double circulation = matrix[(r * strips + i) * stride + n + b];
            sum += circulation;
            moment += circulation * 0.5 * (influence.vortexX(r, node) + influence.vortexX(r, node + 1));
        }
        int place = COLUMNS * (1 + s) + b;
        lift[place] += 4 * width * sum;
        nose[place] -= 4 * width * moment;
        height[place] += 4 * width * sum * 0.5 * (lattice.nodeZ[node] + lattice.nodeZ[node + 1]);
        return sum;
    }

    /** Adds the moments that sections have at no lift, both halves. */
    private void addSection(int i, int of) {
        double chord = lattice.chord[i];
        double factor = 2 * chord * chord * lattice.breadth[i] * lattice.normalZ[i];
        section[of + FIXED] += factor * lattice.moment[i];
        section[of + ELEVATOR] += factor * lattice.elevatorMoment[i];
        section[of + FLAP] += factor * lattice.flapMoment[i];
        nose[of + FIXED] += factor * lattice.moment[i];
        nose[of + ELEVATOR] += factor * lattice.elevatorMoment[i];
        nose[of + FLAP] += factor * lattice.flapMoment[i];
    }

    private void wakeDrag() {
        int strips = lattice.strips;
        Arrays.fill(drag, 0);
        for (int i = 0; i < strips; i++) {
            double w0 = 0;
            double w1 = 0;
            double w2 = 0;
            double w3 = 0;
            for (int j = 0; j < strips; j++) {
                double induced = influence.wake[i * strips + j];
                w0 += induced * strength[COLUMNS * j];
                w1 += induced * strength[COLUMNS * j + 1];
                w2 += induced * strength[COLUMNS * j + 2];
                w3 += induced * strength[COLUMNS * j + 3];
            }
            for (int b = 0; b < COLUMNS; b++) {
                double factor = -2 * strength[COLUMNS * i + b] * lattice.breadth[i];
                drag[COLUMNS * b] += factor * w0;
                drag[COLUMNS * b + 1] += factor * w1;
                drag[COLUMNS * b + 2] += factor * w2;
                drag[COLUMNS * b + 3] += factor * w3;
            }
        }
    }

    /** Rolling and yawing by the same surfaces. */
    public LateralSystem lateral() {
        return lateral;
    }

    /** Area of the wings in their own planes, to which coefficients refer, m². */
    public double referenceArea() {
        return referenceArea;
    }

    /** Mean aerodynamic chord of the wings, weighted by area, m. */
    public double referenceChord() {
        return referenceChord;
    }

    /** Largest wing span, m. */
    public double referenceSpan() {
        return referenceSpan;
    }

    /** What the wings, those of {@code surfaces} as solved, do to the air along the body; good until asked again. */
    WingFlow wingFlow(List<Surface> surfaces) {
        wingFlow.take(surfaces, this);
        return wingFlow;
    }

    /** C_Lα of the whole system, per rad. */
    public double liftSlope() {
        return lift[INCIDENCE] / referenceArea;
    }

    /** dC_L/dδ of elevator or elevons, per rad. */
    public double elevatorLiftSlope() {
        return lift[ELEVATOR] / referenceArea;
    }

    /** dC_L/dδ of flaps, per rad. */
    public double flapLiftSlope() {
        return lift[FLAP] / referenceArea;
    }

    /** C_L at an incidence of the body axis with elevator and flap deflected, trailing edge down positive. */
    public double liftCoefficient(double alpha, double elevator, double flap) {
        return combine(lift, 0, alpha, elevator, flap) / referenceArea;
    }

    /** Incidence of the body axis at which the system lifts C_L, rad. */
    public double incidence(double liftCoefficient, double elevator, double flap) {
        return (liftCoefficient * referenceArea - combine(lift, 0, 0, elevator, flap)) / lift[INCIDENCE];
    }

    /**
     * C_m about a point, nose up positive: lift at its lever, section moments, and the forward tilt of lift by α acting
     * at its height above the point (derived, to second order; induced drag's own lever is left out).
     */
    public double momentCoefficient(double alpha, double elevator, double flap, double x, double z) {
        double force = combine(lift, 0, alpha, elevator, flap);
        double aboutX = combine(nose, 0, alpha, elevator, flap) + x * force;
        double tilt = alpha * (combine(height, 0, alpha, elevator, flap) - z * force);
        return (aboutX - tilt) / (referenceArea * referenceChord);
    }

    /** dC_m/dα about x without the tilt of lift, per rad. */
    public double momentSlope(double x) {
        return (nose[INCIDENCE] + x * lift[INCIDENCE]) / (referenceArea * referenceChord);
    }

    /** dC_m/dδ of elevator or elevons about x, per rad. */
    public double elevatorMomentSlope(double x) {
        return (nose[ELEVATOR] + x * lift[ELEVATOR]) / (referenceArea * referenceChord);
    }

    /** dC_m/dδ of flaps about x, per rad. */
    public double flapMomentSlope(double x) {
        return (nose[FLAP] + x * lift[FLAP]) / (referenceArea * referenceChord);
    }

    /** C_m about x at α = 0 with controls neutral. */
    public double fixedMoment(double x) {
        return (nose[FIXED] + x * lift[FIXED]) / (referenceArea * referenceChord);
    }

    /** x of the whole system's neutral point, bodies left out, m. */
    public double neutralPoint() {
        return -nose[INCIDENCE] / lift[INCIDENCE];
    }

    /** C_Di by the far wake. */
    public double inducedDrag(double alpha, double elevator, double flap) {
        double sum = 0;
        for (int b = 0; b < COLUMNS; b++) {
            sum += weight(b, alpha, elevator, flap) * combine(drag, COLUMNS * b, alpha, elevator, flap);
        }
        return sum / referenceArea;
    }

    /** C_L² S / (π b² C_Di) on the largest wing's span. */
    public double spanEfficiency(double alpha, double elevator, double flap) {
        double coefficient = liftCoefficient(alpha, elevator, flap);
        return coefficient
                * coefficient
                * referenceArea
                / (Math.PI * referenceSpan * referenceSpan * inducedDrag(alpha, elevator, flap));
    }

    /** Surfaces that carry lift. */
    public int surfaceCount() {
        return lattice.surfaces;
    }

    /** Place in the solved list of the n-th lifting surface. */
    public int listed(int surface) {
        return lattice.listed[surface];
    }

    /** Lift of one surface with the others beside it, over dynamic pressure, m². */
    public double surfaceLift(int surface, double alpha, double elevator, double flap) {
        return combine(lift, COLUMNS * (1 + surface), alpha, elevator, flap);
    }

    /** Lift of one surface per rad of incidence, over dynamic pressure, m². */
    public double surfaceLiftSlope(int surface) {
        return lift[COLUMNS * (1 + surface)];
    }

    /** Moment of one surface's sections about their quarter chords at no lift, over dynamic pressure, nose up positive, m³. */
    public double surfaceSectionMoment(int surface, double elevator, double flap) {
        return combine(section, COLUMNS * (1 + surface), 0, elevator, flap);
    }

    /** First strip of a surface; strips are counted from root to tip, surface by surface. */
    public int firstStrip(int surface) {
        return lattice.firstStrip[surface];
    }

    /** One past the last strip of a surface. */
    public int endStrip(int surface) {
        return lattice.firstStrip[surface + 1];
    }

    /** Section lift coefficient of a strip: its circulation's lift over its own chord. */
    public double stripLiftCoefficient(int strip, double alpha, double elevator, double flap) {
        return 2 * combine(strength, COLUMNS * strip, alpha, elevator, flap) / lattice.chord[strip];
    }

    /** Section lift coefficient of a strip per rad of incidence. */
    public double stripLiftSlope(int strip) {
        return 2 * strength[COLUMNS * strip] / lattice.chord[strip];
    }

    /** Change of a strip's maximum lift coefficient per rad of elevon: up-elevon takes it away. */
    public double stripMaximumShift(int strip) {
        return lattice.maximumShift[strip];
    }

    /** Change of a strip's maximum lift coefficient per rad of flap at its whole theoretical effectiveness. */
    public double stripFlapMaximumShift(int strip) {
        return lattice.flapMaximumShift[strip];
    }

    /** y of a strip's control point, m. */
    public double stripY(int strip) {
        return lattice.y[strip];
    }

    /** Chord at a strip's control point, m. */
    public double stripChord(int strip) {
        return lattice.chord[strip];
    }

    /** Breadth of a strip in its own plane, m. */
    public double stripBreadth(int strip) {
        return lattice.breadth[strip];
    }

    /** Area of a strip on one side, m². */
    public double stripArea(int strip) {
        return lattice.chord[strip] * lattice.breadth[strip];
    }

    /** Upward velocity that the vortices induce at a point, per unit speed. */
    public double upwash(double alpha, double elevator, double flap, double x, double y, double z) {
        int n = rows * lattice.strips;
        int stride = n + COLUMNS;
        double sum = 0;
        for (int b = 0; b < COLUMNS; b++) {
            sum += weight(b, alpha, elevator, flap) * influence.upwash(matrix, n + b, stride, x, y, z);
        }
        return sum;
    }

    private static double weight(int column, double alpha, double elevator, double flap) {
        if (column == INCIDENCE) {
            return alpha;
        }
        if (column == FIXED) {
            return 1;
        }
        return column == ELEVATOR ? elevator : flap;
    }

    private static double combine(double[] columns, int at, double alpha, double elevator, double flap) {
        return columns[at] * alpha + columns[at + 1] + columns[at + 2] * elevator + columns[at + 3] * flap;
    }
}
