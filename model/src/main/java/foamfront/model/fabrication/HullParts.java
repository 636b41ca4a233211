package foamfront.model.fabrication;

import foamfront.model.airframe.PlaningForm;

/**
 * A hull or floats as parts: sides, deck, bow, bottoms, bulkheads, spray strips. Bottoms are laminated with tape on their wet
 * face, seams are taped outside (common practice). Bulkheads keep what a leak can fill to a quarter of a hull, to a fifth of a
 * float: 14 CFR 25.751(b) asks for five compartments.
 */
final class HullParts {
    private static final double STRIP = 0.010; // m, the narrowest cut by hand

    private final PartsBuffer out;
    private final PlaningForm form;
    private final HullPanels panels;
    private final String name;
    private final int count;
    private final double bow;
    private final double y;
    private final double keel;

    /**
     * @param count hulls or floats alike
     * @param bow x of their bows, m from the nose or, of floats, the balance point
     * @param y of each from the centre line, m
     * @param keel height over the body axis, m
     */
    HullParts(PartsBuffer out, PlaningForm form, String name, int count, double bow, double y, double keel) {
        this.out = out;
        this.form = form;
        this.panels = new HullPanels(form, out.thickness);
        this.name = name;
        this.count = count;
        this.bow = bow;
        this.y = y;
        this.keel = keel;
    }

    /** Adds all, a lid of {@code hatch} m in the deck. */
    void add(double hatch) {
        double middle = keel + form.vee() + 0.5 * form.depth();
        double beside = 0.5 * form.beam();
        int pieces = out.pieces(form.length());
        double from = 0;
        for (int i = 0; i < pieces; i++) {
            double piece = out.pieceLength(form.length(), pieces, i);
            double to = i == pieces - 1 ? form.length() : from + piece;
            double x = 0.5 * (from + to);
            double lid = i == 0 ? Math.min(hatch, 0.8 * piece) : 0;
            double joint = i == 0 ? 0 : form.depth();
            skin(name + " side", 2 * count, panels.side(from, to), piece + joint, piece, x, y + beside, middle);
            double top = keel + form.vee() + form.depth();
            skin(name + " deck", count, panels.deck(from, to, lid), 2 * piece, 2 * piece, x, y, top);
            from = to;
        }
        double across = 2 * form.beam();
        skin(name + " bow plate", count, panels.bowPlate(), across, across, 0.5 * form.bow(), y, middle);
        Rectangle stem = new Rectangle(0.5 * form.depth(), form.beam());
        skin(name + " stem", count, stem, across, across, 0, y, middle + 0.25 * form.depth());
        bottoms();
        int walls = count > 1 ? 4 : 3;
        double around = 2 * (form.beam() + form.depth());
        out.part(
                name + " bulkhead",
                walls * count,
                false,
                false,
                panels.bulkhead(form.depth()),
                around,
                bow + form.step(),
                y,
                middle);
        Pattern transom = panels.bulkhead(form.sternDepth());
        out.part(name + " transom", count, false, false, transom, around, bow + form.length(), y, middle);
    }

    private void bottoms() {
        double low = keel + 0.5 * form.vee();
        double start = form.bow() - form.vee();
        double fore = form.step() - start;
        int pieces = out.pieces(fore);
        for (int i = 0; i < pieces; i++) {
            double from = start + i * fore / pieces;
            double to = start + (i + 1) * fore / pieces;
            wet(name + " forebody", panels.forebody(from, to), to - from, 0.5 * (from + to), low);
        }
        double length = fore / pieces;
        Rectangle strip = new Rectangle(length, STRIP);
        out.part(
                name + " spray strip",
                2 * pieces * count,
                true,
                true,
                strip,
                length,
                bow + start + 0.5 * fore,
                y + 0.5 * form.beam(),
                keel + form.vee());
        run(name + " afterbody", form.step(), form.heel(), true);
        run(name + " tail bottom", form.heel(), form.length(), false);
    }

    private void run(String part, double from, double to, boolean rising) {
        if (to - from < STRIP) {
            return;
        }
        int pieces = out.pieces((to - from) * 1.01);
        double each = (to - from) / pieces;
        for (int i = 0; i < pieces; i++) {
            double x = from + (i + 0.5) * each;
            wet(part, rising ? panels.afterbody(each) : panels.level(each), each, x, keel + form.rise(x));
        }
    }

    /** A piece of bottom: glued and taped along both chines and one end, its wet face laminated. */
    private void wet(String part, Pattern panel, double length, double x, double z) {
        double seam = 2 * length + form.beam();
        out.wet(part, count, panel, seam, seam, bow + x, y, z);
    }

    private void skin(String part, int n, Pattern panel, double glue, double seam, double x, double off, double z) {
        out.skin(part, n, panel, glue, seam, 0, bow + x, off, z);
    }
}
