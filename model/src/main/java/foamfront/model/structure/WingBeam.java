package foamfront.model.structure;

import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.parts.Spar;
import org.jspecify.annotations.Nullable;

/**
 * Stiffness and stress of a wing section at any chord c, for one board and one section kind.
 *
 * <p>The paper faces are thin walls, two to a board (2 t_f); foam keeps them apart. Folded: h = τ c − t between the boards'
 * middles, I = 2 t_f c k h² of the bonded outline plus each board's own stiffness D over the perimeter. Stepped plate:
 * two boards t apart over the step. Curved plate: a parabolic arc of height m c, ∫(z − z̄)² = (4/45)(m c)² c. The web
 * on edge inside a fold adds 2 t_f H³ / 12. Torsion after Bredt, paper shear modulus E_f / 3: folded J = 8 A² t_f /
 * (perimeter), a plate J = 2 t_f c d² for its two faces as a flat tube. A stock spar shares bending by stiffness; its torsion is
 * left out. All derived.
 *
 * <p>Inside every fold a web of the wing's own board fills the height between the skins and ties them over the whole
 * span. A stock spar stands beside it and bends with the section as a beam of its own, both to one curvature, so that
 * moment and shear divide by stiffness, and whatever the spar's height the web keeps what the skins carry together. All
 * is continuous in height, chord and thickness.
 */
final class WingBeam {
    /** Shear over Young's modulus of paper, 1 GPa with 3 GPa (from memory). */
    static final double SHEAR_RATIO = 1.0 / 3;

    private final Sandwich board;
    private final @Nullable Spar spar;
    private final double thickness;
    private final double lengths;
    private final double spread;
    private final double step;
    private final double topShare;
    private final double topFixed;
    private final double bottomFixed;
    private final double enclosed;
    private final double offset;
    private final double plate;
    private final double massOffset;
    private final boolean symmetrical;
    private final double upper;
    private final double bead;

    /**
     * @param bead section of a bead of glue, m²
     */
    WingBeam(Sandwich board, WingSection section, WingSpar wingSpar, double bead) {
        this.board = board;
        this.bead = bead;
        symmetrical = section instanceof WingSection.FoldedSymmetrical;
        spar = wingSpar instanceof WingSpar.Stock stock ? stock.spar() : null;
        plate = board.bendingStiffness();
        double t = board.thickness();
        double tau = SectionOutline.thickness(section);
        if (tau > 0) {
            SectionOutline outline = symmetrical ? SectionOutline.symmetrical(tau) : SectionOutline.flatBottom(tau);
            thickness = tau;
            lengths = outline.perimeter();
            spread = outline.secondMoment();
            step = 0;
            upper = 0;
            topShare = outline.top();
            topFixed = 0.5 * t;
            bottomFixed = 0.5 * t;
            enclosed = outline.area();
            offset = outline.areaCentre() - 0.25;
            massOffset = outline.skinCentre() - 0.25;
        } else {
            enclosed = 0;
            offset = 0.25;
            massOffset = 0.25;
            double s = section instanceof WingSection.SteppedPlate stepped ? stepped.step() : 0;
            upper = s;
            lengths = 1 + s;
            step = s * t * t / (1 + s);
            bottomFixed = s * t / (1 + s) + 0.5 * t;
            if (section instanceof WingSection.CurvedPlate curved && curved.camber() > 0) {
                thickness = curved.camber();
                spread = 4.0 / 45;
                topShare = 1.0 / 3;
                topFixed = 0.5 * t;
            } else {
                thickness = 0;
                spread = 0;
                topShare = 0;
                topFixed = s > 0 ? t - s * t / (1 + s) + 0.5 * t : 0.5 * t;
            }
        }
    }

    /** Height between the boards' middles (fold) or of the arc (curved plate), m. */
    private double rise(double chord) {
        return Math.max(0, thickness * chord - (enclosed > 0 ? board.thickness() : 0));
    }

    /** Mean height of a fold between its boards' middles, of a plate between its papers', m. */
    double meanHeight(double chord) {
        return enclosed > 0 ? enclosed * rise(chord) : board.depth();
    }

    /** Height of the web inside a fold, m; 0 in a plate. */
    double webHeight(double chord) {
        return enclosed > 0 ? Math.max(0, thickness * chord - 2 * board.thickness()) : 0;
    }

    /** E I of the boards as one section, N m². */
    double skinStiffness(double chord) {
        double h = rise(chord);
        double web = webHeight(chord);
        double paper = 2 * board.face() * board.faceModulus();
        return paper * (chord * (spread * h * h + step) + web * web * web / 12) + chord * lengths * plate;
    }

    /** E I of boards and spar, N m². */
    double bendingStiffness(double chord) {
        return skinStiffness(chord) + sparStiffness();
    }

    /** E I of the stock spar, N m²; 0 without one. */
    double sparStiffness() {
        return spar == null ? 0 : spar.modulus() * spar.secondMoment();
    }

    /** Height of the uppermost face over the section's centroid, m. */
    double top(double chord) {
        return topShare * rise(chord) + topFixed;
    }

    /** Depth of the lowest face under the section's centroid, m. */
    double bottom(double chord) {
        return thickness > 0 ? (1 - topShare) * rise(chord) + bottomFixed : bottomFixed;
    }

    /** Greatest compressive stress in the paper, Pa: in the upper under a moment that lifts the tip, else in the lower. */
    double faceStress(double moment, double chord) {
        double depth = moment > 0 ? top(chord) : bottom(chord);
        return board.faceModulus() * Math.abs(moment) * depth / bendingStiffness(chord);
    }

    /** Bending stress in the stock spar under a moment shared by stiffness, Pa; 0 without one. */
    double sparStress(double moment, double chord) {
        return spar == null ? 0 : spar.modulus() * moment * 0.5 * spar.height() / bendingStiffness(chord);
    }

    /** G J, N m². */
    double torsionStiffness(double chord) {
        double shear = SHEAR_RATIO * board.faceModulus();
        double d = board.depth();
        if (enclosed == 0 || rise(chord) == 0) {
            return shear * 2 * board.face() * lengths * chord * d * d;
        }
        double area = enclosed * rise(chord) * chord;
        return shear * new ThinTube(area, lengths * chord, 2 * board.face()).torsionConstant();
    }

    /** Shear stress of the glue between the boards per newton that passes a section of wing, 1/m²; 0 where there is none. */
    double glue(double chord) {
        if (enclosed == 0 && upper == 0) {
            return 0;
        }
        double skins = skinStiffness(chord);
        double t = board.thickness();
        // Where skins come closer than a board no strip fits, and the wing is not built.
        double perBoards = enclosed > 0
                ? WebGlue.fold(symmetrical, Math.max(t, rise(chord)), chord, t, bead)
                : WebGlue.step(upper, chord, t, 2 * board.face() * board.faceModulus(), skins, bead);
        return perBoards * skins / (skins + sparStiffness());
    }

    /** Distance of the elastic axis behind the quarter-chord, of the chord. */
    double elasticOffset() {
        return offset;
    }

    /** Distance of the skins' centre of mass behind the quarter-chord, of the chord; a step ahead of the middle is left out. */
    double massOffset() {
        return massOffset;
    }

    /** Whether shear distorts the section: plates carry it in the core over their whole chord. */
    boolean isPlate() {
        return enclosed == 0;
    }

    /** Shear deflection rate per shear force of a plate, 1/N; 0 for a fold, whose boards are loaded in their plane. */
    double shearFlexibility(double chord) {
        return isPlate() ? 1 / (board.shearStiffness() * chord) : 0;
    }

    @Nullable
    Spar spar() {
        return spar;
    }

    Sandwich board() {
        return board;
    }
}
