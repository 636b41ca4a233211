package foamfront.optimizer.front;

import foamfront.model.appraisal.Caveat;
import foamfront.model.appraisal.LimitCheck;
import foamfront.model.appraisal.MeasureValues;
import foamfront.model.design.Design;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One design of a front with what was computed for it.
 *
 * @param design what to build
 * @param measures every measure, SI
 * @param limits every limit held against it
 * @param caveats how far the figures can be trusted
 */
public record Row(Design design, MeasureValues measures, List<LimitCheck> limits, List<Caveat> caveats) {
    public Row {
        limits = List.copyOf(limits);
        caveats = List.copyOf(caveats);
    }

    /** Margins below this are met exactly, by construction, and say nothing about the design. */
    private static final double EXACT = 1e-9;

    /**
     * The limit with the least room to spare; null where nothing is limited. Limits met exactly do not count: a cruise held at
     * the least ratio, a battery that balances.
     */
    public @Nullable LimitCheck tightest() {
        LimitCheck tightest = null;
        for (LimitCheck check : limits) {
            if (Math.abs(check.margin()) > EXACT && (tightest == null || check.margin() < tightest.margin())) {
                tightest = check;
            }
        }
        return tightest;
    }

    /** The arrangement in words, for example {@code monoplane, conventional tail, nose tractor}. */
    public String layout() {
        return Layout.words(design);
    }
}
