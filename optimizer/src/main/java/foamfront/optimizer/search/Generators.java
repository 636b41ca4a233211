package foamfront.optimizer.search;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * One random generator for each island and generation, so that nothing depends on how many numbers were drawn before, and a
 * state is told by three whole numbers.
 */
final class Generators {
    private static final RandomGeneratorFactory<RandomGenerator> FACTORY =
            RandomGeneratorFactory.of("L64X256MixRandom");

    private Generators() {}

    static RandomGenerator of(long seed, int island, long generation) {
        return FACTORY.create(mix(mix(mix(seed) + island) + generation));
    }

    /** The finaliser of SplitMix64: Steele, Lea, Flood, Fast splittable pseudorandom number generators, OOPSLA 2014. */
    private static long mix(long value) {
        long z = value + 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
