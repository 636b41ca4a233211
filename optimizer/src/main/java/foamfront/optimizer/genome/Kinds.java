package foamfront.optimizer.genome;

import foamfront.model.design.BodyKind;
import foamfront.model.design.ControlLayout;
import foamfront.model.design.PowerKind;
import foamfront.model.design.SectionKind;
import foamfront.model.design.TailKind;
import foamfront.model.design.UndercarriageKind;
import foamfront.model.design.WingKind;
import foamfront.optimizer.study.WingChoice;

/** What a kind brings with it: the questions by which genes become active. Each is asked of the choice that a digit stands for. */
final class Kinds {
    private Kinds() {}

    static boolean isHull(Object body) {
        return body == BodyKind.BOAT_HULL;
    }

    static boolean isFloats(Object undercarriage) {
        return undercarriage == UndercarriageKind.FLOATS;
    }

    static boolean hasWheels(Object undercarriage) {
        return undercarriage == UndercarriageKind.TAIL_WHEEL
                || undercarriage == UndercarriageKind.TRICYCLE
                || undercarriage == UndercarriageKind.AMPHIBIAN;
    }

    static boolean hasBoom(Object body) {
        return body == BodyKind.POD_AND_BOOM;
    }

    static boolean isDelta(Object wing) {
        return ((WingChoice) wing).kind() == WingKind.DELTA;
    }

    static boolean hasPropeller(Object power) {
        return hasMotor(power) && power != PowerKind.DUCTED_FAN;
    }

    static boolean hasMotor(Object power) {
        return power != PowerKind.NONE;
    }

    static boolean hasAilerons(Object controls) {
        return controls != ControlLayout.RUDDER_ELEVATOR;
    }

    static boolean isBiplane(Object wing) {
        return ((WingChoice) wing).kind() == WingKind.BIPLANE;
    }

    static boolean isTail(Object tail) {
        return tail != TailKind.NONE;
    }

    static boolean isCanted(Object tail) {
        return tail == TailKind.V_TAIL;
    }

    static boolean isFolded(Object section) {
        return section == SectionKind.FOLDED_FLAT_BOTTOM || section == SectionKind.FOLDED_SYMMETRICAL;
    }
}
