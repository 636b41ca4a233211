package foamfront.model.aero;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.airframe.TipFloat;

/**
 * What hull bottoms and floats drag in the air: floats and tip floats as square-cornered bodies ({@link BoxBody}), a hull's V and
 * the step beyond its box, struts as pylons.
 *
 * <p>A step is a small base: 0.2 on its area, a hull's V bottom 0.1 on the frontal area it adds (S. F. Hoerner, Fluid-Dynamic
 * Drag (1965), chs. 3 and 13, <i>from memory</i>, 0.1 to 0.3).
 */
final class WaterGearDrag {
    private static final double NOSE_RADIUS = 0.010; // m
    private static final double STEP = 0.2;
    private static final double VEE = 0.1;
    private static final int STRUTS = 4;

    private WaterGearDrag() {}

    /** Drag area, m². */
    static double dragArea(Flotation water, BodyShape body, double speed, double nu) {
        PlaningForm form = water.form();
        double bottoms = water.count() * form.beam() * (STEP * form.stepHeight() + VEE * 0.5 * form.vee());
        TipFloat tips = water.tips();
        if (tips != null) {
            double side = tips.side();
            double box = new BoxBody(tips.length(), side, side, NOSE_RADIUS, side * side).dragArea(speed, nu);
            double strut = Fittings.pylon(tips.strut(), Airframe.STRUT_CHORD, body.wall(), speed, nu);
            return bottoms + 2 * (box + strut);
        }
        BoxBody box =
                new BoxBody(form.length(), form.beam(), form.depth(), NOSE_RADIUS, form.beam() * form.sternDepth());
        double height = Math.max(NOSE_RADIUS, water.strutHeight(body.height()));
        double aside = Math.max(0, water.y() - 0.5 * body.width());
        double length = Math.sqrt(height * height + aside * aside);
        double struts = STRUTS * Fittings.pylon(length, Airframe.STRUT_CHORD, body.wall(), speed, nu);
        return bottoms + water.count() * box.dragArea(speed, nu) + struts;
    }
}
