package foamfront.optimizer.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArchiveLawsTest {
    private static final int OFFERS = 4000;

    @ParameterizedTest(name = "{0} objectives, cap {1}, seed {2}")
    @CsvSource({"2,1000,1", "2,60,2", "3,5000,3", "3,100,4", "4,200,5"})
    void membersDoNotBeatEachOtherAndKeepToTheCap(int objectives, int cap, long seed) {
        List<Fitness> offers = offers(objectives, seed);
        EpsilonArchive archive = archive(objectives, cap, offers);
        List<Fitness> members = archive.members();
        assertThat(archive.size()).isLessThanOrEqualTo(cap).isGreaterThan(cap / 100);
        assertThat(members.size()).isLessThanOrEqualTo(cap + objectives);
        for (Fitness a : members) {
            assertThat(members).noneMatch(b -> NaiveFront.dominates(b.objectives(), a.objectives()));
        }
    }

    @ParameterizedTest(name = "{0} objectives, cap {1}, seed {2}")
    @CsvSource({"2,1000,1", "2,60,2", "3,5000,3", "3,100,4", "4,200,5"})
    void everyOfferIsWithinABoxOfAMember(int objectives, int cap, long seed) {
        List<Fitness> offers = offers(objectives, seed);
        EpsilonArchive archive = archive(objectives, cap, offers);
        List<Fitness> members = archive.members();
        for (Fitness offer : offers) {
            assertThat(members).anyMatch(member -> {
                boolean within = true;
                for (int i = 0; i < objectives; i++) {
                    within &= member.objectives()[i] <= offer.objectives()[i] + archive.side(i);
                }
                return within;
            });
        }
    }

    /** 0.075 / 0.005 is a little more than 15 in doubles: its box is its own all the same. */
    @ParameterizedTest(name = "steps of {0}")
    @ValueSource(doubles = {0.005, 0.05, 0.1, 60, 1.0 / 3})
    void everyStepOfOneSideHasItsOwnBox(double side) {
        EpsilonArchive archive = new EpsilonArchive(List.of(side, side), 1000);
        Schema schema = new Schema(Benchmark.reals(2, 2, values -> Evaluation.feasible(values)));
        for (int k = -200; k < 200; k++) {
            double[] genes = {(k + 200) / 400.0, 0};
            archive.offer(new Fitness(schema.design(genes, Operator.START), Evaluation.feasible(k * side, -k * side)));
        }
        assertThat(archive.size()).isEqualTo(400);
    }

    @ParameterizedTest(name = "{0} objectives, cap {1}, seed {2}")
    @CsvSource({"2,1000,1", "2,20,2", "3,5000,3", "3,50,4"})
    void theBestInEachObjectiveStays(int objectives, int cap, long seed) {
        List<Fitness> offers = offers(objectives, seed);
        List<Fitness> members = archive(objectives, cap, offers).members();
        for (int i = 0; i < objectives; i++) {
            int objective = i;
            double best = offers.stream()
                    .mapToDouble(f -> f.objectives()[objective])
                    .min()
                    .orElseThrow();
            assertThat(members).anyMatch(member -> member.objectives()[objective] == best);
        }
    }

    @ParameterizedTest(name = "{0} objectives, seed {1}")
    @CsvSource({"2,1", "2,2", "3,3", "4,4"})
    void theOrderOfOffersDoesNotMatterWhileNoBoxDoubles(int objectives, long seed) {
        List<Fitness> offers = offers(objectives, seed);
        List<Fitness> first = archive(objectives, OFFERS, offers).members();
        for (int shuffle = 0; shuffle < 5; shuffle++) {
            Collections.shuffle(offers, new Random(shuffle));
            assertThat(archive(objectives, OFFERS, offers).members()).isEqualTo(first);
        }
    }

    private static EpsilonArchive archive(int objectives, int cap, List<Fitness> offers) {
        EpsilonArchive archive = new EpsilonArchive(Collections.nCopies(objectives, 0.01), cap);
        offers.forEach(archive::offer);
        return archive;
    }

    /** Near a sphere about (1, 1, ...), so that many are non-dominated; some negative, some repeated. */
    private static List<Fitness> offers(int objectives, long seed) {
        RandomGenerator random = Generators.of(seed, 0, 0);
        List<Fitness> result = new ArrayList<>();
        for (int k = 0; k < OFFERS; k++) {
            double[] f = new double[objectives];
            double norm = 0;
            for (int i = 0; i < objectives; i++) {
                f[i] = Math.abs(random.nextGaussian());
                norm += f[i] * f[i];
            }
            double scale = (1.3 - 0.3 * random.nextDouble()) / Math.sqrt(norm);
            for (int i = 0; i < objectives; i++) {
                f[i] = 1 - f[i] * scale;
            }
            UnitChromosome design = new UnitChromosome(f.clone(), f.clone(), 0, Operator.START);
            result.add(new Fitness(design, Evaluation.feasible(f)));
            if (k % 10 == 0) {
                result.add(result.get(result.size() / 2));
            }
        }
        return result;
    }
}
