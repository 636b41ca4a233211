package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.sun.management.ThreadMXBean;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a score leaves behind for the collector. */
class ScoreAllocationLawsTest {
    /**
     * Bytes of one score in the interpreter, which leaves no allocation out, so that neither warmth nor load changes the verdict:
     * 7944, and 11 104 on Java 25, whose StrictMath takes 32 bytes or more for a sine, that of Java 17 none (measured). Compiled it is 6504
     * ({@code ScoreBenchmark}).
     */
    private static final long MOST = Runtime.version().feature() == 17 ? 8_200 : 11_300;

    private static final int SCORES = 200;

    @Test
    void aScoreLeavesLittleBehind() {
        assumeThat(ManagementFactory.getThreadMXBean()).isInstanceOf(ThreadMXBean.class);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        assumeThat(threads.isThreadAllocatedMemoryEnabled()).isTrue();
        Design design = Samples.trainer();
        Mission mission = Samples.mission();
        Appraiser appraiser = new Appraiser(List.of(Measure.PAYLOAD, Measure.ENDURANCE));
        long before = 0;
        long thread = Thread.currentThread().getId();
        assertThat(appraiser.score(design, mission, Factors.NOMINAL).feasible()).isTrue();
        // The first round loads classes and builds what later ones use again.
        for (int round = 0; round < 2; round++) {
            before = threads.getThreadAllocatedBytes(thread);
            for (int i = 0; i < SCORES; i++) {
                appraiser.score(design, mission, Factors.NOMINAL);
            }
        }
        assertThat((threads.getThreadAllocatedBytes(thread) - before) / SCORES).isLessThan(MOST);
    }
}
