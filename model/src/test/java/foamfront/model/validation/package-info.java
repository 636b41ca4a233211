/**
 * What the external tests leave behind for the validation page: each check writes one line under {@code target/validation} and
 * asserts at the same time. Depends on nothing of the model. Start at {@link foamfront.model.validation.Validation}.
 */
@NullMarked
package foamfront.model.validation;

import org.jspecify.annotations.NullMarked;
