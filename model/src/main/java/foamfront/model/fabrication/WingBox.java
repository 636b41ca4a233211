package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Nacelle;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.airframe.TipFloat;
import foamfront.model.airframe.Winglet;
import foamfront.model.design.Power;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingTips;
import foamfront.model.section.SectionShape;
import java.util.List;

/**
 * The box of a wing that comes off, or of one half of it, on its underside: a whole wing along its span, a half along its
 * quarter-chord line, so that sweep makes it longer and no broader (derived). What stands on it goes with it: engines, a
 * pusher's pylon, winglets, tip floats, and the fins of a tailless aeroplane, which lie down as thick as their board where they
 * fold.
 */
final class WingBox {
    private double length;
    private double breadth;
    private double height;

    private double slope;
    private double least;
    private double most;
    private double front;
    private double rear;

    double length() {
        return length;
    }

    double breadth() {
        return breadth;
    }

    double height() {
        return height;
    }

    void measure(Airframe airframe) {
        boolean halves = airframe.design().wing().build().joint() != WingJoint.ONE_PIECE;
        plan(airframe, halves);
        height = lying(airframe, halves);
    }

    private void plan(Airframe airframe, boolean halves) {
        List<Panel> panels = airframe.wing().panels();
        Panel root = panels.get(0);
        Panel tip = panels.get(panels.size() - 1);
        double out = tip.tipY() - root.rootY();
        double up = halves ? tip.tipZ() - root.rootZ() : 0;
        // A half with dihedral lies along its own slope.
        double stretch = Math.sqrt(out * out + up * up) / out;
        double sweep = tip.tipX() + 0.25 * tip.tipChord() - root.rootX() - 0.25 * root.rootChord();
        slope = halves ? sweep / (out * stretch) : 0;
        least = Double.POSITIVE_INFINITY;
        most = Double.NEGATIVE_INFINITY;
        front = Double.POSITIVE_INFINITY;
        rear = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            chord(panel.rootX(), panel.rootChord(), stretch * panel.rootY());
            chord(panel.tipX(), panel.tipChord(), stretch * panel.tipY());
        }
        List<Surface> fins = airframe.fins();
        for (int i = 0; BodyBox.finsOnWing(airframe) && i < fins.size(); i++) {
            Panel fin = fins.get(i).panels().get(0);
            if (fin.rootY() >= 0) {
                chord(fin.rootX(), fin.rootChord(), stretch * fin.rootY());
                chord(fin.tipX(), fin.tipChord(), stretch * fin.rootY());
            }
        }
        double shaft = airframe.stations().shaft().x();
        if (airframe.design().power() instanceof Power.TwinTractor twin) {
            chord(shaft, 0, stretch * twin.y());
        } else if (airframe.design().power() instanceof Power.Pusher && !halves) {
            chord(shaft, 0, 0);
        }
        double norm = Math.sqrt(1 + slope * slope);
        length = halves ? (most - least) / norm : airframe.span();
        breadth = (rear - front) / norm;
    }

    /** Takes in a leading edge at x and what is a chord behind it, at y out. */
    private void chord(double x, double chord, double y) {
        point(x, y);
        point(x + chord, y);
    }

    private void point(double x, double y) {
        double along = y + slope * x;
        double across = x - slope * y;
        least = Math.min(least, along);
        most = Math.max(most, along);
        front = Math.min(front, across);
        rear = Math.max(rear, across);
    }

    private static double lying(Airframe airframe, boolean halves) {
        Surface wing = airframe.wing();
        double board = airframe.body().wall();
        double thickness = SectionShape.height(wing.section(), board, wing.longestChord());
        double flat = rise(wing, halves) + thickness;
        if (airframe.design().power() instanceof Power.TwinTractor twin) {
            double engine = 0.5 * Nacelle.height(twin.plant().motor().diameter());
            flat += engine + Math.max(0, engine - thickness);
        } else if (airframe.design().power() instanceof Power.Pusher && !halves) {
            flat = Math.max(
                    flat, BodyBox.pylonTop(airframe) - wing.panels().get(0).rootZ());
        }
        Flotation flotation = airframe.stations().flotation();
        TipFloat tip = flotation == null ? null : flotation.tips();
        flat += tip == null ? 0 : tip.side() + tip.strut();
        double stands = airframe.design().wing().build().tips() == WingTips.WINGLETS
                ? Winglet.on(wing, 1).span()
                : 0;
        if (BodyBox.finsOnWing(airframe)) {
            for (int i = 0; i < airframe.fins().size(); i++) {
                double fin = BodyBox.folds(airframe)
                        ? board
                        : airframe.fins().get(i).panels().get(0).breadth();
                stands = Math.max(stands, fin);
            }
        }
        return flat + stands;
    }

    /** How far a bent wing, or half of one that comes apart, stands up from where it lies, m. */
    private static double rise(Surface wing, boolean halves) {
        List<Panel> panels = wing.panels();
        Panel root = panels.get(0);
        Panel tip = panels.get(panels.size() - 1);
        double slope = halves ? (tip.tipZ() - root.rootZ()) / (tip.tipY() - root.rootY()) : 0;
        double low = 0;
        double high = 0;
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            double off = panel.tipZ() - root.rootZ() - slope * (panel.tipY() - root.rootY());
            low = Math.min(low, off);
            high = Math.max(high, off);
        }
        return high - low;
    }
}
