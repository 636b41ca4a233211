package foamfront.model.design;

import static foamfront.model.units.Unit.DEGREE;
import static foamfront.model.units.Unit.MILLIMETRE;
import static foamfront.model.units.Unit.PERCENT;
import static foamfront.model.units.Unit.RATIO;

import foamfront.model.units.Range;
import foamfront.model.units.Unit;

/**
 * Every dimension a study may vary or fix, with what foam board and a club workshop allow at most, and the rule that stands
 * where a study says nothing (common practice; {@link WorkshopRules} computes it). Each rule needs only dimensions that come
 * before its own.
 */
public enum DesignVariable {
    SPAN("span", MILLIMETRE, 300, 4000, "1.2 m, what two sheets end to end give with room for tips"),
    ROOT_CHORD("root chord", MILLIMETRE, 60, 600, "a sixth of the span; two thirds of a delta's"),
    TAPER("taper", RATIO, 0.05, 1.2, "1: a straight wing needs no tapered cuts; 0.2 of a delta"),
    SWEEP("sweep", DEGREE, -15, 60, "0 deg, of the quarter-chord line; a delta's trailing edge is straight"),
    DIHEDRAL(
            "dihedral",
            DEGREE,
            0,
            15,
            "5 deg without ailerons, 2 deg with them; a low wing has 2 deg more, a delta none"),
    OUTER_DIHEDRAL(
            "outer dihedral",
            DEGREE,
            -15,
            30,
            "the dihedral: a wing without a bend; more outboard is polyhedral, less a gull; a delta has none"),
    BEND_POSITION("bend position", RATIO, 0.1, 0.9, "0.55 of the semispan, where outer dihedral begins"),
    CUT_OUT_DEPTH(
            "cut-out depth",
            RATIO,
            0,
            0.4,
            "0 of the root chord: nothing is cut from the trailing edge of the wing's centre; a delta has no cut-out"),
    CUT_OUT_BREADTH("cut-out breadth", RATIO, 0.1, 0.5, "0.2 of the semispan, where a cut-out has run out"),
    WASHOUT("washout", DEGREE, -2, 6, "0 deg: a folded wing comes out flat"),
    INCIDENCE("incidence", DEGREE, -3, 8, "2 deg; 0 deg of a delta"),
    SECTION_THICKNESS("section thickness", PERCENT, 5, 20, "12 % of the chord"),
    SECTION_CAMBER("section camber", PERCENT, 1, 10, "6 % of the chord, of a curved plate"),
    SECTION_STEP("section step", PERCENT, 25, 75, "50 % of the chord behind the leading edge, of a stepped plate"),
    GAP("gap", MILLIMETRE, 80, 600, "a biplane's gap is its root chord"),
    STAGGER("stagger", MILLIMETRE, -200, 200, "0 mm, a biplane's upper wing right above the lower"),
    WING_POSITION("wing position", RATIO, 0.02, 0.7, "0.25 of the body's length, to the root's leading edge"),
    TAIL_SPAN("tail span", MILLIMETRE, 80, 1200, "0.38 of the span"),
    TAIL_CHORD("tail chord", MILLIMETRE, 30, 400, "0.6 of the root chord"),
    TAIL_INCIDENCE("tail incidence", DEGREE, -6, 4, "0 deg"),
    TAIL_CANT("tail cant", DEGREE, 20, 50, "35 deg, how far each half of a V-tail stands up"),
    FIN_HEIGHT("fin height", MILLIMETRE, 40, 600, "0.14 of the span"),
    FIN_CHORD("fin chord", MILLIMETRE, 30, 400, "the tail's chord; a delta's tip chord, the fold"),
    BODY_LENGTH("body length", MILLIMETRE, 250, 2500, "0.75 of the span"),
    POD_LENGTH("pod length", MILLIMETRE, 100, 1200, "half of the body's length"),
    BODY_WIDTH("body width", MILLIMETRE, 30, 300, "70 mm: a hand fits in"),
    BODY_HEIGHT("body height", MILLIMETRE, 30, 300, "the body's width"),
    STEP_POSITION(
            "step position",
            RATIO,
            0.25,
            0.75,
            "of a hull's length, under 0.4 of the wing's root chord: just behind the balance"),
    DEADRISE("deadrise", DEGREE, 0, 30, "15 deg, of the bottom of a hull or float"),
    FLOAT_LENGTH("float length", MILLIMETRE, 200, 2000, "0.72 of the body's length"),
    FLOAT_BEAM("float beam", MILLIMETRE, 40, 250, "a seventh of the float's length"),
    AILERON_SPAN("aileron span", RATIO, 0.1, 0.95, "0.4 of the semispan"),
    AILERON_CHORD("aileron chord", RATIO, 0.08, 0.45, "0.22 of the wing's chord"),
    FLAP_SPAN("flap span", RATIO, 0.1, 0.9, "0.4 of the semispan, from the body outwards, as far as ailerons leave"),
    FLAP_CHORD("flap chord", RATIO, 0.08, 0.45, "0.25 of the wing's chord"),
    ELEVATOR_CHORD("elevator chord", RATIO, 0.1, 1, "0.35 of the tail's chord"),
    RUDDER_CHORD("rudder chord", RATIO, 0.1, 1, "0.4 of the fin's chord");

    private final String words;
    private final Unit unit;
    private final double low;
    private final double high;
    private final String rule;

    DesignVariable(String words, Unit unit, double low, double high, String rule) {
        this.words = words;
        this.unit = unit;
        this.low = unit.toSi(low);
        this.high = unit.toSi(high);
        this.rule = rule;
    }

    /** Name in study files. */
    public String words() {
        return words;
    }

    /** Its place in arrays of one value a dimension. */
    @SuppressWarnings("EnumOrdinal") // arrays of this process only; files use the words
    public int index() {
        return ordinal();
    }

    /** Unit of tables and messages; values inside are SI. */
    public Unit unit() {
        return unit;
    }

    /** Furthest that a workshop can make or a trainer's rule book knows (judgement), SI. */
    public Range workshop() {
        return new Range(low, high);
    }

    /** What stands where a study or design says nothing. */
    public String rule() {
        return rule;
    }
}
