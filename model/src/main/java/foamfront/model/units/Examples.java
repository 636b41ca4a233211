package foamfront.model.units;

/** How messages name and illustrate dimensions. */
final class Examples {
    private Examples() {}

    static String name(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "a length";
            case AREA -> "an area";
            case MASS -> "a mass";
            case TIME -> "a time";
            case SPEED -> "a speed";
            case ANGLE -> "an angle";
            case ANGULAR_SPEED -> "a turning rate";
            case TEMPERATURE -> "a temperature";
            case VOLTAGE -> "a voltage";
            case CURRENT -> "a current";
            case RESISTANCE -> "a resistance";
            case POWER -> "a power";
            case CHARGE -> "a charge";
            case SPEED_CONSTANT -> "a speed constant";
            case ROTATION -> "a rotation speed";
            case FORCE -> "a force";
            case TORQUE -> "a torque";
            case PRESSURE -> "a pressure";
            case AREAL_DENSITY -> "a mass per area";
            case DENSITY -> "a density";
            case LINEAR_MASS -> "a mass per length";
            case PACE -> "a time per length";
            case POWER_LOADING -> "a power per mass";
            case MONEY -> "a price";
            case NUMBER -> "a plain number or percentage";
            case COUNT -> "a count";
        };
    }

    static String of(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "1.2 m, 30 mm or 4 ft 6 in";
            case AREA -> "0.24 m2 or 24 dm2";
            case MASS -> "250 g or 9 oz";
            case TIME -> "10 min or 90 s";
            case SPEED -> "8 m/s or 18 mph";
            case ANGLE -> "3 deg";
            case ANGULAR_SPEED -> "120 deg/s";
            case TEMPERATURE -> "15 degC";
            case VOLTAGE -> "11.1 V";
            case CURRENT -> "30 A";
            case RESISTANCE -> "90 mohm";
            case POWER -> "2 W";
            case CHARGE -> "2200 mAh";
            case SPEED_CONSTANT -> "920 rpm/V";
            case ROTATION -> "8000 rpm";
            case FORCE -> "5 N";
            case TORQUE -> "0.2 N m";
            case PRESSURE -> "12 MPa";
            case AREAL_DENSITY -> "465 g/m2";
            case DENSITY -> "400 kg/m3";
            case LINEAR_MASS -> "4 g/m";
            case PACE -> "40 s/m";
            case POWER_LOADING -> "150 W/kg";
            case MONEY -> "80 EUR";
            case NUMBER -> "0.8 or 8 %";
            case COUNT -> "4";
        };
    }
}
