package foamfront.model.flight;

import foamfront.model.aero.LiftingSystem;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.Surface;
import foamfront.model.propulsion.Slipstream;
import java.util.Arrays;

/**
 * What the slipstream of open propellers does to lift and moment of the wings and the tail in it, elevator and all.
 *
 * <p>Derived from momentum: {@link Slipstream}'s stream runs straight aft from the disc, V + u fast where a surface's quarter chord
 * stands in it. Along the shaft its air is faster by r = (V + u) / V, across it no faster than before but for what the disc's own
 * normal force took, N_α V / (2 A (V + w)) of it; so a surface's lift by incidence grows only r times that, less one, and its lift by
 * set incidence, camber and elevator r² - 1, as does its sections' own moment at no lift. The share of a surface is the share of its span that the stream covers at its height,
 * its chord and load along the span being taken as even. The wings' downwash is taken to grow with what it is part of. Swirl, the
 * stream's bending by lift and the small aspect ratio of the part in the stream are left out (the last makes a wing's gain too
 * large: C. Koning in W. F. Durand, Aerodynamic Theory IV, 1935, from memory).
 *
 * <p>What these leave out takes most from a tail far behind the disc, so {@link #assuredShift} trusts no gain that steadies
 * (judgement); trim takes every gain as it comes, for there no sign is the safe one.
 *
 * <p>Owned by one worker; what it says stands until the next {@link #place}, which follows {@link #blow}.
 */
public final class SlipstreamLift {
    private double thrust;
    private double speed;
    private double density;
    private double discArea;

    /** Share of the flow across the shaft that the disc's normal force leaves. */
    private double kept = 1;

    private double slope;
    private double trimChange;
    private double controlGain;

    /** Lift slope that each surface gains, m², and where, m. */
    private final double[] gains = new double[LiftingSystem.MOST_SURFACES];

    private final double[] places = new double[LiftingSystem.MOST_SURFACES];

    /**
     * Takes over the propellers.
     *
     * @param motors how many
     * @param thrust of all, N
     * @param speed of flight, m/s
     * @param density kg/m³
     * @param discArea of one, m²; 0 for what has no open propeller
     * @param normalForce of all over dynamic pressure, m² per rad
     */
    public void blow(int motors, double thrust, double speed, double density, double discArea, double normalForce) {
        this.thrust = thrust / motors;
        this.speed = speed;
        this.density = density;
        this.discArea = discArea;
        double atDisc = discArea == 0 ? 0 : Slipstream.atDisc(this.thrust, speed, discArea, density);
        kept = discArea == 0 ? 1 : 1 - normalForce / motors * speed / (2 * discArea * (speed + atDisc));
    }

    /**
     * Takes over an aeroplane in trimmed flight.
     *
     * @param lifting solved
     * @param momentSlope dC_m/dα about the balance point, bodies included
     * @param balanceX m
     * @param alpha of the body axis, rad
     * @param elevator rad
     */
    public void place(
            Airframe airframe,
            LiftingSystem lifting,
            double momentSlope,
            double balanceX,
            double alpha,
            double elevator) {
        slope = lifting.liftSlope() * lifting.referenceArea();
        Arrays.fill(gains, 0);
        Arrays.fill(places, 0);
        controlGain = 0;
        trimChange = 0;
        if (discArea == 0) {
            return;
        }
        Shaft shaft = airframe.stations().shaft();
        double gainedSlope = 0;
        double gainedLift = 0;
        double slopeMoment = 0;
        double moment = 0;
        for (int s = 0; s < lifting.surfaceCount(); s++) {
            Surface surface = airframe.surfaces().get(lifting.listed(s));
            double x = surface.quarterChordX();
            double behind = x - shaft.x();
            if (behind <= 0) {
                continue;
            }
            double share = covered(surface, shaft, Slipstream.radius(thrust, speed, discArea, density, behind));
            double ratio = 1 + Slipstream.behind(thrust, speed, discArea, density, behind) / speed;
            double byIncidence = share * (ratio * kept - 1);
            double bySetting = share * (ratio * ratio - 1);
            double surfaceSlope = lifting.surfaceLiftSlope(s);
            double set = lifting.surfaceLift(s, alpha, elevator, 0) - surfaceSlope * alpha;
            double lift = byIncidence * surfaceSlope * alpha + bySetting * set;
            gains[s] = byIncidence * surfaceSlope;
            places[s] = x;
            gainedSlope += gains[s];
            slopeMoment += gains[s] * (balanceX - x);
            gainedLift += lift;
            moment += lift * (balanceX - x) + bySetting * lifting.surfaceSectionMoment(s, elevator, 0);
            if (!surface.isWing()) {
                controlGain += bySetting;
            }
        }
        // At the same whole lift the aeroplane flies at less incidence, on its slope with power.
        double scale = lifting.referenceArea() * lifting.referenceChord();
        double less = gainedLift / (slope + gainedSlope);
        trimChange = moment / scale - (momentSlope + slopeMoment / scale) * less;
    }

    /** Share of a mirrored surface's span that lies in the streams behind its shafts. */
    static double covered(Surface surface, Shaft shaft, double radius) {
        Panel root = surface.panels().get(0);
        double height = height(surface, shaft.y()) - shaft.z();
        double half = Math.sqrt(Math.max(0, radius * radius - height * height));
        double semispan = 0.5 * surface.span();
        double inner = Math.max(root.rootY(), shaft.y() - half);
        double outer = Math.min(semispan, shaft.y() + half);
        return Math.max(0, outer - inner) / (semispan - root.rootY());
    }

    /** z of a surface abreast of a station y of its span, its end's beyond it, m. */
    private static double height(Surface surface, double y) {
        Panel found = surface.panels().get(0);
        for (Panel panel : surface.panels()) {
            found = panel.rootY() <= y ? panel : found;
        }
        double t = Math.min(1, Math.max(0, found.along(y)));
        return found.rootZ() + t * (found.tipZ() - found.rootZ());
    }

    /** Change of C_m at the same lift with controls held. */
    public double trimChange() {
        return trimChange;
    }

    /** Share by which the tail's elevator gains authority. */
    public double controlGain() {
        return controlGain;
    }

    /**
     * Shift of the neutral point, aft positive, m.
     *
     * @param normalForce of the propellers over dynamic pressure, m² per rad
     * @param x of their discs, m
     * @param neutralX without power, m
     */
    public double shift(double normalForce, double x, double neutralX) {
        return shift(normalForce, x, neutralX, Double.POSITIVE_INFINITY);
    }

    /** The same, or what remains of it without the surfaces whose gain moves the neutral point aft, whichever lies further forward. */
    public double assuredShift(double normalForce, double x, double neutralX) {
        return Math.min(shift(normalForce, x, neutralX), shift(normalForce, x, neutralX, 0));
    }

    /** Without the surfaces that gain more moment about the neutral point, m³, tail heavy negative. */
    private double shift(double normalForce, double x, double neutralX, double most) {
        double moment = normalForce * (x - neutralX);
        double whole = slope + normalForce;
        for (int s = 0; s < gains.length; s++) {
            double gained = gains[s] * (places[s] - neutralX);
            if (gained <= most) {
                moment += gained;
                whole += gains[s];
            }
        }
        return moment / whole;
    }
}
