package foamfront.model.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The spellings of units: symbols, plurals and what people type instead of them. */
final class UnitNames {
    private static final Map<String, Unit> EXACT = new HashMap<>();
    private static final Map<String, Unit> LOWER_CASE = new HashMap<>();

    static {
        for (Unit unit : Unit.values()) {
            if (!unit.symbol().isEmpty()) {
                add(unit.symbol(), unit);
            }
        }
        alias(Unit.METRE, "metre", "metres", "meter", "meters");
        alias(Unit.MILLIMETRE, "millimetre", "millimetres", "millimeter", "millimeters");
        alias(Unit.INCH, "inch", "inches");
        alias(Unit.FOOT, "foot", "feet");
        alias(Unit.SQUARE_METRE, "m²", "m^2");
        alias(Unit.SQUARE_DECIMETRE, "dm²", "dm^2");
        alias(Unit.SQUARE_INCH, "in²", "in^2", "sq in");
        alias(Unit.GRAM, "gram", "grams");
        alias(Unit.OUNCE, "ounce", "ounces");
        alias(Unit.POUND, "lbs", "pound", "pounds");
        alias(Unit.SECOND, "sec", "second", "seconds");
        alias(Unit.MINUTE, "minute", "minutes");
        alias(Unit.HOUR, "hour", "hours");
        alias(Unit.KILOMETRE_PER_HOUR, "kph");
        alias(Unit.KNOT, "kt", "kts", "knot", "knots");
        alias(Unit.DEGREE, "°", "degree", "degrees");
        alias(Unit.DEGREE_CELSIUS, "°C", "C", "deg C");
        alias(Unit.DEGREE_FAHRENHEIT, "°F", "F", "deg F");
        alias(Unit.OHM, "Ω", "ohms");
        alias(Unit.MILLIOHM, "mΩ", "mohms");
        alias(Unit.RPM_PER_VOLT, "KV");
        alias(Unit.NEWTON_METRE, "Nm", "N·m", "N*m");
        alias(Unit.GRAM_PER_SQUARE_METRE, "g/m²", "g/m^2");
        alias(Unit.GRAM_PER_SQUARE_DECIMETRE, "g/dm²", "g/dm^2");
        alias(Unit.OUNCE_PER_SQUARE_FOOT, "oz/ft²", "oz/ft^2");
        alias(Unit.KILOGRAM_PER_CUBIC_METRE, "kg/m³", "kg/m^3");
        alias(Unit.PERCENT, "percent", "per cent");
    }

    private UnitNames() {}

    /** The unit of this spelling: as written, or else whatever its capitals. */
    static @Nullable Unit find(String text) {
        Unit exact = EXACT.get(text);
        return exact != null ? exact : LOWER_CASE.get(text.toLowerCase(Locale.ROOT));
    }

    /** The symbols a dimension is written with, for advice. */
    static String symbols(Dimension dimension) {
        List<String> symbols = new ArrayList<>();
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == dimension && !unit.symbol().isEmpty()) {
                symbols.add(unit.symbol());
            }
        }
        return String.join(", ", symbols);
    }

    private static void alias(Unit unit, String... spellings) {
        for (String spelling : spellings) {
            add(spelling, unit);
        }
    }

    private static void add(String spelling, Unit unit) {
        EXACT.put(spelling, unit);
        LOWER_CASE.putIfAbsent(spelling.toLowerCase(Locale.ROOT), unit);
    }
}
