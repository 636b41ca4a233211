package foamfront.model.aero;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.List;

/**
 * What upright plates on the wing's tips do to the wing, by their height h over the span b. They spread the wake upwards as more
 * span would:
 *
 * <pre>e / e₀ = (1 + (2/k) h/b)²</pre>
 *
 * <p>k = 2.13 for a plate without twist in frictionless flow, 2.83 as the mean of what flown winglets gave (form and both values
 * after D. Scholz, "Definition and Discussion of the Intrinsic Efficiency of Winglets", INCAS Bulletin 10(1), 2018, from memory;
 * a vortex lattice of wings of taper 0.5 to 1 with h/b from 0.03 to 0.17 gives the first within 2 %, <i>derived</i>,
 * WingletsExternalTest). Flight uses the second; the winglets' own profile drag is summed like a fin's.
 *
 * <p>The lift that they draw outwards bends the root more, by 0.7 h/b of the moment (the same lattice: 0.57 to 0.79). The few per
 * cent of lift slope that they add and their share of the dihedral effect are left out.
 *
 * <p>A winglet is a fin that stands where the wing ends.
 */
public final class Winglets {
    private static final double FRICTIONLESS = 2.13;
    private static final double FLOWN = 2.83;
    private static final double BENDING = 0.7;

    /** Where a fin counts as standing on the tip: within this share of the semispan. */
    private static final double AT_TIP = 0.01;

    private Winglets() {}

    /** Height over span of the winglets among the surfaces; 0 without any. */
    public static double heightOverSpan(List<Surface> surfaces) {
        double span = surfaces.get(0).span();
        for (int i = surfaces.size() - 1; i > 0; i--) {
            Surface surface = surfaces.get(i);
            if (surface.role() == Surface.Role.FIN) {
                Panel foot = surface.panels().get(0);
                if (Math.abs(foot.rootY()) >= 0.5 * span * (1 - AT_TIP)) {
                    return surface.span() / span;
                }
            }
        }
        return 0;
    }

    /** Induced drag with winglets over that without, in flight. */
    public static double inducedShare(double heightOverSpan) {
        return 1 / gain(heightOverSpan, FLOWN);
    }

    /** Span efficiency with winglets over that without, in frictionless flow. */
    public static double frictionlessGain(double heightOverSpan) {
        return gain(heightOverSpan, FRICTIONLESS);
    }

    /** Bending moment at the wing's root over that of the plain wing at the same lift. */
    public static double rootBending(double heightOverSpan) {
        return 1 + BENDING * heightOverSpan;
    }

    private static double gain(double heightOverSpan, double k) {
        double root = 1 + 2 / k * heightOverSpan;
        return root * root;
    }
}
