package foamfront.model.fabrication;

import static foamfront.model.fabrication.Built.FOLDED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import java.util.Objects;

/** Panels of hulls and floats put back on their form. */
final class PlaningRefolds {
    private static final double HAND_CUT = 0.010; // m, narrowest strip by hand (common practice)

    private PlaningRefolds() {}

    private static PlaningForm form(Built built) {
        return Objects.requireNonNull(built.airframe().stations().flotation()).form();
    }

    private static int count(Built built) {
        Flotation flotation = Objects.requireNonNull(built.airframe().stations().flotation());
        return flotation.count();
    }

    private static double row(CutPart part, Built built, int each) {
        return built.row(part.name()) / (each * count(built));
    }

    private static double distance(double dx, double dy, double dz) {
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    static void side(CutPart part, Built built) {
        PlaningForm form = form(built);
        assertThat(row(part, built, 2)).as("length").isCloseTo(form.length(), FOLDED);
        double tallest = built.named(part.name()).stream()
                .mapToDouble(piece -> piece.pattern().outline().width())
                .max()
                .orElseThrow();
        assertThat(tallest).as("depth").isCloseTo(form.depth(), FOLDED);
        double area = built.named(part.name()).stream()
                .mapToDouble(piece -> piece.pattern().outline().area())
                .sum();
        // Deck down to the chine, which rises at the bow plate, at the step and behind it.
        double profile = 0;
        int strips = 20_000;
        double knuckle = form.bow() - form.vee();
        for (int i = 0; i < strips; i++) {
            double x = (i + 0.5) / strips * form.length();
            profile += (form.depth() - Math.max(knuckle - x, 0) - form.rise(x)) * form.length() / strips;
        }
        assertThat(area).as("profile").isCloseTo(profile, within(0.0005 * form.depth()));
    }

    static void deck(CutPart part, Built built) {
        PlaningForm form = form(built);
        assertThat(row(part, built, 1)).as("length").isCloseTo(form.length(), FOLDED);
        assertThat(part.pattern().outline().width()).as("beam").isCloseTo(form.beam(), FOLDED);
    }

    /** It rises at 45 degrees from the keel to the stem. */
    static void bowPlate(CutPart part, Built built) {
        PlaningForm form = form(built);
        Built.measures(part, Math.sqrt(2) * form.bow(), form.beam());
        Built.hasEdge(part, "seam", distance(form.vee(), 0.5 * form.beam(), form.vee()));
    }

    /** Upright from the bow plate to the deck. */
    static void stem(CutPart part, Built built) {
        PlaningForm form = form(built);
        Built.measures(part, form.vee() + form.depth() - form.bow(), form.beam());
    }

    /** Both halves bent up along the keel by the deadrise reach both chines. */
    private static void bent(CutPart part, double bend, double beam, double vee) {
        Outline o = part.pattern().outline();
        double keel = o.y(0);
        double out = keel - o.y(1);
        assertThat(out * StrictMath.cos(bend)).as(part.name() + " half beam").isCloseTo(0.5 * beam, FOLDED);
        assertThat(out * StrictMath.sin(bend)).as(part.name() + " rise").isCloseTo(vee, FOLDED);
        assertThat(o.y(5) - keel).as(part.name() + " halves alike").isCloseTo(out, FOLDED);
    }

    static void forebody(CutPart part, Built built) {
        PlaningForm form = form(built);
        bent(part, form.deadrise(), form.beam(), form.vee());
        double chine = 0;
        double keel = 0;
        for (CutPart piece : built.named(part.name())) {
            Outline o = piece.pattern().outline();
            chine += piece.count() * Built.edge(o, 1, 2) / count(built);
            keel += piece.count() * Built.edge(o, 0, 3) / count(built);
        }
        assertThat(chine).as("chine").isCloseTo(form.step() - form.bow() + form.vee(), FOLDED);
        assertThat(keel).as("keel").isCloseTo(form.step() - form.bow(), FOLDED);
    }

    /** Keel and chine rise alike, so that each half is a parallelogram; its sides and diagonal fix it. */
    static void afterbody(CutPart part, Built built) {
        PlaningForm form = form(built);
        double whole = form.heel() - form.step();
        int pieces = built.named(part.name()).size();
        double run = whole / pieces;
        double rise = (form.rise(form.heel()) - form.stepHeight()) / pieces;
        Outline o = part.pattern().outline();
        assertThat(Built.edge(o, 0, 3)).as("keel").isCloseTo(distance(run, 0, rise), FOLDED);
        assertThat(Built.edge(o, 1, 2)).as("chine").isCloseTo(distance(run, 0, rise), FOLDED);
        assertThat(Built.edge(o, 2, 3)).as("end").isCloseTo(distance(0, 0.5 * form.beam(), form.vee()), FOLDED);
        double diagonal = distance(run, 0.5 * form.beam(), rise + form.vee());
        assertThat(Built.edge(o, 0, 2)).as("diagonal").isCloseTo(diagonal, FOLDED);
    }

    static void tailBottom(CutPart part, Built built) {
        PlaningForm form = form(built);
        bent(part, form.deadrise(), form.beam(), form.vee());
        assertThat(row(part, built, 1)).as("length").isCloseTo(form.length() - form.heel(), FOLDED);
    }

    static void bulkhead(CutPart part, Built built) {
        inside(part, form(built), built.board(), form(built).depth());
    }

    static void transom(CutPart part, Built built) {
        inside(part, form(built), built.board(), form(built).sternDepth());
    }

    /** Between the sides and under the deck, its foot in the bottom's V. */
    private static void inside(CutPart part, PlaningForm form, double board, double depth) {
        Outline o = part.pattern().outline();
        double width = form.beam() - 2 * board;
        double vee = 0.5 * width * StrictMath.tan(form.deadrise());
        double sides = depth - Math.min(board, 0.5 * depth);
        Built.measures(part, vee + sides, width);
        Built.hasEdge(part, "foot", distance(0, 0.5 * width, vee));
        assertThat(Built.edge(o, 1, 2)).as("side").isCloseTo(sides, FOLDED);
    }

    /** Along both chines from the bow plate to the step. */
    static void sprayStrip(CutPart part, Built built) {
        PlaningForm form = form(built);
        assertThat(row(part, built, 2)).isCloseTo(form.step() - form.bow() + form.vee(), FOLDED);
        assertThat(part.pattern().outline().width()).isGreaterThanOrEqualTo(HAND_CUT);
    }
}
