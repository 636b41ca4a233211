package foamfront.model.appraisal;

import foamfront.model.mission.Bound;

/**
 * One limit held against a design.
 *
 * @param bound the limit
 * @param value what the design has, SI
 * @param margin room over the limit's size; positive is good
 * @param sentence what that means, for people
 */
public record LimitCheck(Bound bound, double value, double margin, String sentence) {
    public boolean holds() {
        return margin >= 0;
    }
}
