package foamfront.optimizer.explore;

import foamfront.model.mission.Measure;

/** The smallest difference in a measure that counts for a builder, SI (judgement): the side of the archive's boxes. */
final class Resolution {
    private Resolution() {}

    static double of(Measure measure) {
        return switch (measure) {
            case BUILD_TIME -> 60;
            case DIFFICULTY, SHEETS -> 1;
            default -> byUnit(measure);
        };
    }

    private static double byUnit(Measure measure) {
        return switch (measure.unit()) {
            case GRAM -> 0.005;
            case MINUTE -> 10;
            case KILOMETRE -> 50;
            case USD -> 0.10;
            case METRE_PER_SECOND -> 0.05;
            case METRE -> 0.5;
            case MILLIMETRE -> 0.005;
            case GRAM_PER_SQUARE_DECIMETRE -> 0.05;
            case KILOGRAM_PER_CUBIC_METRE, WATT_PER_KILOGRAM -> 0.1;
            case COUNT -> 1;
            default -> 0.005;
        };
    }
}
