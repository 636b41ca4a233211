package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A millimetre more or less never changes a reserve by a jump. */
class ContinuityLawsTest {
    private static final int STEPS = 2000;

    /**
     * Stiffness goes with the cube of chord and thickness, a spar's with the fourth power; walls open faster than their
     * outside.
     */
    private static final double STEEPEST = 12;

    /**
     * A plug-in tube reaches (h − d) / tan γ into a wing of dihedral γ and at least d; where both are the same, h grows by 2.3 d / d tan γ
     * = 44 of its reach, which pressure goes with the square of.
     */
    private static final double STEEPEST_JOINT = STEEPEST + 2 * 44;

    private static final FlightLoads LOADS = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0, 0);

    @ParameterizedTest(name = "{0}")
    @EnumSource(WingJoint.class)
    void inTheSparsDiameter(WingJoint joint) {
        sweep(1e-3, 14e-3, d -> fold(0.12, rod(d), joint));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(WingJoint.class)
    void inTheChord(WingJoint joint) {
        sweep(0.15, 0.35, c -> Records.with(fold(0.12, rod(8e-3), joint), "wing.planform.rootChord", c));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(WingJoint.class)
    void inTheSectionsThickness(WingJoint joint) {
        sweep(0.09, 0.15, t -> fold(t, rod(6e-3), joint));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(WingJoint.class)
    void inTheBoardsThickness(WingJoint joint) {
        sweep(2e-3, 6e-3, t -> Records.with(fold(0.12, rod(8e-3), joint), "board.thickness", t));
    }

    /** The sweeps above are of level wings; here a straight tube lies aslant in bent ones. */
    @Test
    void inTheChordOfABentPlugInWing() {
        sweep(0.15, 0.35, STEEPEST_JOINT, c -> {
            Design design = fold(0.12, rod(8e-3), WingJoint.PLUG_IN);
            return Records.with(Records.with(design, "wing.planform.dihedral", 0.05), "wing.planform.rootChord", c);
        });
    }

    private static WingSpar rod(double diameter) {
        return new WingSpar.Stock(new Spar(
                "rod", Spar.Shape.ROUND, diameter, diameter, 0, 127e9, 600e6, 1500, 1, 1, Provenance.INVENTED));
    }

    private static Design fold(double thickness, WingSpar spar, WingJoint joint) {
        Design bent = Examples.design(1.2, new WingSection.FoldedFlatBottom(thickness), spar, joint);
        return Records.with(bent, "wing.planform.dihedral", 0.0);
    }

    private static double[] figures(Design design) {
        StructureMargins m = Structure.margins(
                Airframe.of(design), List.of(SpanLoad.elliptic(0.6, 0.5)), LOADS, Examples.GLUE, Factors.NOMINAL);
        return new double[] {m.wingBending(), m.sparShear(), m.joint(), m.tipDeflection(), m.divergenceSpeed()};
    }

    private static void sweep(double from, double to, DoubleFunction<Design> design) {
        sweep(from, to, STEEPEST, design);
    }

    private static void sweep(double from, double to, double steepest, DoubleFunction<Design> design) {
        double ratio = StrictMath.exp(StrictMath.log(to / from) / STEPS);
        double[] before = figures(design.apply(from));
        double at = from;
        for (int i = 0; i < STEPS; i++) {
            at *= ratio;
            double[] after = figures(design.apply(at));
            for (int k = 0; k < after.length; k++) {
                assertThat(Math.abs(StrictMath.log(after[k] / before[k])))
                        .as("figure %d at %s m", k, at)
                        .isLessThan(steepest * StrictMath.log(ratio));
            }
            before = after;
        }
    }
}
