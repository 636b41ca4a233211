package foamfront.model.flight;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

/**
 * What leaves an aeroplane and falls through still air from rest, drag growing with the square of the speed:
 *
 * <pre>  V(z) = V_t √(1 − e^(−2gz/V_t²)),   t(z) = (V_t / g) arcosh e^(gz/V_t²),   V_t = √(2mg / ρ C_D S)</pre>
 *
 * (derived). C_D of a box 1.05 on its largest face, as of a cube face-on (S. F. Hoerner, Fluid-Dynamic Drag, 1965, ch. 3, from
 * memory); of a flat circular canopy 0.75 on its nominal area, the low end of 0.75 to 0.80 (T. W. Knacke, Parachute Recovery
 * Systems Design Manual, NWC TP 6575, table 5-1, from memory). A canopy is taken to open at once; its own mass is part of the
 * load's.
 */
public final class Fall {
    static final double BOX_DRAG = 1.05;
    static final double CANOPY_DRAG = 0.75;

    /** Above this exponent e^x overflows soon, and arcosh e^x is x + ln 2 to the last bit. */
    private static final double LARGE = 30;

    private Fall() {}

    /** Speed at which drag carries a mass (kg), m/s. */
    static double terminalSpeed(double mass, double drag, double area, double density) {
        return Math.sqrt(2 * mass * GRAVITY / (density * drag * area));
    }

    /** Nominal diameter of the canopy under which a mass (kg) comes down at a speed (m/s), m. */
    public static double canopyDiameter(double mass, double speed, double density) {
        double area = 2 * mass * GRAVITY / (density * CANOPY_DRAG * speed * speed);
        return Math.sqrt(4 * area / Math.PI);
    }

    /** Terminal speed of a box falling with its largest face ahead, m/s; sides m, mass kg. */
    public static double boxSpeed(double mass, double length, double width, double height, double density) {
        double face = Math.max(length * width, Math.max(length * height, width * height));
        return terminalSpeed(mass, BOX_DRAG, face, density);
    }

    /** Speed after falling a height (m), m/s. */
    public static double speed(double terminal, double height) {
        return terminal * Math.sqrt(-StrictMath.expm1(-2 * GRAVITY * height / (terminal * terminal)));
    }

    /** Seconds to fall a height, m. */
    public static double time(double terminal, double height) {
        double x = GRAVITY * height / (terminal * terminal);
        double arc = x > LARGE
                ? x + StrictMath.log(2)
                : StrictMath.log(StrictMath.exp(x) + Math.sqrt(StrictMath.expm1(2 * x)));
        return terminal / GRAVITY * arc;
    }
}
