package foamfront.optimizer.study;

import foamfront.model.design.Arrangement;
import foamfront.model.design.BodyKind;
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
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingTips;
import java.util.ArrayList;
import java.util.List;

/** The choices of layout a study leaves open; each list has at least one, all of them computed by the model. */
public record Arrangements(
        List<WingChoice> wings,
        List<TailKind> tails,
        List<BodyKind> bodies,
        List<PowerKind> powers,
        List<UndercarriageKind> undercarriages,
        List<Covering> coverings,
        List<WingTips> tips,
        List<SectionKind> sections,
        List<WingJoint> joints,
        List<SparKind> spars,
        List<HoldDown> holdDowns,
        List<ControlLayout> controls,
        List<Nose> noses,
        List<FinJoint> finJoints) {
    public Arrangements {
        wings = List.copyOf(wings);
        tails = List.copyOf(tails);
        bodies = List.copyOf(bodies);
        powers = List.copyOf(powers);
        undercarriages = List.copyOf(undercarriages);
        coverings = List.copyOf(coverings);
        tips = List.copyOf(tips);
        sections = List.copyOf(sections);
        joints = List.copyOf(joints);
        spars = List.copyOf(spars);
        holdDowns = List.copyOf(holdDowns);
        controls = List.copyOf(controls);
        noses = List.copyOf(noses);
        finJoints = List.copyOf(finJoints);
    }

    /** How many layouts the choices make, impossible ones included. */
    public long count() {
        long count = 1;
        for (List<?> list : List.of(
                wings,
                tails,
                bodies,
                powers,
                undercarriages,
                coverings,
                tips,
                sections,
                joints,
                spars,
                holdDowns,
                controls,
                noses,
                finJoints)) {
            count *= list.size();
        }
        return count;
    }

    /** Layout number {@code index} of {@link #count}; the last list runs fastest. */
    public Arrangement at(long index) {
        Dial dial = new Dial(index);
        FinJoint finJoint = dial.next(finJoints);
        Nose nose = dial.next(noses);
        ControlLayout control = dial.next(controls);
        HoldDown holdDown = dial.next(holdDowns);
        SparKind spar = dial.next(spars);
        WingJoint joint = dial.next(joints);
        SectionKind section = dial.next(sections);
        WingTips tip = dial.next(tips);
        Covering covering = dial.next(coverings);
        UndercarriageKind undercarriage = dial.next(undercarriages);
        PowerKind power = dial.next(powers);
        BodyKind body = dial.next(bodies);
        TailKind tail = dial.next(tails);
        WingChoice wing = dial.next(wings);
        return new Arrangement(
                wing.kind(),
                wing.height(),
                tail,
                body,
                nose,
                power,
                undercarriage,
                tip,
                finJoint,
                covering,
                section,
                joint,
                spar,
                holdDown,
                control);
    }

    /** The layouts that can be built, in order. */
    public List<Arrangement> possible() {
        List<Arrangement> list = new ArrayList<>();
        for (long i = 0; i < count(); i++) {
            Arrangement arrangement = at(i);
            if (arrangement.refusal() == null) {
                list.add(arrangement);
            }
        }
        return list;
    }

    /** Reads an index digit by digit. */
    private static final class Dial {
        private long rest;

        Dial(long index) {
            this.rest = index;
        }

        <T> T next(List<T> list) {
            T item = list.get((int) (rest % list.size()));
            rest /= list.size();
            return item;
        }
    }
}
