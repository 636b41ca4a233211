package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * Blade families of small propellers and the tip speed each stands.
 *
 * <p>Tip speeds (slow flyer 86 m/s, direct drive 140, thin electric 190, sport 230), from memory of
 * makers' rpm limits.
 */
public enum BladeFamily {
    THIN_ELECTRIC("thin electric", 190),
    SLOW_FLYER("slow flyer", 86),
    DIRECT_DRIVE("direct drive", 140),
    SPORT("sport", 230),
    FOLDING("folding", 190),
    SMALL("small", 190);

    private final String words;
    private final double tipSpeed;

    BladeFamily(String words, double tipSpeed) {
        positive("tip speed", tipSpeed, "m/s");
        this.words = words;
        this.tipSpeed = tipSpeed;
    }

    /** The words used in catalogue files. */
    public String words() {
        return words;
    }

    /** Highest tip speed the family stands, m/s. */
    public double tipSpeed() {
        return tipSpeed;
    }
}
