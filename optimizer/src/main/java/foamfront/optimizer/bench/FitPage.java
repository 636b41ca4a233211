package foamfront.optimizer.bench;

import foamfront.model.parts.Motor;
import foamfront.model.parts.Provenance;
import foamfront.model.propulsion.MotorLaw;
import foamfront.model.units.Currency;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.front.FrontJson;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.front.Table.Column;
import foamfront.optimizer.runs.PartSheets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A fitted motor for people, and as a row of {@code motors.csv}. */
public final class FitPage {
    /** The trend of masses is good to a fifth; judgement. */
    private static final double UNLIKE = 2;

    private final MotorFit fit;
    private final int readings;

    public FitPage(MotorFit fit, int readings) {
        this.fit = fit;
        this.readings = readings;
    }

    /** One sentence, then the constants with their uncertainty. */
    public String text() {
        double kv = Unit.RPM_PER_VOLT.fromSi(fit.speedConstant());
        String verdict = "The " + readings + " readings fit a motor of " + Numbers.significant(kv, 4)
                + " rpm/V; voltages scatter by " + Numbers.significant(fit.scatter(), 2) + " V about the fit.\n\n";
        Table table = new Table(
                List.of(
                        Column.text("constant"),
                        Column.number("value"),
                        Column.number("give or take"),
                        Column.text("unit")),
                List.of(
                        row("speed constant", fit.speedConstant(), fit.speedConstantError(), Unit.RPM_PER_VOLT),
                        row("resistance under load", fit.resistance(), fit.resistanceError(), Unit.MILLIOHM),
                        row("no-load current", fit.noLoadCurrent(), fit.noLoadCurrentError(), Unit.AMPERE),
                        row("at a voltage of", fit.noLoadVoltage(), Double.NaN, Unit.VOLT)));
        return verdict + table.text();
    }

    private static List<String> row(String name, double value, double error, Unit unit) {
        return List.of(
                name,
                Numbers.significant(unit.fromSi(value), 4),
                Double.isFinite(error) ? Numbers.significant(unit.fromSi(error), 2) : "-",
                unit.symbol());
    }

    /**
     * The row under its header; size and price are those of {@code like}.
     *
     * @param continuousPower what is known of it, W; 0 where only the mass says
     * @param currency of the price
     */
    public String row(String name, double mass, Motor like, double continuousPower, Currency currency) {
        Motor whole = new Motor(
                name,
                printed(mass, Unit.GRAM),
                like.diameter(),
                like.length(),
                printed(fit.speedConstant(), Unit.RPM_PER_VOLT),
                printed(fit.catalogueResistance(), Unit.MILLIOHM),
                printed(fit.noLoadCurrent(), Unit.AMPERE),
                fit.noLoadVoltage(),
                continuousPower,
                like.price(),
                Provenance.OWN_BENCH);
        Table row = PartSheets.table("motors", List.of(whole), currency);
        List<Column> columns = new ArrayList<>(row.columns());
        columns.add(Column.text("source"));
        List<String> cells = new ArrayList<>(row.rows().get(0));
        cells.add(uncertainty());
        return new Table(columns, List.of(cells)).csv();
    }

    /** What the row's constants are good to, for its own remark. */
    private String uncertainty() {
        return readings + " readings; give or take " + error(fit.speedConstantError(), Unit.RPM_PER_VOLT) + "; "
                + error(fit.resistanceError() / MotorLaw.EFFECTIVE_RESISTANCE, Unit.MILLIOHM)
                + (Double.isFinite(fit.noLoadCurrentError())
                        ? "; " + error(fit.noLoadCurrentError(), Unit.AMPERE)
                        : "");
    }

    private static String error(double value, Unit unit) {
        return Numbers.significant(unit.fromSi(value), 2) + " " + unit.symbol();
    }

    /** With the four digits that a bench can mean. */
    private static double printed(double si, Unit unit) {
        return unit.toSi(Double.parseDouble(Numbers.significant(unit.fromSi(si), 4)));
    }

    /** The motor whose mass is nearest, to take size and price from. */
    public static Motor nearest(double mass, List<Motor> motors) {
        return motors.stream()
                .min(Comparator.comparingDouble(motor -> Math.abs(motor.mass() - mass)))
                .orElseThrow();
    }

    /** What was guessed of a row without a motor to take the rest from. */
    public static String guessed(boolean massKnown, Motor like) {
        return (massKnown
                        ? "The row's"
                        : "The row's mass is what motors of such a resistance weigh, give or take a fifth; its")
                + " diameter, length and price are those of " + like.name()
                + (massKnown ? ": measure" : ": weigh and measure")
                + " the motor and correct them, or name one of the same frame with --motor.\n";
    }

    /** What the row means. */
    public static String note(boolean controllerKnown) {
        return "The row's resistance is that under load over " + MotorLaw.EFFECTIVE_RESISTANCE
                + ": the program multiplies windings by it. Append the row to catalogue/motors.csv beside your study.\n"
                + (controllerKnown
                        ? ""
                        : "Your controller's resistance is still in it, which the program adds once more: name the controller with"
                                + " --controller to have it taken off.\n");
    }

    /** A doubt about the readings where a motor of their resistance would weigh another order than this one; else nothing. */
    public String doubt(double mass) {
        double ratio = fit.expectedMass() / mass;
        if (ratio < UNLIKE && ratio > 1 / UNLIKE) {
            return "";
        }
        return "Motors of such a resistance and speed constant weigh about "
                + Numbers.significant(Unit.GRAM.fromSi(fit.expectedMass()), 2)
                + " g, not " + Numbers.significant(Unit.GRAM.fromSi(mass), 2)
                + " g: check the readings' units, and that every one is of full throttle.\n";
    }

    /** For programs. */
    public String json() {
        return FrontJson.document(json -> {
            FrontJson.number(json, "speed_constant", fit.speedConstant());
            FrontJson.number(json, "speed_constant_error", fit.speedConstantError());
            FrontJson.number(json, "resistance_under_load", fit.resistance());
            FrontJson.number(json, "resistance_under_load_error", fit.resistanceError());
            FrontJson.number(json, "catalogue_resistance", fit.catalogueResistance());
            FrontJson.number(json, "no_load_current", fit.noLoadCurrent());
            FrontJson.number(json, "no_load_current_error", fit.noLoadCurrentError());
            FrontJson.number(json, "no_load_voltage", fit.noLoadVoltage());
            FrontJson.number(json, "voltage_scatter", fit.scatter());
            json.writeNumberField("readings", readings);
        });
    }
}
