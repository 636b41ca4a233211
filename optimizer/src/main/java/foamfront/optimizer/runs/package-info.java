/**
 * The run folder: {@code results/<study>/<run>/} with everything that one exploration leaves behind.
 *
 * <p>A run gets the next free number and is never overwritten. Files are written under a temporary name, forced to the disk and
 * renamed. Names that come from a study are reduced to {@code [a-z0-9][a-z0-9_-]{0,63}} before they name a file. What cannot be
 * written is a {@link foamfront.optimizer.runs.CannotWrite}. Depends on {@code front}. Start at
 * {@link foamfront.optimizer.runs.RunFolder}.
 */
@NullMarked
package foamfront.optimizer.runs;

import org.jspecify.annotations.NullMarked;
