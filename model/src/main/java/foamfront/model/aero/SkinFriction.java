package foamfront.model.aero;

/**
 * Mean skin friction of one side of a smooth flat plate against its length Reynolds number.
 *
 * <p>Source: H. Schlichting, Boundary-Layer Theory (1979), ch. VII (Blasius, 1.328 / √Re), ch. XXI (Prandtl and Schlichting,
 * 0.455 / (log₁₀ Re)^2.58; K. E. Schoenherr 1932, 0.242 / √C_f = log₁₀(Re C_f)), formulas <i>from memory</i>. Turbulent forms
 * are fitted above Re 300 000; below they continue smoothly and stay above the laminar value down to Re 20 000.
 */
public final class SkinFriction {
    private static final double LN_10 = 2.302585092994046;
    private static final double SCHOENHERR = 0.242;
    /** Newton's method on 1 / √C_f doubles its digits each time and starts within 5 %. */
    private static final int NEWTON_STEPS = 4;

    private SkinFriction() {}

    /** Blasius. */
    public static double laminar(double reynolds) {
        return 1.328 / Math.sqrt(reynolds);
    }

    /** Prandtl and Schlichting, turbulent from the leading edge. */
    public static double turbulent(double reynolds) {
        double decades = StrictMath.log10(reynolds);
        return 0.455 / StrictMath.exp(2.58 * StrictMath.log(decades));
    }

    /** Schoenherr, turbulent from the leading edge. */
    public static double schoenherr(double reynolds) {
        double inverseRoot = 1 / Math.sqrt(turbulent(reynolds));
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double residual = SCHOENHERR * inverseRoot - StrictMath.log10(reynolds / (inverseRoot * inverseRoot));
            inverseRoot -= residual / (SCHOENHERR + 2 / (LN_10 * inverseRoot));
        }
        return 1 / (inverseRoot * inverseRoot);
    }

    /**
     * Laminar up to transition, turbulent behind it: C_f,turb − A / Re with A = Re_tr (C_f,turb − C_f,lam) at transition, and
     * the laminar value where transition lies behind the plate, so never negative.
     */
    public static double withTransition(double reynolds, double transitionReynolds) {
        if (reynolds <= transitionReynolds) {
            return laminar(reynolds);
        }
        double saved = transitionReynolds * (turbulent(transitionReynolds) - laminar(transitionReynolds));
        return turbulent(reynolds) - Math.max(0, saved) / reynolds;
    }
}
