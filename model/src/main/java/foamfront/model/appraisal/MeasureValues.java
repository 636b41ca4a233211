package foamfront.model.appraisal;

import foamfront.model.mission.Measure;
import java.util.Arrays;

/** The value of every measure for one design, SI; NaN where the design cannot have one (no take-off without wheels). */
public final class MeasureValues {
    private final double[] values;

    /** @param values one for each measure, in the order of {@link Measure}; copied */
    public MeasureValues(double[] values) {
        if (values.length != Measure.values().length) {
            throw new IllegalArgumentException(values.length + " values for " + Measure.values().length + " measures");
        }
        this.values = values.clone();
    }

    /** SI value of a measure. */
    public double of(Measure measure) {
        return values[measure.ordinal()];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MeasureValues that && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }
}
