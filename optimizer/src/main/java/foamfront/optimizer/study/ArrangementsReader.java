package foamfront.optimizer.study;

import foamfront.model.design.BodyKind;
import foamfront.model.design.Choice;
import foamfront.model.design.ControlLayout;
import foamfront.model.design.Covering;
import foamfront.model.design.FinJoint;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Nose;
import foamfront.model.design.PowerKind;
import foamfront.model.design.SectionKind;
import foamfront.model.design.SparKind;
import foamfront.model.design.TailKind;
import foamfront.model.design.UndercarriageKind;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingKind;
import foamfront.model.design.WingTips;
import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.Value;
import java.util.ArrayList;
import java.util.List;

/** The layouts a study leaves open; what cannot be built at all is refused. */
final class ArrangementsReader {
    private static final Arrangements STANDING = new Arrangements(
            List.of(new WingChoice(WingKind.MONOPLANE, WingHeight.HIGH)),
            List.of(TailKind.CONVENTIONAL),
            List.of(BodyKind.SQUARE_TUBE),
            List.of(PowerKind.NOSE_TRACTOR),
            List.of(UndercarriageKind.NONE),
            List.of(Covering.BARE),
            List.of(WingTips.PLAIN),
            List.of(SectionKind.FOLDED_FLAT_BOTTOM),
            List.of(WingJoint.ONE_PIECE),
            List.of(SparKind.values()),
            List.of(HoldDown.values()),
            List.of(ControlLayout.RUDDER_ELEVATOR),
            List.of(Nose.FIXED),
            List.of(FinJoint.FIXED));

    private ArrangementsReader() {}

    static Arrangements read(Fields file) {
        Fields fields = file.fields(StudyKeys.ARRANGEMENTS_KEY);
        if (fields == null) {
            return STANDING;
        }
        Arrangements read = new Arrangements(
                wings(fields),
                choices(fields, StudyKeys.TAIL, TailKind.values(), STANDING.tails()),
                choices(fields, StudyKeys.BODY, BodyKind.values(), STANDING.bodies()),
                choices(fields, StudyKeys.POWER, PowerKind.values(), STANDING.powers()),
                choices(fields, StudyKeys.UNDERCARRIAGE, UndercarriageKind.values(), STANDING.undercarriages()),
                choices(fields, StudyKeys.COVERING, Covering.values(), STANDING.coverings()),
                choices(fields, StudyKeys.WING_TIPS, WingTips.values(), STANDING.tips()),
                choices(fields, StudyKeys.WING_SECTION, SectionKind.values(), STANDING.sections()),
                choices(fields, StudyKeys.WING_JOINT, WingJoint.values(), STANDING.joints()),
                choices(fields, StudyKeys.SPAR, SparKind.values(), STANDING.spars()),
                choices(fields, StudyKeys.HOLD_DOWN, HoldDown.values(), STANDING.holdDowns()),
                choices(fields, StudyKeys.CONTROLS, ControlLayout.values(), STANDING.controls()),
                choices(fields, StudyKeys.NOSE, Nose.values(), STANDING.noses()),
                choices(fields, StudyKeys.FIN_JOINT, FinJoint.values(), STANDING.finJoints()));
        if (read.possible().isEmpty()) {
            file.fault(
                    StudyKeys.ARRANGEMENTS_KEY,
                    "none of these layouts can be built: " + read.at(0).refusal(),
                    "Offer another choice beside the one that rules it out.");
        }
        return read;
    }

    private static List<WingChoice> wings(Fields fields) {
        List<WingChoice> wings = new ArrayList<>();
        for (Value item : fields.items(StudyKeys.WING)) {
            Fields nested = item.isMapping() ? item.fields(StudyKeys.WING_CHOICE) : null;
            Value kind = nested == null ? item : nested.value(StudyKeys.WING_KIND);
            WingKind wing = kind == null ? null : kind.choice(WingKind.values());
            if (wing == null) {
                continue;
            }
            List<Value> heights = nested == null ? List.of() : nested.items(StudyKeys.HEIGHT);
            if (heights.isEmpty()) {
                add(wings, new WingChoice(wing, WingHeight.HIGH), item);
            }
            for (Value value : heights) {
                WingHeight height = value.choice(WingHeight.values());
                if (height != null) {
                    add(wings, new WingChoice(wing, height), value);
                }
            }
        }
        return wings.isEmpty() ? STANDING.wings() : wings;
    }

    private static <T> void add(List<T> list, T choice, Value value) {
        if (list.contains(choice)) {
            value.fault("the same choice is listed twice", "List each choice once.");
        } else {
            list.add(choice);
        }
    }

    private static <C extends Choice> List<C> choices(Fields fields, Key key, C[] values, List<C> standing) {
        List<C> choices = new ArrayList<>();
        for (Value item : fields.items(key)) {
            C choice = item.choice(values);
            if (choice != null) {
                add(choices, choice, item);
            }
        }
        return choices.isEmpty() ? standing : choices;
    }
}
