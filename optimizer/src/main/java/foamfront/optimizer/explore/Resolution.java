package foamfront.optimizer.explore;

import foamfront.model.mission.Measure;
import foamfront.model.units.Currency;
import foamfront.optimizer.study.Study;

/** The smallest difference in a measure that counts for a builder, SI (judgement): the side of the archive's boxes. */
final class Resolution {
    private Resolution() {}

    static double of(Measure measure, Study study) {
        return switch (measure) {
            case BUILD_TIME -> 60;
            case DIFFICULTY, SHEETS -> 1;
            case GLIDE_RATIO -> 0.05;
            default -> byUnit(measure, study);
        };
    }

    private static double byUnit(Measure measure, Study study) {
        return switch (measure.unit()) {
            case GRAM -> 0.005;
            case MINUTE -> 10;
            case KILOMETRE -> 50;
            case MONEY ->
                Double.isNaN(study.search().costStep())
                        ? coins(study.currency())
                        : study.search().costStep();
            case METRE_PER_SECOND -> 0.05;
            case METRE -> 0.5;
            case MILLIMETRE -> 0.005;
            case GRAM_PER_SQUARE_DECIMETRE -> 0.05;
            case KILOGRAM_PER_CUBIC_METRE, WATT_PER_KILOGRAM -> 0.1;
            case COUNT -> 1;
            default -> 0.005;
        };
    }

    /** Ten of the smallest coin: 0.10 of what has hundredths, 10 yen. Small money (rupiah) wants a study's own step. */
    private static double coins(Currency currency) {
        double step = 10;
        for (int i = 0; i < currency.decimals(); i++) {
            step /= 10;
        }
        return step;
    }
}
