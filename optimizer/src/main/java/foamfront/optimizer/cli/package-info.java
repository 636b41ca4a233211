/**
 * The commands; the only package that touches the console, the clock, signals and exit codes.
 *
 * <p>Results go to standard output, progress and faults to standard error. Exit codes: 0 fine, 1 our bug, 2 user input, 3 nothing
 * feasible, 4 could not write. Start at {@link foamfront.optimizer.cli.Main}.
 */
@NullMarked
package foamfront.optimizer.cli;

import org.jspecify.annotations.NullMarked;
