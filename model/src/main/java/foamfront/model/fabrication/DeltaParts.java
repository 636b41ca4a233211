package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Wing;
import foamfront.model.design.WingSpar;

/** The one sheet of a delta: wing, elevons and, where there are two, the fins. A fin on the middle is a piece of its own. */
final class DeltaParts {
    private DeltaParts() {}

    /** Whether the fins hang on the wing's own sheet. */
    static boolean foldsFins(Airframe airframe) {
        return airframe.design().wing() instanceof Wing.Delta && airframe.fins().size() == 2;
    }

    static void add(PartsBuffer out, Airframe airframe) {
        Surface wing = airframe.wing();
        Panel p = wing.panels().get(0);
        boolean folded = foldsFins(airframe);
        Panel fin = folded ? airframe.fins().get(0).panels().get(0) : p;
        DeltaSheet sheet = new DeltaSheet(
                p.rootChord(),
                p.tipChord(),
                p.tipX() - p.rootX(),
                p.breadth(),
                folded ? fin.breadth() : 0,
                folded ? Math.min(fin.rootChord(), p.tipChord()) : 0,
                folded ? fin.tipChord() : 0,
                out.thickness,
                Hinges.on(wing, p));
        double share = sheet.finArea() / sheet.area();
        double x = (1 - share) * Station.x(p, 0.5) + share * Station.x(fin, 0.5);
        double y = (1 - share) * Station.y(p) + share * p.tipY();
        double z = (1 - share) * p.rootZ() + share * Station.z(fin);
        WingSpar spar = airframe.design().wing().build().spar();
        out.skin("delta", 1, SparSeat.in(sheet, spar), 0, 0, sheet.leadingEdges(), x, y, z);
        if (spar instanceof WingSpar.Stock stock) {
            FlatPatterns.stockSpar(out, stock, airframe.design().wing().build(), wing, WingNames.LOWER);
        }
    }
}
