package foamfront.model.section;

/** Largest and root-mean-square error against a data set. */
final class ErrorStatistics {
    private double sumOfSquares;
    private double largest;
    private int count;

    void add(double error) {
        sumOfSquares += error * error;
        largest = Math.max(largest, Math.abs(error));
        count++;
    }

    double largest() {
        return largest;
    }

    double rms() {
        return Math.sqrt(sumOfSquares / count);
    }
}
