package foamfront.model.structure;

import foamfront.model.design.WingSection;
import foamfront.model.section.SectionShape;

/**
 * A folded section's outline as thin straight facets at unit chord, reduced to what bending and torsion need. Heights
 * are then divided by the outline's thickness, so that one reduction serves every chord and board: a facet's length
 * hardly changes with its height. Derived.
 *
 * @param perimeter ∮ ds
 * @param secondMoment ∮ (z − z̄)² ds of heights over thickness
 * @param top highest point over the centroid, of the thickness
 * @param area enclosed, of the thickness
 * @param areaCentre centroid of the enclosed area aft of the leading edge
 * @param skinCentre centroid of the outline, where an even skin has its mass, aft of the leading edge
 */
public record SectionOutline(
        double perimeter, double secondMoment, double top, double area, double areaCentre, double skinCentre) {
    /** Facets of the folded top, to a sharp trailing edge. */
    private static final double[] FOLD_X = {0, SectionShape.FIRST_FOLD, SectionShape.SPAR_STATION, 1};

    private static final double[] FOLD_RISE = {0, SectionShape.FIRST_HEIGHT, 1, 0};

    /** The same above and below. */
    private static final double[] BOTH_X = {0, FOLD_X[1], FOLD_X[2], 1, FOLD_X[2], FOLD_X[1]};

    private static final double[] BOTH_RISE = {0, FOLD_RISE[1], 1, 0, -1, -FOLD_RISE[1]};

    /**
     * Reduces a closed outline, points in order, the last joined to the first.
     *
     * @param x over chord
     * @param z over chord
     */
    public static SectionOutline of(double[] x, double[] z) {
        return of(x, z, 1);
    }

    private static SectionOutline of(double[] x, double[] rise, double scale) {
        double low = scale * rise[0];
        double high = low;
        for (double r : rise) {
            low = Math.min(low, scale * r);
            high = Math.max(high, scale * r);
        }
        double thickness = high - low;
        double length = 0;
        double first = 0;
        double second = 0;
        double area = 0;
        double areaMoment = 0;
        double aft = 0;
        for (int i = 0; i < x.length; i++) {
            int j = i + 1 == x.length ? 0 : i + 1;
            double dx = x[j] - x[i];
            double dz = scale * rise[j] - scale * rise[i];
            double ds = Math.sqrt(dx * dx + dz * dz);
            double a = (scale * rise[i] - low) / thickness;
            double b = (scale * rise[j] - low) / thickness;
            length += ds;
            aft += ds * 0.5 * (x[i] + x[j]);
            first += ds * 0.5 * (a + b);
            second += ds * (a * a + a * b + b * b) / 3;
            double cross = x[i] * b - x[j] * a;
            area += 0.5 * cross;
            areaMoment += cross * (x[i] + x[j]) / 6;
        }
        double mean = first / length;
        return new SectionOutline(
                length, second - mean * first, 1 - mean, Math.abs(area), areaMoment / area, aft / length);
    }

    /** Flat below, folded top. */
    static SectionOutline flatBottom(double thickness) {
        return of(FOLD_X, FOLD_RISE, thickness);
    }

    /** Folded alike above and below. */
    static SectionOutline symmetrical(double thickness) {
        return of(BOTH_X, BOTH_RISE, 0.5 * thickness);
    }

    /** The outline of a folded section as the project's folds make it, and its thickness over chord. */
    static double thickness(WingSection section) {
        if (section instanceof WingSection.FoldedFlatBottom flat) {
            return flat.thickness();
        }
        return section instanceof WingSection.FoldedSymmetrical even ? even.thickness() : 0;
    }
}
