package foamfront.model.fabrication;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import java.util.List;

/**
 * Surfaces of one board's thickness. A flat surface of one panel is cut in one piece with both halves when the sheet is large
 * enough; otherwise halves, split again where longer than the sheet.
 */
final class PlateParts {
    /** Score lines that bend a plate to an arc (judgement: facets of a seventh of the chord). */
    static final int ARC_SCORES = 6;

    private static final WingSpar NO_SPAR = new WingSpar.BoardStrip();

    private final PartsBuffer out;
    private final String name;
    private final String step;
    private final WingSection section;
    private final WingSpar spar;

    /** A tail, fin or winglet, which has no spar. */
    PlateParts(PartsBuffer out, String name, WingSection section) {
        this(out, name, "step", section, NO_SPAR);
    }

    PlateParts(PartsBuffer out, WingNames names, WingSection section, WingSpar spar) {
        this(out, names.wing(), names.step(), section, spar);
    }

    private PlateParts(PartsBuffer out, String name, String step, WingSection section, WingSpar spar) {
        this.out = out;
        this.name = name;
        this.step = step;
        this.section = section;
        this.spar = spar;
    }

    void add(Surface surface, boolean onePiece) {
        Panel root = surface.panels().get(0);
        if (onePiece && surface.panels().size() == 1 && root.rootZ() == root.tipZ()) {
            Plate plate = plate(root, true, Hinges.on(surface, root));
            if (plate.length() <= out.along && plate.width() <= out.across) {
                piece(root, 1, plate, 0);
                return;
            }
        }
        boolean first = true;
        for (int i = 0; i < surface.panels().size(); i++) {
            Panel panel = surface.panels().get(i);
            Plate all = plate(panel, false, Hinges.on(surface, panel));
            int pieces = out.pieces(all.length());
            for (int j = 0; j < pieces; j++) {
                Panel piece = pieces == 1 ? panel : Station.slice(panel, (double) j / pieces, (j + 1.0) / pieces);
                double joint = first ? 0.5 * piece.rootChord() : piece.rootChord();
                piece(piece, 2, pieces == 1 ? all : plate(piece, false, Hinges.on(surface, piece)), joint);
                first = false;
            }
        }
    }

    /**
     * {@code count} fins alike, standing at a mean distance {@code y} from the centre line: glued along both sides of their
     * roots, or, where they fold, taped there.
     */
    void addFins(Surface fin, int count, double y, boolean folding) {
        Panel panel = fin.panels().get(0);
        Plate plate = plate(panel, false, Hinges.on(fin, panel));
        double edges = plate.leadingEdge();
        double root = 2 * panel.rootChord();
        double glue = folding ? 0 : root;
        out.skin(name, count, plate, glue, root - glue, edges, Station.x(panel, 0.5), y, Station.z(panel));
    }

    private Plate plate(Panel p, boolean whole, List<Hinge> hinges) {
        int scores = section instanceof WingSection.CurvedPlate ? ARC_SCORES : 0;
        double stretch = section instanceof WingSection.CurvedPlate curved ? arc(curved.camber()) : 1;
        return new Plate(
                stretch * p.rootChord(),
                stretch * p.tipChord(),
                p.tipX() - p.rootX(),
                p.breadth(),
                whole,
                out.thickness,
                scores,
                hinges);
    }

    /** Length of a shallow arc over its chord: 1 + 8/3 (camber/chord)², from the series of a parabola (derived). */
    static double arc(double camber) {
        return 1 + 8.0 / 3 * camber * camber;
    }

    /** One piece, glued over {@code joint} at its root, tape over and under. */
    private void piece(Panel p, int count, Plate plate, double joint) {
        double edges = plate.leadingEdge();
        Pattern seated = SparSeat.in(plate, spar);
        out.skin(name, count, seated, joint, 2 * joint, edges, Station.x(p, 0.5), Station.y(p), Station.z(p));
        if (section instanceof WingSection.SteppedPlate stepped) {
            Plate upper = new Plate(
                    stepped.step() * p.rootChord(),
                    stepped.step() * p.tipChord(),
                    p.tipX() - p.rootX(),
                    p.breadth(),
                    plate.whole(),
                    out.thickness,
                    0,
                    List.of());
            double beads = 3 * p.breadth() * (plate.whole() ? 2 : 1);
            out.part(
                    step,
                    count,
                    count == 2,
                    true,
                    upper,
                    beads,
                    Station.x(p, 0.5 * stepped.step()),
                    Station.y(p),
                    Station.z(p) + out.thickness);
        }
    }
}
