package foamfront.model.airframe;

import foamfront.model.design.Design;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;

/**
 * Where the propeller turns, by workshop rule (common practice): a nose motor stands on its firewall, a twin's on the wing's
 * leading edge; a pusher's disc clears the body below by 10 mm and every part of the trailing edge ahead of it by 10 mm and a
 * twentieth of its diameter. A fan stands last in the bay, its {@link Intakes} in the body's sides just ahead of it.
 *
 * @param x of the disc, m; ahead of the nose for a tractor, the middle of the intakes for a fan
 * @param y of the starboard shaft, m; 0 for one on the centre line
 * @param z over the body axis, m
 * @param radius of the disc, m; 0 without a propeller that turns in the open
 * @param motorX centre of the motor or fan unit, m
 */
public record Shaft(double x, double y, double z, double radius, double motorX) {
    /** Firewall and screws, m. */
    static final double FIREWALL = 0.005;

    private static final double FOAM_CLEARANCE = 0.010; // m
    private static final double BEHIND_EDGE = 0.05; // of the diameter

    private static final Shaft NONE = new Shaft(0, 0, 0, 0, 0);

    static Shaft of(Design design, Surface wing, BodyShape body, Bay bay) {
        if (design.power() instanceof Power.NoseTractor tractor) {
            return tractor(tractor.plant(), 0, 0, 0);
        }
        if (design.power() instanceof Power.TwinTractor twin) {
            return tractor(
                    twin.plant(), design.wing().x(), twin.y(), design.wing().z());
        }
        if (design.power() instanceof Power.Pusher pusher) {
            double radius = 0.5 * pusher.plant().propeller().diameter();
            double x = trailing(wing, radius) + BEHIND_EDGE * 2 * radius + FOAM_CLEARANCE;
            double z = 0.5 * body.height() + radius + FOAM_CLEARANCE;
            double motorX = x - 0.5 * pusher.plant().motor().length();
            return new Shaft(x, 0, z, radius, motorX);
        }
        if (design.power() instanceof Power.DuctedFan ducted) {
            return new Shaft(bay.fanX() - ducted.fan().diameter(), 0, 0, 0, bay.fanX());
        }
        return NONE;
    }

    private static Shaft tractor(PowerPlant plant, double mount, double y, double z) {
        double length = plant.motor().length();
        double radius = 0.5 * plant.propeller().diameter();
        return new Shaft(mount - length - FIREWALL, y, z, radius, mount - 0.5 * length);
    }

    /** Rearmost point of the trailing edge ahead of a disc on the centre line, m. */
    private static double trailing(Surface wing, double radius) {
        Panel root = wing.panels().get(0);
        double rearmost = root.rootX() + root.rootChord();
        for (int i = 0; i < wing.panels().size(); i++) {
            Panel panel = wing.panels().get(i);
            if (panel.rootY() < radius) {
                double f = Math.min(1, (radius - panel.rootY()) / (panel.tipY() - panel.rootY()));
                rearmost = Math.max(rearmost, panel.leadingEdge(f) + panel.chord(f));
            }
        }
        return rearmost;
    }
}
