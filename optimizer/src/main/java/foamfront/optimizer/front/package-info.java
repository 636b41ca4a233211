/**
 * The front: designs of which none beats another on every aim, and its tables for programs (CSV, JSON) and people (Markdown,
 * terminal).
 *
 * <p>Everything here is a pure function of rows: the same rows in any order give the same bytes. Files for programs use the fixed
 * units of {@code Measure}; pages for people use those that the study asks for. Numbers are written by {@code units.Numbers}
 * alone. Depends on the model, and on nothing that searches. Start at {@link foamfront.optimizer.front.Front}.
 */
@NullMarked
package foamfront.optimizer.front;

import org.jspecify.annotations.NullMarked;
