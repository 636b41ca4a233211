package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.airframe.Winglet;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Wing;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingTips;
import foamfront.model.mission.CarSpace;

/**
 * The pieces an aeroplane packs into: the body with its tail, and the wing in one piece or in halves when it plugs in, folds.
 * A glued wing stays on the body.
 *
 * @param longest side of the longest piece, m
 * @param margin car space left beside the tightest piece, m; negative where it does not go in
 */
public record TransportBox(double longest, double margin) {
    public static TransportBox of(Airframe airframe, CarSpace car) {
        Wing wing = airframe.design().wing();
        double span = airframe.span();
        double body = Math.max(airframe.body().length(), aft(airframe));
        double tail = airframe.tail() == null
                ? airframe.body().width()
                : airframe.tail().span();
        double high = height(airframe);
        boolean halves = wing.build().joint() != WingJoint.ONE_PIECE;
        boolean fixed = !halves && wing.build().holdDown() == HoldDown.GLUED;
        if (car.assembled() || fixed) {
            double across = Math.max(span, tail);
            return new TransportBox(Math.max(across, body), margin(car, across, body, high));
        }
        double wingLength = halves ? 0.5 * span : span;
        double chord = wing.planform().rootChord();
        double wingMargin = margin(car, wingLength, chord, wingHeight(airframe));
        double bodyMargin = margin(car, body, tail, high);
        return new TransportBox(Math.max(wingLength, body), Math.min(wingMargin, bodyMargin));
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

    /** A wing lies flat; on top of it stand its winglets, m. */
    private static double wingHeight(Airframe airframe) {
        double flat = airframe.body().height();
        return airframe.design().wing().build().tips() == WingTips.WINGLETS
                ? flat + Winglet.on(airframe.wing(), 1).span()
                : flat;
    }

    private static double height(Airframe airframe) {
        double low = -0.5 * airframe.body().height();
        double high = -low;
        for (Surface surface : airframe.surfaces()) {
            if (surface.role() != Surface.Role.WING) {
                for (Panel panel : surface.panels()) {
                    high = Math.max(high, panel.tipZ());
                }
            }
        }
        return high - Math.min(low, airframe.stations().stance().groundZ());
    }

    /** Least room left with the piece's sides and the car's both in order of length. */
    private static double margin(CarSpace car, double a, double b, double c) {
        double long1 = Math.max(a, Math.max(b, c));
        double short1 = Math.min(a, Math.min(b, c));
        double mid1 = a + b + c - long1 - short1;
        double long2 = Math.max(car.length(), Math.max(car.width(), car.height()));
        double short2 = Math.min(car.length(), Math.min(car.width(), car.height()));
        double mid2 = car.length() + car.width() + car.height() - long2 - short2;
        return Math.min(long2 - long1, Math.min(mid2 - mid1, short2 - short1));
    }
}
