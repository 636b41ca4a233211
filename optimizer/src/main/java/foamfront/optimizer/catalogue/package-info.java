/**
 * The parts a study may choose from, read from CSV tables that people edit.
 *
 * <p>Each table's header names its columns and their units, {@code areal density [g/m2]}; any unit of the right dimension
 * serves. Lines starting with {@code #} are comments. Depends on {@code faults} and the model's {@code parts} and
 * {@code units}. Start at {@link foamfront.optimizer.catalogue.CatalogueReader}.
 */
@NullMarked
package foamfront.optimizer.catalogue;

import org.jspecify.annotations.NullMarked;
