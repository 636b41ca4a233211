package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.PlaningForm;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Panels laid flat and put back together are the hull they came from. */
class HullRefoldLawsTest {
    /** Outer dimensions may be off by this, m. */
    private static final double OFF = 0.5e-3;

    private static final double BOARD = 0.0045;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private static PlaningForm form(long seed) {
        Random random = new Random(seed);
        double length = 0.6 + 0.6 * random.nextDouble();
        return PlaningForm.of(
                length,
                0.07 + 0.08 * random.nextDouble(),
                0.07 + 0.08 * random.nextDouble(),
                0.02 + 0.4 * random.nextDouble(),
                (0.35 + 0.25 * random.nextDouble()) * length);
    }

    /** Distance of two corners of a panel. */
    private static double edge(Pattern panel, int from, int to) {
        Outline o = panel.outline();
        return Outline.distance(o.x(from), o.y(from), o.x(to), o.y(to));
    }

    private static double distance(double dx, double dy, double dz) {
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theForebodysEdgesMeetBowSidesAndStep(long seed) {
        PlaningForm form = form(seed);
        HullPanels panels = new HullPanels(form, BOARD);
        double knuckle = form.bow() - form.vee();
        Pattern bottom = panels.forebody(knuckle, form.step());
        double half = 0.5 * form.beam();

        assertThat(edge(bottom, 1, 2)).as("chine").isCloseTo(form.step() - knuckle, within(OFF));
        assertThat(edge(bottom, 0, 3)).as("keel").isCloseTo(form.step() - form.bow(), within(OFF));
        double ahead = distance(form.vee(), half, form.vee());
        assertThat(edge(bottom, 0, 1)).as("bow seam").isCloseTo(ahead, within(OFF));
        assertThat(edge(panels.bowPlate(), 0, 1)).as("bow plate's seam").isCloseTo(ahead, within(OFF));
        assertThat(edge(bottom, 2, 3)).as("step").isCloseTo(distance(0, half, form.vee()), within(OFF));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theAfterbodysHalvesAreTheRisingPlanes(long seed) {
        PlaningForm form = form(seed);
        double run = form.heel() - form.step();
        double rise = form.rise(form.heel()) - form.stepHeight();
        Pattern bottom = new HullPanels(form, BOARD).afterbody(run);
        double half = 0.5 * form.beam();

        assertThat(edge(bottom, 0, 3)).as("keel").isCloseTo(distance(run, 0, rise), within(OFF));
        assertThat(edge(bottom, 1, 2)).as("chine").isCloseTo(distance(run, 0, rise), within(OFF));
        assertThat(edge(bottom, 2, 3)).as("end").isCloseTo(distance(0, half, form.vee()), within(OFF));
        // The diagonal fixes the parallelogram's angle.
        double diagonal = distance(run, half, rise + form.vee());
        assertThat(edge(bottom, 0, 2)).as("diagonal").isCloseTo(diagonal, within(OFF));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theSidesAreTheProfileWhereverTheyAreCut(long seed) {
        PlaningForm form = form(seed);
        HullPanels panels = new HullPanels(form, BOARD);
        double cut = 0.6 * form.length();
        Pattern whole = panels.side(0, form.length());

        assertThat(whole.length()).isCloseTo(form.length(), within(OFF));
        assertThat(whole.width()).isCloseTo(form.depth(), within(OFF));
        double parts =
                panels.side(0, cut).area() + panels.side(cut, form.length()).area();
        assertThat(parts).isCloseTo(whole.area(), within(1e-9));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void volumeFromTheSideIsVolumeOfTheSections(long seed) {
        PlaningForm form = form(seed);
        double keel = form.bow() - form.vee() > 0 ? form.length() - form.bow() : 0;
        double box = new HullPanels(form, BOARD).side(0, form.length()).area() * form.beam();
        double vee = 0.5 * form.beam() * form.vee() * (keel + form.vee() / 3);

        assertThat(foamfront.model.water.Floating.volume(form)).isCloseTo(box + vee, within(0.03 * (box + vee)));
    }
}
