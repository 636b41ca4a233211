package foamfront.model.flight;

import foamfront.model.design.FlapKind;

/** How far flaps are let down for what; ailerons that droop keep travel for rolling (common practice). */
public enum FlapSetting {
    TAKE_OFF(15, 10),
    LANDING(40, 15);

    private static final double RADIAN = Math.PI / 180;

    private final double flaps;
    private final double flaperons;

    FlapSetting(double flaps, double flaperons) {
        this.flaps = flaps * RADIAN;
        this.flaperons = flaperons * RADIAN;
    }

    /** Trailing edge down, rad; 0 without flaps. */
    public double deflection(FlapKind kind) {
        return switch (kind) {
            case NONE -> 0;
            case FLAPS -> flaps;
            case FLAPERONS -> flaperons;
        };
    }
}
