package foamfront.model.section;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Exact flow past bent lines without thickness, and what thin-aerofoil theory makes of them: point vortices at the odd angles of the
 * cosine mapping, no flow through the line at the even ones (C. E. Lan, J. Aircraft 11(9), 1974, from memory).
 */
class BentLineExternalTest {
    private static final int VORTICES = 60;
    private static final double CLOSE = 1e-4;

    private static final Validation ARCS = Validation.of(
            Subject.SECTION,
            "Circular arcs and parabolas",
            "α₀ = −atan 2f and c_l = 2π sin(α − α₀) / cos α₀ of an arc, exact by mapping; −2f and 4πf of a parabola by thin-aerofoil"
                    + " theory (derived).");

    @ParameterizedTest(name = "camber {0}")
    @CsvSource({"0.03, -3.4336", "0.05, -5.7106", "0.06, -6.8428"})
    void circularArcs(double camber, double degrees) {
        double[][] rows = new double[VORTICES][VORTICES + 2];
        for (int i = 0; i < VORTICES; i++) {
            double[] p = arc(camber, Math.PI * (i + 1) / VORTICES);
            for (int j = 0; j < VORTICES; j++) {
                double[] q = arc(camber, Math.PI * (j + 0.5) / VORTICES);
                double dx = p[0] - q[0];
                double dz = p[1] - q[1];
                rows[i][j] = (dz * p[2] + dx * p[3]) / (2 * Math.PI * (dx * dx + dz * dz));
            }
            rows[i][VORTICES] = -p[2];
            rows[i][VORTICES + 1] = p[3];
        }
        double[][] strength = Elimination.solve(rows);
        double level = 0;
        double upright = 0;
        for (int j = 0; j < VORTICES; j++) {
            level += 2 * strength[0][j];
            upright += 2 * strength[1][j];
        }
        double angle = -Math.atan2(level, upright);
        String name = String.format(Locale.ROOT, ", arc of %.0f %%", 100 * camber);
        double exact = 2 * Math.PI * Math.sin(Math.toRadians(4) - angle) / Math.cos(angle);
        double lift = level * Math.cos(Math.toRadians(4)) + upright * Math.sin(Math.toRadians(4));
        ARCS.value("zero-lift angle" + name, degrees, Math.toDegrees(angle), CLOSE, "degrees")
                .value("lift at 4 degrees" + name, exact, lift, CLOSE, "");
    }

    @ParameterizedTest(name = "camber {0}")
    @CsvSource({"0.03, -3.438, 0.3770", "0.05, -5.730, 0.6283", "0.06, -6.875, 0.7540"})
    void parabolas(double camber, double degrees, double lift) {
        ThinAerofoil thin = ThinAerofoilTest.of(x -> 4 * camber * x * (1 - x));
        String name = String.format(Locale.ROOT, ", parabola of %.0f %%", 100 * camber);
        ARCS.value("zero-lift angle" + name, degrees, Math.toDegrees(thin.zeroLiftAngle()), 5e-4, "degrees")
                .value("lift at 0 degrees" + name, lift, -2 * Math.PI * thin.zeroLiftAngle(), CLOSE, "");
    }

    /** Point on the arc over a unit chord at a cosine angle, and its normal. */
    private static double[] arc(double camber, double angle) {
        double x = 0.5 * (1 - Math.cos(angle));
        double radius = (0.25 + camber * camber) / (2 * camber);
        double up = Math.sqrt(radius * radius - (x - 0.5) * (x - 0.5));
        return new double[] {x, up - radius + camber, (x - 0.5) / radius, -up / radius};
    }
}
