package foamfront.model.section;

/**
 * The section that ζ + 1/ζ makes of the circle about a centre through ζ = 1, and its exact lift: circulation 4π R V sin(α + β),
 * β the angle at which the centre is seen from ζ = 1 (N. Joukowski, 1910; derived).
 *
 * @param real of the centre
 * @param imaginary of the centre
 */
record MappedCircle(double real, double imaginary) {
    private static final int FINE = 100_000;

    double[] x(int sides) {
        return points(sides, 0);
    }

    double[] z(int sides) {
        return points(sides, 1);
    }

    /** From the trailing edge along the lower side, round the nose and back. */
    private double[] points(int sides, int part) {
        double[] points = new double[sides + 1];
        double start = Math.atan2(-imaginary, 1 - real);
        for (int i = 0; i <= sides; i++) {
            double angle = start - 2 * Math.PI * i / sides;
            double a = i % sides == 0 ? 1 : real + radius() * Math.cos(angle);
            double b = i % sides == 0 ? 0 : imaginary + radius() * Math.sin(angle);
            double square = a * a + b * b;
            points[i] = part == 0 ? a + a / square : b - b / square;
        }
        return points;
    }

    private double radius() {
        return Math.hypot(1 - real, imaginary);
    }

    /** Extent along x. */
    double chord() {
        double nose = 0;
        for (double at : x(FINE)) {
            nose = Math.min(nose, at);
        }
        return 2 - nose;
    }

    double lift(double incidence) {
        double beta = Math.atan2(imaginary, 1 - real);
        return 8 * Math.PI * radius() * Math.sin(incidence + beta) / chord();
    }
}
