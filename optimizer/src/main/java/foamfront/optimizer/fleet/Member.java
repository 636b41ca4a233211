package foamfront.optimizer.fleet;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.design.Design;
import foamfront.model.mission.Mission;
import foamfront.model.units.Currency;
import foamfront.optimizer.study.State;
import org.jspecify.annotations.Nullable;

/**
 * One aeroplane of a line-up.
 *
 * @param role what it is for, empty where nobody said
 * @param study name of the study that it answers, empty for none
 * @param mission what it is judged by
 * @param sharing what it shares with another aeroplane, or null
 */
public record Member(
        Design design,
        String role,
        String study,
        State state,
        Mission mission,
        Appraisal appraisal,
        @Nullable Sharing sharing) {
    /** Of all that it costs. */
    public Currency currency() {
        return mission.workshop().currency();
    }
}
