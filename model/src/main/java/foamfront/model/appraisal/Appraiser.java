package foamfront.model.appraisal;

import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Computes designs. One appraiser belongs to one worker: it keeps kernels and arrays between calls, and no result depends on
 * earlier ones.
 */
public final class Appraiser {
    private final Measure[] asked;
    private @Nullable Workbench bench;

    /** @param asked the measures that scores hold, in this order */
    public Appraiser(List<Measure> asked) {
        this.asked = asked.toArray(new Measure[0]);
    }

    /** Measures asked for and violation, by stages that stop at the first whose limits fail. */
    public Score score(Design design, Mission mission, Factors factors) {
        Workbench w = begin(design, mission, factors);
        double violation = 0;
        for (int stage = 0; stage < Stages.count(); stage++) {
            Stages.at(stage).run(w);
            violation = w.violation();
            if (violation > 0) {
                violation += Score.STAGE * (Stages.count() - 1 - stage);
                break;
            }
        }
        double[] values = new double[asked.length];
        for (int i = 0; i < asked.length; i++) {
            values[i] = w.get(asked[i]);
        }
        return new Score(values, violation);
    }

    /** Everything, with sentences; all stages run whatever fails. */
    public Appraisal appraise(Design design, Mission mission, Factors factors) {
        Workbench w = begin(design, mission, factors);
        for (int stage = 0; stage < Stages.count(); stage++) {
            Stages.at(stage).run(w);
        }
        return Findings.of(w);
    }

    private Workbench begin(Design design, Mission mission, Factors factors) {
        Workbench w = bench;
        if (w == null) {
            w = new Workbench(design, mission, factors);
            bench = w;
        } else {
            w.begin(design, mission, factors);
        }
        return w;
    }
}
