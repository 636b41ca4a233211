package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.fabrication.PartsList;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Workshop;
import java.util.List;

/**
 * Every mass of one aeroplane but the sliding battery, and that battery beside them. One that {@link #weigh weighs} again holds
 * the next aeroplane's masses, so it stays with one worker.
 */
public final class MassBreakdown {
    private final MassTable table = new MassTable();
    private MassItem battery = MassItem.point("battery", 0, 0, 0, 0, MassGroup.BATTERY);
    private double mass;
    private double relativeMass;
    private double momentX;
    private double momentY;
    private double momentZ;
    private double released;
    private double releasedRelative;
    private double releasedMomentX;

    /** Of nothing yet. */
    public MassBreakdown() {}

    /**
     * @param items all but the battery
     * @param battery its x is not read: the balance sets it
     */
    public MassBreakdown(List<MassItem> items, MassItem battery) {
        this.battery = battery;
        items.forEach(table::add);
        sum();
    }

    /**
     * All masses of an airframe.
     *
     * @param parts what is cut and sawn for it
     */
    public static MassBreakdown of(Airframe airframe, PartsList parts, Workshop workshop, Factors factors) {
        MassBreakdown masses = new MassBreakdown();
        masses.weigh(airframe, parts, workshop, factors);
        return masses;
    }

    /** Takes the masses of an airframe in place of those held. */
    public void weigh(Airframe airframe, PartsList parts, Workshop workshop, Factors factors) {
        table.clear();
        BuiltMasses.add(airframe, parts, workshop, factors, table);
        EquipmentMasses.add(airframe, table);
        LoadRow.add(airframe, table);
        Battery pack = airframe.design().power().battery();
        battery = new MassItem(
                "battery",
                pack.mass(),
                0,
                0,
                airframe.stations().bay().batteryZ(),
                pack.length(),
                pack.width(),
                pack.height(),
                MassGroup.BATTERY,
                false);
        sum();
    }

    private void sum() {
        mass = battery.mass();
        relativeMass = 0;
        momentX = 0;
        momentY = battery.mass() * battery.y();
        momentZ = battery.mass() * battery.z();
        released = 0;
        releasedRelative = 0;
        releasedMomentX = 0;
        for (int i = 0; i < table.size(); i++) {
            double m = table.mass(i);
            double relative = table.fromBalancePoint(i) ? m : 0;
            mass += m;
            momentX += m * table.x(i);
            momentY += m * table.y(i);
            momentZ += m * table.z(i);
            relativeMass += relative;
            if (table.group(i) == MassGroup.RELEASED) {
                released += m;
                releasedMomentX += m * table.x(i);
                releasedRelative += relative;
            }
        }
    }

    /** All but the battery, in a fixed order. */
    public List<MassItem> items() {
        return table.items();
    }

    public MassItem battery() {
        return battery;
    }

    /** Of everything on board, kg. */
    public double mass() {
        return mass;
    }

    /** Of everything but battery and loads, kg. */
    public double emptyMass() {
        return mass - battery.mass() - mass(MassGroup.PAYLOAD) - released;
    }

    /** Of one group, kg. */
    public double mass(MassGroup group) {
        if (group == MassGroup.BATTERY) {
            return battery.mass();
        }
        double sum = 0;
        for (int i = 0; i < table.size(); i++) {
            if (table.group(i) == group) {
                sum += table.mass(i);
            }
        }
        return sum;
    }

    /** Moment of all ahead of a station about it, each at its centroid, kg m. */
    public double momentAhead(double station, double batteryX, double balancePoint) {
        double moment = battery.mass() * Math.max(0, station - batteryX);
        for (int i = 0; i < table.size(); i++) {
            moment += table.mass(i) * Math.max(0, station - x(i, balancePoint));
        }
        return moment;
    }

    /** Front of the foremost load, m from the nose; NaN without one. */
    public double foremostLoad(double balancePoint) {
        double front = Double.NaN;
        for (int i = 0; i < table.size(); i++) {
            if (table.group(i) == MassGroup.PAYLOAD || table.group(i) == MassGroup.RELEASED) {
                double x = x(i, balancePoint) - 0.5 * table.length(i);
                front = Double.isNaN(front) ? x : Math.min(front, x);
            }
        }
        return front;
    }

    private double x(int i, double balancePoint) {
        return table.fromBalancePoint(i) ? balancePoint + table.x(i) : table.x(i);
    }

    /** Mass once a fraction of the released loads is gone, kg. */
    public double massAfter(double releasedFraction) {
        return mass - releasedFraction * released;
    }

    /** Centre of gravity aft of the nose, m, with the battery's centre and the things placed by the balance point given. */
    public double centreX(double batteryX, double balancePoint, double releasedFraction) {
        double moment = momentX
                + relativeMass * balancePoint
                + battery.mass() * batteryX
                - releasedFraction * (releasedMomentX + releasedRelative * balancePoint);
        return moment / massAfter(releasedFraction);
    }

    /** Where the battery's centre must lie for the centre of gravity to be {@code balancePoint}, m. */
    double batteryFor(double balancePoint, double releasedFraction) {
        double miss = balancePoint - centreX(0, balancePoint, releasedFraction);
        return miss * massAfter(releasedFraction) / battery.mass();
    }

    public double centreY() {
        return momentY / mass;
    }

    public double centreZ() {
        return momentZ / mass;
    }
}
