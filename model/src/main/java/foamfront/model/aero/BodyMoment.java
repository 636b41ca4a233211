package foamfront.model.aero;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Nacelle;
import foamfront.model.design.Power;

/**
 * The unstable moment of a body at incidence: dC_m/dα = (π / 2) ∫ w² (dβ/dα) dx / (S c), w the breadth across the stream's plane
 * and dβ/dα the turning of its air beside the wings ({@link WingFlow}). H. Multhopp, "Aerodynamics of the Fuselage", NACA
 * TM-1036, 1942 (from memory); good to about 20 %. In yaw the body's height takes the place of its width and the span that of
 * the chord, and the wings turn nothing. A twin's motors stand ahead of the wing as small bodies of their own, as broad as the
 * motor and as high as the boards that hold it. Floats are taken in undisturbed air ({@link #floatPitch}, judgement): those under the
 * wing stand below the air that follows it.
 */
public final class BodyMoment {
    private BodyMoment() {}

    /** dC_m/dα of body and motors beside the wings of a solved system, per rad, positive: nose up. */
    public static double pitchSlope(Airframe airframe, LiftingSystem system) {
        WingFlow flow = system.wingFlow(airframe.surfaces());
        double area = system.referenceArea();
        double chord = system.referenceChord();
        double motors = 0;
        if (airframe.design().power() instanceof Power.TwinTractor twin) {
            double breadth = twin.plant().motor().diameter();
            double ahead = flow.along(airframe.stations().shaft().x(), wingX(airframe));
            motors = 2 * prism(breadth, ahead) / (area * chord);
        }
        return pitchSlope(airframe.body(), flow, area, chord) + motors;
    }

    /** dC_m/dα of a body in the wings' flow, per rad, positive: nose up. */
    static double pitchSlope(BodyShape body, WingFlow flow, double area, double chord) {
        return prism(body.width(), flow.along(0, body.full())) / (area * chord);
    }

    /** dC_n/dβ of body and motors, per rad, negative: away from the wind. */
    public static double yawSlope(Airframe airframe) {
        double area = airframe.area();
        double span = airframe.span();
        double motors = 0;
        if (airframe.design().power() instanceof Power.TwinTractor twin) {
            double height = Nacelle.height(twin.plant().motor().diameter());
            double ahead = wingX(airframe) - airframe.stations().shaft().x();
            motors = 2 * prism(height, ahead) / (area * span);
        }
        return yawSlope(airframe.body(), area, span) - motors;
    }

    private static double wingX(Airframe airframe) {
        return airframe.wing().panels().get(0).rootX();
    }

    /** dC_n/dβ of a body by itself, per rad, negative: away from the wind. */
    public static double yawSlope(BodyShape body, double area, double span) {
        return -prism(body.height(), body.full()) / (area * span);
    }

    /** What floats in undisturbed air add to the slope in pitch, per rad. */
    public static double floatPitch(Flotation water, double area, double chord) {
        return water.count() == 1
                ? 0
                : water.count() * prism(water.form().beam(), water.form().length()) / (area * chord);
    }

    /** What floats add to the slope in yaw, per rad, negative. */
    public static double floatYaw(Flotation water, double area, double span) {
        return water.count() == 1
                ? 0
                : -water.count() * prism(water.form().depth(), water.form().length()) / (area * span);
    }

    /** (π / 2) w² l of a prism, m³. */
    static double prism(double breadth, double length) {
        return 0.5 * Math.PI * breadth * breadth * length;
    }
}
