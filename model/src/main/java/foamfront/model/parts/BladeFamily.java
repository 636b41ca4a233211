package foamfront.model.parts;

import static foamfront.model.units.Require.positive;

/**
 * Blade families of small propellers and the tip speed each stands. Sizes of one family are alike enough to tell the coefficients
 * of another size from them ({@link PropellerRegression}).
 *
 * <p>Tip speeds (slow flyer 86 m/s, direct drive 140, thin electric 190, sport 230), from memory of makers' rpm limits; folding
 * and small blades as thin electric, judgement.
 */
public enum BladeFamily {
    THIN_ELECTRIC("thin electric", 190),
    /** Broad blades that hold their pitch. */
    SLOW_FLYER("slow flyer", 86),
    /**
     * Blades whose measured thrust ends at an ever lower advance ratio the faster they turn (a 9x4.7 at 1.31 and then 1.06 of its
     * pitch ratio), as if they untwisted under load; inferred.
     */
    SOFT_SLOW_FLYER("soft slow flyer", 86),
    DIRECT_DRIVE("direct drive", 140),
    /** Thick blades of nylon. */
    SPORT("sport", 230),
    /** Narrower blades of composite with less thrust at one size and pitch. */
    COMPOSITE("composite", 230),
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
