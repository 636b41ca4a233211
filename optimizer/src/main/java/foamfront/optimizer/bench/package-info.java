/**
 * A power plant on the bench: its figures against airspeed or throttle, a propeller's coefficients, a propeller nobody measured
 * from its size and family, and a motor's constants from readings.
 *
 * <p>Computes nothing that the model does not; it lays out and writes. Depends on {@code catalogue}, {@code front} (tables) and
 * the model's {@code propulsion}. Start at {@link foamfront.optimizer.bench.Sweep}.
 */
@NullMarked
package foamfront.optimizer.bench;

import org.jspecify.annotations.NullMarked;
