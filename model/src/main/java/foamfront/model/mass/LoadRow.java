package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Body;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import java.util.List;

/**
 * Loads where they ride: those for the nose in a row from the firewall aft, as the battery's bay starts behind them; those at
 * the balance point in a row centred on it; those on top or below outside the body, strapped over the balance point.
 */
final class LoadRow {
    /** Firewall and the gap behind it, m: where the row of loads starts, as in the airframe's stations. */
    static final double FRONT = 0.010;

    /** Room between things in a row, m. */
    static final double GAP = 0.005;

    private LoadRow() {}

    static void add(Airframe airframe, List<MassItem> items) {
        double nose = FRONT;
        double middle = -0.5 * balanceLength(airframe);
        for (Load load : airframe.design().loads()) {
            switch (load.place()) {
                case NOSE, BEHIND_NOSE -> {
                    items.add(item(airframe, load, nose + 0.5 * load.length(), false));
                    nose += load.length() + GAP;
                }
                case BALANCE_POINT -> {
                    items.add(item(airframe, load, middle + 0.5 * load.length(), true));
                    middle += load.length() + GAP;
                }
                case ON_TOP, BELOW -> items.add(item(airframe, load, 0, true));
            }
        }
    }

    /** Length of the row at the balance point, m; 0 without one. */
    static double balanceLength(Airframe airframe) {
        double sum = 0;
        for (Load load : airframe.design().loads()) {
            if (load.place() == Place.BALANCE_POINT) {
                sum += load.length() + GAP;
            }
        }
        return Math.max(0, sum - GAP);
    }

    private static MassItem item(Airframe airframe, Load load, double x, boolean relative) {
        return new MassItem(
                load.name(),
                load.mass(),
                x,
                0,
                height(airframe, load),
                load.length(),
                load.width(),
                load.height(),
                load.released() ? MassGroup.RELEASED : MassGroup.PAYLOAD,
                relative);
    }

    private static double height(Airframe airframe, Load load) {
        double half = 0.5 * (airframe.body().height() + load.height());
        return switch (load.place()) {
            case ON_TOP -> half;
            case BELOW -> -half;
            case NOSE, BEHIND_NOSE -> 0;
            case BALANCE_POINT ->
                airframe.design().body() instanceof Body.TwoBayTube
                        ? load.height() - half + airframe.body().wall()
                        : 0;
        };
    }
}
