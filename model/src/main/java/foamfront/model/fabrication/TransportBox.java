package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Nacelle;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.airframe.TipFloat;
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
 * in two, upper sides together. Fins that fold lie down. A glued wing in one piece stays on the body. Floats stay under the body,
 * tip floats under the wing.
 *
 * @param longest side of the longest piece, m
 * @param margin car space left beside the tightest piece, m; negative where it does not go in
 */
public record TransportBox(double longest, double margin) {
    /** Where floats hang for packing, of the mean chord: near enough to any balance point (judgement). */
    private static final double BALANCE = 0.28;

    public static TransportBox of(Airframe airframe, CarSpace car) {
        Wing wing = airframe.design().wing();
        double span = airframe.span();
        double body = bodyLength(airframe);
        double tail = Math.max(tailWidth(airframe), floatsWidth(airframe));
        double high = height(airframe);
        boolean halves = wing.build().joint() != WingJoint.ONE_PIECE;
        boolean fixed = !halves && wing.build().holdDown() == HoldDown.GLUED;
        if (car.assembled() || fixed) {
            double across = Math.max(span, tail);
            return new TransportBox(Math.max(across, body), Room.beside(car, across, body, assembledHeight(airframe)));
        }
        double wingLength = halves ? 0.5 * span : span;
        double chord = airframe.wing().longestChord();
        double wingMargin = Room.beside(car, wingLength, chord, wingHeight(airframe));
        double bodyMargin = Room.beside(car, body, tail, high);
        return new TransportBox(Math.max(wingLength, body), Math.min(wingMargin, bodyMargin));
    }

    /** From the foremost point of body or floats to the rearmost of these and of any surface, m. */
    private static double bodyLength(Airframe airframe) {
        double aft = Math.max(airframe.body().length(), aft(airframe));
        Flotation flotation = airframe.stations().flotation();
        if (flotation == null) {
            return aft;
        }
        double balance = airframe.chordX() + BALANCE * airframe.chord();
        double bow = balance + flotation.stepBehind(balance) - flotation.form().step();
        return Math.max(aft, bow + flotation.form().length()) - Math.min(0, bow);
    }

    /** Across hull or floats, m; 0 without. */
    private static double floatsWidth(Airframe airframe) {
        Flotation flotation = airframe.stations().flotation();
        return flotation == null ? 0 : 2 * flotation.y() + flotation.form().beam();
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

    /** Rearmost point of any surface, m. */
    private static double aft(Airframe airframe) {
        double aft = 0;
        for (int j = 0; j < airframe.surfaces().size(); j++) {
            Surface surface = airframe.surfaces().get(j);
            for (int i = 0; i < surface.panels().size(); i++) {
                Panel panel = surface.panels().get(i);
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

    /** A wing lies flat; on top of it stand its winglets or, folded, its other half with engines and fins beside it, m. */
    private static double wingHeight(Airframe airframe) {
        boolean halves = airframe.design().wing().build().joint() != WingJoint.ONE_PIECE;
        double flat = Math.max(airframe.body().height(), rise(airframe.wing(), halves));
        Flotation flotation = airframe.stations().flotation();
        TipFloat tip = flotation == null ? null : flotation.tips();
        double tipFloat = tip == null ? 0 : tip.side() + tip.strut();
        if (airframe.design().wing().build().joint() == WingJoint.FOLDING) {
            double engine = airframe.design().power() instanceof Power.TwinTractor twin
                    ? Nacelle.height(twin.plant().motor().diameter())
                    : 0;
            // Fins of a tailless wing fold down between or beside its halves.
            double fins = airframe.tail() == null ? airframe.body().wall() : 0;
            double chord = airframe.wing().longestChord();
            return 2 * rise(airframe.wing(), true)
                    + 2
                            * (SectionShape.of(
                                                            airframe.wing().section(),
                                                            airframe.body().wall(),
                                                            chord)
                                                    .thickness()
                                            * chord
                                    + engine
                                    + fins
                                    + tipFloat);
        }
        return airframe.design().wing().build().tips() == WingTips.WINGLETS
                ? flat + tipFloat + Winglet.on(airframe.wing(), 1).span()
                : flat + tipFloat;
    }

    /** With the wing off; folding fins lie down, m. */
    private static double height(Airframe airframe) {
        return top(airframe, false) - low(airframe);
    }

    /** With the wing on, as it stands, dihedral and all, m. */
    private static double assembledHeight(Airframe airframe) {
        return top(airframe, true) - low(airframe);
    }

    private static double low(Airframe airframe) {
        return Math.min(
                -0.5 * airframe.body().height(), airframe.stations().stance().groundZ());
    }

    private static double top(Airframe airframe, boolean winged) {
        double high = 0.5 * airframe.body().height();
        for (int j = 0; j < airframe.surfaces().size(); j++) {
            Surface surface = airframe.surfaces().get(j);
            boolean left = surface.role() == Surface.Role.WING && !winged;
            if (!left && !(surface.role() == Surface.Role.FIN && folds(airframe))) {
                for (int i = 0; i < surface.panels().size(); i++) {
                    Panel panel = surface.panels().get(i);
                    high = Math.max(high, panel.tipZ());
                }
            }
        }
        return high;
    }
}
