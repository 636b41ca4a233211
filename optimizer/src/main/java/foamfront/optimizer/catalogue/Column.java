package foamfront.optimizer.catalogue;

import foamfront.model.units.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * One column a table must have.
 *
 * @param name as in the header, without its unit
 * @param dimension of its figures, or null for text
 */
record Column(String name, @Nullable Dimension dimension) {
    static Column text(String name) {
        return new Column(name, null);
    }

    static Column of(String name, Dimension dimension) {
        return new Column(name, dimension);
    }
}
