package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Nacelle;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.Stance;
import foamfront.model.airframe.Surface;
import foamfront.model.design.FinJoint;
import foamfront.model.design.Power;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingTips;
import foamfront.model.parts.Wheel;
import foamfront.model.section.SectionShape;
import java.util.List;

/**
 * The box of a body with what stays on it: tail, motor without its propeller, wheels, floats, and the wing where that does not
 * come off. Fins that fold lie down.
 */
final class BodyBox {
    /** Where floats hang for packing, of the mean chord: near enough to any balance point (judgement). */
    private static final double BALANCE = 0.28;

    private BodyBox() {}

    /** From the foremost point of body, motor, floats or what stays on to the rearmost, m. */
    static double length(Airframe airframe, boolean winged) {
        Shaft shaft = airframe.stations().shaft();
        Power power = airframe.design().power();
        boolean motor = winged
                || power instanceof Power.NoseTractor
                || (power instanceof Power.Pusher && !pylonOnWing(airframe));
        double fore = motor ? Math.min(0, shaft.x()) : 0;
        double aft = Math.max(airframe.body().length(), motor ? shaft.x() : 0);
        for (int j = 0; j < airframe.surfaces().size(); j++) {
            List<Panel> panels = airframe.surfaces().get(j).panels();
            for (int i = 0; (winged || !onWing(airframe, j)) && i < panels.size(); i++) {
                Panel panel = panels.get(i);
                fore = Math.min(fore, Math.min(panel.rootX(), panel.tipX()));
                aft = Math.max(aft, Math.max(panel.rootX() + panel.rootChord(), panel.tipX() + panel.tipChord()));
            }
        }
        Flotation flotation = airframe.stations().flotation();
        if (flotation != null) {
            double balance = airframe.chordX() + BALANCE * airframe.chord();
            double bow =
                    balance + flotation.stepBehind(balance) - flotation.form().step();
            fore = Math.min(fore, bow);
            aft = Math.max(aft, bow + flotation.form().length());
        }
        return aft - fore;
    }

    /** Across tail, wheels or floats, and the wing where it stays on, m. */
    static double width(Airframe airframe, boolean winged) {
        double width = Math.max(tail(airframe), floats(airframe));
        Wheel wheel = airframe.design().undercarriage().wheel();
        if (wheel != null) {
            width = Math.max(width, Stance.TRACK * airframe.span() + wheel.width());
        }
        return winged ? Math.max(width, airframe.span()) : width;
    }

    /** As it stands, from the lowest of body, wheels, floats and what stays on to the highest, m. */
    static double height(Airframe airframe, boolean winged) {
        double low = Math.min(
                -0.5 * airframe.body().height(), airframe.stations().stance().groundZ());
        double high = 0.5 * airframe.body().height();
        for (int j = 0; j < airframe.surfaces().size(); j++) {
            Surface surface = airframe.surfaces().get(j);
            boolean lies = surface.role() == Surface.Role.FIN && folds(airframe);
            double thick = surface.isWing() ? thickness(airframe, surface) : 0;
            boolean counts = (winged || !onWing(airframe, j)) && !lies;
            for (int i = 0; counts && i < surface.panels().size(); i++) {
                Panel panel = surface.panels().get(i);
                low = Math.min(low, Math.min(panel.rootZ(), panel.tipZ()));
                high = Math.max(high, Math.max(panel.rootZ(), panel.tipZ()) + thick);
            }
        }
        if (winged && airframe.design().power() instanceof Power.TwinTractor twin) {
            double engine = 0.5 * Nacelle.height(twin.plant().motor().diameter());
            double shaft = airframe.stations().shaft().z();
            low = Math.min(low, shaft - engine);
            high = Math.max(high, shaft + engine);
        }
        if (airframe.design().power() instanceof Power.Pusher && (winged || !pylonOnWing(airframe))) {
            high = Math.max(high, pylonTop(airframe));
        }
        return high - low;
    }

    /** Of a wing at its longest chord, m; all of it is counted above its chord line, on the safe side. */
    private static double thickness(Airframe airframe, Surface wing) {
        return SectionShape.height(wing.section(), airframe.body().wall(), wing.longestChord());
    }

    /** A pusher's pylon comes off with a wing in one piece; halves slide out under it. */
    private static boolean pylonOnWing(Airframe airframe) {
        return airframe.design().wing().build().joint() == WingJoint.ONE_PIECE;
    }

    /** Upper edge of a pusher's motor over the body's axis, m. */
    static double pylonTop(Airframe airframe) {
        double motor = airframe.design().power() instanceof Power.Pusher pusher
                ? pusher.plant().motor().diameter()
                : 0;
        return airframe.stations().shaft().z() + 0.5 * motor;
    }

    static boolean folds(Airframe airframe) {
        return airframe.design().tail().finJoint() == FinJoint.FOLDING;
    }

    /** A tailless aeroplane's fins stand on its wing; one on the centre line stays on the body between halves that plug in. */
    static boolean finsOnWing(Airframe airframe) {
        return airframe.tail() == null
                && (airframe.fins().size() > 1
                        || airframe.design().wing().build().joint() != WingJoint.PLUG_IN);
    }

    /** Whether a surface goes where the wing goes. */
    private static boolean onWing(Airframe airframe, int surface) {
        Surface one = airframe.surfaces().get(surface);
        boolean winglet = airframe.design().wing().build().tips() == WingTips.WINGLETS
                && surface >= airframe.surfaces().size() - 2;
        return one.isWing() || winglet || (one.role() == Surface.Role.FIN && finsOnWing(airframe));
    }

    /** Across hull or floats, m; 0 without. */
    private static double floats(Airframe airframe) {
        Flotation flotation = airframe.stations().flotation();
        return flotation == null ? 0 : 2 * flotation.y() + flotation.form().beam();
    }

    /** Across the tail, m; a single fin that folds down reaches out by its height. */
    private static double tail(Airframe airframe) {
        double plain = airframe.tail() == null
                ? airframe.body().width()
                : Math.max(airframe.body().width(), airframe.tail().span());
        if (!folds(airframe) || airframe.fins().size() != 1 || finsOnWing(airframe)) {
            return plain;
        }
        double fin = airframe.fins().get(0).panels().get(0).breadth();
        return Math.max(plain, 0.5 * plain + fin);
    }
}
