/** The commands; the only package that touches the console and exit codes. */
@NullMarked
package foamfront.optimizer.cli;

import org.jspecify.annotations.NullMarked;
