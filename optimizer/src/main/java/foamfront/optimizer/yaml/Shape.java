package foamfront.optimizer.yaml;

import foamfront.model.units.Dimension;
import java.util.List;

/** What stands after a key. The reader and the JSON Schema are made from the same shapes. */
public sealed interface Shape {
    /** Free text. */
    record Text() implements Shape {}

    /** yes or no. */
    record YesNo() implements Shape {}

    /** A whole number within bounds. */
    record Whole(long low, long high) implements Shape {}

    /**
     * One quantity.
     *
     * @param low least, SI
     * @param high greatest, SI
     */
    record Quantity(Dimension dimension, double low, double high) implements Shape {}

    /** A quantity, or a range from one to another. */
    record Span(Dimension dimension, double low, double high) implements Shape {}

    /** at most, at least, or a range. */
    record Limit(Dimension dimension) implements Shape {}

    /** Side lengths. */
    record Size(int sides) implements Shape {}

    /** One of a few words. */
    record Words(List<String> words) implements Shape {
        public Words {
            words = List.copyOf(words);
        }
    }

    /** The name of a catalogue row. */
    record PartName(String kind) implements Shape {}

    /** Keys of its own. */
    record Table(KeyTable table) implements Shape {}

    /** A list, or one item that stands for a list of one. */
    record Listing(Shape item) implements Shape {}

    /** Either of these. */
    record Either(Shape first, Shape second) implements Shape {}
}
