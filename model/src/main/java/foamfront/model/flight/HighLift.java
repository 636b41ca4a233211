package foamfront.model.flight;

import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.PlainFlap;
import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.section.SectionPolar;
import java.util.List;

/**
 * The aeroplane of a {@link TrimmedFlight} with its flaps let down, trimmed anew with the downwash that they throw on the tail.
 * A flap moves its strips' polar along the lift axis by what it does to maximum lift ({@link PlainFlap#maximumLiftSlope}).
 *
 * <p>Maximum lift of the wings grows over that with flaps up by 0.9 Δc_l,max (S_f / S) cos Λ, Λ the sweep of the hinge (D. P.
 * Raymer, Aircraft Design, eq. 12.21, and the DATCOM, from memory), and the tail's share follows from trim. The first strip
 * to reach its section's end would say that flaps on a part of the span gain nothing: it would be the one next to their end,
 * where measured wings hold on.
 *
 * <p>Separated flow behind the flap adds ΔC_D = 1.7 (c_f / c)^1.38 (S_f / S) sin² δ for a plain flap, S_f the wing area along
 * it: A. D. Young, "The Aerodynamic Characteristics of Flaps", ARC R&amp;M 2622, 1947, as handbooks put it (from memory).
 */
public final class HighLift {
    private static final double PLAIN = 1.7;
    private static final double CHORD_POWER = 1.38;

    /** What a flap that ends within the span gives of its section's gain. */
    private static final double PARTIAL = 0.9;

    /** Fixed-point steps for the stall speed, as without flaps. */
    private static final int STEPS = 6;

    private final TrimmedFlight clean;
    private final TrimLine trim = new TrimLine();
    private final Strips strips = new Strips();
    private double maximumLift;
    private double stallSpeed;
    private double elevatorAtStall;
    private double flap;
    private double separation;

    HighLift(TrimmedFlight clean) {
        this.clean = clean;
    }

    /** Lets flaps down to a deflection, rad. */
    void lower(
            LiftingSystem lifting,
            List<Surface> surfaces,
            SectionPolar[] polars,
            double balanceX,
            double forwardX,
            double bodyMoment,
            double deflection) {
        flap = PlainFlap.worth(deflection);
        separation = separation(surfaces, deflection);
        stall(lifting, surfaces, forwardX, bodyMoment, clean.factors().maximumLift() * gain(surfaces));
        trim.solve(lifting, balanceX, bodyMoment, flap);
        strips.lay(lifting, surfaces, polars, trim, flap, clean.kinematicViscosity(), clean.factors());
    }

    /** The wings' lift at the stall with flaps up, {@code gain} (m²) more, and the tail's in the new trim. */
    private void stall(LiftingSystem lifting, List<Surface> surfaces, double x, double bodyMoment, double gain) {
        double area = clean.referenceArea();
        trim.solve(lifting, x, bodyMoment, 0);
        double up0 = tail(lifting, surfaces, 0, 0);
        double up1 = tail(lifting, surfaces, 1, 0) - up0;
        trim.solve(lifting, x, bodyMoment, flap);
        double down0 = tail(lifting, surfaces, 0, flap);
        double down1 = tail(lifting, surfaces, 1, flap) - down0;
        stallSpeed = clean.stallSpeed();
        for (int step = 0; step < STEPS; step++) {
            double before = clean.maximumLift(stallSpeed);
            double wings = before - (up0 + up1 * before - gain) / area;
            double trimmed = (wings + down0 / area) / (1 - down1 / area);
            maximumLift = Math.max(Strips.LEAST_LIFT, Math.min(Strips.MOST_LIFT, trimmed));
            stallSpeed = clean.speedAt(maximumLift);
        }
        elevatorAtStall = trim.elevator(maximumLift);
    }

    /** Lift of what is no wing at a trimmed lift coefficient, over dynamic pressure, m². */
    private double tail(LiftingSystem lifting, List<Surface> surfaces, double lift, double flaps) {
        double sum = 0;
        for (int s = 0; s < lifting.surfaceCount(); s++) {
            if (!surfaces.get(lifting.listed(s)).isWing()) {
                sum += lifting.surfaceLift(s, trim.incidence(lift), trim.elevator(lift), flaps);
            }
        }
        return sum;
    }

    /** Maximum lift over dynamic pressure that flaps add, m². */
    private double gain(List<Surface> surfaces) {
        double sum = 0;
        for (int j = 0; j < surfaces.size(); j++) {
            Surface surface = surfaces.get(j);
            for (int i = 0; i < surface.controls().size(); i++) {
                Control control = surface.controls().get(i);
                if (isFlap(control)) {
                    double more = PlainFlap.maximumLiftSlope(control.chordFraction()) * flap;
                    sum += PARTIAL
                            * more
                            * 2
                            * surface.areaBetween(control.from(), control.to())
                            * hinge(surface, control);
                }
            }
        }
        return sum;
    }

    /** Cosine of the hinge's mean sweep along the flap. */
    private static double hinge(Surface surface, Control control) {
        double ahead = 1 - control.chordFraction();
        double length = 0;
        for (int j = 0; j < surface.panels().size(); j++) {
            Panel panel = surface.panels().get(j);
            length += panel.breadth();
        }
        double passed = 0;
        double back = 0;
        double across = 0;
        for (int i = 0; i < surface.panels().size(); i++) {
            Panel panel = surface.panels().get(i);
            double inner = Math.max(0, (control.from() * length - passed) / panel.breadth());
            double outer = Math.min(1, (control.to() * length - passed) / panel.breadth());
            double share = Math.max(0, outer - inner);
            back += share * (panel.tipX() + ahead * panel.tipChord() - panel.rootX() - ahead * panel.rootChord());
            across += share * (panel.tipY() - panel.rootY());
            passed += panel.breadth();
        }
        return across / Math.sqrt(across * across + back * back);
    }

    private static boolean isFlap(Control control) {
        return control.kind() == Control.Kind.FLAP || control.kind() == Control.Kind.FLAPERON;
    }

    /** Drag area over dynamic pressure, m². */
    private static double separation(List<Surface> surfaces, double deflection) {
        double sine = StrictMath.sin(deflection);
        double sum = 0;
        for (int j = 0; j < surfaces.size(); j++) {
            Surface surface = surfaces.get(j);
            for (int i = 0; i < surface.controls().size(); i++) {
                Control control = surface.controls().get(i);
                if (isFlap(control)) {
                    sum += PLAIN
                            * StrictMath.pow(control.chordFraction(), CHORD_POWER)
                            * 2
                            * surface.areaBetween(control.from(), control.to())
                            * sine
                            * sine;
                }
            }
        }
        return sum;
    }

    /** Drag coefficient, motor stopped and without its propeller, trimmed at a lift coefficient and speed (m/s). */
    public double dragCoefficient(double lift, double speed) {
        double logSpeed = StrictMath.log(speed);
        return (strips.dragArea(lift, logSpeed) + separation) / clean.referenceArea()
                + inducedDrag(lift)
                + clean.parasiteDrag(logSpeed);
    }

    /** Induced drag coefficient trimmed at a lift coefficient. */
    public double inducedDrag(double lift) {
        return clean.inducedDrag(incidence(lift), elevator(lift), flap);
    }

    /** Trimmed maximum lift coefficient at the foremost balance point, power off. */
    public double maximumLift() {
        return maximumLift;
    }

    /** m/s. */
    public double stallSpeed() {
        return stallSpeed;
    }

    /** Elevator trimmed at maximum lift and the foremost balance point, trailing edge down positive, rad. */
    public double elevatorAtStall() {
        return elevatorAtStall;
    }

    /** Incidence of the body axis trimmed at a lift coefficient, rad. */
    public double incidence(double lift) {
        return trim.incidence(lift);
    }

    /** Elevator trimmed at a lift coefficient, trailing edge down positive, rad. */
    public double elevator(double lift) {
        return trim.elevator(lift);
    }
}
