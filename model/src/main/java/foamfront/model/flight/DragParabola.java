package foamfront.model.flight;

/**
 * C_D = C_D0 + k C_L² through two points of the trimmed polar. What a span efficiency and zero-lift drag mean for a model whose
 * section drag itself rises with lift: both come out of the strips.
 *
 * @param zeroLift C_D0
 * @param slope k
 */
record DragParabola(double zeroLift, double slope) {
    private static final double SLOW = 1.2; // stall speeds
    private static final double FAST = 2.0;

    static DragParabola of(TrimmedFlight flight) {
        double slowLift = flight.liftCoefficient(SLOW * flight.stallSpeed());
        double fastLift = flight.liftCoefficient(FAST * flight.stallSpeed());
        double slow = coefficient(flight, SLOW * flight.stallSpeed());
        double fast = coefficient(flight, FAST * flight.stallSpeed());
        double k = (slow - fast) / (slowLift * slowLift - fastLift * fastLift);
        return new DragParabola(fast - k * fastLift * fastLift, k);
    }

    private static double coefficient(TrimmedFlight flight, double speed) {
        flight.drag(speed);
        return flight.profileDrag() + flight.inducedDrag() + flight.parasiteDrag();
    }

    double coefficient(double lift) {
        return zeroLift + slope * lift * lift;
    }

    /** 1 / (π A k). */
    double spanEfficiency(double aspectRatio) {
        return 1 / (Math.PI * aspectRatio * slope);
    }
}
