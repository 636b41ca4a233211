package foamfront.optimizer.yaml;

import foamfront.model.design.Choice;
import foamfront.model.units.Dimension;
import java.util.Arrays;
import java.util.List;

/**
 * One key of a table.
 *
 * @param name in lower-case words
 * @param aliases other names accepted for it
 * @param shape of its value
 * @param required whether it must be there
 * @param about a phrase for the schema: what it is, and what stands where it is missing
 */
public record Key(String name, List<String> aliases, Shape shape, boolean required, String about) {
    public Key {
        aliases = List.copyOf(aliases);
    }

    public static Key of(String name, Shape shape, String about) {
        return new Key(name, List.of(), shape, false, about);
    }

    public static Key quantity(String name, Dimension dimension, double low, double high, String about) {
        return of(name, new Shape.Quantity(dimension, low, high), about);
    }

    public static Key text(String name, String about) {
        return of(name, new Shape.Text(), about);
    }

    public static Key yesNo(String name, String about) {
        return of(name, new Shape.YesNo(), about);
    }

    public static Key table(String name, KeyTable table, String about) {
        return of(name, new Shape.Table(table), about);
    }

    public static Key choice(String name, Choice[] values, String about) {
        return of(name, words(values), about);
    }

    public static Shape.Words words(Choice... values) {
        return new Shape.Words(Arrays.stream(values).map(Choice::words).toList());
    }

    public Key must() {
        return new Key(name, aliases, shape, true, about);
    }

    public Key alias(String other) {
        return new Key(name, List.of(other), shape, required, about);
    }

    /** The same key however it is spelt: spaces, hyphens, underscores and capitals make no difference. */
    public static String plain(String spelling) {
        StringBuilder plain = new StringBuilder(spelling.length());
        boolean gap = false;
        for (int i = 0; i < spelling.length(); i++) {
            char c = spelling.charAt(i);
            if (c == ' ' || c == '-' || c == '_' || c == '\n' || c == '\t') {
                gap = true;
            } else {
                if (gap && plain.length() > 0) {
                    plain.append(' ');
                }
                gap = false;
                plain.append(Character.toLowerCase(c));
            }
        }
        return plain.toString();
    }
}
