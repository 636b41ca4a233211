package foamfront.model.fabrication;

import foamfront.model.design.WingSpar;
import foamfront.model.parts.Spar;
import foamfront.model.section.SectionShape;
import java.util.ArrayList;
import java.util.List;

/**
 * What closes the end of a folded half of a wing: the inside of its section, a board's thickness within both skins. Heights
 * between the skins are straight from bend to bend (derived).
 *
 * <p>The web stands on the spar's station and ends at the rib. A bought spar lies against its front, half a board deep in the
 * bottom skin, and runs out through a notch of the rib's lower edge; the tube or rod that joins the halves lies against its back,
 * through a square hole half-way between the skins there, or by {@link Joiner#lift} above it. So neither runs through web or spar, and one web's thickness of foam
 * ties both (derived; the side is judgement: behind the web the inside falls away more slowly than ahead of it).
 */
final class RootRib {
    private static final double[] STATIONS = {0, SectionShape.FIRST_FOLD, SectionShape.SPAR_STATION, 1};

    private RootRib() {}

    /**
     * @param lift by which the joint's hole is over the middle, m
     */
    static Pattern of(FoldedSection section, double chord, double board, WingSpar spar, double lift) {
        boolean symmetrical = section.bottomCorners() > 2;
        // Where no rib fits the wing is not built (chord fit): the least one keeps the count of parts.
        double outside = Math.max(section.thickness() * chord, 2 * board + Folding.ON_EDGE);
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
        return new FoldedPolygon(
                x,
                y,
                spar instanceof WingSpar.Stock stock
                        ? openings(stock.spar(), chord, board, height, symmetrical, lift)
                        : List.of());
    }

    /** The joint's hole behind the web and the spar's notch ahead of it. */
    private static List<PatternLine> openings(
            Spar spar, double chord, double board, double[] height, boolean symmetrical, double lift) {
        double web = SectionShape.SPAR_STATION * chord;
        double aside = FoldedPanel.besideWeb(board, spar.width());
        double joint = web + aside;
        double seat = web - aside;
        double middle = (symmetrical ? 0 : 0.5 * inside(joint / chord, height)) + lift;
        double x1 = joint - 0.5 * spar.width();
        double x2 = joint + 0.5 * spar.width();
        double y1 = middle - 0.5 * spar.height();
        double y2 = middle + 0.5 * spar.height();
        double s1 = seat - 0.5 * spar.width();
        double s2 = seat + 0.5 * spar.width();
        double low = symmetrical ? -0.5 : 0;
        double foot1 = low * inside(s1 / chord, height);
        double foot2 = low * inside(s2 / chord, height);
        double top = Math.max(foot1, foot2) + Math.max(0, spar.height() - 0.5 * board);
        return List.of(
                cut(x1, y1, x2, y1),
                cut(x2, y1, x2, y2),
                cut(x2, y2, x1, y2),
                cut(x1, y2, x1, y1),
                cut(s1, foot1, s1, top),
                cut(s1, top, s2, top),
                cut(s2, top, s2, foot2));
    }

    private static PatternLine cut(double x1, double y1, double x2, double y2) {
        return new PatternLine(PatternLine.Kind.CUT, x1, y1, x2, y2);
    }

    /** Height between the skins at a station ahead of the trailing edge, none where they meet. */
    private static double inside(double station, double[] height) {
        int i = 1;
        while (i < STATIONS.length - 1 && station > STATIONS[i]) {
            i++;
        }
        double share = (station - STATIONS[i - 1]) / (STATIONS[i] - STATIONS[i - 1]);
        return Math.max(0, height[i - 1] + share * (height[i] - height[i - 1]));
    }
}
