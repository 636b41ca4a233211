package foamfront.model.aero;

import foamfront.model.airframe.BodyShape;

/**
 * The unstable moment of a body at incidence: dC_m/dα = (π / 2) ∫ w² dx / (S c), w the breadth across the stream's plane.
 * H. Multhopp, "Aerodynamics of the Fuselage", NACA TM-1036, 1942 (from memory), without the wing's induced flow, which
 * would add ahead of the wing and take away behind it; good to about 20 %. In yaw the body's height takes the place of
 * its width and the span that of the chord.
 */
public final class BodyMoment {
    private BodyMoment() {}

    /** dC_m/dα, per rad, positive: nose up. */
    public static double pitchSlope(BodyShape body, double area, double chord) {
        return prism(body.width(), body.full()) / (area * chord);
    }

    /** dC_n/dβ, per rad, negative: away from the wind. */
    public static double yawSlope(BodyShape body, double area, double span) {
        return -prism(body.height(), body.full()) / (area * span);
    }

    /** (π / 2) w² l of a prism, m³. */
    static double prism(double breadth, double length) {
        return 0.5 * Math.PI * breadth * breadth * length;
    }
}
