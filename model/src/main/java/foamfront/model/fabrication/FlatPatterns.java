package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.airframe.Winglet;
import foamfront.model.design.Design;
import foamfront.model.design.FinJoint;
import foamfront.model.design.Wing;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSpar;
import foamfront.model.design.WingTips;
import foamfront.model.section.SectionShape;
import java.util.List;

/**
 * All cut and sawn parts of an aeroplane: patterns of every surface by the way its section is made, of the body by its kind, and
 * of what mounts motors and wheels. The order of parts is fixed by the arrangement.
 *
 * <p>One belongs to one worker: it keeps what parts are collected in.
 */
public final class FlatPatterns {
    /** A joiner runs this many diameters into each half (12 to 15, common practice). */
    private static final double JOINER_DIAMETERS = 15;

    private static final double LEAST_DIAMETERS = 12;

    private final PartsBuffer out = new PartsBuffer();

    /** The parts of an aeroplane that comes alone. */
    public static PartsList of(Airframe airframe) {
        return new FlatPatterns().parts(airframe);
    }

    /** All parts of an aeroplane. */
    public PartsList parts(Airframe airframe) {
        Design design = airframe.design();
        out.begin(design);
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            Surface surface = airframe.surfaces().get(i);
            out.turnTo(surface.role() == Surface.Role.TAIL ? Assembly.TAIL : Assembly.WING);
            switch (surface.role()) {
                case WING -> {
                    if (design.wing() instanceof Wing.Delta) {
                        DeltaParts.add(out, airframe);
                    } else {
                        wing(out, design.wing().build(), surface, WingNames.LOWER);
                    }
                }
                case SECOND_WING -> wing(out, design.wing().build(), surface, WingNames.UPPER);
                case TAIL -> new PlateParts(out, "stabiliser", surface.section()).add(surface, true);
                case FIN -> {}
            }
        }
        out.turnTo(Assembly.TAIL);
        if (!DeltaParts.foldsFins(airframe)) {
            fins(out, airframe.fins(), design.tail().finJoint() == FinJoint.FOLDING);
        }
        out.turnTo(Assembly.BODY);
        new BodyParts(out, airframe).add();
        new MountParts(out, airframe).add();
        return out.list();
    }

    private static void wing(PartsBuffer out, WingBuild build, Surface wing, WingNames names) {
        FoldedSection folded = FoldedSection.of(wing.section());
        if (folded != null) {
            new FoldedWingParts(out, folded, build, names).add(wing);
        } else {
            new PlateParts(out, names, wing.section(), build.spar()).add(wing, build.joint() == WingJoint.ONE_PIECE);
        }
        if (build.spar() instanceof WingSpar.Stock stock) {
            stockSpar(out, stock, build, wing, names);
        }
        if (build.tips() == WingTips.WINGLETS) {
            Surface winglet = Winglet.on(wing, 1);
            new PlateParts(out, names.winglet(), winglet.section()).addFins(winglet, 2, 0.5 * wing.span(), false);
        }
    }

    /**
     * A straight spar for each stretch of the wing that does not bend up or down, with joiners where stretches meet; one spar from
     * side to side where the innermost stretch of a one-piece wing is level. Kinks in plan, as at a cut-out, are bridged. Where the
     * wing bends up too much for a joiner of twelve diameters each way, braces of board cut to the angle stand on both sides of it.
     */
    static void stockSpar(PartsBuffer out, WingSpar.Stock stock, WingBuild build, Surface wing, WingNames names) {
        List<Panel> panels = wing.panels();
        int from = 0;
        while (from < panels.size()) {
            int to = Joiner.straightUntil(panels, from);
            double bend = from == 0
                    ? 2 * Joiner.rise(panels.get(0))
                    : Joiner.rise(panels.get(from)) - Joiner.rise(panels.get(from - 1));
            stretch(out, stock, build, names, wing, panels.subList(from, to), from == 0, bend);
            from = to;
        }
    }

    private static void stretch(
            PartsBuffer out,
            WingSpar.Stock stock,
            WingBuild build,
            WingNames names,
            Surface wing,
            List<Panel> panels,
            boolean inner,
            double bend) {
        double half = 0;
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            double share = panel.breadth();
            half += share;
            x += share * 0.5 * (atSpar(panel.rootX(), panel.rootChord()) + atSpar(panel.tipX(), panel.tipChord()));
            y += share * 0.5 * (panel.rootY() + panel.tipY());
            z += share * 0.5 * (panel.rootZ() + panel.tipZ());
        }
        Panel root = panels.get(0);
        boolean through = inner
                && build.joint() == WingJoint.ONE_PIECE
                && root.rootZ() == root.tipZ()
                && 2 * half <= stock.spar().length();
        if (through) {
            out.stock(names.spar(), stock.spar(), 2 * half, 1, x / half, y / half, z / half);
            return;
        }
        out.stock(names.spar(), stock.spar(), half, 2, x / half, y / half, z / half);
        // A plug-in tube is held over one root chord each side; a glued joiner over fifteen diameters (common
        // practice).
        double chord = root.rootChord();
        boolean plugged = inner && build.joint() == WingJoint.PLUG_IN;
        double wished = JOINER_DIAMETERS * stock.spar().height();
        double reach = plugged
                ? Joiner.plugged(wing, out.thickness, stock.spar())
                : Joiner.reach(wished, build.section(), chord, out.thickness, stock.spar(), bend);
        int joiners = inner ? 1 : 2;
        double at = atSpar(root.rootX(), chord);
        out.stock(names.joiner(), stock.spar(), 2 * reach, joiners, at, root.rootY(), root.rootZ());
        FoldedSection folded = FoldedSection.of(build.section());
        double least = Math.min(wished, LEAST_DIAMETERS * stock.spar().height());
        if (folded != null && !plugged && reach < least) {
            String name = inner ? names.jointDoubler() : names.spliceDoubler();
            new FoldedWingParts(out, folded, build, names).doubler(name, root, 2 * joiners, root.rootY(), bend);
        }
    }

    private static double atSpar(double leading, double chord) {
        return leading + SectionShape.SPAR_STATION * chord;
    }

    private static void fins(PartsBuffer out, List<Surface> fins, boolean folding) {
        if (fins.isEmpty()) {
            return;
        }
        double y = 0;
        for (int i = 0; i < fins.size(); i++) {
            Surface fin = fins.get(i);
            y += Math.abs(fin.panels().get(0).rootY());
        }
        Surface fin = fins.get(0);
        new PlateParts(out, "fin", fin.section()).addFins(fin, fins.size(), y / fins.size(), folding);
    }
}
