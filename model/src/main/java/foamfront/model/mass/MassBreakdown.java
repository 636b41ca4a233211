package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.fabrication.PartsList;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Workshop;
import java.util.ArrayList;
import java.util.List;

/** Every mass of one aeroplane but the sliding battery, and that battery beside them. */
public final class MassBreakdown {
    private final List<MassItem> items;
    private final MassItem battery;
    private final double mass;
    private final double relativeMass;
    private final double momentX;
    private final double momentY;
    private final double momentZ;
    private final double released;
    private final double releasedRelative;
    private final double releasedMomentX;

    /**
     * @param items all but the battery
     * @param battery its x is not read: the balance sets it
     */
    public MassBreakdown(List<MassItem> items, MassItem battery) {
        this.items = List.copyOf(items);
        this.battery = battery;
        double sum = battery.mass();
        double relative = 0;
        double mx = 0;
        double my = battery.mass() * battery.y();
        double mz = battery.mass() * battery.z();
        double gone = 0;
        double goneRelative = 0;
        double goneMoment = 0;
        for (MassItem item : this.items) {
            double m = item.mass();
            sum += m;
            mx += m * item.x();
            my += m * item.y();
            mz += m * item.z();
            relative += item.fromBalancePoint() ? m : 0;
            if (item.group() == MassGroup.RELEASED) {
                gone += m;
                goneMoment += m * item.x();
                goneRelative += item.fromBalancePoint() ? m : 0;
            }
        }
        mass = sum;
        relativeMass = relative;
        momentX = mx;
        momentY = my;
        momentZ = mz;
        released = gone;
        releasedRelative = goneRelative;
        releasedMomentX = goneMoment;
    }

    /**
     * All masses of an airframe.
     *
     * @param parts what is cut and sawn for it
     */
    public static MassBreakdown of(Airframe airframe, PartsList parts, Workshop workshop, Factors factors) {
        List<MassItem> items =
                new ArrayList<>(parts.cut().size() + parts.stock().size() + 24);
        BuiltMasses.add(airframe, parts, workshop, factors, items);
        EquipmentMasses.add(airframe, items);
        LoadRow.add(airframe, items);
        Battery battery = airframe.design().power().battery();
        return new MassBreakdown(
                items,
                new MassItem(
                        "battery",
                        battery.mass(),
                        0,
                        0,
                        airframe.stations().bay().batteryZ(),
                        battery.length(),
                        battery.width(),
                        battery.height(),
                        MassGroup.BATTERY,
                        false));
    }

    /** All but the battery, in a fixed order. */
    public List<MassItem> items() {
        return items;
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
        for (MassItem item : items) {
            if (item.group() == group) {
                sum += item.mass();
            }
        }
        return sum;
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
