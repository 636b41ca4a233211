/**
 * The whole computation of one design: measures, limits with margins, caveats.
 *
 * <p>{@link foamfront.model.appraisal.Appraiser} belongs to one worker and owns its scratch arrays; results never
 * depend on earlier calls. {@code score} gives numbers only; {@code appraise}
 * gives everything with sentences; both give the same bits. Depends on every other package of the model. Start at
 * {@link foamfront.model.appraisal.Appraiser}.
 */
@NullMarked
package foamfront.model.appraisal;

import org.jspecify.annotations.NullMarked;
