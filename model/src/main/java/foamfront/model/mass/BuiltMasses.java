package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.fabrication.CutPart;
import foamfront.model.fabrication.PartsList;
import foamfront.model.fabrication.StockPiece;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Workshop;

/**
 * What the builder makes: board, glue and tape (covering included) of every cut part, pieces of stock, and the builder's
 * allowance. The mass factor and the allowance act on board, glue and tape, not on stock. Glue and tape are itemised and not
 * multiplied again (judgement).
 */
final class BuiltMasses {
    private BuiltMasses() {}

    static void add(Airframe airframe, PartsList parts, Workshop workshop, Factors factors, MassTable items) {
        double sum = 0;
        double momentX = 0;
        double momentZ = 0;
        double spreadY = 0;
        double placed = 0;
        double placedX = 0;
        double placedZ = 0;
        for (int i = 0; i < parts.cut().size(); i++) {
            CutPart part = parts.cut().get(i);
            double mass = factors.airframeMass()
                    * PartsList.mass(part, airframe.design().board(), workshop);
            MassGroup group = MassGroup.of(part.assembly());
            if (part.fromBalancePoint()) {
                placed(items, part, mass);
                placed += mass;
                placedX += mass * part.x();
                placedZ += mass * part.z();
                continue;
            }
            spread(items, airframe, part.name(), mass, part.x(), part.y(), part.z(), group);
            sum += mass;
            momentX += mass * part.x();
            momentZ += mass * part.z();
            spreadY += mass * part.y();
        }
        for (int i = 0; i < parts.stock().size(); i++) {
            StockPiece piece = parts.stock().get(i);
            MassGroup group = MassGroup.of(piece.assembly());
            spread(items, airframe, piece.name(), piece.mass(), piece.x(), piece.y(), piece.z(), group);
        }
        if (placed > 0) {
            items.relative(
                    "builder's allowance by the balance point",
                    workshop.allowance() * placed,
                    placedX / placed,
                    0,
                    placedZ / placed,
                    MassGroup.UNDERCARRIAGE);
        }
        if (sum > 0) {
            double mass = workshop.allowance() * sum;
            spread(
                    items,
                    airframe,
                    "builder's allowance",
                    mass,
                    momentX / sum,
                    spreadY / sum,
                    momentZ / sum,
                    MassGroup.BODY);
        }
    }

    /** What keeps its distance to the balance point; a pair either side of the centre line as an even box of its inertia. */
    private static void placed(MassTable items, CutPart part, double mass) {
        items.add(
                part.name(),
                mass,
                part.x(),
                0,
                part.z(),
                part.pattern().length(),
                Math.sqrt(12) * part.y(),
                0,
                MassGroup.of(part.assembly()),
                true);
    }

    /**
     * A mass spread evenly about its centroid: to four times its mean distance from the centre line across, over the chord
     * of a wing or tail, over as much of the body as its centroid allows.
     */
    private static void spread(
            MassTable items,
            Airframe airframe,
            String name,
            double mass,
            double x,
            double y,
            double z,
            MassGroup group) {
        double length = switch (group) {
            case WING -> airframe.chord();
            case TAIL -> airframe.tail() == null ? 0 : airframe.tail().meanAerodynamicChord();
            default -> Math.max(0, 2 * Math.min(x, airframe.body().length() - x));
        };
        items.add(name, mass, x, 0, z, length, 4 * y, 0, group, false);
    }
}
