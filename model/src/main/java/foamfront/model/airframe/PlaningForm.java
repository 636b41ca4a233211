package foamfront.model.airframe;

/**
 * The shape of a planing hull or float folded from flat boards: upright sides, a V bottom of constant deadrise that runs level
 * to the step, rises behind it, and levels out where the sides have lost most of their height; ahead a flat bow plate at 45
 * degrees up to half the sides' height, then an upright stem. Common practice: step 6.5 % of the beam (5 to 8), afterbody at 7
 * degrees (6 to 8). x runs aft from the bow, heights count from the keel ahead of the step.
 *
 * <p>A step ahead of the bow plate's foot, or a body that ends ahead of its step, cannot be folded: it is computed with the
 * step {@value #LEAST_KEEL} m behind the foot and a body that reaches as far again, and {@link #keelToSpare} says what is missing.
 *
 * @param length m
 * @param beam outside, m
 * @param depth of the sides ahead of the step, chine to deck, m
 * @param deadrise of each half of the bottom, rad
 * @param step from the bow, m
 * @param keelToSpare of the keel from the bow plate's foot to the step, beyond the least; negative where it cannot be folded, m
 */
public record PlaningForm(double length, double beam, double depth, double deadrise, double step, double keelToSpare) {
    /** Keel that a forebody needs to be cut and folded by hand, m (judgement). */
    private static final double LEAST_KEEL = 0.010;

    private static final double STEP_HEIGHT = 0.065; // of the beam
    private static final double AFTERBODY = StrictMath.tan(7 * Math.PI / 180);
    private static final double STERN = 0.3; // of the depth, what is left of the sides

    /** The form of these dimensions, or the nearest that can be folded. */
    public static PlaningForm of(double length, double beam, double depth, double deadrise, double step) {
        double foremost = vee(beam, deadrise) + 0.5 * depth + LEAST_KEEL;
        double placed = Math.max(step, foremost);
        double reached = placed > step ? Math.max(length, placed + LEAST_KEEL) : length;
        return new PlaningForm(reached, beam, depth, deadrise, placed, step - foremost);
    }

    private static double vee(double beam, double deadrise) {
        return 0.5 * beam * StrictMath.tan(deadrise);
    }

    /** Height of the chine over the keel, m. */
    public double vee() {
        return vee(beam, deadrise);
    }

    /** Where the keel meets the bow plate, m. */
    public double bow() {
        return vee() + 0.5 * depth;
    }

    /** How far the bottom rises at the step, m. */
    public double stepHeight() {
        return STEP_HEIGHT * beam;
    }

    /** Where the afterbody stops rising, m; the body's end where it is too short for that. */
    public double heel() {
        double run = ((1 - STERN) * depth - stepHeight()) / AFTERBODY;
        return Math.min(length, step + Math.max(0, run));
    }

    /** How much higher keel and chine lie at {@code x} than ahead of the step, m. */
    public double rise(double x) {
        return x <= step ? 0 : stepHeight() + (Math.min(x, heel()) - step) * AFTERBODY;
    }

    /** Height of the bow plate over the keel at {@code x}, m; 0 behind it. */
    public double plate(double x) {
        return Math.max(0, bow() - x);
    }

    /** Sides left at the stern, m. */
    public double sternDepth() {
        return depth - rise(length);
    }

    /** Nose-up angle at which the stern touches water that the step touches, rad. */
    public double sternpost() {
        return StrictMath.atan2(rise(length), length - step);
    }

    /** Area of a cross-section up to {@code height} over its own keel, m²; up to the deck at most. */
    public double sectionArea(double height, double rise) {
        double vee = vee();
        double h = Math.min(height, vee + depth - rise);
        if (h <= 0) {
            return 0;
        }
        return h < vee ? 0.5 * beam * h * h / vee : 0.5 * beam * vee + (h - vee) * beam;
    }

    /** Breadth of a cross-section at {@code height} over its own keel, m; 0 outside. */
    public double breadth(double height, double rise) {
        double vee = vee();
        if (height <= 0 || height >= vee + depth - rise) {
            return 0;
        }
        return height < vee ? beam * height / vee : beam;
    }
}
