package foamfront.model.mission;

import foamfront.model.design.Choice;

/**
 * What the aeroplane takes off from, with its rolling friction coefficient for small wheels: the upper end of the ranges of
 * W. H. Mason, Virginia Tech course note on take-off (1997), as small wheels on grass ask (judgement).
 */
public enum Ground implements Choice {
    TARMAC("tarmac", 0.03),
    SHORT_GRASS("short grass", 0.10),
    LONG_GRASS("long grass", 0.18),

    /** Still fresh water; wheels roll on the short grass of its bank. */
    WATER("water", 0.10);

    private final String words;
    private final double friction;

    Ground(String words, double friction) {
        this.words = words;
        this.friction = friction;
    }

    @Override
    public String words() {
        return words;
    }

    public double friction() {
        return friction;
    }
}
