package foamfront.model.mission;

import foamfront.model.design.Choice;

/**
 * What the aeroplane takes off from, with its rolling friction coefficient for small wheels: the upper end of the ranges of
 * W. H. Mason, Virginia Tech course note on take-off (1997), as small wheels on grass ask (judgement); and with the sliding
 * friction of a taped foam belly on it (judgement: a model without wheels stops on mown grass within some ten of its lengths).
 */
public enum Ground implements Choice {
    TARMAC("tarmac", 0.03, 0.5),
    SHORT_GRASS("short grass", 0.10, 0.4),
    LONG_GRASS("long grass", 0.18, 0.6),

    /** Still fresh water; wheels roll, and bellies slide, on the short grass of its bank. */
    WATER("water", 0.10, 0.4);

    private final String words;
    private final double friction;
    private final double sliding;

    Ground(String words, double friction, double sliding) {
        this.words = words;
        this.friction = friction;
        this.sliding = sliding;
    }

    @Override
    public String words() {
        return words;
    }

    /** Of wheels that roll. */
    public double friction() {
        return friction;
    }

    /** Of a belly that slides. */
    public double sliding() {
        return sliding;
    }
}
