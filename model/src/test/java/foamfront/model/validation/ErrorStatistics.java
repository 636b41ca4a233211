package foamfront.model.validation;

/** Largest and root-mean-square error against a data set. */
public final class ErrorStatistics {
    private double sumOfSquares;
    private double largest;
    private int count;

    public void add(double error) {
        sumOfSquares += error * error;
        largest = Math.max(largest, Math.abs(error));
        count++;
    }

    public int count() {
        return count;
    }

    public double largest() {
        return largest;
    }

    public double rms() {
        return Math.sqrt(sumOfSquares / count);
    }
}
