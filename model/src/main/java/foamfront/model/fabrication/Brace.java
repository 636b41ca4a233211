package foamfront.model.fabrication;

import java.util.List;

/** A strip of board across a joint of the wing: straight, or cut to an angle where the wing turns up there. */
final class Brace {
    /** A joint that turns by less is straight, rad. */
    private static final double STRAIGHT = 1e-6;

    private Brace() {}

    /**
     * Length along the arms' middle of what is at most {@code most} long as a pattern: the ends of arms turned up by h each, H
     * high, make the pattern L cos h + H sin h long (derived).
     *
     * @param wished of both arms, m
     */
    static double length(double wished, double height, double bend, double most) {
        double half = 0.5 * Math.abs(bend);
        return Math.min(wished, (most - height * StrictMath.sin(half)) / StrictMath.cos(half));
    }

    /**
     * Both arms keep {@code height} square to their run; they meet on the line that halves the angle (derived).
     *
     * @param length of both arms along their middle, m
     * @param bend by which the outer arm turns up, negative down, rad
     */
    static Pattern of(double length, double height, double bend) {
        if (Math.abs(bend) < STRAIGHT) {
            return new Rectangle(length, height);
        }
        double half = 0.5 * bend;
        double arm = 0.5 * length;
        double cos = StrictMath.cos(half);
        double sin = StrictMath.sin(half);
        double mitre = 0.5 * height / cos;
        double out = arm * cos;
        double up = arm * sin;
        double across = 0.5 * height * sin;
        double square = 0.5 * height * cos;
        return new FoldedPolygon(
                new double[] {-out - across, 0, out + across, out - across, 0, -out + across},
                new double[] {up - square, -mitre, up - square, up + square, mitre, up + square},
                List.of());
    }
}
