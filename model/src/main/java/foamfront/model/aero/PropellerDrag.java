package foamfront.model.aero;

/**
 * Drag area of a propeller that is not driven: a coefficient on blade area (solidity times disc).
 *
 * <p>Stopped 0.8 and feathered 0.1: D. P. Raymer, Aircraft Design, section 12.5, <i>from memory</i>; folded blades are taken as
 * feathered. Windmilling against a motor's cogging 1.2, above the stopped propeller, <i>judgement</i>: within 0.8 to 2.
 */
public final class PropellerDrag {
    /** Mean blade chord over diameter of electric propellers, 0.06 to 0.10, <i>from memory</i>. */
    private static final double MEAN_CHORD = 0.08;

    private PropellerDrag() {}

    /** What an idle propeller does. */
    public enum State {
        FOLDED(0.1),
        STOPPED(0.8),
        WINDMILLING(1.2);

        private final double onBladeArea;

        State(double onBladeArea) {
            this.onBladeArea = onBladeArea;
        }
    }

    /**
     * Drag area, m².
     *
     * @param diameter m
     */
    public static double dragArea(State state, double diameter, int blades) {
        return state.onBladeArea * blades * MEAN_CHORD * diameter * 0.5 * diameter;
    }
}
