package foamfront.model.fabrication;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSpar;
import foamfront.model.section.SectionShape;
import java.util.List;

/**
 * A folded wing: skins, joints, and a strip of board between the skins that ties them: the spar itself, or the web
 * beside a stock spar. Two halves butt at the centre line with a spar piece running one chord past the joint each side;
 * a rectangular one-piece wing that comes out of one sheet is left whole. Pieces longer than the sheet are split in
 * equal parts, tape over and under every joint of two, so that splices of up to four pieces stand where the bending moment is below half the root's (2y/b at
 * least 0.25; common practice, station derived).
 */
final class FoldedWingParts {
    /** Length of a hinge strip across the joint of a folding wing, 60 mm on each half, m (judgement). */
    private static final double HINGE_STRIP = 0.120;

    /** Pieces beyond the least that a panel is cut into before it is given up as too slanted for the sheet. */
    private static final int MOST_MORE = 3;

    /** A piece as long as the sheet but for rounding comes out of it, m. */
    private static final double ROUNDING = 1e-9;

    private final PartsBuffer out;
    private final FoldedSection section;
    private final WingBuild build;
    private final WingNames names;

    FoldedWingParts(PartsBuffer out, FoldedSection section, WingBuild build, WingNames names) {
        this.out = out;
        this.section = section;
        this.build = build;
        this.names = names;
    }

    void add(Surface wing) {
        List<Panel> panels = wing.panels();
        Panel root = panels.get(0);
        if (panels.size() == 1 && whole(root)) {
            List<Hinge> hinges = Hinges.bothSides(Hinges.on(wing, root));
            piece(root, 1, facets(root, 2 * root.breadth(), Mitre.SQUARE), hinges, 0);
            return;
        }
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            double outerBend = i < panels.size() - 1 ? Joiner.rise(panels.get(i + 1)) - Joiner.rise(panel) : 0;
            double innerBend = i > 0 ? Joiner.rise(panel) - Joiner.rise(panels.get(i - 1)) : 2 * Joiner.rise(panel);
            DevelopedFacets[] pieces = pieces(panel, 0.5 * innerBend, 0.5 * outerBend);
            for (int j = 0; j < pieces.length; j++) {
                Panel piece = slice(panel, j, pieces.length);
                boolean spliced = i + j > 0;
                double bend = j == 0 ? innerBend : 0;
                double tape = spliced ? 2 : build.joint() == WingJoint.ONE_PIECE ? 1 : 0;
                piece(piece, 2, pieces[j], Hinges.on(wing, piece), tape * piece.rootChord());
                if (spliced && build.spar() instanceof WingSpar.BoardStrip) {
                    doubler(names.spliceDoubler(), piece, 2, Math.abs(piece.rootY()), bend);
                }
            }
        }
        centre(wing);
    }

    /** Piece {@code j} of a panel cut into equal ones. */
    private static Panel slice(Panel panel, int j, int pieces) {
        return Station.slice(panel, (double) j / pieces, (j + 1.0) / pieces);
    }

    /**
     * The fewest equal pieces that come out of the sheet with their ends mitred; as few as its length asks for where the slant of
     * a swept panel's ends leaves more no better off.
     */
    private DevelopedFacets[] pieces(Panel panel, double root, double tip) {
        int least = out.pieces(panel.breadth());
        for (int pieces = least; pieces <= least + MOST_MORE; pieces++) {
            DevelopedFacets[] cut = cut(panel, pieces, root, tip);
            if (longest(cut) <= out.along + ROUNDING) {
                return cut;
            }
        }
        return cut(panel, out.pieces(longest(cut(panel, 1, root, tip))), root, tip);
    }

    /** A panel in equal pieces, its own ends mitred. */
    private DevelopedFacets[] cut(Panel panel, int pieces, double root, double tip) {
        DevelopedFacets[] cut = new DevelopedFacets[pieces];
        for (int j = 0; j < pieces; j++) {
            Panel piece = slice(panel, j, pieces);
            cut[j] = facets(piece, piece.breadth(), new Mitre(j == 0 ? root : 0, j == pieces - 1 ? tip : 0));
        }
        return cut;
    }

    private static double longest(DevelopedFacets[] pieces) {
        double longest = 0;
        for (DevelopedFacets piece : pieces) {
            longest = Math.max(longest, piece.length());
        }
        return longest;
    }

    private boolean whole(Panel p) {
        return build.joint() == WingJoint.ONE_PIECE
                && p.rootX() == p.tipX()
                && p.rootZ() == p.tipZ()
                && p.rootChord() == p.tipChord()
                && 2 * p.breadth() <= out.along
                && facets(p, p.breadth(), Mitre.SQUARE).width() <= out.across;
    }

    private DevelopedFacets facets(Panel p, double breadth, Mitre mitre) {
        return facets(FoldedPanel.Skins.BOTH, p, breadth, mitre);
    }

    private DevelopedFacets facets(FoldedPanel.Skins skins, Panel p, double breadth, Mitre mitre) {
        return FoldedPanel.facets(
                section, skins, p.rootChord(), p.tipChord(), p.tipX() - p.rootX(), breadth, out.thickness, mitre);
    }

    private FoldedPanel skin(FoldedPanel.Skins skins, Panel p, double breadth, Mitre mitre, List<Hinge> hinges) {
        return new FoldedPanel(section, skins, facets(skins, p, breadth, mitre), out.thickness, hinges);
    }

    private void piece(Panel p, int count, DevelopedFacets facets, List<Hinge> hinges, double splice) {
        double breadth = count == 1 ? 2 * p.breadth() : p.breadth();
        double x = Station.x(p, 0.5);
        double y = Station.y(p);
        double z = Station.z(p) + (section.bottomCorners() == 2 ? 0.3 * section.thickness() * p.rootChord() : 0);
        FoldedPanel both = new FoldedPanel(section, FoldedPanel.Skins.BOTH, facets, out.thickness, hinges);
        double trailing = breadth;
        double edges = both.leadingEdge();
        if (both.width() <= out.across) {
            out.skin(names.wing(), count, SparSeat.in(both, build.spar()), trailing, splice, edges, x, y, z);
        } else {
            out.skin(
                    names.bottom(),
                    count,
                    SparSeat.in(skin(FoldedPanel.Skins.BOTTOM, p, breadth, facets.mitre(), hinges), build.spar()),
                    trailing + both.leadingEdge(),
                    splice + both.leadingEdge(),
                    0,
                    x,
                    y,
                    z);
            out.skin(
                    names.top(),
                    count,
                    skin(FoldedPanel.Skins.TOP, p, breadth, facets.mitre(), hinges),
                    0,
                    0,
                    edges,
                    x,
                    y,
                    z);
        }
        strip(p, count, breadth);
    }

    private double inside(double chord) {
        return Folding.insideHeight(chord, section.thickness(), out.thickness);
    }

    private void strip(Panel p, int count, double breadth) {
        double x = Station.x(p, SectionShape.SPAR_STATION);
        double root = inside(p.rootChord());
        double tip = inside(p.tipChord());
        boolean onEdge = Math.min(root, tip) >= Folding.ON_EDGE;
        // It ends at the root rib, which stands across it.
        boolean ribbed = p.rootY() == 0 && build.joint() != WingJoint.ONE_PIECE;
        double length = breadth - (ribbed ? Math.min(out.thickness, 0.5 * breadth) : 0);
        Pattern pattern =
                onEdge ? Plate.of(root, tip, length, out.thickness) : new Rectangle(length, Folding.FLAT_STRIP);
        String name = build.spar() instanceof WingSpar.BoardStrip ? names.spar() : names.web();
        out.part(name, count, count == 2, true, pattern, 2 * length, x, Station.y(p), Station.z(p));
    }

    /** A strip running one chord each side of a joint, angled where the joint turns the wing up by {@code bend}. */
    void doubler(String name, Panel p, int count, double y, double bend) {
        double height = Math.max(inside(p.rootChord()), Folding.ON_EDGE);
        double length = Brace.length(2 * p.rootChord(), height, bend, out.along);
        out.part(
                name,
                count,
                false,
                true,
                Brace.of(length, height, bend),
                2 * length,
                p.rootX() + SectionShape.SPAR_STATION * p.rootChord(),
                y,
                p.rootZ());
    }

    private void centre(Surface wing) {
        Panel root = wing.panels().get(0);
        double c = root.rootChord();
        if (build.joint() == WingJoint.ONE_PIECE) {
            if (build.spar() instanceof WingSpar.BoardStrip) {
                doubler(names.jointDoubler(), root, 1, 0, 2 * Joiner.rise(root));
            }
            return;
        }
        // Strips of tape across the lower skins, side by side over the chord, and one along the joint.
        double hinge = build.joint() == WingJoint.FOLDING ? c * (HINGE_STRIP / PartsBuffer.TAPE_WIDTH + 1) : 0;
        out.taped(
                names.rootRib(),
                2,
                true,
                RootRib.of(section, c, out.thickness, build.spar(), lift(wing)),
                2 * c,
                0.5 * hinge,
                root.rootX() + 0.5 * c,
                0,
                root.rootZ());
    }

    /** How far over the middle a plug-in tube runs through the root rib where the wing turns up. */
    private double lift(Surface wing) {
        if (build.spar() instanceof WingSpar.Stock stock && build.joint() == WingJoint.PLUG_IN) {
            double bend = 2 * Joiner.rise(wing.panels().get(0));
            return Joiner.lift(Joiner.plugged(wing, out.thickness, stock.spar()), bend);
        }
        return 0;
    }
}
