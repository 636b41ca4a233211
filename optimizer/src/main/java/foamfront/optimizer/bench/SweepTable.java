package foamfront.optimizer.bench;

import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.front.Table.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A sweep as one table: rounded for people, nine digits for programs, the same columns in both. */
public final class SweepTable {
    private record Figure(String head, Unit unit, int decimals, ToDoubleFunction<Point> of) {
        Column column() {
            return Column.number(unit.symbol().isEmpty() ? head : head + " [" + unit.symbol() + "]");
        }
    }

    private static final Figure AIRSPEED = new Figure("airspeed", Unit.METRE_PER_SECOND, 1, Point::speed);
    private static final Figure THROTTLE =
            new Figure("throttle", Unit.PERCENT, 0, point -> point.at().throttle());
    private static final List<Figure> REST = List.of(
            new Figure("thrust", Unit.NEWTON, 2, point -> point.at().thrust()),
            new Figure(
                    "speed", Unit.REVOLUTION_PER_MINUTE, 0, point -> point.at().rotation()),
            new Figure("battery current", Unit.AMPERE, 1, point -> point.at().batteryCurrent()),
            new Figure("battery voltage", Unit.VOLT, 2, point -> point.at().batteryVoltage()),
            new Figure("electrical power", Unit.WATT, 0, point -> point.at().electricalPower()),
            new Figure("shaft power", Unit.WATT, 0, point -> point.at().shaftPower()),
            new Figure("motor and controller", Unit.PERCENT, 0, Point::motorEfficiency),
            new Figure("rotor", Unit.PERCENT, 0, Point::propellerEfficiency),
            new Figure("all together", Unit.PERCENT, 0, Point::efficiency),
            new Figure("advance ratio", Unit.RATIO, 3, point -> point.at().advanceRatio()));

    private SweepTable() {}

    /** For people. */
    public static Table rounded(Sweep sweep) {
        return table(sweep, false);
    }

    /** For programs. */
    public static Table exact(Sweep sweep) {
        return table(sweep, true);
    }

    private static Table table(Sweep sweep, boolean exact) {
        List<Figure> figures = new ArrayList<>();
        figures.add(sweep.axis() == Sweep.Axis.AIRSPEED ? AIRSPEED : THROTTLE);
        figures.addAll(REST);
        List<Column> columns =
                new ArrayList<>(figures.stream().map(Figure::column).toList());
        columns.add(Column.text("coefficients"));
        List<List<String>> rows = new ArrayList<>();
        for (Point point : sweep.points()) {
            List<String> row = new ArrayList<>();
            for (Figure figure : figures) {
                double value = figure.unit().fromSi(figure.of().applyAsDouble(point));
                row.add(exact ? Numbers.exact(value) : Numbers.fixed(value + 0.0, figure.decimals()));
            }
            row.add(point.at().insideMeasured() ? "measured" : "held or extended");
            rows.add(row);
        }
        return new Table(columns, rows);
    }
}
