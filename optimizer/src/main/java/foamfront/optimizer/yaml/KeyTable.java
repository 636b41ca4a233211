package foamfront.optimizer.yaml;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The keys of one kind of mapping.
 *
 * @param about what the mapping is, for the schema
 */
public record KeyTable(String about, List<Key> keys) {
    public KeyTable {
        keys = List.copyOf(keys);
    }

    public static KeyTable of(String about, Key... keys) {
        return new KeyTable(about, List.of(keys));
    }

    /** The key of this spelling, or null. */
    public @Nullable Key find(String spelling) {
        String plain = Key.plain(spelling);
        for (Key key : keys) {
            if (Key.plain(key.name()).equals(plain)) {
                return key;
            }
            for (String alias : key.aliases()) {
                if (Key.plain(alias).equals(plain)) {
                    return key;
                }
            }
        }
        return null;
    }

    /** Canonical names, in order. */
    public List<String> names() {
        return keys.stream().map(Key::name).toList();
    }
}
