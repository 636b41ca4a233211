package foamfront.optimizer.bench;

import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.Rotor;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.front.FrontJson;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.front.Table.Column;
import java.util.ArrayList;
import java.util.List;

/**
 * A rotor's coefficients at one speed, against advance ratio: C_T = T / (ρ n² D⁴), C_P = P / (ρ n³ D⁵), η = J C_T / C_P.
 *
 * @param rotation rev/s
 * @param rows from J = 0 until the thrust is gone
 */
public record Coefficients(Rotor rotor, double rotation, List<Row> rows) {
    private static final double STEP = 0.05;
    private static final double FINE_STEP = 0.001;

    /** J, C_T, C_P and efficiency. */
    public record Row(double advance, double thrust, double power, double efficiency) {}

    public Coefficients {
        rows = List.copyOf(rows);
    }

    public static Coefficients of(Rotor rotor, double rotation) {
        List<Row> rows = new ArrayList<>();
        Row row = row(rotor, rotation, 0);
        for (int i = 1; row.thrust() > 0; i++) {
            rows.add(row);
            row = row(rotor, rotation, STEP * i);
        }
        return new Coefficients(rotor, rotation, rows);
    }

    private static Row row(Rotor rotor, double rotation, double j) {
        PropellerCurves curves = rotor.curves();
        double l = curves.speedTerm(rotation);
        double thrust = curves.thrustCoefficient(j, l);
        double power = curves.powerCoefficient(j, l);
        return new Row(j, thrust, power, power > 0 ? Math.max(0, j * thrust / power) : 0);
    }

    /** The row of best efficiency, found finely. */
    Row best() {
        Row best = row(rotor, rotation, 0);
        Row row = best;
        for (int i = 1; row.thrust() > 0; i++) {
            best = row.efficiency() > best.efficiency() ? row : best;
            row = row(rotor, rotation, FINE_STEP * i);
        }
        return best;
    }

    /** One sentence. */
    public String verdict() {
        Row best = best();
        PropellerCurves curves = rotor.curves();
        boolean held = rotation < curves.lowestSpeed() || rotation > curves.highestSpeed();
        String measured = Numbers.fixed(Unit.REVOLUTION_PER_MINUTE.fromSi(curves.lowestSpeed()), 0) + " to "
                + Numbers.fixed(Unit.REVOLUTION_PER_MINUTE.fromSi(curves.highestSpeed()), 0) + " rpm";
        return rotor.name() + " at " + Numbers.fixed(Unit.REVOLUTION_PER_MINUTE.fromSi(rotation), 0)
                + " rpm is at its best at an advance ratio of " + Numbers.fixed(best.advance(), 2) + " with "
                + Numbers.fixed(Unit.PERCENT.fromSi(best.efficiency()), 0) + " %"
                + (held
                        ? "; that speed lies outside the known " + measured + ", whose nearest end is used."
                        : " (known from " + measured + ", " + rotor.provenance().words() + ").");
    }

    /** For people. */
    public Table rounded() {
        return table(false);
    }

    /** For programs. */
    public Table exact() {
        return table(true);
    }

    private Table table(boolean exact) {
        List<List<String>> cells = new ArrayList<>();
        for (Row row : rows) {
            cells.add(List.of(
                    exact ? Numbers.exact(row.advance()) : Numbers.fixed(row.advance(), 2),
                    exact ? Numbers.exact(row.thrust()) : Numbers.fixed(row.thrust(), 4),
                    exact ? Numbers.exact(row.power()) : Numbers.fixed(row.power(), 4),
                    exact ? Numbers.exact(row.efficiency()) : Numbers.fixed(row.efficiency(), 3)));
        }
        return new Table(
                List.of(
                        Column.number("advance ratio J"),
                        Column.number("thrust coefficient CT"),
                        Column.number("power coefficient CP"),
                        Column.number("efficiency")),
                cells);
    }

    /** For programs. */
    public String json() {
        return FrontJson.document(json -> {
            json.writeStringField("rotor", rotor.name());
            FrontJson.number(json, "rotation", rotation);
            json.writeArrayFieldStart("points");
            for (Row row : rows) {
                json.writeStartObject();
                FrontJson.number(json, "advance_ratio", row.advance());
                FrontJson.number(json, "thrust_coefficient", row.thrust());
                FrontJson.number(json, "power_coefficient", row.power());
                FrontJson.number(json, "efficiency", row.efficiency());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }
}
