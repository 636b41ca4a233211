package foamfront.model.flight;

import foamfront.model.parts.Rotor;
import foamfront.model.propulsion.PowerTrain;

/**
 * What the aeroplane does in steady flight: glide and sink here, {@link FullThrottle}, and {@link LevelFlight} between the two.
 *
 * <p>Belongs to one worker; what it says stands until the next {@link #solve}.
 */
public final class Performance {
    /** Safe speed over stall speed. */
    public static final double SAFE = 1.2;

    /** Least cruise speed over stall speed. */
    public static final double CRUISE = 1.3;

    private final SpeedTable table = new SpeedTable();
    private final FullThrottle fullThrottle = new FullThrottle();
    private final LevelFlight level = new LevelFlight();
    private final double[] curve = new double[SpeedTable.SIZE];

    private DragParabola parabola = new DragParabola(0, 1);
    private double glideRatio;
    private double glideSpeed;
    private double sinkRate;

    /**
     * Everything.
     *
     * @param streamArea disc area of propellers whose slipstream scrubs body or wing, m²; 0 for a pusher or fan
     * @param stoppedDrag drag area of the stopped propeller in the glide, m²
     * @param wind m/s
     */
    public void solve(
            TrimmedFlight flight, PowerTrain train, Rotor rotor, double streamArea, double stoppedDrag, double wind) {
        table.fill(flight, streamArea);
        parabola = DragParabola.of(flight);
        glide(flight, stoppedDrag);
        fullThrottle.solve(flight, train, table, rotor.pitch(), streamArea);
        level.solve(flight, train, table, fullThrottle, streamArea, wind);
    }

    /** Without a motor: glide and sink, and no thrust. */
    public void solveGlide(TrimmedFlight flight) {
        table.fill(flight, 0);
        parabola = DragParabola.of(flight);
        glide(flight, 0);
        fullThrottle.stop();
    }

    private void glide(TrimmedFlight flight, double stoppedDrag) {
        double area = 0.5 * flight.density() * stoppedDrag;
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            curve[i] = table.clean[i] + area * table.speed[i] * table.speed[i];
        }
        table.minimise(curve, 0, speed -> flight.drag(speed) + area * speed * speed);
        glideRatio = flight.weight() / table.value();
        glideSpeed = table.at();
        for (int i = 0; i < SpeedTable.SIZE; i++) {
            curve[i] *= table.speed[i];
        }
        table.minimise(curve, 0, speed -> (flight.drag(speed) + area * speed * speed) * speed);
        sinkRate = table.value() / flight.weight();
    }

    /** Flight at full throttle. */
    public FullThrottle fullThrottle() {
        return fullThrottle;
    }

    /** Level flight at less. */
    public LevelFlight level() {
        return level;
    }

    DragParabola parabola() {
        return parabola;
    }

    /** Oswald's span efficiency of the trimmed polar between 1.2 and 2 stall speeds. */
    public double spanEfficiency(double aspectRatio) {
        return parabola.spanEfficiency(aspectRatio);
    }

    /** C_D0 of the parabola through the trimmed polar at 1.2 and 2 stall speeds. */
    public double zeroLiftDrag() {
        return parabola.zeroLift();
    }

    /** Best lift over drag, power off. */
    public double glideRatio() {
        return glideRatio;
    }

    /** Speed of the best glide, m/s. */
    public double glideSpeed() {
        return glideSpeed;
    }

    /** Least, power off, m/s. */
    public double sinkRate() {
        return sinkRate;
    }
}
