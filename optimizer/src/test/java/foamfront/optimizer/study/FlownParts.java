package foamfront.optimizer.study;

import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.PropellerRegression;
import foamfront.model.parts.Provenance;
import foamfront.model.units.Unit;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The catalogue with what aeroplanes that flew had and it lacks. */
final class FlownParts {
    private static final Catalogue STANDARD = CatalogueReader.standard();
    private static final PropellerRegression SIZES = new PropellerRegression(STANDARD.propellers());

    /** Of the solar glider's propeller, m. */
    private static final double SOLAR = 0.6;

    /** Of its level flight: 8.2 m/s at an advance ratio of two thirds (judgement). */
    private static final double SOLAR_SPEED = 21; // rev/s

    static final List<String> SOLAR_PROPELLERS = List.of(
            "0.6 m like 11x7 thin electric", "0.6 m like 11x8 thin electric", "0.6 m like 11x8.5 thin electric");

    /** Output speed constants of 230 and 156 rpm/V: level flight at half throttle and at three quarters. */
    static final List<String> SOLAR_MOTORS = List.of("2212-920 geared 4", "2212-780 geared 5");

    static final List<String> SMALL_PROPELLERS = List.of("6x3 thin electric", "6x3 sport", "6x3 small");

    static final List<String> LARGE_PROPELLERS = List.of("13 in like 11x4 sport", "13 in like 11x3.8 slow flyer");

    static final Catalogue CATALOGUE = catalogue();

    private FlownParts() {}

    private static Catalogue catalogue() {
        List<Motor> motors = new ArrayList<>(STANDARD.motors());
        motors.add(geared("2212-920", 4));
        motors.add(geared("2212-780", 5));
        motors.add(rewound("1806-2300", "1806-2280", 2280.0 / 2300));
        motors.add(rewound("2820-880", "2820-840", 840.0 / 880));
        List<Propeller> propellers = new ArrayList<>(STANDARD.propellers());
        for (String name : SOLAR_PROPELLERS) {
            propellers.add(enlarged(name, name.substring("0.6 m like ".length()), SOLAR, SOLAR_SPEED));
        }
        for (BladeFamily family : List.of(BladeFamily.THIN_ELECTRIC, BladeFamily.SPORT, BladeFamily.SMALL)) {
            propellers.add(sized("6x3 " + family.words(), family, Unit.INCH.toSi(6), Unit.INCH.toSi(3)));
        }
        for (String name : LARGE_PROPELLERS) {
            String like = name.substring("13 in like ".length());
            propellers.add(enlarged(name, like, Unit.INCH.toSi(13), PropellerCurves.REFERENCE_SPEED));
        }
        return new Catalogue(
                STANDARD.boards(),
                STANDARD.spars(),
                motors,
                propellers,
                STANDARD.fans(),
                STANDARD.batteries(),
                STANDARD.controllers(),
                STANDARD.servos(),
                STANDARD.receivers(),
                STANDARD.wheels(),
                STANDARD.workshop(),
                STANDARD.digest());
    }

    /**
     * A motor behind a gear is a motor of the speed constant over the ratio with its own resistance and no-load current: I R, I₀
     * and V − I R stay, ω falls and torque rises by the ratio (derived). What the gear loses is a factor of the row.
     */
    private static Motor geared(String name, double ratio) {
        Motor m = motor(name);
        return like(
                m, name + " geared " + Math.round(ratio), m.speedConstant() / ratio, m.resistance(), m.noLoadCurrent());
    }

    /** The same copper in more or fewer turns: R as 1/K_v², I₀ as K_v (derived). */
    private static Motor rewound(String name, String other, double share) {
        Motor m = motor(name);
        return like(m, other, m.speedConstant() * share, m.resistance() / (share * share), m.noLoadCurrent() * share);
    }

    private static Motor like(Motor m, String name, double constant, double resistance, double noLoad) {
        return new Motor(
                name,
                m.mass(),
                m.diameter(),
                m.length(),
                constant,
                resistance,
                noLoad,
                m.noLoadVoltage(),
                m.continuousPower(),
                m.price(),
                Provenance.INVENTED);
    }

    private static Motor motor(String name) {
        return Objects.requireNonNull(Catalogue.find(STANDARD.motors(), name), name);
    }

    /** A size inside the measured ones that nobody measured. */
    private static Propeller sized(String name, BladeFamily family, double diameter, double pitch) {
        return new Propeller(
                name,
                family,
                diameter,
                pitch,
                2,
                0.006,
                SIZES.predict(family, diameter, pitch, 2),
                0,
                Provenance.REGRESSION);
    }

    /**
     * The same blade larger, turning at {@code speed} rev/s in level flight: coefficients over the advance ratio are those of the
     * measured one at the speed of the same Reynolds number, which goes as n D² (derived). It is larger than any that was measured.
     */
    private static Propeller enlarged(String name, String like, double diameter, double speed) {
        Propeller p = Objects.requireNonNull(Catalogue.find(STANDARD.propellers(), like), like);
        double scale = diameter / p.diameter();
        double area = scale * scale;
        double term = p.curves().speedTerm(speed * area);
        PropellerCurves curves = new PropellerCurves(
                held(p.curves().thrustTerms(), term),
                held(p.curves().powerTerms(), term),
                p.curves().lowestSpeed() / area,
                p.curves().highestSpeed() / area,
                p.curves().furthestAdvance());
        return new Propeller(
                name,
                p.family(),
                diameter,
                scale * p.pitch(),
                p.blades(),
                p.mass() * area,
                curves,
                p.price(),
                Provenance.REGRESSION);
    }

    /** With the speed term of one speed in the constant and the slope. */
    private static double[] held(double[] terms, double speedTerm) {
        double[] held = terms.clone();
        held[0] += speedTerm * held[5];
        held[1] += speedTerm * held[6];
        held[5] = 0;
        held[6] = 0;
        return held;
    }
}
