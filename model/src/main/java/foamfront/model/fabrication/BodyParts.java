package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Power;
import foamfront.model.design.Wing;

/**
 * The body: shell, floor, formers, doublers. A tube has one glued seam, four when it must be made of two angles. Doublers stand
 * at the wing saddle over one chord and the firewall is two boards thick (common practice). A profile board has a slot where its
 * wing passes through it, and a motor mount of two boards with gussets; a boom's tail sits on two cheeks.
 */
final class BodyParts {
    /** Lid over the battery, longer than the battery by this, m (common practice). */
    private static final double LID_ROOM = 0.040;

    /** Length of the sleeve inside a spliced shell, m (common practice). */
    private static final double SLEEVE = 0.080;

    private static final double LEAST_MOUNT = 0.040; // m, judgement
    private static final double MOUNT_OVER_MOTOR = 1.4; // as a pusher's

    private static final double TAIL_CHEEK = 0.060; // m along the boom, judgement

    /** Length of the tongues that guide a replaceable nose, half in the body, half in the nose, m (common practice). */
    private static final double TONGUE = 0.060;

    private final PartsBuffer out;
    private final Design design;
    private final BodyShape shape;

    BodyParts(PartsBuffer out, Airframe airframe) {
        this.out = out;
        this.design = airframe.design();
        this.shape = airframe.body();
    }

    void add() {
        Body body = design.body();
        if (body instanceof Body.ProfileBoard) {
            profile();
            return;
        }
        double length = body.bayLength();
        if (body instanceof Body.PodAndBoom pod) {
            boom(pod, length);
        }
        double nose = body.nosePiece();
        if (nose > 0) {
            nose(nose);
        }
        if (body instanceof Body.BoatHull hull) {
            planing(hull);
        } else {
            shell(nose, length);
            formers(length);
        }
        if (body instanceof Body.TwoBayTube) {
            floor(length);
        }
        saddle();
    }

    private double w() {
        return shape.width();
    }

    private double h() {
        return shape.height();
    }

    private double insideAround() {
        return 2 * (w() + h() - 4 * shape.wall());
    }

    /** A piece of shell of its own with its seam and two tongues in the body's sides, which slide into it. */
    private void nose(double length) {
        boolean angles = Tube.wrap(w(), h()) > out.across;
        int count = angles ? 2 : 1;
        out.skin("nose", count, tube(length, angles, 0), length, 0, count * length, 0.5 * length, 0, 0);
        Rectangle tongue = new Rectangle(TONGUE, shape.insideHeight());
        out.part("nose tongue", 2, false, false, tongue, TONGUE + shape.insideHeight(), length, 0.5 * w(), 0);
    }

    private void shell(double start, double end) {
        double length = end - start;
        int pieces = out.pieces(length);
        boolean angles = Tube.wrap(w(), h()) > out.across;
        double wanted = design.power().battery().length() + LID_ROOM;
        double from = start;
        for (int i = 0; i < pieces; i++) {
            double piece = out.pieceLength(length, pieces, i);
            double hatch = i == 0 ? Math.min(wanted, 0.8 * piece) : 0;
            double joint = i == 0 ? 0 : 0.5 * insideAround();
            double x = from + 0.5 * piece;
            from += piece;
            double edges = piece * (angles ? 1 : 2);
            if (hatch > 0 && angles) {
                out.skin("body", 1, tube(piece, true, hatch), 2 * piece, joint, edges, x, 0, 0);
                out.skin("body angle", 1, tube(piece, true, 0), 0, joint, edges, x, 0, 0);
            } else {
                out.skin(
                        "body",
                        angles ? 2 : 1,
                        tube(piece, angles, hatch),
                        piece,
                        angles ? joint : 2 * joint,
                        edges,
                        x,
                        0,
                        0);
            }
        }
        if (pieces > 1) {
            sleeves(pieces - 1, start + Math.min(out.along, length));
        }
    }

    /**
     * Four boards inside each splice of the shell, two as wide as its inside and two that stand between them, cut through where
     * a floor passes.
     */
    private void sleeves(int splices, double x) {
        sleeve("body sleeve board", splices, new Rectangle(SLEEVE, shape.insideWidth()), x);
        double between = shape.insideHeight() - 2 * shape.wall();
        if (between > 0) { // thick board in a low body leaves nothing between the two
            sleeve("body sleeve side", splices, new Rectangle(SLEEVE, between), x);
        }
    }

    private void sleeve(String name, int splices, Rectangle board, double x) {
        out.part(name, 2 * splices, false, false, board, 2 * board.width(), x, 0.5 * w(), 0);
    }

    private Tube tube(double length, boolean angle, double hatch) {
        return new Tube(length, w(), h(), shape.wall(), angle, hatch);
    }

    private void formers(double length) {
        Rectangle former = new Rectangle(h() - 2 * shape.wall(), shape.insideWidth());
        boolean tractor = design.power() instanceof Power.NoseTractor;
        out.part(tractor ? "firewall" : "nose plate", tractor ? 2 : 1, false, false, former, insideAround(), 0, 0, 0);
        out.part("tail former", 1, false, false, former, insideAround(), length, 0, 0);
    }

    private void floor(double length) {
        int pieces = out.pieces(length);
        double z = 0.5 * h() - shape.wall() - design.power().battery().height();
        double from = 0;
        for (int i = 0; i < pieces; i++) {
            double piece = out.pieceLength(length, pieces, i);
            Rectangle board = new Rectangle(piece, shape.insideWidth());
            out.part("floor", 1, false, true, board, 2 * piece, from + 0.5 * piece, 0, z);
            from += piece;
        }
    }

    private void saddle() {
        Wing wing = design.wing();
        double chord = wing.planform().rootChord();
        double length = Math.min(chord, out.along);
        double joint = wing.build().holdDown() == HoldDown.GLUED ? chord : 0;
        out.part(
                "wing saddle doubler",
                2,
                true,
                true,
                new Rectangle(length, Math.max(0.5 * shape.insideHeight(), shape.wall())),
                2 * length + joint,
                wing.x() + 0.5 * chord,
                0.5 * w(),
                wing.z());
    }

    private void boom(Body.PodAndBoom pod, double podLength) {
        double engaged = Body.PodAndBoom.ENGAGED;
        double length = pod.boomLength();
        double x = podLength - engaged + 0.5 * length;
        out.stock("tail boom", pod.boom(), length, 1, x, 0, 0);
        Rectangle saddle = new Rectangle(engaged, shape.insideWidth());
        Rectangle cheek = new Rectangle(TAIL_CHEEK, Math.max(3 * pod.boom().height(), out.thickness));
        out.part(
                "tail cheek",
                2,
                true,
                false,
                cheek,
                4 * TAIL_CHEEK,
                pod.length() - 0.5 * TAIL_CHEEK,
                0.5 * pod.boom().width(),
                0);
        out.part("boom seat", 2, false, false, saddle, 2 * engaged, podLength - 0.5 * engaged, 0, 0);
    }

    /** The hull, with a lid over the battery in its deck. */
    private void planing(Body.BoatHull hull) {
        PlaningForm form = Flotation.form(hull);
        double keel = -0.5 * h() - form.vee();
        double hatch = design.power().battery().length() + LID_ROOM;
        new HullParts(out, form, "hull", 1, 0, 0, keel).add(hatch);
    }

    /** Whether the wing passes through the board rather than lying on its edge. */
    private boolean slotted() {
        return Math.abs(design.wing().z()) + out.thickness < 0.5 * h();
    }

    /** The piece of the profile from a station on, with what falls on it of the wing's slot. */
    private SlottedBoard slotted(double from, double piece) {
        Wing wing = design.wing();
        double start = Math.max(0, wing.x() - from);
        double end = Math.min(piece, wing.x() + wing.planform().rootChord() - from);
        double slot = slotted() ? Math.max(0, end - start) : 0;
        double low = wing.z() + 0.5 * h() - 0.5 * out.thickness;
        return new SlottedBoard(piece, h(), start, slot, slot > 0 ? low : 0, out.thickness);
    }

    /** Two boards across the nose for a motor there, a gusset on each side. */
    private void profileMount() {
        if (!(design.power() instanceof Power.NoseTractor tractor)) {
            return;
        }
        double side =
                Math.max(LEAST_MOUNT, MOUNT_OVER_MOTOR * tractor.plant().motor().diameter());
        out.part("firewall", 2, false, false, new Rectangle(side, side), 4 * side, 0, 0, 0);
        Rectangle gusset = new Rectangle(side, 0.5 * side);
        out.part("firewall gusset", 4, true, false, gusset, 2 * side, 0.5 * side, 0.25 * side, 0);
    }

    /** One upright board, split where longer than the sheet, with a doubler ahead and over each splice. */
    private void profile() {
        double length = shape.length();
        int pieces = out.pieces(length);
        double piece = length / pieces;
        for (int i = 0; i < pieces; i++) {
            out.skin("body board", 1, slotted(i * piece, piece), 0, 0, piece, (i + 0.5) * piece, 0, 0);
        }
        double nose = Math.min(0.4 * length, out.along);
        Rectangle doubler = new Rectangle(nose, 0.6 * h());
        out.part("nose doubler", 2, true, true, doubler, 3 * nose, 0.5 * nose, shape.wall(), 0);
        profileMount();
        if (slotted()) {
            // A strip each side keeps the wing square: one bead on it, one on the board.
            double chord = Math.min(design.wing().planform().rootChord(), out.along);
            Rectangle strip = new Rectangle(chord, Folding.FLAT_STRIP);
            double x = design.wing().x() + 0.5 * chord;
            out.part(
                    "wing strip",
                    2,
                    true,
                    true,
                    strip,
                    2 * chord,
                    x,
                    shape.wall(),
                    design.wing().z());
        } else {
            saddle();
        }
        if (pieces > 1) {
            Rectangle splice = new Rectangle(SLEEVE, h());
            out.part("body splice", 2 * (pieces - 1), false, false, splice, 2 * h(), 0.5 * length, shape.wall(), 0);
        }
    }
}
