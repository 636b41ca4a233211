package foamfront.model.airframe;

import foamfront.model.design.WingSection;
import java.util.List;

/**
 * An upright plate glued on a wing's tip: as deep as the tip at its foot, its trailing edge upright. Height 0.7 of the tip chord
 * and taper 0.6 are judgement: taller ones break off in the grass.
 */
public final class Winglet {
    private static final double HEIGHT = 0.7; // of the tip chord
    private static final double TAPER = 0.6;

    private Winglet() {}

    /**
     * The winglet of one tip.
     *
     * @param side 1 right, −1 left
     */
    public static Surface on(Surface wing, int side) {
        Panel last = wing.panels().get(wing.panels().size() - 1);
        double chord = last.tipChord();
        double y = side * last.tipY();
        Panel panel = new Panel(
                last.tipX(),
                y,
                last.tipZ(),
                chord,
                0,
                last.tipX() + (1 - TAPER) * chord,
                y,
                last.tipZ() + HEIGHT * chord,
                TAPER * chord,
                0);
        return new Surface(Surface.Role.FIN, new WingSection.FlatPlate(), List.of(panel), false, List.of());
    }
}
