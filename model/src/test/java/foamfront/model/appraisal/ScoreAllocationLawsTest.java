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
     * Bytes of one score: 10 170 hardly compiled, which leaves no allocation out, so that neither warmth nor load changes the
     * verdict, and a tenth more for another layout of objects. Warm it is less ({@code ScoreBenchmark}).
     */
    private static final long MOST = 11_200;

    private static final int SCORES = 200;

    @Test
    void aScoreLeavesLittleBehind() {
        assumeThat(ManagementFactory.getThreadMXBean()).isInstanceOf(ThreadMXBean.class);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        assumeThat(threads.isThreadAllocatedMemoryEnabled()).isTrue();
        Design design = Samples.trainer();
        Mission mission = Samples.mission();
        Appraiser appraiser = new Appraiser(List.of(Measure.PAYLOAD, Measure.ENDURANCE));
        long thread = Thread.currentThread().getId();
        // The first score builds what later ones use again.
        assertThat(appraiser.score(design, mission, Factors.NOMINAL).feasible()).isTrue();
        long before = threads.getThreadAllocatedBytes(thread);
        for (int i = 0; i < SCORES; i++) {
            appraiser.score(design, mission, Factors.NOMINAL);
        }
        assertThat((threads.getThreadAllocatedBytes(thread) - before) / SCORES).isLessThan(MOST);
    }
}
