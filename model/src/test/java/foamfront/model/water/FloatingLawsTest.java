package foamfront.model.water;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Invariants of floating and planing over random bottoms. */
class FloatingLawsTest {
    /** Thirty-two stations of a body with corners: nearest section to half a station. */
    private static final double STATIONS = 0.02;

    private static final double ROUNDING = 1e-9;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static PlaningForm form(Random random) {
        double length = 0.5 + 0.5 * random.nextDouble();
        double beam = 0.07 + 0.06 * random.nextDouble();
        return PlaningForm.of(
                length, beam, beam * (0.7 + 0.4 * random.nextDouble()), 0.4 * random.nextDouble(), 0.5 * length);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aBoxFloatsAsDeepAsItsWeightOverItsPlan(long seed) {
        Random random = new Random(seed);
        PlaningForm form = form(random);
        Flotation hull = new Flotation(form, 2, 0.15, 0.01, -0.2, null);
        double mass = 0.3 + 0.5 * random.nextDouble();

        Floating rest = Floating.of(hull, mass, 0.02, 0.15);

        assertThat(rest.displaced() * Water.DENSITY).isCloseTo(mass, within(ROUNDING));
        assertThat(rest.draught()).isPositive();
        assertThat(Math.abs(rest.trim())).isLessThan(0.3);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreBeamIsMoreBuoyancyAndLessDraught(long seed) {
        Random random = new Random(seed);
        PlaningForm narrow = form(random);
        PlaningForm wide =
                PlaningForm.of(narrow.length(), 1.1 * narrow.beam(), narrow.depth(), narrow.deadrise(), narrow.step());
        Floating one = Floating.of(new Flotation(narrow, 2, 0.15, 0.01, -0.2, null), 0.8, 0.02, 0.15);
        Floating two = Floating.of(new Flotation(wide, 2, 0.15, 0.01, -0.2, null), 0.8, 0.02, 0.15);

        assertThat(two.volume()).isGreaterThan(one.volume());
        assertThat(two.draught() - wide.vee()).isLessThan(one.draught() - narrow.vee());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aBalancePointFurtherBackSinksTheStern(long seed) {
        PlaningForm form = form(new Random(seed));
        Flotation floats = new Flotation(form, 2, 0.15, 0.01, -0.2, null);

        assertThat(Floating.of(floats, 0.8, 0.0, 0.15).trim())
                .isGreaterThan(Floating.of(floats, 0.8, 0.03, 0.15).trim());
    }

    @Test
    void aFlatBoxWithoutStepIsItsOwnVolume() {
        PlaningForm box = PlaningForm.of(1, 0.1, 0.08, 0, 1);
        double bow = 0.5 * 0.04 * 0.04 * 0.1;

        assertThat(Floating.volume(box)).isCloseTo(0.1 * 0.08 - bow, within(STATIONS * 0.008));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void planingCarriesWhatItIsAskedTo(long seed) {
        Random random = new Random(seed);
        double beam = 0.07 + 0.06 * random.nextDouble();
        double deadrise = 0.4 * random.nextDouble();
        double trim = 0.05 + 0.15 * random.nextDouble();
        double load = 2 + 8 * random.nextDouble();
        double speed = 1.2 * Planing.slowest(beam, deadrise, load, trim);

        Planing planing = Planing.of(beam, deadrise, load, trim, speed, Planing.Fluid.FRESH);

        double flat = Planing.lift(trim, planing.wetted(), speed / Math.sqrt(GRAVITY * beam));
        double carried = Planing.withDeadrise(flat, deadrise) * 0.5 * Water.DENSITY * speed * speed * beam * beam;
        assertThat(carried).isCloseTo(load, within(1e-6 * load));
        assertThat(planing.inside()).isTrue();
        assertThat(planing.drag()).isGreaterThan(load * Math.tan(trim));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreDeadriseWetsMore(long seed) {
        double load = 4 + 4 * new Random(seed).nextDouble();
        Planing flat = Planing.of(0.1, 0.05, load, 0.1, 4, Planing.Fluid.FRESH);
        Planing vee = Planing.of(0.1, 0.35, load, 0.1, 4, Planing.Fluid.FRESH);

        assertThat(vee.wetted()).isGreaterThan(flat.wetted());
        assertThat(vee.drag()).isGreaterThan(flat.drag());
    }
}
