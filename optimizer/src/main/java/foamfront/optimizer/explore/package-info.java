/**
 * One exploration, from a study to a run folder.
 *
 * <p>Makes a study a search problem, searches, computes the designs of the front again in full, and writes what the run
 * leaves behind. Knows no console and no clock: progress goes to a listener, whether to stop is asked of a supplier,
 * and times are handed in. Depends on {@code genome}, {@code search}, {@code front}, {@code runs} and the model. Start
 * at {@link foamfront.optimizer.explore.Exploration}.
 */
@NullMarked
package foamfront.optimizer.explore;

import org.jspecify.annotations.NullMarked;
