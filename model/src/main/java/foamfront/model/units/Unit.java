package foamfront.model.units;

/**
 * Every unit that files and people use, with its one factor to SI. Exact factors: inch, foot and pound by the international
 * agreement of 1959; standard gravity 9.80665 m/s² (CGPM 1901).
 */
public enum Unit {
    METRE(Dimension.LENGTH, "m", 1),
    MILLIMETRE(Dimension.LENGTH, "mm", 1e-3),
    CENTIMETRE(Dimension.LENGTH, "cm", 1e-2),
    KILOMETRE(Dimension.LENGTH, "km", 1e3),
    INCH(Dimension.LENGTH, "in", 0.0254),
    FOOT(Dimension.LENGTH, "ft", 0.3048),

    SQUARE_METRE(Dimension.AREA, "m2", 1),
    SQUARE_DECIMETRE(Dimension.AREA, "dm2", 1e-2),
    SQUARE_INCH(Dimension.AREA, "in2", 0.0254 * 0.0254),

    KILOGRAM(Dimension.MASS, "kg", 1),
    GRAM(Dimension.MASS, "g", 1e-3),
    OUNCE(Dimension.MASS, "oz", 0.45359237 / 16),
    POUND(Dimension.MASS, "lb", 0.45359237),

    SECOND(Dimension.TIME, "s", 1),
    MINUTE(Dimension.TIME, "min", 60),
    HOUR(Dimension.TIME, "h", 3600),

    METRE_PER_SECOND(Dimension.SPEED, "m/s", 1),
    KILOMETRE_PER_HOUR(Dimension.SPEED, "km/h", 1 / 3.6),
    MILE_PER_HOUR(Dimension.SPEED, "mph", 0.44704),
    KNOT(Dimension.SPEED, "kn", 1852 / 3600.0),

    RADIAN(Dimension.ANGLE, "rad", 1),
    DEGREE(Dimension.ANGLE, "deg", Math.PI / 180),
    DEGREE_PER_SECOND(Dimension.ANGULAR_SPEED, "deg/s", Math.PI / 180),

    KELVIN(Dimension.TEMPERATURE, "K", 1),
    DEGREE_CELSIUS(Dimension.TEMPERATURE, "degC", 1, 273.15),
    DEGREE_FAHRENHEIT(Dimension.TEMPERATURE, "degF", 5 / 9.0, 459.67 * 5 / 9.0),

    VOLT(Dimension.VOLTAGE, "V", 1),
    AMPERE(Dimension.CURRENT, "A", 1),
    MILLIAMPERE(Dimension.CURRENT, "mA", 1e-3),
    OHM(Dimension.RESISTANCE, "ohm", 1),
    MILLIOHM(Dimension.RESISTANCE, "mohm", 1e-3),
    WATT(Dimension.POWER, "W", 1),
    AMPERE_HOUR(Dimension.CHARGE, "Ah", 3600),
    MILLIAMPERE_HOUR(Dimension.CHARGE, "mAh", 3.6),
    RPM_PER_VOLT(Dimension.SPEED_CONSTANT, "rpm/V", Math.PI / 30),
    REVOLUTION_PER_MINUTE(Dimension.ROTATION, "rpm", 1 / 60.0),
    REVOLUTION_PER_SECOND(Dimension.ROTATION, "rev/s", 1),

    NEWTON(Dimension.FORCE, "N", 1),
    NEWTON_METRE(Dimension.TORQUE, "N m", 1),
    PASCAL(Dimension.PRESSURE, "Pa", 1),
    MEGAPASCAL(Dimension.PRESSURE, "MPa", 1e6),
    GIGAPASCAL(Dimension.PRESSURE, "GPa", 1e9),

    GRAM_PER_SQUARE_METRE(Dimension.AREAL_DENSITY, "g/m2", 1e-3),
    GRAM_PER_SQUARE_DECIMETRE(Dimension.AREAL_DENSITY, "g/dm2", 0.1),
    OUNCE_PER_SQUARE_FOOT(Dimension.AREAL_DENSITY, "oz/ft2", 0.45359237 / 16 / (0.3048 * 0.3048)),
    KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, "kg/m3", 1),
    GRAM_PER_METRE(Dimension.LINEAR_MASS, "g/m", 1e-3),
    SECOND_PER_METRE(Dimension.PACE, "s/m", 1),
    MINUTE_PER_METRE(Dimension.PACE, "min/m", 60),
    WATT_PER_KILOGRAM(Dimension.POWER_LOADING, "W/kg", 1),

    /** Of whatever currency: it has no symbol of its own. */
    MONEY(Dimension.MONEY, "", 1),
    RATIO(Dimension.NUMBER, "", 1),
    PERCENT(Dimension.NUMBER, "%", 1e-2),
    COUNT(Dimension.COUNT, "", 1);

    private final Dimension dimension;
    private final String symbol;
    private final double factor;
    private final double offset;
    private final double divisor;

    Unit(Dimension dimension, String symbol, double factor) {
        this(dimension, symbol, factor, 0);
    }

    Unit(Dimension dimension, String symbol, double factor, double offset) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.factor = factor;
        this.offset = offset;
        // Dividing by 1000 rounds once where multiplying by 0.001 rounds twice: 1.2 m and 1200 mm must be the same
        // number.
        double inverse = Math.rint(1 / factor);
        this.divisor = factor < 1 && Math.abs(1 / factor - inverse) < 1e-9 ? inverse : 0;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** As files and tables write it. */
    public String symbol() {
        return symbol;
    }

    /** The same, of money the code of its currency. */
    public String symbol(Currency currency) {
        return this == MONEY ? currency.code() : symbol;
    }

    /** A number in this unit as SI. */
    public double toSi(double value) {
        return divisor > 0 ? value / divisor + offset : value * factor + offset;
    }

    /** An SI number in this unit. */
    public double fromSi(double value) {
        return divisor > 0 ? (value - offset) * divisor : (value - offset) / factor;
    }
}
