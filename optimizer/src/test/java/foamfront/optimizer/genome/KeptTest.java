package foamfront.optimizer.genome;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.design.Design;
import foamfront.optimizer.search.Variable;
import foamfront.optimizer.study.Study;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class KeptTest {
    private final SplittableRandom random = new SplittableRandom(5);

    @Test
    void keptPartsAreTheOtherAeroplanesInEveryDesign() {
        Study study = Studies.wide();
        Design other = random(new Genome(study));
        Genome genome = new Genome(Kept.apply(study, other, List.of("wing", "power", "undercarriage")));
        assertThat(genome.variables().stream().map(Variable::name))
                .doesNotContain("span", "root chord", "motor", "wheel");
        for (int i = 0; i < 500; i++) {
            Design design = random(genome);
            assertThat(design.wing().planform()).isEqualTo(other.wing().planform());
            assertThat(design.wing().build()).isEqualTo(other.wing().build());
            assertThat(design.power()).isEqualTo(other.power());
            assertThat(design.undercarriage()).isEqualTo(other.undercarriage());
        }
    }

    private Design random(Genome genome) {
        double[] values = new double[genome.variables().size()];
        for (int i = 0; i < values.length; i++) {
            int levels = genome.variables().get(i).levels();
            values[i] = levels == 0 ? random.nextDouble() : random.nextInt(levels);
        }
        return genome.decode(values);
    }
}
