package foamfront.model.airframe;

import foamfront.model.design.Design;
import foamfront.model.design.Undercarriage;
import org.jspecify.annotations.Nullable;

/**
 * How the aeroplane stands, by workshop rule (common practice): the propeller clears the ground by 25 mm or a tenth of its
 * diameter; a tail wheel's main axle, and that of a hull with wheels, lies 14 degrees ahead of the balance point, a
 * tricycle's 15 degrees behind.
 *
 * @param mainAxle of the main wheels aft of the balance point, m; negative ahead of it
 * @param secondAxle x of the nose wheel or tail skid, m
 * @param groundZ height of the ground under the body axis, m; negative
 */
public record Stance(double mainAxle, double secondAxle, double groundZ) {
    /** Distance between the main wheels over the span (common practice). */
    public static final double TRACK = 0.2;

    /** Between ground and propeller or body, m (common practice). */
    public static final double GROUND_CLEARANCE = 0.025;

    private static final double OF_RADIUS = 0.2;
    private static final double TAIL_WHEEL_ANGLE = 14 * Math.PI / 180;
    private static final double TRICYCLE_ANGLE = 15 * Math.PI / 180;

    static Stance of(Design design, BodyShape body, Shaft shaft, @Nullable Flotation flotation) {
        double belly = -0.5 * body.height();
        double disc = shaft.z() - shaft.radius() - Math.max(GROUND_CLEARANCE, OF_RADIUS * shaft.radius());
        double ground = Math.min(belly - GROUND_CLEARANCE, disc);
        if (design.undercarriage() instanceof Undercarriage.TailWheel) {
            return new Stance(ground * StrictMath.tan(TAIL_WHEEL_ANGLE), 0.95 * body.length(), ground);
        }
        if (design.undercarriage() instanceof Undercarriage.Tricycle tricycle) {
            double wheels = Math.min(ground, belly - 0.5 * tricycle.wheel().diameter());
            return new Stance(-wheels * StrictMath.tan(TRICYCLE_ANGLE), 0.08 * body.length(), wheels);
        }
        if (flotation == null) {
            return new Stance(0, 0, belly);
        }
        if (design.undercarriage() instanceof Undercarriage.Amphibian) {
            double beach = flotation.keel() - GROUND_CLEARANCE;
            return new Stance(beach * StrictMath.tan(TAIL_WHEEL_ANGLE), 0.95 * body.length(), beach);
        }
        return new Stance(0, 0, flotation.keel());
    }
}
