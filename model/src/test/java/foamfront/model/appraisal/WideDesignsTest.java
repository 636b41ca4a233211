package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Samples;
import foamfront.model.design.Body;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.FinJoint;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Nose;
import foamfront.model.design.Planform;
import foamfront.model.design.Tail;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.design.WingTips;
import foamfront.model.fabrication.CutPart;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Twenty thousand designs far wider than any study asks for, through every stage whatever fails: an absurd candidate is
 * an ordinary result, never an exception or a value that is no number.
 */
class WideDesignsTest {
    private static final int DESIGNS = 5000;
    private static final int FEW = 5;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void anythingThatCanBeDescribedCanBeAppraised(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Design> bases = List.copyOf(Arrangements.all().values());
        Workbench bench = new Workbench(bases.get(0), Samples.mission(), Factors.NOMINAL);
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < DESIGNS && faults.size() < FEW; i++) {
            Design design = wide(bases.get(i % bases.size()), random);
            try {
                bench.begin(design, Samples.mission(), Factors.NOMINAL);
                for (int stage = 0; stage < Stages.count(); stage++) {
                    bench.run(stage);
                }
                unnumbered(bench, design, faults);
            } catch (IllegalArgumentException
                    | IllegalStateException
                    | ArithmeticException
                    | IndexOutOfBoundsException e) {
                faults.add(e + " at " + e.getStackTrace()[0] + ", " + e.getStackTrace()[1] + ": " + design);
            }
        }
        assertThat(faults).isEmpty();
    }

    private static void unnumbered(Workbench bench, Design design, List<String> faults) {
        for (Measure measure : Measure.values()) {
            if (bench.applies(measure) && Double.isNaN(bench.get(measure))) {
                faults.add(measure.words() + " is no number: " + design);
            }
        }
        for (CutPart part : bench.parts.cut()) {
            if (!(part.pattern().area() > 0)) {
                faults.add(part.name() + " has an area of " + part.pattern().area() + " m²: " + design);
            }
        }
    }

    /** Another wing, tail, body and controls of the same kinds, each figure anywhere its type allows within reason. */
    private static Design wide(Design base, SplittableRandom random) {
        return new Design(
                "wide",
                wing(base.wing(), random),
                tail(base.tail(), random),
                body(base.body(), random),
                base.power(),
                gear(base.undercarriage(), random),
                new Controls(
                        random.nextBoolean(),
                        true,
                        random.nextBoolean() ? FlapKind.NONE : FlapKind.FLAPS,
                        random.nextDouble(0.2, Controls.MOST_AILERON_BESIDE_FLAPS),
                        random.nextDouble(0.1, 0.45),
                        random.nextDouble(0.1, 0.6),
                        random.nextDouble(0.1, 0.6)),
                base.board(),
                base.covering(),
                base.radio(),
                base.loads());
    }

    private static Wing wing(Wing wing, SplittableRandom random) {
        Planform plan = plan(random);
        WingBuild build = build(wing.build(), random);
        double x = random.nextDouble(-0.1, 0.8);
        double z = random.nextDouble(-0.1, 0.1);
        if (wing instanceof Wing.Biplane) {
            return new Wing.Biplane(plan, build, x, z, random.nextDouble(0.02, 0.5), random.nextDouble(-0.2, 0.2));
        }
        return wing instanceof Wing.FlyingWing
                ? new Wing.FlyingWing(plan, build, x, z)
                : new Wing.Monoplane(WingHeight.HIGH, plan, build, x, z);
    }

    private static Planform plan(SplittableRandom random) {
        List<Planform.Break> breaks = random.nextBoolean()
                ? List.of()
                : List.of(new Planform.Break(
                        random.nextDouble(0.05, 0.95),
                        random.nextDouble(0.02, 0.5),
                        random.nextDouble(-1, 1),
                        random.nextDouble(-0.5, 0.5)));
        return new Planform(
                random.nextDouble(0.2, 3),
                random.nextDouble(0.03, 0.6),
                random.nextDouble(0.06, 2.5),
                random.nextDouble(-1, 1),
                random.nextDouble(-0.4, 0.4),
                random.nextDouble(-0.3, 0.3),
                random.nextDouble(-0.3, 0.3),
                breaks);
    }

    private static WingBuild build(WingBuild build, SplittableRandom random) {
        WingSection section = switch (random.nextInt(5)) {
            case 0 -> new WingSection.FlatPlate();
            case 1 -> new WingSection.SteppedPlate(random.nextDouble(0.2, 0.8));
            case 2 -> new WingSection.CurvedPlate(random.nextDouble(0, 0.12));
            case 3 -> new WingSection.FoldedSymmetrical(random.nextDouble(0.03, 0.25));
            default -> new WingSection.FoldedFlatBottom(random.nextDouble(0.03, 0.25));
        };
        double d = random.nextDouble(1e-3, 20e-3);
        Spar rod = new Spar("rod", Spar.Shape.ROUND, d, d, 0.5 * d, 127e9, 600e6, 1500, 1, 1, Provenance.INVENTED);
        WingSpar spar = random.nextBoolean() ? new WingSpar.BoardStrip() : new WingSpar.Stock(rod);
        return new WingBuild(section, build.joint(), spar, build.holdDown(), WingTips.PLAIN);
    }

    private static Tail tail(Tail tail, SplittableRandom random) {
        TailPlane plane = new TailPlane(
                random.nextDouble(0.05, 1.5),
                random.nextDouble(0.02, 0.4),
                random.nextDouble(0.06, 2.5),
                random.nextDouble(-1, 1),
                tail instanceof Tail.VTail ? random.nextDouble(0.1, 1.1) : random.nextDouble(-0.3, 0.3),
                random.nextDouble(-0.3, 0.3),
                random.nextDouble(-0.2, 1.8),
                random.nextDouble(-0.2, 0.2));
        Fin fin = new Fin(
                1 + random.nextInt(3),
                random.nextDouble(0.02, 0.6),
                random.nextDouble(0.02, 0.4),
                random.nextDouble(0.06, 2.5),
                FinJoint.FIXED);
        if (tail instanceof Tail.Conventional) {
            return new Tail.Conventional(plane, fin);
        }
        if (tail instanceof Tail.TTail) {
            return new Tail.TTail(plane, fin);
        }
        return tail instanceof Tail.VTail ? new Tail.VTail(plane) : new Tail.None(fin);
    }

    private static Body body(Body body, SplittableRandom random) {
        double length = random.nextDouble(0.15, 2);
        double width = random.nextDouble(0.02, 0.2);
        double height = random.nextDouble(0.02, 0.2);
        if (body instanceof Body.PodAndBoom pod) {
            return new Body.PodAndBoom(
                    length, width, height, nose(random), random.nextDouble(0.05, 0.95) * length, pod.boom());
        }
        if (body instanceof Body.ProfileBoard) {
            return new Body.ProfileBoard(length, body.width(), height, Nose.FIXED);
        }
        if (body instanceof Body.BoatHull) {
            return new Body.BoatHull(
                    length, width, height, Nose.FIXED, random.nextDouble(0.2, 0.8), random.nextDouble(0, 0.6));
        }
        return body instanceof Body.TwoBayTube
                ? new Body.TwoBayTube(length, width, height, nose(random))
                : new Body.SquareTube(length, width, height, nose(random));
    }

    private static Nose nose(SplittableRandom random) {
        return random.nextBoolean() ? Nose.FIXED : Nose.REPLACEABLE;
    }

    private static Undercarriage gear(Undercarriage gear, SplittableRandom random) {
        return gear instanceof Undercarriage.Floats
                ? new Undercarriage.Floats(
                        random.nextDouble(0.1, 1.2), random.nextDouble(0.03, 0.3), random.nextDouble(0, 0.6))
                : gear;
    }
}
