package foamfront.model.section;

/**
 * A thickness form laid across a mean line of two parabolas, trailing edge sharp (−0.1036 x⁴).
 *
 * <p>I. H. Abbott, A. E. von Doenhoff and L. S. Stivers, NACA R-824 (1945), from memory.
 *
 * @param camber of chord
 * @param at station of greatest camber, of chord
 * @param thickness of chord
 */
record FourDigitSection(double camber, double at, double thickness) {
    double[] x(int sides) {
        return points(sides, 0);
    }

    double[] z(int sides) {
        return points(sides, 1);
    }

    /** From the trailing edge along the lower side, round the nose and back; cosine spacing. */
    private double[] points(int sides, int part) {
        double[] points = new double[sides + 1];
        for (int i = 0; i <= sides; i++) {
            double x = 0.5 * (1 + Math.cos(2 * Math.PI * i / sides));
            double side = 2 * i < sides ? -1 : 1;
            double square = x * x;
            double half = 5
                    * thickness
                    * (0.2969 * Math.sqrt(x)
                            - 0.1260 * x
                            - 0.3516 * square
                            + 0.2843 * square * x
                            - 0.1036 * square * square);
            double p = x < at ? at : 1 - at;
            double line = camber / (p * p) * (x < at ? 2 * at * x - square : 1 - 2 * at + 2 * at * x - square);
            double lean = Math.atan(2 * camber / (p * p) * (at - x));
            points[i] = part == 0 ? x - side * half * Math.sin(lean) : line + side * half * Math.cos(lean);
        }
        return points;
    }
}
