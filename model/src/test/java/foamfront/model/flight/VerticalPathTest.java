package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.atmosphere.Atmosphere;
import org.junit.jupiter.api.Test;

/** The flight over an obstacle against circle, straight line and a path flown step by step. */
class VerticalPathTest {
    private static final double ROUNDING = 1e-9;

    /** V² / 0.2 g at 8 m/s, m. */
    private static final double RADIUS = 64 / (0.2 * Atmosphere.GRAVITY);

    /** The chord of a circle: s² = 2 R h − h². */
    @Test
    void aLowObstacleIsClearedOnTheArc() {
        double h = 0.8;
        assertThat(VerticalPath.distance(h, 0.5, 8, 8, 0))
                .isCloseTo(Math.sqrt(2 * RADIUS * h - h * h), within(ROUNDING));
    }

    /** R sin γ + (h − R (1 − cos γ)) / tan γ, as the textbooks add it up. */
    @Test
    void aHighOneOnTheStraightPath() {
        double gamma = Math.toRadians(10);
        double textbook = RADIUS * Math.sin(gamma) + (15 - RADIUS * (1 - Math.cos(gamma))) / Math.tan(gamma);
        assertThat(VerticalPath.distance(15, Math.sin(gamma), 8, 7, 0)).isCloseTo(textbook, within(ROUNDING));
    }

    @Test
    void aPathFlownStepByStepIntoTheWindEndsThere() {
        double dt = 1e-5;
        double height = 3;
        double sine = 0.25;
        double wind = 2;
        double gamma = 0;
        double x = 0;
        double z = 0;
        while (z < height) {
            boolean arc = gamma < Math.asin(sine);
            double v = arc ? 7 : 6;
            double pull = arc ? 0.2 * Atmosphere.GRAVITY / v : 0;
            double middle = gamma + 0.5 * pull * dt;
            x += (v * Math.cos(middle) - wind) * dt;
            z += v * Math.sin(middle) * dt;
            gamma += pull * dt;
        }
        assertThat(VerticalPath.distance(height, sine, 7, 6, wind)).isCloseTo(x, within(1e-3));
    }

    @Test
    void nothingIsAsSteepAsTheThrustWouldHaveIt() {
        double most = VerticalPath.distance(15, VerticalPath.STEEPEST, 8, 8, 0);
        assertThat(VerticalPath.distance(15, 1.4, 8, 8, 0)).isEqualTo(most);
        assertThat(VerticalPath.distance(15, 0.5, 8, 8, 20)).isZero();
        assertThat(VerticalPath.distance(0, 0.5, 8, 8, 0)).isZero();
    }
}
