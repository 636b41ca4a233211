/**
 * The club's aeroplanes side by side: what each promises, what they share and what that costs, which roles none of them covers,
 * and one shopping list. Pure functions of appraisals; reads no file. Start at {@link foamfront.optimizer.fleet.LineUp}.
 */
@NullMarked
package foamfront.optimizer.fleet;

import org.jspecify.annotations.NullMarked;
