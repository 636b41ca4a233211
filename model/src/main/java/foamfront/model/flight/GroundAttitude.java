package foamfront.model.flight;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.Stance;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Body;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.Undercarriage;
import foamfront.model.parts.Wheel;

/**
 * How far a wheeled aeroplane can raise its nose on the ground: turned about its main axle until the tail wheel, the body's end,
 * a trailing edge, a load below or a pusher's propeller touches (derived).
 *
 * <p>A point at a behind the axle and h over it, on wheels of radius R, touches at the angle θ where h cos θ − a sin θ = −R, so
 * θ = atan(h / a) + asin(R / √(a² + h²)). Control surfaces lie in line; legs do not give.
 */
public final class GroundAttitude {
    /** A tail wheel or skid holds the body this far off the ground, m (judgement). */
    private static final double TAIL_WHEEL = 0.02;

    private static final double NEVER = 0.5 * Math.PI;

    private GroundAttitude() {}

    /**
     * Nose-up attitude of the body axis that the ground allows, rad.
     *
     * @param balanceX from the nose, m
     */
    public static double most(Airframe airframe, Wheel wheel, double balanceX) {
        Stance s = airframe.stations().stance();
        double radius = 0.5 * wheel.diameter();
        Axle axle = new Axle(balanceX + s.mainAxle(), s.groundZ() + radius, radius);
        double least = body(airframe, axle);
        if (airframe.design().undercarriage() instanceof Undercarriage.TailWheel
                || airframe.design().undercarriage() instanceof Undercarriage.Amphibian) {
            double x = s.secondAxle();
            least = Math.min(least, axle.touching(x, underside(airframe, x) - TAIL_WHEEL));
        }
        for (int k = 0; k < airframe.surfaces().size(); k++) {
            Surface surface = airframe.surfaces().get(k);
            for (int j = 0; j < surface.panels().size(); j++) {
                Panel p = surface.panels().get(j);
                least = Math.min(least, trailingEdge(axle, p.rootX(), p.rootZ(), p.rootChord(), p.rootTwist()));
                least = Math.min(least, trailingEdge(axle, p.tipX(), p.tipZ(), p.tipChord(), p.tipTwist()));
            }
        }
        for (int i = 0; i < airframe.design().loads().size(); i++) {
            Load load = airframe.design().loads().get(i);
            if (load.place() == Place.BELOW) {
                double bottom = -0.5 * airframe.body().height() - load.height();
                least = Math.min(least, axle.touching(balanceX + 0.5 * load.length(), bottom));
            }
        }
        if (airframe.design().power() instanceof Power.Pusher) {
            Shaft shaft = airframe.stations().shaft();
            least = Math.min(least, axle.touching(shaft.x(), shaft.z() - shaft.radius()));
        }
        return least;
    }

    private static double body(Airframe airframe, Axle axle) {
        double length = airframe.body().length();
        double end = axle.touching(length, underside(airframe, length));
        Flotation water = airframe.stations().flotation();
        if (water != null && water.count() == 1) {
            return Math.min(end, axle.touching(water.step(), water.keel()));
        }
        return airframe.design().body() instanceof Body.PodAndBoom pod
                ? Math.min(end, axle.touching(pod.podLength(), -0.5 * pod.height()))
                : end;
    }

    private static double underside(Airframe airframe, double x) {
        Body body = airframe.design().body();
        Flotation water = airframe.stations().flotation();
        if (water != null && water.count() == 1) {
            return water.keel() + water.form().rise(x);
        }
        return body instanceof Body.PodAndBoom pod && x > pod.podLength()
                ? -0.5 * pod.boom().height()
                : -0.5 * body.height();
    }

    private static double trailingEdge(Axle axle, double x, double z, double chord, double twist) {
        return axle.touching(x + chord, z - chord * StrictMath.sin(twist));
    }

    /**
     * The main axle.
     *
     * @param x from the nose, m
     * @param z over the body axis, m
     * @param radius of its wheels, m
     */
    record Axle(double x, double z, double radius) {
        /** Turn at which a point of the aeroplane reaches the ground, rad; a right angle for what never does. */
        double touching(double pointX, double pointZ) {
            double aft = pointX - x;
            double up = pointZ - z;
            double distance = Math.sqrt(aft * aft + up * up);
            return aft > 0 && distance > radius
                    ? Math.min(NEVER, StrictMath.atan2(up, aft) + StrictMath.asin(radius / distance))
                    : NEVER;
        }
    }
}
