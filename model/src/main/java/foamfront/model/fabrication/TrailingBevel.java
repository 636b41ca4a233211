package foamfront.model.fabrication;

import static foamfront.model.fabrication.PatternLine.Kind.BEVEL;

import java.util.List;

/**
 * The bevel inside the top skin of a folded wing that closes it to one board at the trailing edge. Skins t thick whose outsides
 * meet t apart at an angle δ run into each other from where they are 2 t apart: t / tan δ ahead of the edge (derived; common
 * practice takes 25 to 30 mm). Behind the hinge of a control there is no bottom skin to close on.
 */
final class TrailingBevel {
    private final DevelopedFacets facets;
    private final List<Hinge> hinges;
    /** The facet that ends at the trailing edge. */
    private final int facet;
    /** Along the chord on the board, m. */
    private final double width;

    TrailingBevel(DevelopedFacets facets, List<Hinge> hinges, double thickness) {
        this.facets = facets;
        this.hinges = hinges;
        facet = facets.edges() - 2;
        width = thickness / StrictMath.tan(facets.trailingAngle());
    }

    /** Length of the line where it begins, m. */
    double length() {
        double sum = 0;
        for (int i = 0; i < 2 * hinges.size() + 1; i++) {
            if (cut(i)) {
                sum += facets.run(facet, from(i), up(from(i)), to(i), up(to(i)));
            }
        }
        return sum;
    }

    /** Stretches it is cut in. */
    int count() {
        int count = 0;
        for (int i = 0; i < 2 * hinges.size() + 1; i++) {
            count += cut(i) ? 1 : 0;
        }
        return count;
    }

    void add(List<PatternLine> lines) {
        for (int i = 0; i < 2 * hinges.size() + 1; i++) {
            if (cut(i)) {
                lines.add(facets.line(BEVEL, facet, from(i), up(from(i)), to(i), up(to(i))));
            }
        }
    }

    // Even stretches lie between controls, odd ones along them.

    private double from(int stretch) {
        if (stretch % 2 == 1) {
            return hinges.get(stretch / 2).from();
        }
        return stretch == 0 ? 0 : hinges.get(stretch / 2 - 1).to();
    }

    private double to(int stretch) {
        return stretch == 2 * hinges.size()
                ? 1
                : stretch % 2 == 1
                        ? hinges.get(stretch / 2).to()
                        : hinges.get(stretch / 2).from();
    }

    private boolean cut(int stretch) {
        if (to(stretch) - from(stretch) <= Hinge.END) {
            return false;
        }
        if (stretch % 2 == 0) {
            return true;
        }
        double hinge = 1 - hinges.get(stretch / 2).chordFraction() / facets.covered(facet);
        return up(0.5 * (from(stretch) + to(stretch))) < hinge;
    }

    /** How far up the facet it begins at a station. */
    private double up(double station) {
        return Math.max(0, 1 - width / facets.run(facet, station, 0, station, 1));
    }
}
