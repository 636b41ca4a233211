package foamfront.model.parts;

import static foamfront.model.units.Require.positive;
import static foamfront.model.units.Require.within;

/**
 * Thrust and power of a ducted fan by momentum theory, static and in flight, with losses at inlet, rotor and exit.
 *
 * <p>Derived. The jet leaves the pipe's end A_e at the pressure of the air around, so T = ρ A_e V_e (V_e − V), the second term
 * being the ram drag of the air taken in. With the swept annulus A, e = A_e / A, x = V_e / (n D), J = V / (n D) and total
 * pressure
 *
 * <pre>
 *   2 Δp / ρ = V_e² (1 + K_e) + K_i (e V_e)² − V²         inlet to exit
 *   2 Δp / ρ = ψ (n D)² (1 − e x / J₀)                    rotor, straight in the axial flow (Euler)
 *   L x² + (ψ e / J₀) x − (ψ + J²) = 0,   L = 1 + K_e + K_i e²
 *   C_T = (A_e / D²) x (x − J),   C_P = (A_e / D²) x ψ (1 − e x / J₀) / (2 η)
 * </pre>
 *
 * Neither depends on n, so a fan has curves like a propeller's; the quartics here pass through five points of the formulas
 * and stay within 0.2 % of C_T at rest (FanLawTest). ψ follows from one static thrust at a known speed. At rest the share of the
 * shaft's power that reaches the jet is η / L: a published chart (800 W, 60 mm exit, 18 N) gives 0.81.
 *
 * @param diameter swept, m
 * @param hub m
 * @param exit e
 * @param efficiency η of the rotor
 * @param thrust at rest in standard air, N
 * @param rotation at which that was, rev/s
 */
public record FanLaw(double diameter, double hub, double exit, double efficiency, double thrust, double rotation) {
    /** K_i of a rounded intake lip and short duct, on the speed through the blades; judgement: 0.05 for a bell to 0.2. */
    public static final double INLET_LOSS = 0.08;

    /** K_e of a short smooth jet pipe with stators, on the jet; judgement: wall friction of about two diameters. */
    public static final double EXIT_LOSS = 0.04;

    /** J₀ over the axial advance ratio at rest, e x: blades run at two thirds of their unloaded flow; judgement. */
    public static final double UNLOADED_FLOW = 1.5;

    /** Intakes of this share of the swept annulus cost no more than {@link #INLET_LOSS} (common practice). */
    public static final double AMPLE_INTAKE = 0.9;

    /** Loss of a sharp-edged opening on the speed in it: sudden contraction from still air, a textbook's 0.5 (from memory). */
    private static final double SHARP_EDGE = 0.5;

    /** Smaller intakes are held here, so that a fan without any is a loss and no division by zero. */
    private static final double LEAST_INTAKE = 0.05;

    private static final double STANDARD_DENSITY = 1.225;

    /** Speeds over the quoted one between which the coefficients are believed; judgement. */
    private static final double LOWEST = 0.3;

    private static final double HIGHEST = 1.2;

    public FanLaw {
        positive("fan diameter", diameter, "m");
        positive("fan hub", hub, "m");
        if (!(hub < diameter)) {
            throw new IllegalArgumentException(
                    "fan hub of " + hub + " m is no smaller than its fan of " + diameter + " m");
        }
        within("fan exit", exit, 0.5, 1.1, "of the swept annulus");
        within("rotor efficiency", efficiency, 0.3, 0.95, "");
        positive("fan thrust", thrust, "N");
        positive("fan speed", rotation, "rev/s");
    }

    /** Area the blades sweep, m². */
    public double annulus() {
        return 0.25 * Math.PI * (diameter * diameter - hub * hub);
    }

    /** Jet over nD at an advance ratio. */
    double jet(double j) {
        double loss = loss();
        double psi = loading();
        double slope = psi * exit / unloaded();
        return (Math.sqrt(slope * slope + 4 * loss * (psi + j * j)) - slope) / (2 * loss);
    }

    /** C_T at an advance ratio. */
    public double thrustCoefficient(double j) {
        double x = jet(j);
        return area() * x * (x - j);
    }

    /** C_P at an advance ratio. */
    public double powerCoefficient(double j) {
        double x = jet(j);
        return area() * x * loading() * (1 - exit * x / unloaded()) / (2 * efficiency);
    }

    /** Power of the jet over that of the shaft, at rest. */
    public double staticEfficiency() {
        return efficiency / loss();
    }

    /**
     * Thrust over that with ample intakes. Through intakes of r times the annulus air moves at 1/r of its speed between the blades, so
     * that below r of 0.9 the inlet loses K_s (1/r² − 1/0.9²) more of that speed's pressure. L grows by that times e², and at rest the
     * same shaft power gives (L / L')^(2/3) of the thrust (derived, T³ going as the square of the jet's power); taken at every speed,
     * though in flight ram pressure would help (judgement, on the safe side).
     *
     * @param intake area of the intakes over the swept annulus
     */
    public double thrustShare(double intake) {
        double r = Math.max(LEAST_INTAKE, intake);
        if (r >= AMPLE_INTAKE) {
            return 1;
        }
        double more = SHARP_EDGE * (1 / (r * r) - 1 / (AMPLE_INTAKE * AMPLE_INTAKE));
        double ratio = StrictMath.cbrt(loss() / (loss() + more * exit * exit));
        return ratio * ratio;
    }

    /** Advance ratio at which the jet is no faster than flight. */
    double zeroThrust() {
        double low = 0;
        double high = unloaded() / exit;
        while (high - low > 1e-9 * high) {
            double middle = 0.5 * (low + high);
            if (jet(middle) > middle) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The quartics through five points between rest and zero thrust. */
    public PropellerCurves curves() {
        double end = zeroThrust();
        double[] t = new double[5];
        double[] p = new double[5];
        for (int i = 0; i < 5; i++) {
            t[i] = thrustCoefficient(end * i / 4);
            p[i] = powerCoefficient(end * i / 4);
        }
        return new PropellerCurves(
                PropellerCurves.through(t, end / 4),
                PropellerCurves.through(p, end / 4),
                LOWEST * rotation,
                HIGHEST * rotation,
                end);
    }

    private double loss() {
        return 1 + EXIT_LOSS + INLET_LOSS * exit * exit;
    }

    /** A_e / D². */
    private double area() {
        return exit * annulus() / (diameter * diameter);
    }

    private double atRest() {
        double exitArea = exit * annulus();
        return Math.sqrt(thrust / (STANDARD_DENSITY * exitArea)) / (rotation * diameter);
    }

    private double unloaded() {
        return UNLOADED_FLOW * exit * atRest();
    }

    /** ψ. */
    private double loading() {
        double x = atRest();
        return loss() * x * x / (1 - 1 / UNLOADED_FLOW);
    }
}
