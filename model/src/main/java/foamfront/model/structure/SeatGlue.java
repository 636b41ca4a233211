package foamfront.model.structure;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Body;
import foamfront.model.design.FinJoint;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Tail;
import foamfront.model.design.Wing;

/**
 * What holds wing, stabiliser and fins on what carries them, strength over load.
 *
 * <p>Wing: everything but the wing hangs on it at the limit load, by a bead along either wall of the body over the root chord, or
 * by two pairs of crossed rubber bands of 40 N (30 to 50 N, common practice), from a kilogram on a pair for each half (from memory). A biplane's lower wing bears its share by area.
 *
 * <p>Stabiliser: its load pulls and, loaded half as much on one side as on the other ({@link TailPlates}), turns it, on both walls of
 * the body (a boom: on both cheeks). On a board's or a fin's edge between two beads, a strip of width w, stress runs
 * straight from pull to push: M = p w² l / 6 over a length l (derived).
 * Loads by {@link TailPlates}. The halves of a V-tail are taped as a plate is, which bears more than the plate. Fins that fold
 * hang on tape, and those of a delta on its own sheet.
 */
final class SeatGlue {
    private static final double BANDS_BEAR = 40; // N a pair
    private static final double BAND_MASS = 0.5; // kg a pair
    private static final double CHEEK = 0.060; // m along a boom (as cut)
    private static final double LESS_LOADED_SIDE = 0.5;

    private SeatGlue() {}

    /**
     * The wing's.
     *
     * @param bead section of a bead of glue, m²
     * @param factor on the bond
     */
    static double wing(Airframe airframe, FlightLoads loads, double limit, double bead, double factor) {
        Surface wing = airframe.wing();
        double share = wing.area() / airframe.area();
        double pull = share * limit * Atmosphere.GRAVITY * Math.max(0, loads.mass() - loads.wingMass());
        double bears = airframe.design().wing().build().holdDown() == HoldDown.RUBBER_BANDS
                ? BANDS_BEAR * Math.max(2, loads.mass() / BAND_MASS)
                : factor
                        * GlueBead.PULL
                        * 2
                        * wing.panels().get(0).rootChord()
                        * GlueBead.underEdge(bead, airframe.body().wall());
        return StructureMargins.reserve(bears, pull);
    }

    /** Moment per length that a board on its edge bears between two beads, N. */
    static double edge(double bead, double thickness, double factor) {
        double width = GlueBead.inCorners(bead, thickness);
        return factor * GlueBead.PULL * width * width / 6;
    }

    /** The tail's. */
    static double tail(Airframe airframe, FlightLoads loads, double limit, double bead, double factor) {
        double t = airframe.body().wall();
        double edge = edge(bead, t, factor);
        Surface tail = airframe.tail();
        Tail kind = airframe.design().tail();
        double least = StructureMargins.UNLOADED;
        double atop = 0;
        if (tail != null && !(kind instanceof Tail.VTail)) {
            double pressure = TailPlates.tailPressure(airframe, tail, loads, limit);
            double turns = (1 - LESS_LOADED_SIDE) * pressure * TailPlates.firstMoment(tail, 0);
            double chord = tail.panels().get(0).rootChord();
            if (kind instanceof Tail.TTail) {
                Panel fin = airframe.fins().get(0).panels().get(0);
                least = StructureMargins.reserve(edge * Math.min(chord, fin.tipChord()), turns);
                atop = turns + TailPlates.weightMoment(airframe, tail, loads, limit);
            } else if (airframe.design().body() instanceof Body.ProfileBoard) {
                least = StructureMargins.reserve(edge * chord, turns);
            } else {
                boolean boom = airframe.design().body() instanceof Body.PodAndBoom;
                double apart = boom
                        ? ((Body.PodAndBoom) airframe.design().body()).boom().width() + t
                        : airframe.body().width() - t;
                double along = boom ? CHEEK : chord;
                double line = (0.5 * pressure * tail.area() + turns / apart) / along;
                least = StructureMargins.reserve(factor * GlueBead.PULL * GlueBead.underEdge(bead, t), line);
            }
        }
        boolean sheet = airframe.design().wing() instanceof Wing.Delta
                && airframe.fins().size() == 2;
        if (kind.finJoint() == FinJoint.FIXED && !sheet) {
            for (int i = 0; i < airframe.fins().size(); i++) {
                Surface fin = airframe.fins().get(i);
                double moment = TailPlates.finPressure(fin, loads) * TailPlates.firstMoment(fin, 0) + atop;
                least = Math.min(
                        least,
                        StructureMargins.reserve(edge * fin.panels().get(0).rootChord(), moment));
            }
        }
        return least;
    }
}
