package foamfront.model.fabrication;

import static foamfront.model.fabrication.Built.FOLDED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.airframe.Winglet;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.parts.Spar;
import foamfront.model.section.SectionShape;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;

/** Wing and tail parts folded up again: sections from the outline that the aerodynamics use, lengths from the surfaces. */
final class WingRefolds {
    /** Mean places of a piece and its stretch of the wing agree but for rounding, m. */
    private static final double HERE = 1e-9;

    /** Widths of strips laid flat that builders use, m (common practice). */
    private static final double NARROWEST = 0.015;

    private static final double WIDEST = 0.035;

    private static final double HAND_CUT = 0.010; // m, narrowest strip by hand (common practice)

    private WingRefolds() {}

    private static Surface wing(CutPart part, Built built) {
        return built.surface(part.name().startsWith("upper") ? Surface.Role.SECOND_WING : Surface.Role.WING);
    }

    /** The stretch of one half that a piece covers. */
    private static Panel stretch(CutPart part, Surface surface) {
        if (part.count() == 1) {
            return surface.panels().get(0);
        }
        for (Panel panel : surface.panels()) {
            for (int pieces = 1; pieces < 8; pieces++) {
                for (int j = 0; j < pieces; j++) {
                    Panel slice = Station.slice(panel, (double) j / pieces, (j + 1.0) / pieces);
                    if (Math.abs(Station.y(slice) - part.y()) < HERE) {
                        return slice;
                    }
                }
            }
        }
        throw new AssertionError(part.name() + " lies on no stretch of its wing");
    }

    private static double breadth(CutPart part, Panel piece) {
        return (part.count() == 1 ? 2 : 1) * piece.breadth();
    }

    static void skin(CutPart part, Built built) {
        Surface wing = wing(part, built);
        Panel piece = stretch(part, wing);
        Pattern pattern = part.pattern() instanceof SparSeat seat ? seat.piece() : part.pattern();
        if (part.pattern() instanceof SparSeat seat) {
            seat(part, seat, built);
        }
        if (pattern instanceof FoldedPanel panel) {
            FoldedPanel.Skins skins = part.name().endsWith("bottom")
                    ? FoldedPanel.Skins.BOTTOM
                    : part.name().endsWith("top") ? FoldedPanel.Skins.TOP : FoldedPanel.Skins.BOTH;
            folded(part, panel, skins, wing.section(), built.board(), piece);
            ends(part, panel, skins, wing, built.board(), piece);
        } else {
            plate(part, pattern, wing.section(), built.board(), piece);
        }
    }

    /** Facet by facet round the section at both ends, and the breadth out of the trailing edge's length in space. */
    private static void folded(
            CutPart part, FoldedPanel panel, FoldedPanel.Skins skins, WingSection section, double board, Panel piece) {
        List<PatternLine> edges = panel.edges();
        facets(part, edges, skins, section, board, piece.rootChord(), true);
        facets(part, edges, skins, section, board, piece.tipChord(), false);
        PatternLine bottom = skins == FoldedPanel.Skins.TOP ? edges.get(edges.size() - 1) : edges.get(0);
        double lean = piece.tipX() + piece.tipChord() - piece.rootX() - piece.rootChord();
        double breadth = Math.sqrt(bottom.length() * bottom.length() - lean * lean);
        assertThat(breadth).as(part.name() + " breadth").isCloseTo(breadth(part, piece), FOLDED);
    }

    /** Every edge ends in the planes that halve the angles to its neighbours. */
    private static void ends(
            CutPart part, FoldedPanel panel, FoldedPanel.Skins skins, Surface wing, double board, Panel piece) {
        double root = 0;
        double tip = 0;
        List<Panel> panels = wing.panels();
        for (int i = 0; i < panels.size(); i++) {
            Panel one = panels.get(i);
            if (one.rootY() == piece.rootY()) {
                root = i == 0 ? rise(one) : 0.5 * (rise(one) - rise(panels.get(i - 1)));
            }
            if (one.tipY() == piece.tipY() && i + 1 < panels.size()) {
                tip = 0.5 * (rise(panels.get(i + 1)) - rise(one));
            }
        }
        List<double[]> corners = corners(skins, wing.section(), board, piece);
        List<PatternLine> edges = panel.edges();
        for (int k = 0; k < corners.size(); k++) {
            double x = corners.get(k)[0];
            double z = corners.get(k)[1];
            double breadth = breadth(part, piece)
                    - z * (piece.rootChord() * StrictMath.tan(root) + piece.tipChord() * StrictMath.tan(tip));
            double share = breadth / breadth(part, piece);
            double lean = piece.tipX() - piece.rootX() + x * (piece.tipChord() - piece.rootChord());
            double fall = z * (piece.tipChord() - piece.rootChord());
            double wished = share * Math.sqrt(lean * lean + fall * fall + Math.pow(breadth(part, piece), 2));
            assertThat(edges.get(k).length()).as(part.name() + " edge " + k).isCloseTo(wished, FOLDED);
        }
    }

    /** Corners of a section from the bottom's trailing edge round the nose, the nose once for each skin. */
    private static List<double[]> corners(FoldedPanel.Skins skins, WingSection section, double board, Panel piece) {
        SectionShape shape = SectionShape.of(section, board, 0.5 * (piece.rootChord() + piece.tipChord()));
        List<double[]> corners = new ArrayList<>();
        int n = shape.stations();
        boolean flat = section instanceof WingSection.FoldedFlatBottom;
        if (skins != FoldedPanel.Skins.TOP) {
            for (int i = n - 1; i >= 0; i--) {
                if (!flat || i == 0 || i == n - 1) {
                    corners.add(new double[] {shape.x(i), shape.lower(i)});
                }
            }
        }
        if (skins != FoldedPanel.Skins.BOTTOM) {
            for (int i = 0; i < n; i++) {
                corners.add(new double[] {shape.x(i), shape.upper(i)});
            }
        }
        return corners;
    }

    private static void facets(
            CutPart part,
            List<PatternLine> edges,
            FoldedPanel.Skins skins,
            WingSection section,
            double board,
            double chord,
            boolean root) {
        List<Double> wished = facets(skins, section, board, chord);
        assertThat(edges).as(part.name() + " edges").hasSize(wished.size() + 1);
        for (int i = 0; i < wished.size(); i++) {
            PatternLine a = edges.get(i);
            PatternLine b = edges.get(i + 1);
            double width = root
                    ? Outline.distance(a.x1(), a.y1(), b.x1(), b.y1())
                    : Outline.distance(a.x2(), a.y2(), b.x2(), b.y2());
            assertThat(width)
                    .as("%s facet %d, root %s, chord %s", part.name(), i, root, chord)
                    .isCloseTo(wished.get(i), FOLDED);
        }
    }

    private static List<Double> facets(FoldedPanel.Skins skins, WingSection section, double board, double chord) {
        SectionShape shape = SectionShape.of(section, board, chord);
        List<Double> wished = new ArrayList<>();
        int n = shape.stations();
        if (skins != FoldedPanel.Skins.TOP) {
            if (section instanceof WingSection.FoldedFlatBottom) {
                wished.add(chord);
            } else {
                for (int i = n - 1; i > 0; i--) {
                    wished.add(
                            chord * Outline.distance(shape.x(i - 1), shape.lower(i - 1), shape.x(i), shape.lower(i)));
                }
            }
        }
        if (skins == FoldedPanel.Skins.BOTH) {
            wished.add(2 * board);
        }
        if (skins != FoldedPanel.Skins.BOTTOM) {
            for (int i = 1; i < n; i++) {
                wished.add(chord * Outline.distance(shape.x(i - 1), shape.upper(i - 1), shape.x(i), shape.upper(i)));
            }
        }
        return wished;
    }

    /** A spar's seat is as wide as the spar, all along. */
    private static void seat(CutPart part, SparSeat seat, Built built) {
        double wide =
                ((WingSpar.Stock) built.design().wing().build().spar()).spar().width();
        List<PatternLine> sides = part.pattern().lines().stream()
                .filter(line -> line.kind() == PatternLine.Kind.GROOVE)
                .toList();
        assertThat(sides).as(part.name() + " seat").hasSizeGreaterThanOrEqualTo(2);
        for (int i = 0; i < sides.size(); i += 2) {
            PatternLine a = sides.get(i);
            PatternLine b = sides.get(i + 1);
            assertThat(Outline.distance(a.x1(), a.y1(), b.x1(), b.y1())).isCloseTo(wide, FOLDED);
            assertThat(Outline.distance(a.x2(), a.y2(), b.x2(), b.y2())).isCloseTo(wide, FOLDED);
        }
        assertThat(seat.grooved())
                .isCloseTo(sides.stream().mapToDouble(PatternLine::length).sum(), within(HERE));
    }

    /** Bent back to its arc, a plate has the chords and area of its stretch. */
    private static void plate(CutPart part, Pattern pattern, WingSection section, double board, Panel piece) {
        double root = developed(section, board, piece.rootChord());
        double tip = developed(section, board, piece.tipChord());
        double breadth = breadth(part, piece);
        Built.hasEdge(part, "tip chord", tip);
        if (part.count() > 1) {
            Built.hasEdge(part, "root chord", root);
        } else {
            assertThat(pattern.outline().length()).isCloseTo(breadth, FOLDED);
        }
        double area = pattern.outline().area();
        assertThat(2 * area / (root + tip)).as(part.name() + " breadth").isCloseTo(breadth, FOLDED);
    }

    private static double developed(WingSection section, double board, double chord) {
        return section instanceof WingSection.CurvedPlate
                ? SectionShape.of(section, board, chord).developedLength()
                : chord;
    }

    static void step(CutPart part, Built built) {
        Surface wing = wing(part, built);
        double share = ((WingSection.SteppedPlate) wing.section()).step();
        Panel piece = stretch(part, wing);
        Built.hasEdge(part, "tip chord", share * piece.tipChord());
        double mean = 0.5 * share * (piece.rootChord() + piece.tipChord());
        assertThat(part.pattern().outline().area() / mean).isCloseTo(breadth(part, piece), FOLDED);
    }

    /** Between both skins over the spar's station, m. */
    private static double inside(WingSection section, double board, double chord) {
        SectionShape shape = SectionShape.of(section, board, chord);
        return between(shape, SectionShape.SPAR_STATION) * chord - 2 * board;
    }

    private static double between(SectionShape shape, double at) {
        for (int i = 1; i < shape.stations(); i++) {
            if (at <= shape.x(i)) {
                double share = (at - shape.x(i - 1)) / (shape.x(i) - shape.x(i - 1));
                double before = shape.upper(i - 1) - shape.lower(i - 1);
                return before + share * (shape.upper(i) - shape.lower(i) - before);
            }
        }
        throw new AssertionError("beyond the trailing edge: " + at);
    }

    /** A strip on edge fills the inside from root to tip, up to a root rib; where it is too low it lies flat. */
    static void strip(CutPart part, Built built) {
        Surface wing = wing(part, built);
        Panel piece = stretch(part, wing);
        double root = inside(wing.section(), built.board(), piece.rootChord());
        double tip = inside(wing.section(), built.board(), piece.tipChord());
        boolean ribbed = piece.rootY() == 0
                && !built.named(part.name().replaceFirst("(spar|web)$", "root rib"))
                        .isEmpty();
        double length = breadth(part, piece) - (ribbed ? built.board() : 0);
        if (Math.min(root, tip) >= HAND_CUT) {
            Built.hasEdge(part, "height at the root", root);
            Built.hasEdge(part, "height at the tip", tip);
            assertThat(2 * part.pattern().outline().area() / (root + tip)).isCloseTo(length, FOLDED);
        } else {
            assertThat(part.pattern().outline().length()).isCloseTo(length, FOLDED);
            assertThat(part.pattern().outline().width()).isBetween(NARROWEST, WIDEST);
        }
    }

    /** One chord each side of its joint, as high as the inside, turned as the wing is there. */
    static void doubler(CutPart part, Built built) {
        Surface wing = wing(part, built);
        List<Panel> panels = wing.panels();
        Panel outer = panels.get(0);
        double bend = 2 * rise(outer);
        double chord = outer.rootChord();
        if (part.name().contains("splice")) {
            int at = 0;
            while (panels.get(at).tipY() < part.y() - HERE) {
                at++;
            }
            boolean between = at + 1 < panels.size() && Math.abs(panels.get(at).tipY() - part.y()) < HERE;
            bend = between ? rise(panels.get(at + 1)) - rise(panels.get(at)) : 0;
            chord = between
                    ? panels.get(at + 1).rootChord()
                    : panels.get(at).chord(panels.get(at).along(part.y()));
        }
        double height = Math.max(HAND_CUT, inside(wing.section(), built.board(), chord));
        Outline o = part.pattern().outline();
        double along = o.area() / height;
        assertThat(o.length()).as(part.name() + " on the sheet").isLessThanOrEqualTo(built.sheet() + HERE);
        if (along < 2 * chord - FOLDED.value) {
            assertThat(o.length()).as(part.name() + " as long as the sheet").isCloseTo(built.sheet(), FOLDED);
        } else {
            assertThat(along).as(part.name() + " length").isCloseTo(2 * chord, FOLDED);
        }
        Built.hasEdge(part, "height", height);
        if (o.size() == 6) {
            double one = StrictMath.atan2(o.y(1) - o.y(0), o.x(1) - o.x(0));
            double other = StrictMath.atan2(o.y(2) - o.y(1), o.x(2) - o.x(1));
            assertThat(other - one).as(part.name() + " angle").isCloseTo(bend, within(1e-6));
        } else {
            assertThat(bend).as(part.name() + " angle").isCloseTo(0, within(1e-6));
        }
    }

    private static double rise(Panel panel) {
        return StrictMath.atan2(panel.tipZ() - panel.rootZ(), panel.tipY() - panel.rootY());
    }

    /** A rib touches both skins from end to end. */
    static void rootRib(CutPart part, Built built) {
        Surface wing = wing(part, built);
        double chord = wing.panels().get(0).rootChord();
        SectionShape shape = SectionShape.of(wing.section(), built.board(), chord);
        if (inside(wing.section(), built.board(), chord) < HAND_CUT) {
            return; // no rib fits: such a wing misses its chord fit
        }
        boolean flat = wing.section() instanceof WingSection.FoldedFlatBottom;
        Outline o = part.pattern().outline();
        double highest = 0;
        for (int i = 0; i < o.size(); i++) {
            double room = between(shape, o.x(i) / chord) * chord - 2 * built.board();
            double height = flat && o.y(i) == 0 && room > FOLDED.value ? room : (flat ? 1 : 2) * Math.abs(o.y(i));
            assertThat(height).as(part.name() + " corner " + i).isCloseTo(Math.max(0, room), FOLDED);
            highest = Math.max(highest, height);
        }
        assertThat(highest).isCloseTo(inside(wing.section(), built.board(), chord), FOLDED);
        if (built.design().wing().build().spar() instanceof WingSpar.Stock stock) {
            openings(part, stock.spar(), flat, SectionShape.SPAR_STATION * chord, built);
        }
    }

    /**
     * A hole as large as the joint's tube against the back of the web, and a notch for the spar against its front, as deep as the
     * spar stands out of its seat half a board deep.
     */
    private static void openings(CutPart part, Spar spar, boolean flat, double web, Built built) {
        int around = part.pattern().outline().size();
        List<PatternLine> lines = part.pattern().lines();
        List<PatternLine> hole = lines.subList(around, around + 4);
        List<PatternLine> notch = lines.subList(around + 4, lines.size());
        double face = 0.5 * built.board();
        assertThat(least(hole)).as("behind the web").isCloseTo(web + face, FOLDED);
        assertThat(most(hole)).isCloseTo(web + face + spar.width(), FOLDED);
        assertThat(hole.stream().mapToDouble(PatternLine::length).sum())
                .isCloseTo(2 * (spar.width() + spar.height()), FOLDED);
        assertThat(most(notch)).as("ahead of the web").isCloseTo(web - face, FOLDED);
        assertThat(least(notch)).isCloseTo(web - face - spar.width(), FOLDED);
        double deep = Math.min(notch.get(0).length(), notch.get(2).length());
        assertThat(deep).as("deep").isCloseTo(Math.max(0, spar.height() - face), FOLDED);
        for (CutPart skin : built.parts().cut()) {
            if (flat && skin.pattern() instanceof SparSeat seat && seat.piece() instanceof FoldedPanel panel) {
                atSeat(part, skin, panel, least(notch), most(notch), built);
            }
        }
    }

    /** The notch meets the root end of the grooves in the bottom skin, counted from the nose. */
    private static void atSeat(CutPart rib, CutPart skin, FoldedPanel panel, double from, double to, Built built) {
        Surface wing = wing(rib, built);
        Panel piece = stretch(skin, wing);
        if (piece.rootY() != 0 || !wing(skin, built).equals(wing)) {
            return;
        }
        PatternLine trailing = panel.edges().get(0);
        List<Double> grooves = skin.pattern().lines().stream()
                .filter(line -> line.kind() == PatternLine.Kind.GROOVE)
                .map(line -> piece.rootChord() - Outline.distance(trailing.x1(), trailing.y1(), line.x1(), line.y1()))
                .sorted()
                .toList();
        // The seat is drawn square to its own run, which a tapered or swept half's is to its root by a little.
        Offset<Double> slant = within(0.0005 + 0.5 * Math.abs(1 / cosine(piece) - 1) * piece.rootChord());
        assertThat(grooves.get(0)).as("seat").isCloseTo(from, slant);
        assertThat(grooves.get(1)).as("seat").isCloseTo(to, slant);
    }

    private static double cosine(Panel piece) {
        double lean = piece.tipX() - piece.rootX() + piece.tipChord() - piece.rootChord();
        return piece.breadth() / Math.sqrt(lean * lean + piece.breadth() * piece.breadth());
    }

    private static double least(List<PatternLine> lines) {
        return lines.stream()
                .mapToDouble(line -> Math.min(line.x1(), line.x2()))
                .min()
                .orElseThrow();
    }

    private static double most(List<PatternLine> lines) {
        return lines.stream()
                .mapToDouble(line -> Math.max(line.x1(), line.x2()))
                .max()
                .orElseThrow();
    }

    static void delta(CutPart part, Built built) {
        Panel wing = built.airframe().wing().panels().get(0);
        Outline flat = part.pattern().outline();
        double middle = flat.left() + 0.5 * flat.length();
        double upright = 0;
        double board = built.airframe().wing().area();
        if (DeltaParts.foldsFins(built.airframe())) {
            Panel fin = built.airframe().fins().get(0).panels().get(0);
            upright = fin.breadth();
            PatternLine fold = part.pattern().lines().stream()
                    .filter(line -> line.kind() == PatternLine.Kind.FOLD && line.x1() == line.x2())
                    .findFirst()
                    .orElseThrow();
            assertThat(Math.abs(fold.x1() - middle)).as("half span").isCloseTo(wing.tipY(), FOLDED);
            double root = Math.min(fin.rootChord(), wing.tipChord());
            assertThat(fold.length()).as("fin's root").isCloseTo(root, FOLDED);
            board += (root + fin.tipChord()) * upright;
        }
        assertThat(0.5 * flat.length() - wing.tipY()).as("fin's height").isCloseTo(upright, FOLDED);
        assertThat(flat.area()).as("wing and fins").isCloseTo(board, within(0.0005 * flat.length()));
        if (part.pattern() instanceof SparSeat seat) {
            seat(part, seat, built);
        }
    }

    static void stabiliser(CutPart part, Built built) {
        Surface tail = built.surface(Surface.Role.TAIL);
        plate(part, part.pattern(), tail.section(), built.board(), stretch(part, tail));
    }

    static void fin(CutPart part, Built built) {
        assertThat(part.count()).isEqualTo(built.airframe().fins().size());
        upright(part, built.airframe().fins().get(0).panels().get(0));
    }

    static void winglet(CutPart part, Built built) {
        assertThat(part.count()).isEqualTo(2);
        upright(part, Winglet.on(wing(part, built), 1).panels().get(0));
    }

    private static void upright(CutPart part, Panel panel) {
        Built.hasEdge(part, "root", panel.rootChord());
        Built.hasEdge(part, "tip", panel.tipChord());
        double height = 2 * part.pattern().outline().area() / (panel.rootChord() + panel.tipChord());
        assertThat(height).as(part.name() + " height").isCloseTo(panel.breadth(), FOLDED);
    }
}
