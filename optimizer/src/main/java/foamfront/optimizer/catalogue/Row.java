package foamfront.optimizer.catalogue;

import foamfront.model.parts.Provenance;
import foamfront.model.units.Currency;
import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.model.units.QuantityException;
import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.faults.Nearest;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * One row of a table under its header. A cell that cannot be read leaves a fault and counts as NaN or the first word; the
 * reader drops the row then.
 */
final class Row {
    private final Header header;
    private final Csv.Line line;
    private final Faults faults;

    Row(Header header, Csv.Line line, Faults faults) {
        this.header = header;
        this.line = line;
        this.faults = faults;
    }

    String text(String column) {
        int at = header.at(column);
        String cell = at >= 0 && at < line.cells().size() ? line.cells().get(at) : "";
        if (cell.isBlank()) {
            fault(column, "the cell is empty", "Fill it in; each row needs every column.");
        }
        return cell.strip();
    }

    /** SI value of a cell, in the header's unit unless the cell names another. */
    double si(String column) {
        String cell = text(column);
        Dimension dimension = header.dimension(column);
        if (cell.isEmpty() || dimension == null) {
            return Double.NaN;
        }
        Currency currency = header.currency(column);
        try {
            return currency == null
                    ? Quantities.parse(cell, dimension, header.unit(column))
                    : Quantities.parseUnder(cell, currency);
        } catch (QuantityException e) {
            fault(column, e.problem(), e.advice());
            return Double.NaN;
        }
    }

    int whole(String column) {
        double value = si(column);
        if (!(value >= 0 && value <= 1000) || value != Math.rint(value)) {
            if (!Double.isNaN(value)) {
                fault(column, "this is not a count", "Write a whole number.");
            }
            return 0;
        }
        return (int) value;
    }

    double price() {
        double price = si("price");
        if (price < 0) {
            fault("price", "the price is below zero", "Write 0 for parts that cost nothing.");
        }
        return price;
    }

    Provenance provenance() {
        return word("provenance", Provenance.values(), Provenance::words);
    }

    /** The one of a closed set of words. */
    <W> W word(String column, W[] values, Function<W, String> words) {
        String cell = text(column);
        for (W value : values) {
            if (words.apply(value).equalsIgnoreCase(cell)) {
                return value;
            }
        }
        if (!cell.isEmpty()) {
            List<String> known = Arrays.stream(values).map(words).toList();
            fault(column, "'" + cell + "' is not one of its words", Nearest.advice(cell, known, "word"));
        }
        return values[0];
    }

    void fault(String column, String problem, String advice) {
        faults.add(line.number(), header.at(column) + 1, column, problem, advice);
    }

    int number() {
        return line.number();
    }
}
