package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Bay;

/**
 * Where the battery may lie. A load at the balance point shares a single bay: the battery then ends ahead of it or starts
 * behind it, whichever balances better; ahead when both are alike.
 *
 * @param from foremost place of the battery's front end, m
 * @param to rearmost place of its rear end, m
 * @param length of the battery, m
 * @param blocked length round the balance point taken by loads, gaps included, m; 0 for a free bay
 */
record BatteryBay(double from, double to, double length, double blocked) {
    static BatteryBay of(Airframe airframe) {
        Bay bay = airframe.stations().bay();
        double length = airframe.design().power().battery().length();
        double blocked = bay.shared() && bay.middle() > 0 ? bay.middle() + 2 * Bay.GAP : 0;
        return new BatteryBay(bay.from(), bay.to(), length, blocked);
    }

    /** The place nearest to {@code ideal} for the battery's centre, m. */
    double nearest(double ideal, double balancePoint) {
        double low = from + 0.5 * length;
        double high = Math.max(low, to - 0.5 * length);
        if (blocked == 0) {
            return clamp(ideal, low, high);
        }
        double away = 0.5 * (blocked + length);
        double aheadEnd = Math.min(high, balancePoint - away);
        double behindStart = Math.max(low, balancePoint + away);
        boolean aheadFits = aheadEnd >= low;
        boolean behindFits = behindStart <= high;
        if (!aheadFits && !behindFits) {
            return clamp(ideal, low, high);
        }
        double ahead = clamp(ideal, low, aheadEnd);
        double behind = clamp(ideal, behindStart, high);
        if (!behindFits || (aheadFits && Math.abs(ahead - ideal) <= Math.abs(behind - ideal))) {
            return ahead;
        }
        return behind;
    }

    /** How far a battery centred at {@code x} runs into the loads at the balance point, m. */
    double overlap(double x, double balancePoint) {
        return blocked == 0 ? 0 : Math.max(0, 0.5 * (blocked + length) - Math.abs(x - balancePoint));
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
