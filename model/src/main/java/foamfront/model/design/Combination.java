package foamfront.model.design;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The one table of layouts that cannot be built, each with its reason.
 *
 * @param reason a sentence for the builder
 * @param impossible whether a layout falls under it
 */
public record Combination(String reason, Predicate<Arrangement> impossible) {
    private static final List<Combination> TABLE = List.of(
            new Combination("a flying wing or delta has no tail", a -> a.tailless() && a.tail() != TailKind.NONE),
            new Combination("a monoplane or biplane needs a tail", a -> !a.tailless() && a.tail() == TailKind.NONE),
            new Combination(
                    "a flying wing or delta is flown with elevons",
                    a -> a.tailless() && a.controls() != ControlLayout.ELEVONS),
            new Combination(
                    "elevons belong to a flying wing or delta",
                    a -> !a.tailless() && a.controls() == ControlLayout.ELEVONS),
            new Combination(
                    "plug-in wing halves slide on a stock spar",
                    a -> a.joint() == WingJoint.PLUG_IN && a.spar() != SparKind.STOCK),
            new Combination(
                    "a wing held by rubber bands is one piece across the body",
                    a -> a.joint() == WingJoint.PLUG_IN && a.holdDown() == HoldDown.RUBBER_BANDS),
            new Combination(
                    "a wing folds on its board skins; a stock spar across the joint would hold it open",
                    a -> a.joint() == WingJoint.FOLDING && a.spar() == SparKind.STOCK),
            new Combination(
                    "a wing that folds at its centre line is lifted off the body, held by rubber bands",
                    a -> a.joint() == WingJoint.FOLDING && a.holdDown() != HoldDown.RUBBER_BANDS),
            new Combination(
                    "a plate has no height for the hinge of a folding wing",
                    a -> a.joint() == WingJoint.FOLDING
                            && a.section() != SectionKind.FOLDED_FLAT_BOTTOM
                            && a.section() != SectionKind.FOLDED_SYMMETRICAL),
            new Combination(
                    "a wing that folds lays its upper sides together, where winglets or a pusher's pylon stand",
                    a -> a.joint() == WingJoint.FOLDING
                            && (a.tips() == WingTips.WINGLETS || a.power() == PowerKind.PUSHER)),
            new Combination(
                    "a tailless wing that folds lays its upper sides together, where fixed fins stand; let them fold too",
                    a -> a.joint() == WingJoint.FOLDING && a.tailless() && a.finJoint() == FinJoint.FIXED),
            new Combination(
                    "a T-tail's fin carries the stabiliser and cannot fold",
                    a -> a.tail() == TailKind.T_TAIL && a.finJoint() == FinJoint.FOLDING),
            new Combination(
                    "a V-tail has no fin to fold",
                    a -> a.tail() == TailKind.V_TAIL && a.finJoint() == FinJoint.FOLDING),
            new Combination(
                    "a profile board keeps its nose: it runs through",
                    a -> a.body() == BodyKind.PROFILE_BOARD && a.nose() == Nose.REPLACEABLE),
            new Combination(
                    "a shoulder wing passes through the body and cannot be held by rubber bands",
                    a -> a.height() == WingHeight.SHOULDER && a.holdDown() == HoldDown.RUBBER_BANDS),
            new Combination(
                    "a pusher's pylon stands on the wing, over the body; a low wing is out of its reach",
                    a -> a.power() == PowerKind.PUSHER && a.height() == WingHeight.LOW),
            new Combination(
                    "a pusher's propeller has no room between two wings",
                    a -> a.wing() == WingKind.BIPLANE && a.power() == PowerKind.PUSHER),
            new Combination(
                    "a biplane's struts tie both wings and the body into one piece, glued",
                    a -> a.wing() == WingKind.BIPLANE
                            && (a.joint() != WingJoint.ONE_PIECE || a.holdDown() != HoldDown.GLUED)),
            new Combination(
                    "a biplane's winglets would meet the air between both wings, which is not computed",
                    a -> a.wing() == WingKind.BIPLANE && a.tips() == WingTips.WINGLETS),
            new Combination(
                    "a hull with wheels needs a boat hull",
                    a -> a.undercarriage() == UndercarriageKind.AMPHIBIAN && a.body() != BodyKind.BOAT_HULL),
            new Combination(
                    "a boat hull has its wheels on its sides or none, and needs no floats under it",
                    a -> a.body() == BodyKind.BOAT_HULL
                            && a.undercarriage() != UndercarriageKind.AMPHIBIAN
                            && a.undercarriage() != UndercarriageKind.NONE),
            new Combination(
                    "a hull's bow is glued to its bottom and does not come off",
                    a -> a.body() == BodyKind.BOAT_HULL && a.nose() == Nose.REPLACEABLE),
            new Combination(
                    "without a motor it leaves the hand: nothing takes it off wheels or water",
                    a -> a.power() == PowerKind.NONE
                            && (a.undercarriage() != UndercarriageKind.NONE || a.body() == BodyKind.BOAT_HULL)),
            new Combination(
                    "a propeller at a hull's nose reaches into the water",
                    a -> a.body() == BodyKind.BOAT_HULL && a.power() == PowerKind.NOSE_TRACTOR),
            new Combination(
                    "a fan's intakes in a hull's sides drink spray",
                    a -> a.body() == BodyKind.BOAT_HULL && a.power() == PowerKind.DUCTED_FAN),
            new Combination(
                    "a low wing or a biplane's lower one lies in the water beside a hull",
                    a -> a.body() == BodyKind.BOAT_HULL
                            && (a.wing() == WingKind.BIPLANE || a.height() == WingHeight.LOW)),
            new Combination(
                    "without a tail nothing holds the trim of a hull or floats through the hump",
                    a -> a.tailless()
                            && (a.body() == BodyKind.BOAT_HULL || a.undercarriage() == UndercarriageKind.FLOATS)),
            new Combination(
                    "a profile board is too thin for the struts of floats",
                    a -> a.undercarriage() == UndercarriageKind.FLOATS && a.body() == BodyKind.PROFILE_BOARD),
            new Combination(
                    "a profile board has no inside for a fan",
                    a -> a.power() == PowerKind.DUCTED_FAN && a.body() == BodyKind.PROFILE_BOARD),
            new Combination(
                    "a delta folded from one sheet is a flat plate",
                    a -> a.wing() == WingKind.DELTA && a.section() != SectionKind.FLAT_PLATE),
            new Combination(
                    "a delta cut from one sheet is one piece, glued to its body",
                    a -> a.wing() == WingKind.DELTA
                            && (a.joint() != WingJoint.ONE_PIECE || a.holdDown() != HoldDown.GLUED)),
            new Combination(
                    "a delta's tips are folded up as fins and have no winglets",
                    a -> a.wing() == WingKind.DELTA && a.tips() == WingTips.WINGLETS),
            new Combination(
                    "a delta's fins are its own sheet folded up and do not fold down again",
                    a -> a.wing() == WingKind.DELTA && a.finJoint() == FinJoint.FOLDING),
            new Combination(
                    "a delta's sheet has no room for engines on its edge",
                    a -> a.wing() == WingKind.DELTA
                            && (a.power() == PowerKind.TWIN_TRACTOR || a.power() == PowerKind.COUNTER_TWIN)),
            new Combination(
                    "a delta is thrown from the hand or stands on wheels",
                    a -> a.wing() == WingKind.DELTA
                            && (a.undercarriage() == UndercarriageKind.FLOATS
                                    || a.undercarriage() == UndercarriageKind.AMPHIBIAN)),
            new Combination(
                    "a boom behind its pod carries a tail, and a tailless wing has none",
                    a -> a.tailless() && a.body() == BodyKind.POD_AND_BOOM),
            new Combination(
                    "a profile board is glued to its wing; rubber bands would crush its edge",
                    a -> a.body() == BodyKind.PROFILE_BOARD && a.holdDown() == HoldDown.RUBBER_BANDS),
            new Combination(
                    "a profile board bears no plug-in tube",
                    a -> a.body() == BodyKind.PROFILE_BOARD && a.joint() == WingJoint.PLUG_IN));

    /** Every rule, in the order they are asked. */
    public static List<Combination> table() {
        return TABLE;
    }

    /** Why a layout cannot be built, or null if it can. */
    public static @Nullable String refusal(Arrangement arrangement) {
        for (Combination rule : TABLE) {
            if (rule.impossible.test(arrangement)) {
                return rule.reason;
            }
        }
        return null;
    }
}
