package foamfront.model.appraisal;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Body;
import foamfront.model.design.Undercarriage;

/**
 * The gap between a propeller's disc and the nearest foam: every panel of wings, tail and fins, the body with its boom, hull
 * or floats; and the ground under wheels. For a part that lies d_x before or behind the disc's plane and d_r beyond its rim
 * (negative inside) the gap is the distance of the corner, √(d_x⁺² + d_r⁺²) + min(max(d_x, d_r), 0): of a part in the
 * disc the shortest way out, negative. Derived. Panels are looked at along {@value #LINES} chordwise lines across the
 * disc, as plates without thickness.
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

    /** Least gap to a hull's bottom or to floats placed by a balance point, m. */
    static double of(Airframe airframe, Flotation flotation, double balanceX) {
        return new PropellerClearance(airframe).afloat(flotation, balanceX);
    }

    /** Each as a box from keel to deck. */
    private double afloat(Flotation flotation, double balanceX) {
        PlaningForm form = flotation.form();
        double step = balanceX + flotation.stepBehind(balanceX);
        double bow = step - form.step();
        double deck = flotation.keel() + form.vee() + form.depth();
        double middle = 0.5 * (flotation.keel() + deck);
        for (int side = -1; side < flotation.count(); side += 2) {
            box(bow, bow + form.length(), side * flotation.y(), middle, form.beam(), deck - flotation.keel());
        }
        return gap;
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
        if (gear.wheel() != null) {
            double ground = airframe.stations().stance().groundZ();
            gap = Math.min(gap, shaft.z() - shaft.radius() - ground);
        }
        return gap;
    }

    /** The body as a box; of a boom its own. */
    private void body() {
        BodyShape body = airframe.body();
        double front = airframe.design().body() instanceof Body.BoatHull
                ? body.length()
                : airframe.design().body().bayLength();
        box(0, front, 0, 0, body.width(), body.height());
        if (airframe.design().body() instanceof Body.PodAndBoom pod) {
            box(front, body.length(), 0, 0, pod.boom().width(), pod.boom().height());
        }
    }

    /** A box along the stream about ({@code atY}, {@code atZ}). */
    private void box(double from, double to, double atY, double atZ, double width, double height) {
        double y = Math.max(0, Math.abs(shaft.y() - atY) - 0.5 * width);
        double z = Math.max(0, Math.abs(shaft.z() - atZ) - 0.5 * height);
        near(from, to, y, z);
    }

    /** One side of a panel, along lines where it passes the disc: abreast for wings, overlapping it in height for fins. */
    private void panel(Panel p, int side) {
        double y = side * p.rootY() - shaft.y();
        double z = p.rootZ() - shaft.z();
        double dy = side * (p.tipY() - p.rootY());
        double dz = p.tipZ() - p.rootZ();
        boolean level = Math.abs(dy) > Math.abs(dz);
        double middle = level ? -y / dy : -z / dz;
        double half = shaft.radius() / Math.abs(level ? dy : dz);
        double from = Math.max(0, Math.min(1, middle - half));
        double to = Math.max(0, Math.min(1, middle + half));
        for (int i = 0; i < LINES; i++) {
            double f = from + (to - from) * i / (LINES - 1);
            double leading = p.leadingEdge(f);
            near(leading, leading + p.chord(f), y + f * dy, z + f * dz);
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
