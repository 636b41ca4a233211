package foamfront.model.mission;

import static foamfront.model.units.Require.finite;
import static foamfront.model.units.Require.notNegative;
import static foamfront.model.units.Require.positive;

/**
 * The flying field and its air.
 *
 * @param elevation above sea level, m
 * @param temperature of the day, K
 * @param ground what it rolls on
 * @param runway length for taking off, m; infinite where nothing is said of it
 * @param obstacle at either end of the runway, to be cleared in taking off and landing, m high; 0 without
 * @param wind mean wind the model must come home against, m/s; 0 in a hall
 * @param headwind from ahead on the ground, counted on in taking off and landing, m/s; 0 counts on none
 * @param gust vertical gust met in cruise, m/s; 0 in a hall
 * @param releaseHeight over ground at which loads are let go, m
 * @param launch the arm that throws it
 */
public record Site(
        double elevation,
        double temperature,
        Ground ground,
        double runway,
        double obstacle,
        double wind,
        double headwind,
        double gust,
        double releaseHeight,
        Launch launch) {
    public Site {
        finite("elevation", elevation);
        positive("temperature", temperature, "K");
        if (!(runway > 0)) {
            throw new IllegalArgumentException("runway must be above 0 m but is " + runway);
        }
        notNegative("obstacle", obstacle, "m");
        notNegative("wind", wind, "m/s");
        notNegative("headwind", headwind, "m/s");
        if (headwind > wind) {
            throw new IllegalArgumentException(
                    "headwind must be at most the wind of " + wind + " m/s but is " + headwind + " m/s");
        }
        notNegative("gust", gust, "m/s");
        positive("release height", releaseHeight, "m");
    }
}
