package foamfront.model.fabrication;

import static foamfront.model.fabrication.PatternLine.Kind.BEVEL;
import static foamfront.model.fabrication.PatternLine.Kind.CUT;
import static foamfront.model.fabrication.PatternLine.Kind.FOLD;
import static foamfront.model.fabrication.PatternLine.Kind.TAPE;

import foamfront.model.airframe.PlaningForm;
import java.util.ArrayList;
import java.util.List;

/**
 * The flat panels of a {@link PlaningForm}, each the true shape of an outer face: edges are bevelled so that outer faces meet,
 * seams are taped outside. A bottom's two halves hinge on the outer paper along the keel over a V of walls of half the bend
 * ({@link Folding}). Behind the step the bottom rises by r: measured along it the chine runs ahead of the keel by v sin r, so
 * that the panel is an arrow of two parallelograms (derived).
 */
final class HullPanels {
    /** Bottoms flatter than this are one board without a keel, rad. */
    private static final double NO_KEEL = 1e-6;

    private final PlaningForm form;
    private final double thickness;

    HullPanels(PlaningForm form, double thickness) {
        this.form = form;
        this.thickness = thickness;
    }

    /** A side between two stations, its deck edge along the grain at the top. */
    Pattern side(double from, double to) {
        List<double[]> low = new ArrayList<>(8);
        low.add(new double[] {from, chine(from, 1)});
        double knuckle = form.bow() - form.vee();
        corner(low, from, to, knuckle, 0);
        corner(low, from, to, form.step(), 0);
        corner(low, from, to, form.step(), form.stepHeight());
        if (form.heel() < form.length()) {
            corner(low, from, to, form.heel(), form.rise(form.heel()));
        }
        low.add(new double[] {to, chine(to, -1)});
        int n = low.size();
        double[] x = new double[n + 2];
        double[] y = new double[n + 2];
        List<PatternLine> bevels = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            x[i] = low.get(i)[0] - from;
            y[i] = low.get(i)[1];
            if (i > 0) {
                bevels.add(new PatternLine(BEVEL, x[i - 1], y[i - 1], x[i], y[i]));
            }
        }
        x[n] = to - from;
        y[n] = form.depth();
        x[n + 1] = 0;
        y[n + 1] = form.depth();
        return new FoldedPolygon(x, y, bevels);
    }

    private static void corner(List<double[]> corners, double from, double to, double x, double y) {
        if (x > from && x < to) {
            corners.add(new double[] {x, y});
        }
    }

    /** Height of the sides' lower edge over the chine ahead of the step; just behind (1) or ahead of (−1) a jump. */
    private double chine(double x, int side) {
        double knuckle = form.bow() - form.vee();
        if (x < knuckle) {
            return knuckle - x;
        }
        return x == form.step() && side > 0 ? form.stepHeight() : form.rise(x);
    }

    /** The deck between two stations, with a lid of {@code hatch} m cut on three edges and taped on the fourth. */
    Pattern deck(double from, double to, double hatch) {
        double length = to - from;
        double w = form.beam();
        List<PatternLine> lines = new ArrayList<>(8);
        if (hatch > 0) {
            double start = 0.5 * (length - hatch);
            double end = start + hatch;
            double high = w - thickness;
            lines.add(new PatternLine(CUT, start, thickness, end, thickness));
            lines.add(new PatternLine(CUT, start, high, end, high));
            lines.add(new PatternLine(CUT, start, thickness, start, high));
            lines.add(new PatternLine(TAPE, end, thickness, end, high));
        }
        return new FoldedPolygon(new double[] {0, length, length, 0}, new double[] {0, 0, w, w}, lines);
    }

    /** The bow plate: a rectangle that ends in the bottom's V. */
    Pattern bowPlate() {
        double slope = Math.sqrt(2);
        double shoulder = slope * form.vee();
        double top = slope * form.bow();
        double half = 0.5 * form.beam();
        return new FoldedPolygon(
                new double[] {0, shoulder, top, top, shoulder},
                new double[] {half, 2 * half, 2 * half, 0, 0},
                List.of());
    }

    /** Ahead of the step between two stations of the chine, from the bow's where {@code from} is the foremost. */
    Pattern forebody(double from, double to) {
        double chine = Math.max(from, form.bow() - form.vee());
        double keel = from <= form.bow() - form.vee() ? form.bow() : from;
        return bottom(keel - chine, to - chine, 0, to - chine, 0.5 * form.beam(), form.deadrise());
    }

    /** Behind the step, {@code run} m of the body's length, rising. */
    Pattern afterbody(double run) {
        double r = StrictMath.atan2(form.rise(form.heel()) - form.stepHeight(), form.heel() - form.step());
        double along = run / StrictMath.cos(r);
        double shift = form.vee() * StrictMath.sin(r);
        double half = 0.5 * form.beam();
        double out = Math.sqrt(half * half + form.vee() * form.vee() - shift * shift);
        double bend = StrictMath.atan(form.vee() * StrictMath.cos(r) / half);
        return bottom(0, along, shift, along + shift, out * StrictMath.cos(bend), bend);
    }

    /** A level piece of bottom, {@code run} m long. */
    Pattern level(double run) {
        return bottom(0, run, 0, run, 0.5 * form.beam(), form.deadrise());
    }

    /** Both halves on a keel from {@code keel1} to {@code keel2}, their chines from {@code chine1} to {@code chine2}. */
    private Pattern bottom(double keel1, double keel2, double chine1, double chine2, double half, double bend) {
        double out = half / StrictMath.cos(bend);
        List<PatternLine> lines = new ArrayList<>(5);
        if (bend > NO_KEEL) {
            double wall = thickness * StrictMath.tan(bend);
            lines.add(new PatternLine(FOLD, keel1, out, keel2, out));
            lines.add(new PatternLine(BEVEL, keel1, out - wall, keel2, out - wall));
            lines.add(new PatternLine(BEVEL, keel1, out + wall, keel2, out + wall));
            lines.add(new PatternLine(TAPE, keel1, out, keel2, out));
        }
        return new FoldedPolygon(
                new double[] {keel1, chine1, chine2, keel2, chine2, chine1},
                new double[] {out, 0, 0, out, 2 * out, 2 * out},
                lines);
    }

    /** A bulkhead inside the sides, {@code depth} m high at them. */
    Pattern bulkhead(double depth) {
        double half = 0.5 * form.beam() - thickness;
        double vee = half * StrictMath.tan(form.deadrise());
        double low = Math.min(thickness, 0.5 * depth);
        return new FoldedPolygon(
                new double[] {0, vee, vee + depth - low, vee + depth - low, vee},
                new double[] {half, 2 * half, 2 * half, 0, 0},
                List.of());
    }
}
