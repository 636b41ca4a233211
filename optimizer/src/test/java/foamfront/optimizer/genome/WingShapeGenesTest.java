package foamfront.optimizer.genome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.design.Design;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.Planform;
import foamfront.model.fabrication.FlatPatterns;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Bends along the span and cut-outs, from genes to designs, geometry and patterns. */
class WingShapeGenesTest {
    private static final int GENOMES = 20_000;
    private static final double ROUNDING = 1e-9;

    private final Genome genome = new Genome(Studies.bent());
    private final SplittableRandom random = new SplittableRandom(5);

    @Test
    void everyShapeIsReachedAndReadBackAsTheSameDesign() {
        int plain = 0;
        int bent = 0;
        int cut = 0;
        for (int i = 0; i < GENOMES; i++) {
            double[] values = random();
            Design design = genome.decode(values);
            Design again = genome.decode(genome.encode(design));
            assertThat(again).isEqualTo(design);
            assertThat(genome.decode(genome.canonical(values))).isEqualTo(design);
            assertThat(genome.canonical(genome.canonical(values))).isEqualTo(genome.canonical(values));
            List<Planform.Break> breaks = design.wing().planform().breaks();
            double dihedral = design.wing().planform().dihedral();
            plain += breaks.isEmpty() ? 1 : 0;
            bent += breaks.stream().anyMatch(at -> at.dihedral() != dihedral) ? 1 : 0;
            cut += Reading.dimension(design, DesignVariable.CUT_OUT_DEPTH) > 0 ? 1 : 0;
        }
        assertThat(plain).isPositive();
        assertThat(bent).isGreaterThan(GENOMES / 2);
        assertThat(cut).isGreaterThan(GENOMES / 2);
    }

    /** The leading edge knows nothing of a cut-out, the trailing edge nothing outside it, and dihedral alone moves heights. */
    @Test
    void aCutOutTakesATriangleFromTheTrailingEdgeAlone() {
        for (int i = 0; i < 2000; i++) {
            Design design = genome.decode(random());
            double depth = Reading.dimension(design, DesignVariable.CUT_OUT_DEPTH);
            double breadth = Reading.dimension(design, DesignVariable.CUT_OUT_BREADTH);
            double root = Reading.dimension(design, DesignVariable.ROOT_CHORD);
            double taper = Reading.dimension(design, DesignVariable.TAPER);
            double sweep = Reading.dimension(design, DesignVariable.SWEEP);
            double half = 0.5 * design.wing().planform().span();
            for (Panel panel : Airframe.of(design).wing().panels()) {
                double at = panel.tipY() / half;
                double whole = root * (1 - (1 - taper) * at);
                double missing = depth == 0 ? 0 : Math.max(0, root * depth * (1 - at / breadth));
                double quarter = design.wing().x() + 0.25 * root + panel.tipY() * Math.tan(sweep);
                assertThat(panel.tipChord()).isCloseTo(whole - missing, within(ROUNDING));
                assertThat(panel.tipX()).isCloseTo(quarter - 0.25 * whole, within(ROUNDING));
            }
            Panel first = Airframe.of(design).wing().panels().get(0);
            assertThat(first.rootChord()).isCloseTo(root * (1 - depth), within(ROUNDING));
            assertThat(first.rootX()).isCloseTo(design.wing().x(), within(ROUNDING));
        }
    }

    /** A bent wing is cut in more pieces, and every piece has its mass. */
    @Test
    void patternsFollowTheBends() {
        for (int i = 0; i < 200; i++) {
            Design design = genome.decode(random());
            Airframe airframe = Airframe.of(design);
            var parts = FlatPatterns.of(airframe);
            long skins = parts.cut().stream()
                    .filter(part -> part.name().matches("wing( bottom)?"))
                    .count();
            int panels = airframe.wing().panels().size();
            assertThat(skins).isGreaterThanOrEqualTo(panels == 1 ? 1 : panels);
            assertThat(parts.cut()).allMatch(part -> part.pattern().area() > 0);
            assertThat(parts.stock()).allMatch(piece -> piece.length() > 0);
        }
    }

    private double[] random() {
        double[] values = new double[genome.variables().size()];
        for (int i = 0; i < values.length; i++) {
            int levels = genome.variables().get(i).levels();
            values[i] = levels == 0 ? random.nextDouble() : random.nextInt(levels);
        }
        return values;
    }
}
