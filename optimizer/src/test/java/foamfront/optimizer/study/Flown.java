package foamfront.optimizer.study;

import foamfront.model.factors.Factors;
import foamfront.model.propulsion.MotorLaw;
import java.util.List;

/**
 * One aeroplane that flew: what is known of it, and the ranges of what is not.
 *
 * @param speeds from the slowest to the fastest at which the published time may have been flown, m/s
 * @param power mean from 80 % of the battery over the published time to that from all of it, W
 * @param mass known or taken from the role's range, kg
 * @param area known or taken from the role's range, m²
 * @param stall published, a tenth either way, m/s; everything where none is
 * @param factors each way its wing may be
 * @param avionics autopilot, receiver, satellite navigation and telemetry
 */
record Flown(
        String file,
        String name,
        double span,
        Range speeds,
        Range power,
        Range mass,
        Range area,
        Range stall,
        List<Factors> factors,
        List<String> motors,
        List<String> propellers,
        List<String> avionics,
        String assumed) {

    /** Airframes of moulded foam or built-up wood, over that of board: what is light here is loaded up to the published mass. */
    private static final double AIRFRAME = 0.6;

    /** What 0.95 of a planetary gear asks of its motor in addition (from memory). */
    private static final double GEAR = 1 / 0.95;

    /**
     * Moulded and covered wings are smooth: of good cambered sections at Reynolds numbers of 100 to 200 thousand a quarter less
     * drag and a tenth more lift than folded board (from memory of wind-tunnel collections of low-speed sections).
     */
    private static final Factors SMOOTH = wing(1.1, 1);

    /** Slats carry a section some 0.5 past its own maximum lift (from memory of full-size high-lift collections). */
    private static final Factors SLATS = wing(1.5, 1);

    private static final List<String> AVIONICS = List.of("2 W", "8 W");
    private static final Range ANY = new Range(0, Double.POSITIVE_INFINITY);

    /** Effective over winding resistance of a motor from the least to the greatest that was seen, over what the model takes. */
    static final double[] MOTOR_RESISTANCE = {
        1.2 / MotorLaw.EFFECTIVE_RESISTANCE, 1, 2.6 / MotorLaw.EFFECTIVE_RESISTANCE
    };

    /** Of a motor whose resistance, of a battery whose cells' is that share of ours. */
    static Factors electric(double motor, double battery) {
        return new Factors(1, 1, 1, 1, 1, 1, motor, 1, battery, 1, 1, 1, 1, 1, 1);
    }

    private static Factors wing(double lift, double shaftPower) {
        return new Factors(0.75, lift, 1, AIRFRAME, 1, shaftPower, 1, 1, 1, 1, 1, 1, 1, 1, 1);
    }

    private static Flown smooth(
            String file,
            String name,
            double span,
            Range speeds,
            Range power,
            Range mass,
            Range area,
            String motor,
            List<String> propellers,
            String assumed) {
        return new Flown(
                file,
                name,
                span,
                speeds,
                power,
                mass,
                area,
                ANY,
                List.of(SMOOTH),
                List.of(motor),
                propellers,
                AVIONICS,
                assumed);
    }

    static final Flown SOLAR = new Flown(
            "solar-glider",
            "3.2 m solar motor glider, 2.44 kg, level flight (A. Noth, ETH Zurich thesis 18010, 2008)",
            3.2,
            new Range(8.2, 8.2),
            new Range(16, 16),
            new Range(2.40, 2.44),
            new Range(0.770, 0.782),
            ANY,
            List.of(wing(1.1, GEAR)),
            FlownParts.SOLAR_MOTORS,
            FlownParts.SOLAR_PROPELLERS,
            List.of("1 W", "3 W"),
            "shop motors behind a gear of 4 or 5 at 0.95, 0.6 m blades like measured 11 in ones; 1 to 3 W of avionics, speed and gear from memory; power only");

    static final Flown WEATHER = smooth(
            "weather-small",
            "0.8 m weather observer, 0.58 kg, 3S 2.15 Ah, 30 min (J. Reuder et al., Meteorologische Zeitschrift 18, 2009)",
            0.8,
            new Range(12, 15),
            new Range(38, 48),
            new Range(0.58, 0.58),
            new Range(0.13, 0.15),
            "2208-1400",
            List.of("7x4 sport", "8x4 thin electric"),
            "battery, speed and an area near 0.14 m2 from memory");

    static final Flown PUSHER = smooth(
            "research-pusher",
            "1.0 m research pusher, 0.7 kg, 50 min (D. Lawrence and B. Balsley, University of Colorado, 2012)",
            1.0,
            new Range(12, 14),
            new Range(17, 35),
            new Range(0.7, 0.7),
            new Range(0.2, 0.3),
            "2208-1100",
            List.of("8x4 thin electric", "9x6 folding"),
            "battery 18 to 30 % of the mass at 140 Wh/kg; speed from memory");

    static final Flown LONG = smooth(
            "research-long",
            "1.3 m research pusher, 1.7 kg, 60 min (J. Hamilton et al., Atmos. Meas. Tech. 15, 2022)",
            1.3,
            new Range(13, 17),
            new Range(34, 71),
            new Range(1.7, 1.7),
            new Range(0.2, 0.35),
            "2216-880",
            List.of("10x7 thin electric", "11x8 folding"),
            "battery 18 to 30 % of the mass at 140 Wh/kg; the cruise speeds of its class");

    static final Flown TWIN = new Flown(
            "twin-glider",
            "1.2 m twin-motor foam motor glider, 124 Wh, 40 min at 12.5 m/s, stall 6.7 m/s (an autopilot project's docs/en/frames_plane)",
            1.2,
            new Range(12.5, 12.5),
            new Range(149, 186),
            new Range(1.2, 2.6),
            new Range(0.2, 0.42),
            new Range(0.9 * 6.7, 1.1 * 6.7),
            List.of(SMOOTH),
            List.of("2212-1000", "2216-1100"),
            List.of("8x6 thin electric", "9x6 thin electric"),
            AVIONICS,
            "4 cells for 6, so that mass is all that its battery changes");

    static final Flown SHORT_FIELD = new Flown(
            "short-field",
            "1.5 m short-field foam high wing, 4S 5.2 Ah, 24 min, stall 6.3 m/s (the same)",
            1.5,
            new Range(15.6, 29),
            new Range(150, 187),
            new Range(1.2, 2.6),
            new Range(0.3, 0.45),
            new Range(0.9 * 6.3, 1.1 * 6.3),
            List.of(SLATS),
            List.of("2820-840"),
            FlownParts.LARGE_PROPELLERS,
            AVIONICS,
            "slats open; as many of its published cruise speeds as it reaches; 13x4 like measured 11 in blades");

    static final Flown AMPHIBIAN = new Flown(
            "twin-amphibian",
            "1.05 m twin amphibian of 5 mm board, 3S 1.3 Ah, 5 min (a hobby forum)",
            1.054,
            new Range(12, 16),
            new Range(139, 173),
            new Range(0.7, 1.5),
            new Range(0.2, 0.35),
            ANY,
            List.of(Factors.NOMINAL),
            List.of("1806-2280"),
            FlownParts.SMALL_PROPELLERS,
            List.of("0 W"),
            "cruise speeds of its role");

    static final List<Flown> ALL = List.of(SOLAR, WEATHER, PUSHER, LONG, TWIN, SHORT_FIELD, AMPHIBIAN);
}
