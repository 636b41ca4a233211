package foamfront.model.fabrication;

import static foamfront.model.fabrication.Built.FOLDED;
import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.airframe.BodyShape;
import foamfront.model.design.Body;
import foamfront.model.design.Power;

/** Parts of shells, pods and profile boards, folded and put together again. */
final class BodyRefolds {
    private static final double RIGHT_ANGLE = 0.5 * Math.PI;
    private static final double SLEEVE = 0.080; // m, half of it in each piece (common practice)

    private BodyRefolds() {}

    /** A wrap has the body's outside and, laid in a row, the body's length. */
    static void shell(CutPart part, Built built) {
        Tube tube = (Tube) part.pattern();
        wrap(part, tube, built.body().width(), built.body().height());
        double row = 0;
        for (CutPart piece : built.parts().cut()) {
            if (piece.name().matches("body|body angle|nose")) {
                Tube one = (Tube) piece.pattern();
                row += (one.angle() ? 0.5 : 1) * piece.count() * one.outline().length();
            }
        }
        double length = built.design().body() instanceof Body.PodAndBoom pod
                ? pod.podLength()
                : built.design().body().length();
        assertThat(row).as("shell's length").isCloseTo(length, FOLDED);
    }

    /** Turned by a right angle at every fold, outer papers meeting, a wrap closes on its start. */
    static void wrap(CutPart part, Tube tube, double width, double height) {
        double at = 0;
        double x = 0;
        double z = 0;
        double breadth = 0;
        double rise = 0;
        double angle = 0;
        for (PatternLine line : tube.lines()) {
            if (line.kind() == PatternLine.Kind.FOLD) {
                double side = line.y1() - at;
                at = line.y1();
                x += side * StrictMath.cos(angle);
                z += side * StrictMath.sin(angle);
                breadth = Math.max(breadth, Math.abs(x));
                rise = Math.max(rise, Math.abs(z));
                angle += RIGHT_ANGLE;
            }
        }
        assertThat(breadth).as(part.name() + " width").isCloseTo(width, FOLDED);
        assertThat(rise).as(part.name() + " height").isCloseTo(height, FOLDED);
        assertThat(tube.outline().width() - at).as("glue tab").isBetween(0.010, 0.015);
        if (!tube.angle()) {
            assertThat(angle).as("bends").isCloseTo(4 * RIGHT_ANGLE, FOLDED);
            assertThat(x).as(part.name() + " closes across").isCloseTo(0, FOLDED);
            assertThat(z).as(part.name() + " closes upwards").isCloseTo(0, FOLDED);
        }
    }

    private static double clear(double outside, Built built) {
        return outside - 2 * built.board();
    }

    /** What closes a shell's end fills its clear inside; on a profile it is a square that the motor fits on. */
    static void former(CutPart part, Built built) {
        if (built.design().body() instanceof Body.ProfileBoard) {
            MountRefolds.square(part, motor(built));
        } else {
            Built.measures(
                    part,
                    clear(built.body().height(), built),
                    clear(built.body().width(), built));
        }
    }

    private static double motor(Built built) {
        return ((Power.NoseTractor) built.design().power()).plant().motor().diameter();
    }

    /** Two gussets each side of the board stand on the mount's whole height. */
    static void gusset(CutPart part, Built built) {
        Outline mount = built.named("firewall").get(0).pattern().outline();
        Built.measures(part, mount.length(), 0.5 * mount.length());
    }

    static void floor(CutPart part, Built built) {
        assertThat(part.pattern().outline().width())
                .isCloseTo(clear(built.body().width(), built), FOLDED);
        assertThat(built.row("floor")).isCloseTo(built.design().body().length(), FOLDED);
    }

    /** It guides the nose between floor and lid. */
    static void tongue(CutPart part, Built built) {
        BodyShape body = built.body();
        double inside = clear(body.height(), built) - body.floors() * built.board();
        assertThat(part.pattern().outline().width()).isCloseTo(inside, FOLDED);
        assertThat(part.pattern().outline().length())
                .isLessThanOrEqualTo(2 * built.design().body().nosePiece());
    }

    /** Four boards fill the inside all round: two across it, two between them. */
    static void sleeveBoard(CutPart part, Built built) {
        Built.measures(part, SLEEVE, clear(built.body().width(), built));
    }

    static void sleeveSide(CutPart part, Built built) {
        double floors = built.body().floors() * built.board();
        Built.measures(part, SLEEVE, clear(clear(built.body().height(), built), built) - floors);
    }

    static void saddle(CutPart part, Built built) {
        Outline o = part.pattern().outline();
        double chord = built.airframe().wing().panels().get(0).rootChord();
        assertThat(o.length()).isCloseTo(Math.min(chord, built.sheet()), FOLDED);
        boolean profile = built.design().body() instanceof Body.ProfileBoard;
        double room = profile ? built.body().height() : clear(built.body().height(), built);
        assertThat(o.width()).as("fits inside").isBetween(built.board() - 1e-12, Math.max(built.board(), room));
    }

    static void seat(CutPart part, Built built) {
        Built.measures(part, Body.PodAndBoom.ENGAGED, clear(built.body().width(), built));
    }

    /** Cheeks hold the boom between them and stand over it above and below. */
    static void cheek(CutPart part, Built built) {
        double boom = ((Body.PodAndBoom) built.design().body()).boom().height();
        assertThat(part.pattern().outline().width()).isGreaterThanOrEqualTo(2 * boom);
    }

    static void profile(CutPart part, Built built) {
        assertThat(part.pattern().outline().width()).isCloseTo(built.body().height(), FOLDED);
        assertThat(built.row("body board")).isCloseTo(built.design().body().length(), FOLDED);
        double slot = ((SlottedBoard) part.pattern()).slot();
        if (slot > 0) {
            double lines = part.pattern().cut() - part.pattern().outline().perimeter();
            assertThat(lines).as("slot round the wing").isCloseTo(2 * (slot + built.board()), FOLDED);
        }
    }

    static void noseDoubler(CutPart part, Built built) {
        Outline o = part.pattern().outline();
        assertThat(o.length())
                .isLessThanOrEqualTo(Math.min(built.sheet(), built.body().length()));
        assertThat(o.width()).isLessThanOrEqualTo(built.body().height());
    }

    static void splice(CutPart part, Built built) {
        Built.measures(part, SLEEVE, built.body().height());
    }

    /** A strip in the corner of wing and board, over the whole slot. */
    static void wingStrip(CutPart part, Built built) {
        double chord = built.airframe().wing().panels().get(0).rootChord();
        assertThat(part.pattern().outline().length()).isCloseTo(Math.min(chord, built.sheet()), FOLDED);
        assertThat(part.pattern().outline().width()).isBetween(0.015, 0.035);
    }
}
