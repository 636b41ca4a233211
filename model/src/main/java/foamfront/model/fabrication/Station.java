package foamfront.model.fabrication;

import foamfront.model.airframe.Panel;

/** Pieces of a panel and where their board lies. */
final class Station {
    private Station() {}

    /** The part of a panel between two fractions of its breadth. */
    static Panel slice(Panel p, double from, double to) {
        if (from == 0 && to == 1) {
            return p;
        }
        return new Panel(
                at(p.rootX(), p.tipX(), from),
                at(p.rootY(), p.tipY(), from),
                at(p.rootZ(), p.tipZ(), from),
                at(p.rootChord(), p.tipChord(), from),
                at(p.rootTwist(), p.tipTwist(), from),
                at(p.rootX(), p.tipX(), to),
                at(p.rootY(), p.tipY(), to),
                at(p.rootZ(), p.tipZ(), to),
                at(p.rootChord(), p.tipChord(), to),
                at(p.rootTwist(), p.tipTwist(), to));
    }

    private static double at(double root, double tip, double fraction) {
        return fraction == 0 ? root : fraction == 1 ? tip : root + fraction * (tip - root);
    }

    /** ∫ v c / ∫ c for v linear from root to tip. */
    static double weighted(double root, double tip, Panel p) {
        double c1 = p.rootChord();
        double c2 = p.tipChord();
        return (root * (2 * c1 + c2) + tip * (c1 + 2 * c2)) / (3 * (c1 + c2));
    }

    /** Mean place of the point at a fraction of the chord, weighted by chord: ∫ (x + f c) c / ∫ c. */
    static double x(Panel p, double chordFraction) {
        double c1 = p.rootChord();
        double c2 = p.tipChord();
        return weighted(p.rootX(), p.tipX(), p) + chordFraction * 2 * (c1 * c1 + c1 * c2 + c2 * c2) / (3 * (c1 + c2));
    }

    static double y(Panel p) {
        return Math.abs(weighted(p.rootY(), p.tipY(), p));
    }

    static double z(Panel p) {
        return weighted(p.rootZ(), p.tipZ(), p);
    }
}
