package foamfront.model.airframe;

import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Undercarriage;
import org.jspecify.annotations.Nullable;

/**
 * What carries an aeroplane on the water, and where: one hull, or two floats. A float's step lies 5 degrees behind the balance
 * point, its deck 20 mm under the belly or lower, so that a propeller ahead of it clears water up to six tenths of its depth by
 * 45 mm; the floats stand a quarter of the span apart (common practice).
 *
 * @param form of the hull or of one float
 * @param count 1 or 2
 * @param y of each from the centre line, m; 0 for a hull
 * @param step x of the step: from the nose, or, of floats, aft of the balance point, m
 * @param keel height of the keel ahead of the step over the body axis, m
 * @param tips what holds a hull upright; null beside two floats
 */
public record Flotation(
        PlaningForm form,
        int count,
        double y,
        double step,
        double keel,
        @Nullable TipFloat tips) {
    /** Gap between propeller and water at rest, m (common practice). */
    public static final double CLEARANCE = 0.040;

    private static final double SPREAD = 0.125; // of the span
    private static final double FLOAT_DEPTH = 0.8; // of the beam
    private static final double FLOAT_STEP = 0.52; // of the length
    private static final double UNDER_BELLY = 0.020; // m
    private static final double DRAUGHT = 0.6; // of the depth, at most
    private static final double BEHIND = StrictMath.tan(5 * Math.PI / 180);

    static @Nullable Flotation of(Design design, Surface wing, BodyShape body, Shaft shaft) {
        if (design.body() instanceof Body.BoatHull hull) {
            PlaningForm form = form(hull);
            return new Flotation(
                    form,
                    1,
                    0,
                    form.step(),
                    -0.5 * hull.height() - form.vee(),
                    TipFloat.of(design.wing(), wing, hull.height()));
        }
        if (design.undercarriage() instanceof Undercarriage.Floats floats) {
            double depth = FLOAT_DEPTH * floats.beam();
            PlaningForm form = PlaningForm.of(
                    floats.length(), floats.beam(), depth, floats.deadrise(), FLOAT_STEP * floats.length());
            double deck = -0.5 * body.height() - UNDER_BELLY;
            double keel = deck - depth - form.vee();
            if (shaft.radius() > 0) {
                double disc = shaft.z() - shaft.radius();
                keel = Math.min(keel, disc - CLEARANCE - 0.005 - DRAUGHT * depth - form.vee());
            }
            return new Flotation(form, 2, SPREAD * wing.span(), -BEHIND * keel, keel, null);
        }
        return null;
    }

    /** The shape of a hull. */
    public static PlaningForm form(Body.BoatHull hull) {
        return PlaningForm.of(hull.length(), hull.width(), hull.height(), hull.deadrise(), hull.step() * hull.length());
    }

    /** Step aft of a balance point, m. */
    public double stepBehind(double balanceX) {
        return count == 1 ? step - balanceX : step;
    }

    /** From a float's deck up to the body's underside, m. */
    public double strutHeight(double bodyHeight) {
        return Math.max(0, -0.5 * bodyHeight - keel - form.vee() - form.depth());
    }
}
