package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Bay;
import foamfront.model.design.Body;
import foamfront.model.design.Load;

/**
 * Loads where they ride: those for the nose in a row, the battery's room starting behind them; those at the balance point in a
 * row centred on it; those on top or below outside the body, strapped over the balance point.
 */
final class LoadRow {
    private LoadRow() {}

    static void add(Airframe airframe, MassTable items) {
        Bay bay = airframe.stations().bay();
        double nose = bay.loadsFrom();
        double middle = -0.5 * bay.middle();
        for (int i = 0; i < airframe.design().loads().size(); i++) {
            Load load = airframe.design().loads().get(i);
            switch (load.place()) {
                case NOSE, BEHIND_NOSE -> {
                    add(items, airframe, load, nose + 0.5 * load.length(), false);
                    nose += load.length() + Bay.GAP;
                }
                case BALANCE_POINT -> {
                    add(items, airframe, load, middle + 0.5 * load.length(), true);
                    middle += load.length() + Bay.GAP;
                }
                case ON_TOP, BELOW -> add(items, airframe, load, 0, true);
            }
        }
    }

    private static void add(MassTable items, Airframe airframe, Load load, double x, boolean relative) {
        items.add(
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
