package foamfront.model.aero;

import foamfront.model.units.Require;

/**
 * What a lifting surface needs to know of its section in attached flow.
 *
 * @param zeroLiftAngle incidence of the chord line at zero lift, rad, negative for positive camber
 * @param slopeRatio two-dimensional lift slope over 2π
 * @param moment moment coefficient about the quarter chord at zero lift, nose up positive
 */
public record SectionLift(double zeroLiftAngle, double slopeRatio, double moment) {
    /** A flat plate in inviscid flow. */
    public static final SectionLift FLAT_PLATE = new SectionLift(0, 1, 0);

    public SectionLift {
        Require.finite("zero-lift angle", zeroLiftAngle);
        Require.positive("slope ratio", slopeRatio, "");
        Require.finite("section moment", moment);
    }
}
