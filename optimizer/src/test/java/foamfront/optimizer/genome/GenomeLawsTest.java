package foamfront.optimizer.genome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.Arrangement;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.search.Variable;
import foamfront.optimizer.study.StudyReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GenomeLawsTest {
    private static final int GENOMES = 20_000;

    /** Rounding of a multiple of the increment. */
    private static final double ROUNDING = 1e-12;

    /** Land and water planes side by side. */
    private static final byte[] WET_AND_DRY = """
            study: wet and dry
            site: {surface: water}
            arrangements:
              wing: [{kind: monoplane, height: high}]
              tail: [conventional]
              body: [square tube, boat hull]
              power: [nose tractor, pusher behind the wing]
              undercarriage: [none, floats]
            vary: {span: 0.9 m to 1.5 m, body length: 0.7 m to 1.2 m, step position: 0.3 to 0.6, deadrise: 0 deg to 25 deg, float length: 500 mm to 900 mm, float beam: 60 mm to 120 mm}
            aim: {most: [endurance], least: [build cost]}
            """.getBytes(StandardCharsets.UTF_8);

    private final Genome genome = new Genome(Studies.wide());
    private final SplittableRandom random = new SplittableRandom(11);

    @Test
    void everyGenomeDecodesToADesignThatCanBeBuilt() {
        for (int i = 0; i < GENOMES; i++) {
            Design design = genome.decode(random(genome));
            assertThat(Arrangement.of(design).refusal()).isNull();
        }
    }

    @Test
    void aDesignReadBackIsTheSameDesign() {
        for (int i = 0; i < GENOMES; i++) {
            Design design = genome.decode(random(genome));
            assertThat(genome.decode(genome.encode(design))).isEqualTo(design);
        }
    }

    @Test
    void canonicalValuesStandForTheSameDesignAndStay() {
        for (int i = 0; i < GENOMES; i++) {
            double[] values = random(genome);
            double[] canonical = genome.canonical(values);
            assertThat(genome.decode(canonical)).isEqualTo(genome.decode(values));
            assertThat(genome.canonical(canonical)).isEqualTo(canonical);
        }
    }

    /** What does not matter to a design must not make it another one, or the search pays twice for it. */
    @ParameterizedTest
    @ValueSource(strings = {"dyke-glider", "lapwing-camera", "gravel-pit-amphibian", "wet and dry"})
    void equalDesignsHaveEqualValues(String name) {
        Genome genome = new Genome(
                name.equals("wet and dry")
                        ? StudyReader.read(name, WET_AND_DRY, CatalogueReader.standard())
                        : StudyReader.read(Path.of("..", "studies", name + ".yaml")));
        int same = 0;
        for (int i = 0; i < GENOMES / 4; i++) {
            double[] values = random(genome);
            double[] other = values.clone();
            int changed = random.nextInt(values.length);
            other[changed] = random(genome)[changed];
            if (genome.decode(other).equals(genome.decode(values))) {
                same++;
                assertThat(genome.canonical(other))
                        .as(genome.variables().get(changed).name())
                        .isEqualTo(genome.canonical(values));
            }
        }
        assertThat(same).isPositive();
    }

    @Test
    void lengthsAndMassesLieOnTheirGridInsideTheirRange() {
        for (int i = 0; i < GENOMES; i++) {
            Design design = genome.decode(random(genome));
            double span = design.wing().planform().span();
            assertThat(span).isBetween(0.9 - ROUNDING, 1.3 + ROUNDING);
            assertThat(span / 0.005).isCloseTo(Math.rint(span / 0.005), within(1e-9));
            assertThat(design.wing().x() / 0.005)
                    .isCloseTo(Math.rint(design.wing().x() / 0.005), within(1e-9));
            for (Load load : design.loads()) {
                assertThat(load.mass() / 0.005).isCloseTo(Math.rint(load.mass() / 0.005), within(1e-9));
            }
        }
    }

    @Test
    void aHeavierLoadOfTheSameDensityIsLonger() {
        for (int i = 0; i < 200; i++) {
            Load load = genome.decode(random(genome)).loads().get(0);
            if (load.name().equals("seed bags")) {
                assertThat(load.length() * load.width() * load.height() * 400).isCloseTo(load.mass(), within(1e-12));
            }
        }
    }

    @Test
    void millimetreMetreAndInchStudiesMeanTheSameDesigns() {
        Genome inMillimetres = new Genome(Studies.study("a", "1/4 in", "914.4 mm to 1295.4 mm", "152.4 mm to 254 mm"));
        Genome inMetres = new Genome(Studies.study("a", "6.35 mm", "0.9144 m to 1.2954 m", "0.1524 m to 0.254 m"));
        Genome inInches = new Genome(Studies.study("a", "1/4 in", "36 in to 51 in", "6 in to 10 in"));
        for (int i = 0; i < 2000; i++) {
            double[] values = random(inInches);
            Design design = inInches.decode(values);
            assertThat(inMillimetres.decode(values)).isEqualTo(design);
            assertThat(inMetres.decode(values)).isEqualTo(design);
        }
    }

    @Test
    void bothEndsOfEveryRangeAreReached() {
        double[] low = new double[genome.variables().size()];
        double[] high = new double[genome.variables().size()];
        for (int i = 0; i < high.length; i++) {
            Variable variable = genome.variables().get(i);
            high[i] = variable.levels() == 0 ? 1 : variable.levels() - 1;
        }
        assertThat(genome.decode(low).wing().planform().span()).isCloseTo(0.9, within(ROUNDING));
        assertThat(genome.decode(high).wing().planform().span()).isCloseTo(1.3, within(ROUNDING));
        assertThat(genome.decode(high).loads().get(0).mass()).isCloseTo(0.6, within(ROUNDING));
    }

    @Test
    void everyNicheIsReachedAndNamesWingTailAndPower() {
        boolean[] seen = new boolean[genome.niches()];
        for (int i = 0; i < 2000; i++) {
            seen[genome.niche(genome.canonical(random(genome)))] = true;
        }
        // Three wings, three tails and none, six powers: 18 of monoplanes, 15 of biplanes without pusher, 6 of flying
        // wings.
        int buildable = 0;
        for (boolean one : seen) {
            buildable += one ? 1 : 0;
        }
        assertThat(seen).hasSize(72);
        assertThat(buildable).isEqualTo(39);
    }

    @Test
    void genesDecodeToTheValuesTheyCameFrom() {
        for (int i = 0; i < 2000; i++) {
            double[] values = genome.canonical(random(genome));
            double[] genes = genome.genes(values);
            for (int k = 0; k < genes.length; k++) {
                assertThat(genes[k]).isBetween(0.0, 1.0);
                int levels = genome.variables().get(k).levels();
                if (levels > 0) {
                    assertThat((int) (genes[k] * levels)).isEqualTo((int) values[k]);
                }
            }
        }
    }

    private double[] random(Genome of) {
        double[] values = new double[of.variables().size()];
        for (int i = 0; i < values.length; i++) {
            int levels = of.variables().get(i).levels();
            values[i] = levels == 0 ? random.nextDouble() : random.nextInt(levels);
        }
        return values;
    }
}
