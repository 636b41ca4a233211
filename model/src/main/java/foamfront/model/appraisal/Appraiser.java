package foamfront.model.appraisal;

import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mass.MassBreakdown;
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

    /** Measures asked for and how far limits are missed. */
    public Score score(Design design, Mission mission, Factors factors) {
        Workbench w = begin(design, mission, factors);
        runAll(w);
        double[] values = new double[asked.length];
        for (int i = 0; i < asked.length; i++) {
            values[i] = w.get(asked[i]);
        }
        return new Score(values, w.excesses());
    }

    /** Everything, with sentences. */
    public Appraisal appraise(Design design, Mission mission, Factors factors) {
        Workbench w = begin(design, mission, factors);
        runAll(w);
        Appraisal appraisal = Findings.of(w);
        w.masses = new MassBreakdown(); // those are the appraisal's now
        return appraisal;
    }

    private static void runAll(Workbench w) {
        for (int stage = 0; stage < Stages.count(); stage++) {
            w.run(stage);
        }
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
