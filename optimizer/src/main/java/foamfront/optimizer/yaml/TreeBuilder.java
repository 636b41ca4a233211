package foamfront.optimizer.yaml;

import foamfront.optimizer.faults.Faults;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * Composes values from the parser's events, one at a time, so that the limits stop hostile text before it is built: nesting
 * {@value #DEEPEST}, {@value #MOST_ALIASES} aliases, {@value #LONGEST} characters a value, {@value #MOST_NODES} values with
 * aliases counted in full.
 */
final class TreeBuilder {
    static final int DEEPEST = 32;
    static final int MOST_ALIASES = 20;
    static final int LONGEST = 1024;
    static final int MOST_NODES = 10_000;

    private record Anchored(Yaml value, int nodes) {}

    private final Faults faults;
    private final Map<String, Anchored> anchors = new HashMap<>();
    private int aliases;
    private int nodes;
    private int line = 1;
    private int column = 1;

    TreeBuilder(Faults faults) {
        this.faults = faults;
    }

    /** Where it is reading. */
    int line() {
        return line;
    }

    /** The one document, or null with a fault. */
    @Nullable
    Yaml document(Iterator<Event> events) {
        Yaml root = null;
        while (events.hasNext()) {
            Event event = next(events);
            if (event instanceof NodeEvent) {
                if (root != null) {
                    return fault("a second document starts here", "Keep one document in a file; delete the '---'.");
                }
                root = node(event, events, 1);
                if (root == null) {
                    return null;
                }
            }
        }
        if (root == null || (root instanceof Yaml.Scalar scalar && scalar.empty())) {
            faults.add(0, 0, "", "the file is empty", "Write at least a name, for example 'study: trainer'.");
            return null;
        }
        return root;
    }

    private Event next(Iterator<Event> events) {
        Event event = events.next();
        Optional<Mark> mark = event.getStartMark();
        if (mark.isPresent()) {
            line = mark.get().getLine() + 1;
            column = mark.get().getColumn() + 1;
        }
        return event;
    }

    private @Nullable Yaml node(Event event, Iterator<Event> events, int depth) {
        if (depth > DEEPEST) {
            return fault("the values are nested more than " + DEEPEST + " deep", "Write it flatter.");
        }
        int before = nodes;
        nodes++;
        if (nodes > MOST_NODES) {
            return fault("there are more than 10 000 values", "A file of this kind has a hundred.");
        }
        if (event instanceof AliasEvent alias) {
            return alias(alias);
        }
        Yaml value;
        Optional<Anchor> anchor = Optional.empty();
        if (event instanceof ScalarEvent scalar) {
            anchor = scalar.getAnchor();
            value = tagged(scalar.getTag()) ? null : scalar(scalar);
        } else if (event instanceof CollectionStartEvent start) {
            anchor = start.getAnchor();
            value = tagged(start.getTag()) ? null : collection(start, events, depth);
        } else {
            return fault("this cannot be read", "Write lines like 'span: 1.2 m'.");
        }
        if (value != null && anchor.isPresent()) {
            anchors.put(anchor.get().getValue(), new Anchored(value, nodes - before));
        }
        return value;
    }

    private @Nullable Yaml alias(AliasEvent event) {
        aliases++;
        if (aliases > MOST_ALIASES) {
            return fault("there are more than " + MOST_ALIASES + " aliases", "Write the values out.");
        }
        String name = event.getAlias().getValue();
        Anchored anchored = anchors.get(name);
        if (anchored == null) {
            return fault(
                    "the alias *" + Hints.plain(name) + " stands before its anchor or inside it",
                    "Write the value out instead of the alias.");
        }
        nodes += anchored.nodes();
        if (nodes > MOST_NODES) {
            return fault("there are more than 10 000 values once aliases are written out", "Use fewer aliases.");
        }
        return anchored.value();
    }

    private boolean tagged(Optional<String> tag) {
        if (tag.isEmpty()) {
            return false;
        }
        fault("the tag " + Hints.plain(tag.get()) + " has no meaning here", "Delete the word starting with '!'.");
        return true;
    }

    private @Nullable Yaml scalar(ScalarEvent event) {
        String text = event.getValue();
        if (text.length() > LONGEST) {
            return fault("the value is longer than 1024 characters", "Shorten it.");
        }
        int last = event.getEndMark().map(mark -> mark.getLine() + 1).orElse(line);
        return new Yaml.Scalar(text, event.isPlain(), event.isPlain() && last > line && !text.isEmpty(), line, column);
    }

    private @Nullable Yaml collection(CollectionStartEvent start, Iterator<Event> events, int depth) {
        int startLine = line;
        int startColumn = column;
        if (start instanceof SequenceStartEvent) {
            List<Yaml> items = new ArrayList<>();
            for (Event event = next(events); event instanceof NodeEvent; event = next(events)) {
                Yaml item = node(event, events, depth + 1);
                if (item == null) {
                    return null;
                }
                items.add(item);
            }
            return new Yaml.Sequence(items, startLine, startColumn);
        }
        return start instanceof MappingStartEvent ? mapping(events, depth, startLine, startColumn) : null;
    }

    private @Nullable Yaml mapping(Iterator<Event> events, int depth, int startLine, int startColumn) {
        List<Yaml.Entry> entries = new ArrayList<>();
        for (Event event = next(events); event instanceof NodeEvent; event = next(events)) {
            Yaml key = node(event, events, depth + 1);
            if (key == null) {
                return null;
            }
            if (!(key instanceof Yaml.Scalar scalar)) {
                return fault(
                        "a list or mapping stands where a key belongs", "Write a word, a colon, a space, a value.");
            }
            Yaml value = node(next(events), events, depth + 1);
            if (value == null) {
                return null;
            }
            entries.add(new Yaml.Entry(scalar, value));
        }
        return new Yaml.Mapping(entries, startLine, startColumn);
    }

    private @Nullable Yaml fault(String problem, String advice) {
        faults.add(line, column, "", problem, advice);
        return null;
    }
}
