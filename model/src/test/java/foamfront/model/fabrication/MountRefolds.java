package foamfront.model.fabrication;

import static foamfront.model.fabrication.Built.FOLDED;
import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Nacelle;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.airframe.Pylon;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.Surface;
import foamfront.model.airframe.TipFloat;
import foamfront.model.design.Power;
import foamfront.model.parts.Fan;
import java.util.Objects;

/** What carries motors, wheels, floats and a second wing, put together again. */
final class MountRefolds {
    private static final double LEAST_PAD = 0.050; // m, a leg's wire and its clamp

    private MountRefolds() {}

    /** A mount two boards thick that its motor fits on, with room for the screws and no more than half as much again. */
    static void square(CutPart part, double motor) {
        Outline o = part.pattern().outline();
        assertThat(o.length()).isCloseTo(o.width(), FOLDED);
        assertThat(o.length()).isBetween(motor, Math.max(0.045, 1.5 * motor));
        assertThat(part.count() % 2).as("two boards thick").isZero();
    }

    static void motorMount(CutPart part, Built built) {
        Power power = built.design().power();
        double motor = power instanceof Power.Pusher pusher
                ? pusher.plant().motor().diameter()
                : ((Power.TwinTractor) power).plant().motor().diameter();
        square(part, motor);
    }

    /** The sides that the drag of nacelles counts. */
    static void nacelle(CutPart part, Built built) {
        double motor =
                ((Power.TwinTractor) built.design().power()).plant().motor().diameter();
        Built.measures(part, Nacelle.LENGTH, Nacelle.height(motor));
    }

    /** From what it stands on up to the top of its motor, never lower than the motor. */
    static void pylon(CutPart part, Built built) {
        Power.Pusher pusher = (Power.Pusher) built.design().power();
        double motor = pusher.plant().motor().diameter();
        Shaft shaft = built.airframe().stations().shaft();
        double wing = built.airframe().wing().panels().get(0).rootZ();
        double foot = Math.max(0.5 * built.body().height(), wing);
        double height = Math.max(motor, shaft.z() + 0.5 * motor - foot);
        Built.hasEdge(part, "foot", Pylon.FOOT_CHORD);
        Built.hasEdge(part, "top", Pylon.TOP_CHORD);
        double area = part.pattern().outline().area();
        assertThat(2 * area / (Pylon.FOOT_CHORD + Pylon.TOP_CHORD)).as("height").isCloseTo(height, FOLDED);
    }

    /** Rolled up on its outer paper the duct is a tube one board round the fan, and reaches the end of the body. */
    static void duct(CutPart part, Built built) {
        Fan fan = ((Power.DuctedFan) built.design().power()).fan();
        double around = part.pattern().outline().length() - Tube.TAB;
        assertThat(around / Math.PI - 2 * built.board()).as("bore").isCloseTo(fan.diameter(), FOLDED);
        // Foam bears 0.15 of strain (common practice); a tighter roll is scored, each score crushing a millimetre at
        // most.
        double radius = 0.5 * fan.diameter() + built.board();
        double pitch = part.pattern().outline().length() / (part.pattern().folds() + 1);
        assertThat(built.board() / radius <= 0.15 || built.board() * pitch / radius <= 0.001 + 1e-9)
                .as("can be rolled")
                .isTrue();
        double row = 0;
        for (CutPart piece : built.named("duct")) {
            row += piece.count() * piece.pattern().outline().width();
        }
        double front = built.airframe().stations().shaft().motorX() - 0.5 * Fan.LENGTH * fan.diameter();
        double short_ = 1.2 * fan.diameter();
        assertThat(row).as("length").isCloseTo(Math.max(short_, built.body().length() - front), FOLDED);
    }

    /** Across the inside of the body, over the leg's clamp. */
    static void pad(CutPart part, Built built) {
        double inside = built.body().width() - 2 * built.board();
        Built.measures(part, LEAST_PAD, Math.max(LEAST_PAD, inside));
    }

    private static TipFloat tips(Built built) {
        Flotation flotation = Objects.requireNonNull(built.airframe().stations().flotation());
        return Objects.requireNonNull(flotation.tips());
    }

    static void tipFloat(CutPart part, Built built) {
        TipFloat tip = tips(built);
        BodyRefolds.wrap(part, (Tube) part.pattern(), tip.side(), tip.side());
        assertThat(part.pattern().outline().length()).isCloseTo(tip.length(), FOLDED);
    }

    /** Set in flush, the ends leave the float its length. */
    static void tipFloatEnd(CutPart part, Built built) {
        double inside = tips(built).side() - 2 * built.board();
        Built.measures(part, inside, inside);
        assertThat(part.count()).isEqualTo(4);
    }

    private static double height(Surface wing, double y) {
        Panel panel = wing.panels().stream()
                .filter(one -> one.tipY() >= y)
                .findFirst()
                .orElseThrow();
        double share = (y - panel.rootY()) / (panel.tipY() - panel.rootY());
        return panel.rootZ() + share * (panel.tipZ() - panel.rootZ());
    }

    /** From the middle of the float up to the wing, a pad's height at least over the float. */
    static void tipFloatStrut(CutPart part, Built built) {
        TipFloat tip = tips(built);
        Surface wing = built.airframe().wing();
        double top = tip.z() + tip.side();
        double up = Math.max(0.010, height(wing, tip.y()) - top);
        Built.measures(part, 0.5 * tip.side() + up, Airframe.STRUT_CHORD);
    }

    /** From the body's lower corner to the float's deck and a chord into both. */
    static void floatStrut(CutPart part, Built built) {
        Flotation f = Objects.requireNonNull(built.airframe().stations().flotation());
        PlaningForm form = f.form();
        double deck = f.keel() + form.vee() + form.depth();
        double down = Math.max(0, -0.5 * built.body().height() - deck);
        double aside = Math.max(0, f.y() - 0.5 * built.body().width());
        double leg = Math.sqrt(down * down + aside * aside);
        Built.measures(part, leg + 2 * Airframe.STRUT_CHORD, Airframe.STRUT_CHORD);
    }

    /** From wing to wing where it stands. */
    static void strut(CutPart part, Built built) {
        Surface lower = built.surface(Surface.Role.WING);
        Surface upper = built.surface(Surface.Role.SECOND_WING);
        double y = part.y();
        double gap = height(upper, y) - height(lower, y);
        double chord = (part.name().equals("cabane") ? 2 : 1) * Airframe.STRUT_CHORD;
        Built.measures(part, Math.abs(gap), chord);
    }
}
