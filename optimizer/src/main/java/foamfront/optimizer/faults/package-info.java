/**
 * What is wrong with a file that somebody wrote: where, which key, what, and what would be right.
 *
 * <p>Readers collect {@link foamfront.optimizer.faults.Faults} and stop once, with all of them, by a
 * {@link foamfront.optimizer.faults.StudyException}. Depends on nothing. Start at {@link foamfront.optimizer.faults.Fault}.
 */
@NullMarked
package foamfront.optimizer.faults;

import org.jspecify.annotations.NullMarked;
