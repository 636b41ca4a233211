/**
 * One multiplier for each model uncertainty, all 1 by default: what bands, calibration and robust search vary.
 *
 * <p>Depends on {@code units} only. Start at {@link foamfront.model.factors.Factors}.
 */
@NullMarked
package foamfront.model.factors;

import org.jspecify.annotations.NullMarked;
