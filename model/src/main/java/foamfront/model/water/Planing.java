package foamfront.model.water;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

/**
 * A prismatic planing bottom in steady motion: D. Savitsky, "Hydrodynamic design of planing hulls", Marine Technology 1(1)
 * (1964). With trim τ in degrees, deadrise β in degrees, λ the mean wetted length over the beam b, C_V = V / √(g b):
 *
 * <pre>
 * C_L0 = τ^1.1 (0.012 λ^½ + 0.0055 λ^(5/2) / C_V²)
 * C_Lβ = C_L0 − 0.0065 β C_L0^0.6
 * l_p  = λ b (0.75 − 1 / (5.21 C_V² / λ² + 2.39))        from the step forward
 * D    = Δ tan τ + ½ ρ V₁² λ b² C_f / (cos β cos τ)
 * </pre>
 *
 * V₁² = V² (1 − C_Ld / (λ cos τ)) with C_Ld the dynamic part of the lift, deadrise included; C_f after Schoenherr. Fitted for 0.6 ≤
 * C_V ≤ 13, 2° ≤ τ ≤ 15°, λ ≤ 4.
 *
 * @param trim rad
 * @param speed m/s
 * @param load carried, N
 * @param wetted λ
 * @param drag N
 * @param friction the part of the drag along the bottom that is friction, N
 * @param centre of pressure ahead of the step, m
 * @param inside whether all lies inside the range of the fit
 */
public record Planing(
        double trim,
        double speed,
        double load,
        double wetted,
        double drag,
        double friction,
        double centre,
        boolean inside) {
    /** Range of C_V. */
    public static final double LEAST_SPEED = 0.6;

    static final double GREATEST_SPEED = 13;

    /** Largest λ of the fit. */
    public static final double LONGEST = 4;

    private static final double DEGREE = Math.PI / 180;
    static final double LEAST_TRIM = 2 * DEGREE;
    static final double GREATEST_TRIM = 15 * DEGREE;

    private static final double DYNAMIC = 0.012;
    private static final double BUOYANT = 0.0055;
    private static final double DEADRISE = 0.0065;
    private static final int STEPS = 12;
    private static final double CLOSE = 1e-10;

    /** What a bottom moves in. */
    public record Fluid(double density, double kinematicViscosity, double roughness) {
        /** Fresh water over taped board. */
        public static final Fluid FRESH = new Fluid(Water.DENSITY, Water.KINEMATIC_VISCOSITY, 0);
    }

    /** The bottom of {@code beam} (m) and {@code deadrise} (rad) that carries {@code load} (N) at a trim and a speed. */
    public static Planing of(double beam, double deadrise, double load, double trim, double speed, Fluid fluid) {
        double cv = speed / Math.sqrt(GRAVITY * beam);
        double pressure = 0.5 * fluid.density() * speed * speed;
        double tau = StrictMath.pow(trim / DEGREE, 1.1);
        double flat = flatLift(load / (pressure * beam * beam), deadrise);
        double wetted = wetted(flat / tau, cv);
        double dynamic = withDeadrise(tau * DYNAMIC * Math.sqrt(wetted), deadrise);
        double slowed = Math.max(0, 1 - dynamic / (wetted * StrictMath.cos(trim)));
        double mean = speed * Math.sqrt(slowed);
        double coefficient = schoenherr(mean * wetted * beam / fluid.kinematicViscosity()) + fluid.roughness();
        double friction = pressure * slowed * wetted * beam * beam * coefficient / StrictMath.cos(deadrise);
        double drag = load * StrictMath.tan(trim) + friction / StrictMath.cos(trim);
        double ratio = cv / wetted;
        double centre = wetted * beam * (0.75 - 1 / (5.21 * ratio * ratio + 2.39));
        boolean inside = cv >= LEAST_SPEED
                && cv <= GREATEST_SPEED
                && wetted <= LONGEST
                && trim >= LEAST_TRIM
                && trim <= GREATEST_TRIM;
        return new Planing(trim, speed, load, wetted, drag, friction, centre, inside);
    }

    /** C_L0 at a trim (rad). */
    static double lift(double trim, double wetted, double cv) {
        return StrictMath.pow(trim / DEGREE, 1.1)
                * (DYNAMIC * Math.sqrt(wetted) + BUOYANT * wetted * wetted * Math.sqrt(wetted) / (cv * cv));
    }

    /** C_Lβ of a bottom whose flat one has {@code flat}; never below 0. */
    static double withDeadrise(double flat, double deadrise) {
        return flat <= 0 ? 0 : Math.max(0, flat - DEADRISE * deadrise / DEGREE * StrictMath.pow(flat, 0.6));
    }

    /** C_L0 of C_Lβ, by Newton's method from above, where the curve is convex. */
    static double flatLift(double lift, double deadrise) {
        double k = DEADRISE * deadrise / DEGREE;
        if (k == 0) {
            return lift;
        }
        double flat = lift + k + StrictMath.pow(k, 2.5);
        for (int i = 0; i < STEPS; i++) {
            double power = StrictMath.pow(flat, 0.6);
            double step = (flat - k * power - lift) / (1 - 0.6 * k * power / flat);
            flat -= step;
            if (Math.abs(step) < CLOSE * flat) {
                break;
            }
        }
        return flat;
    }

    /** λ of 0.012 λ^½ + 0.0055 λ^(5/2) / C_V² = {@code asked}: Newton in √λ from above, where it is convex. */
    static double wetted(double asked, double cv) {
        double b = BUOYANT / (cv * cv);
        // Neither term alone may exceed what is asked; a fifth root above 1 is at most the fourth.
        double root = Math.min(asked / DYNAMIC, Math.max(1, Math.sqrt(Math.sqrt(asked / b))));
        for (int i = 0; i < 4 * STEPS; i++) {
            double fourth = root * root * root * root;
            double step = (DYNAMIC * root + b * fourth * root - asked) / (DYNAMIC + 5 * b * fourth);
            root -= step;
            if (Math.abs(step) < CLOSE * root) {
                break;
            }
        }
        return root * root;
    }

    /**
     * The speed at which a bottom at a trim carries a load with λ = 4 and C_V ≥ 0.6, m/s: below it the law does not hold.
     * From C_L0 = τ^1.1 (0.024 + 0.176 g b / V²), the load's own C_L0 found by repetition.
     */
    public static double slowest(double beam, double deadrise, double load, double trim) {
        double tau = StrictMath.pow(trim / DEGREE, 1.1);
        double least = LEAST_SPEED * Math.sqrt(GRAVITY * beam);
        double v = least;
        for (int i = 0; i < 4; i++) {
            double area = 0.5 * Water.DENSITY * beam * beam;
            double flat = flatLift(load / (area * v * v), deadrise) * v * v;
            double square = (flat / tau - 32 * BUOYANT * GRAVITY * beam) / (2 * DYNAMIC);
            v = Math.max(least, Math.sqrt(Math.max(0, square)));
        }
        return v;
    }

    /**
     * Nose-down moment about the balance point, N m: Savitsky's pitch balance (what presses up behind the balance point and drags
     * below it puts the bow down), thrust through a line {@code f} above the balance
     * point and {@code shaft} to the keel.
     *
     * @param ahead balance point ahead of the step, m
     * @param above balance point over the keel, m
     * @param beam m
     * @param deadrise rad
     * @param shaft thrust line to the keel, rad
     * @param f distance of the thrust line from the balance point, m
     */
    public double moment(double ahead, double above, double beam, double deadrise, double shaft, double f) {
        double c = ahead - centre;
        double a = above - 0.25 * beam * StrictMath.tan(deadrise);
        double sin = StrictMath.sin(trim);
        double lever = (1 - sin * StrictMath.sin(trim + shaft)) * c / StrictMath.cos(trim) - f * sin;
        return load * lever + friction * (a - f);
    }

    /** C_f of 0.242 / √C_f = log₁₀(Re C_f), by Newton's method in 1 / √C_f. */
    static double schoenherr(double reynolds) {
        double log = StrictMath.log10(Math.max(1000, reynolds));
        double y = 16;
        for (int i = 0; i < 5; i++) {
            double step = (0.242 * y + 2 * StrictMath.log10(y) - log) / (0.242 + 2 / (StrictMath.log(10) * y));
            y -= step;
            if (Math.abs(step) < CLOSE * y) {
                break;
            }
        }
        return 1 / (y * y);
    }
}
