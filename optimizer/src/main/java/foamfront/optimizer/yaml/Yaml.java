package foamfront.optimizer.yaml;

import java.util.List;

/** A value of a YAML document, with its place; lines and columns count from 1. */
public sealed interface Yaml {
    int line();

    int column();

    /**
     * Text as written, without quotes.
     *
     * @param plain written without quotes or block marks
     * @param folded plain text that runs over several lines
     */
    record Scalar(String text, boolean plain, boolean folded, int line, int column) implements Yaml {
        /** Nothing stands after the key. */
        public boolean empty() {
            return plain && text.isEmpty();
        }
    }

    /** A list. */
    record Sequence(List<Yaml> items, int line, int column) implements Yaml {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** Keys with values, in the order written; keys may repeat. */
    record Mapping(List<Entry> entries, int line, int column) implements Yaml {
        public Mapping {
            entries = List.copyOf(entries);
        }
    }

    /** One key and its value. */
    record Entry(Scalar key, Yaml value) {}
}
