package foamfront.model.appraisal;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Body;
import foamfront.model.design.Undercarriage;

/**
 * The gap between a propeller's disc and the nearest foam: every panel of wings, tail and fins, the body with its boom; and the
 * ground under wheels. For a part that lies d_x before or behind the disc's plane and d_r beyond its rim (negative inside) the gap is
 * the distance of the corner, √(d_x⁺² + d_r⁺²) + min(max(d_x, d_r), 0): of a part in the disc the shortest way out, negative.
 * Derived. Panels are looked at along {@value #LINES} chordwise lines across the disc's width, as plates without thickness.
 */
final class PropellerClearance {
    private static final int LINES = 5;

    private final Airframe airframe;
    private final Shaft shaft;
    private double gap = Double.POSITIVE_INFINITY;

    private PropellerClearance(Airframe airframe) {
        this.airframe = airframe;
        this.shaft = airframe.stations().shaft();
    }

    /** Least gap of an aeroplane with a propeller, m. */
    static double of(Airframe airframe) {
        return new PropellerClearance(airframe).least();
    }

    private double least() {
        body();
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            Surface surface = airframe.surfaces().get(i);
            for (int j = 0; j < surface.panels().size(); j++) {
                panel(surface.panels().get(j), 1);
                if (surface.mirrored()) {
                    panel(surface.panels().get(j), -1);
                }
            }
        }
        Undercarriage gear = airframe.design().undercarriage();
        if (gear instanceof Undercarriage.TailWheel || gear instanceof Undercarriage.Tricycle) {
            double ground = airframe.stations().stance().groundZ();
            gap = Math.min(gap, shaft.z() - shaft.radius() - ground);
        }
        return gap;
    }

    /** The body as a box; of a boom its own. */
    private void body() {
        BodyShape body = airframe.body();
        double front = airframe.design().body().bayLength();
        box(0, front, body.width(), body.height());
        if (airframe.design().body() instanceof Body.PodAndBoom pod) {
            box(front, body.length(), pod.boom().width(), pod.boom().height());
        }
    }

    private void box(double from, double to, double width, double height) {
        double y = Math.max(0, shaft.y() - 0.5 * width);
        double z = Math.max(0, Math.abs(shaft.z()) - 0.5 * height);
        near(from, to, y, z);
    }

    /** One side of a panel, along lines where it passes the disc. */
    private void panel(Panel p, int side) {
        double breadth = p.tipY() - p.rootY();
        double low = side * shaft.y() - shaft.radius();
        double from = breadth > 0 ? Math.max(0, Math.min(1, (low - p.rootY()) / breadth)) : 0;
        double to = breadth > 0 ? Math.max(0, Math.min(1, (low + 2 * shaft.radius() - p.rootY()) / breadth)) : 1;
        for (int i = 0; i < LINES; i++) {
            double f = from + (to - from) * i / (LINES - 1);
            double leading = p.leadingEdge(f);
            double y = side * (p.rootY() + f * breadth) - shaft.y();
            near(leading, leading + p.chord(f), y, p.rootZ() + f * (p.tipZ() - p.rootZ()) - shaft.z());
        }
    }

    /** Takes in what reaches along the stream at a place off the shaft. */
    private void near(double from, double to, double y, double z) {
        double along = Math.max(from - shaft.x(), shaft.x() - to);
        double beyond = Math.sqrt(y * y + z * z) - shaft.radius();
        double outX = Math.max(0, along);
        double outR = Math.max(0, beyond);
        gap = Math.min(gap, Math.sqrt(outX * outX + outR * outR) + Math.min(0, Math.max(along, beyond)));
    }
}
