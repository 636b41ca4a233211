package foamfront.optimizer.yaml;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The keys of one kind of mapping. */
public final class KeyTable {
    private final String about;
    private final List<Key> keys;
    private final Map<String, Key> spellings = new HashMap<>();

    /**
     * @param about what the mapping is, for the schema
     * @param keys in the order of the schema
     */
    public KeyTable(String about, List<Key> keys) {
        this.about = about;
        this.keys = List.copyOf(keys);
        for (Key key : keys) {
            add(key.name(), key);
            for (String alias : key.aliases()) {
                add(alias, key);
            }
        }
    }

    public static KeyTable of(String about, Key... keys) {
        return new KeyTable(about, List.of(keys));
    }

    private void add(String name, Key key) {
        if (spellings.put(Key.plain(name), key) != null) {
            throw new IllegalArgumentException("two keys are called '" + name + "'");
        }
    }

    /** What the mapping is, a sentence. */
    public String about() {
        return about;
    }

    public List<Key> keys() {
        return keys;
    }

    /** The key of this spelling, or null. */
    public @Nullable Key find(String spelling) {
        return spellings.get(Key.plain(spelling));
    }

    /** Canonical names, in order. */
    public List<String> names() {
        return keys.stream().map(Key::name).toList();
    }
}
