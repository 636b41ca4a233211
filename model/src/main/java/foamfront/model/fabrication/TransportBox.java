package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Nacelle;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.airframe.Winglet;
import foamfront.model.design.FinJoint;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Power;
import foamfront.model.design.Wing;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingTips;
import foamfront.model.mission.CarSpace;
import foamfront.model.section.SectionShape;
import java.util.List;

/**
 * The pieces an aeroplane packs into: the body with its tail, and the wing in one piece, in halves when it plugs in, or folded
 * in two, upper sides together. Fins that fold lie down. A glued wing in one piece stays on the body.
 *
 * @param longest side of the longest piece, m
 * @param margin car space left beside the tightest piece, m; negative where it does not go in
 */
public record TransportBox(double longest, double margin) {
    public static TransportBox of(Airframe airframe, CarSpace car) {
        Wing wing = airframe.design().wing();
        double span = airframe.span();
        double body = Math.max(airframe.body().length(), aft(airframe));
        double tail = tailWidth(airframe);
        double high = height(airframe);
        boolean halves = wing.build().joint() != WingJoint.ONE_PIECE;
        boolean fixed = !halves && wing.build().holdDown() == HoldDown.GLUED;
        if (car.assembled() || fixed) {
            double across = Math.max(span, tail);
            return new TransportBox(Math.max(across, body), Room.beside(car, across, body, high));
        }
        double wingLength = halves ? 0.5 * span : span;
        double chord = chord(airframe.wing());
        double wingMargin = Room.beside(car, wingLength, chord, wingHeight(airframe));
        double bodyMargin = Room.beside(car, body, tail, high);
        return new TransportBox(Math.max(wingLength, body), Math.min(wingMargin, bodyMargin));
    }

    /** The longest on the wing: a cut-out narrows the root, m. */
    private static double chord(Surface wing) {
        double longest = 0;
        for (Panel panel : wing.panels()) {
            longest = Math.max(longest, Math.max(panel.rootChord(), panel.tipChord()));
        }
        return longest;
    }

    /** How far a bent wing, or half of one that comes apart, stands up from where it lies, m. */
    private static double rise(Surface wing, boolean halves) {
        List<Panel> panels = wing.panels();
        Panel root = panels.get(0);
        Panel tip = panels.get(panels.size() - 1);
        double slope = halves ? (tip.tipZ() - root.rootZ()) / (tip.tipY() - root.rootY()) : 0;
        double low = 0;
        double high = 0;
        for (Panel panel : panels) {
            double off = panel.tipZ() - root.rootZ() - slope * (panel.tipY() - root.rootY());
            low = Math.min(low, off);
            high = Math.max(high, off);
        }
        return high - low;
    }

    /** Rearmost point of any surface, m. */
    private static double aft(Airframe airframe) {
        double aft = 0;
        for (Surface surface : airframe.surfaces()) {
            for (Panel panel : surface.panels()) {
                aft = Math.max(aft, Math.max(panel.rootX() + panel.rootChord(), panel.tipX() + panel.tipChord()));
            }
        }
        return aft;
    }

    /** Across the tail, m; a single fin that folds down reaches out by its height. */
    private static double tailWidth(Airframe airframe) {
        double plain = airframe.tail() == null
                ? airframe.body().width()
                : airframe.tail().span();
        if (!folds(airframe) || airframe.fins().size() != 1) {
            return plain;
        }
        double fin = airframe.fins().get(0).panels().get(0).breadth();
        return Math.max(plain, 0.5 * plain + fin);
    }

    private static boolean folds(Airframe airframe) {
        return airframe.design().tail().finJoint() == FinJoint.FOLDING;
    }

    /** A wing lies flat; on top of it stand its winglets or, folded, its other half with engines outside, m. */
    private static double wingHeight(Airframe airframe) {
        boolean halves = airframe.design().wing().build().joint() != WingJoint.ONE_PIECE;
        double flat = Math.max(airframe.body().height(), rise(airframe.wing(), halves));
        if (airframe.design().wing().build().joint() == WingJoint.FOLDING) {
            double engine = airframe.design().power() instanceof Power.TwinTractor twin
                    ? Nacelle.height(twin.plant().motor().diameter())
                    : 0;
            double chord = airframe.wing().panels().get(0).rootChord();
            return 2 * rise(airframe.wing(), true)
                    + 2
                            * (SectionShape.of(
                                                            airframe.wing().section(),
                                                            airframe.body().wall(),
                                                            chord)
                                                    .thickness()
                                            * chord
                                    + engine);
        }
        return airframe.design().wing().build().tips() == WingTips.WINGLETS
                ? flat + Winglet.on(airframe.wing(), 1).span()
                : flat;
    }

    private static double height(Airframe airframe) {
        double low = -0.5 * airframe.body().height();
        double high = -low;
        for (Surface surface : airframe.surfaces()) {
            if (surface.role() != Surface.Role.WING && !(surface.role() == Surface.Role.FIN && folds(airframe))) {
                for (Panel panel : surface.panels()) {
                    high = Math.max(high, panel.tipZ());
                }
            }
        }
        return high - Math.min(low, airframe.stations().stance().groundZ());
    }
}
