package foamfront.optimizer.study;

import foamfront.model.mission.Measure;

/**
 * One thing to get the most or the least of.
 *
 * @param most whether more is better
 */
public record Aim(Measure measure, boolean most) {}
