/**
 * Genes to and from designs: what makes a study a search problem.
 *
 * <p>A {@link foamfront.optimizer.genome.Genome} gives each choice that a study leaves open one variable: categories
 * for kinds, ordinals for sorted catalogue parts, fractions for dimensions and load masses, snapped to a grid so that
 * near-duplicates are one design. Layouts that cannot be built are replaced by the nearest that can, so that every
 * genome decodes to a design. Dimensions nobody stated follow the workshop rules. Depends on {@code study},
 * {@code search} and the model. Start at {@link foamfront.optimizer.genome.Genome}.
 */
@NullMarked
package foamfront.optimizer.genome;

import org.jspecify.annotations.NullMarked;
