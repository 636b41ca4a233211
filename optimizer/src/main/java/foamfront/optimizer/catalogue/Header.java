package foamfront.optimizer.catalogue;

import foamfront.model.units.Currency;
import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.model.units.QuantityException;
import foamfront.model.units.Unit;
import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.faults.Nearest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A table's first row: where each column stands, and its unit. */
final class Header {
    private static final Pattern CELL = Pattern.compile("([^\\[\\]]+?)\\s*(?:\\[([^\\[\\]]*)])?");

    /** Free remark behind each row. */
    private static final String SOURCE = "source";

    /**
     * A column that holds prices.
     *
     * @param line of the header
     * @param at from 1
     */
    record Priced(int line, int at, String column, Currency currency) {}

    private record Place(int at, Unit unit) {}

    private final Map<String, Place> places = new HashMap<>();
    private final Map<String, Dimension> dimensions = new HashMap<>();
    private final List<Priced> priced = new ArrayList<>();

    Header(Csv.Line line, List<Column> columns, Faults faults) {
        this(line, columns, faults, column -> "Add it to the header, and its cell to every row.");
    }

    /**
     * @param missing what to do where a column is missing
     */
    Header(Csv.Line line, List<Column> columns, Faults faults, Function<Column, String> missing) {
        List<String> known = columns.stream().map(Column::name).toList();
        for (int i = 0; i < line.cells().size(); i++) {
            String cell = line.cells().get(i).strip();
            Matcher matcher = CELL.matcher(cell);
            String name = name(cell);
            Column column = find(columns, name);
            if (column == null) {
                if (!name.equals(SOURCE)) {
                    faults.add(
                            line.number(),
                            i + 1,
                            cell,
                            "there is no such column",
                            Nearest.advice(name, known, "column"));
                }
                continue;
            }
            if (places.containsKey(name)) {
                faults.add(line.number(), i + 1, name, "the column stands here a second time", "Keep one of them.");
                continue;
            }
            String symbol = matcher.matches() && matcher.group(2) != null ? matcher.group(2) : "";
            places.put(name, new Place(i, unit(column, symbol, line.number(), i, faults)));
        }
        for (Column column : columns) {
            if (!places.containsKey(column.name())) {
                faults.add(line.number(), 0, column.name(), "the column is missing", missing.apply(column));
            }
        }
    }

    private Unit unit(Column column, String symbol, int line, int at, Faults faults) {
        Dimension dimension = column.dimension();
        if (dimension == null) {
            return Unit.COUNT;
        }
        dimensions.put(column.name(), dimension);
        try {
            if (dimension == Dimension.MONEY) {
                priced.add(new Priced(line, at + 1, column.name(), named(symbol)));
                return Unit.MONEY;
            }
            return Quantities.unitNamed(symbol, dimension);
        } catch (QuantityException e) {
            faults.add(line, at + 1, column.name(), e.problem(), e.advice());
            return Unit.COUNT;
        }
    }

    private static Currency named(String code) {
        if (code.isBlank()) {
            throw new QuantityException("no currency stands behind it", "Add its code, for example [EUR].");
        }
        return Currency.of(code);
    }

    private static @Nullable Column find(List<Column> columns, String name) {
        for (Column column : columns) {
            if (column.name().equals(name)) {
                return column;
            }
        }
        return null;
    }

    /** A header cell without its unit. */
    static String name(String cell) {
        Matcher matcher = CELL.matcher(cell.strip());
        return plain(matcher.matches() ? matcher.group(1) : cell);
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Index of a column, or −1. */
    int at(String column) {
        Place place = places.get(column);
        return place == null ? -1 : place.at();
    }

    @Nullable
    Dimension dimension(String column) {
        return dimensions.get(column);
    }

    /** Of a column of prices; null of any other. */
    @Nullable
    Currency currency(String column) {
        for (Priced one : priced) {
            if (one.column().equals(column)) {
                return one.currency();
            }
        }
        return null;
    }

    /** The columns of prices, from the left. */
    List<Priced> priced() {
        return priced;
    }

    Unit unit(String column) {
        Place place = places.get(column);
        return place == null ? Unit.COUNT : place.unit();
    }
}
