package foamfront.model.fabrication;

import foamfront.model.design.WingSpar;
import foamfront.model.parts.Spar;
import foamfront.model.section.SectionShape;
import java.util.ArrayList;
import java.util.List;

/**
 * What closes the end of a folded half of a wing: the inside of its section, a board's thickness within both skins, with a square
 * hole for the tube or rod that joins the halves. Heights between the skins are straight from bend to bend (derived).
 */
final class RootRib {
    private static final double[] STATIONS = {0, SectionShape.FIRST_FOLD, SectionShape.SPAR_STATION, 1};

    private RootRib() {}

    static Pattern of(FoldedSection section, double chord, double board, WingSpar spar) {
        boolean symmetrical = section.bottomCorners() > 2;
        // Where no rib fits the wing is not built (chord fit): the least one keeps the count of parts.
        double outside = Math.max(section.thickness() * chord, 2 * board + FoldedWingParts.ON_EDGE);
        double[] height = {
            -2 * board,
            SectionShape.FIRST_HEIGHT * outside - 2 * board,
            outside - 2 * board,
            -board // the trailing edge is one board high
        };
        List<double[]> top = new ArrayList<>(4);
        for (int i = 0; i < height.length; i++) {
            if (i > 0 && height[i] > 0 != height[i - 1] > 0) {
                double share = height[i - 1] / (height[i - 1] - height[i]);
                top.add(new double[] {chord * (STATIONS[i - 1] + share * (STATIONS[i] - STATIONS[i - 1])), 0});
            }
            if (height[i] > 0) {
                top.add(new double[] {chord * STATIONS[i], height[i]});
            }
        }
        int n = top.size();
        int low = symmetrical ? n - 2 : 0;
        double[] x = new double[n + low];
        double[] y = new double[n + low];
        double share = symmetrical ? 0.5 : 1;
        for (int i = 0; i < n; i++) {
            x[i] = top.get(i)[0];
            y[i] = share * top.get(i)[1];
        }
        for (int i = 0; i < low; i++) {
            x[n + i] = x[n - 2 - i];
            y[n + i] = -y[n - 2 - i];
        }
        double middle = symmetrical ? 0 : 0.5 * height[2];
        return new FoldedPolygon(x, y, hole(spar, SectionShape.SPAR_STATION * chord, middle));
    }

    private static List<PatternLine> hole(WingSpar spar, double x, double y) {
        if (!(spar instanceof WingSpar.Stock stock)) {
            return List.of();
        }
        Spar tube = stock.spar();
        double x1 = x - 0.5 * tube.width();
        double x2 = x + 0.5 * tube.width();
        double y1 = y - 0.5 * tube.height();
        double y2 = y + 0.5 * tube.height();
        PatternLine.Kind cut = PatternLine.Kind.CUT;
        return List.of(
                new PatternLine(cut, x1, y1, x2, y1),
                new PatternLine(cut, x2, y1, x2, y2),
                new PatternLine(cut, x2, y2, x1, y2),
                new PatternLine(cut, x1, y2, x1, y1));
    }
}
