package foamfront.model.mass;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Body;
import foamfront.model.design.Covering;
import foamfront.model.design.Design;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Workshop;
import java.util.List;

/**
 * What the builder makes: board, glue, tape and covering of every part, stock spars, and the builder's allowance on them.
 * The mass factor acts on board, glue, tape and covering alone. Glue and tape are itemised and not multiplied again.
 */
final class BuiltMasses {
    /** Width of packing tape, m: 48 ± 1 mm (a packaging specification for oriented-polypropylene tape, check M-40). */
    private static final double TAPE_WIDTH = 0.048;

    /** A wing's spar lies at its thickest point, fraction of chord. */
    private static final double SPAR_STATION = 0.3;

    /** How far a boom runs into its pod, m (common practice). */
    private static final double BOOM_OVERLAP = 0.1;

    private BuiltMasses() {}

    static void add(
            Airframe airframe, List<BuiltPart> parts, Workshop workshop, Factors factors, List<MassItem> items) {
        Design design = airframe.design();
        double density = design.board().arealDensity() + coveringDensity(design.covering(), workshop);
        double sum = 0;
        double momentX = 0;
        double momentZ = 0;
        for (BuiltPart part : parts) {
            double mass = factors.airframeMass()
                    * (part.boardArea() * density
                            + part.glueLength() * workshop.glueLinearMass()
                            + part.tapeLength() * workshop.tapeLinearMass());
            items.add(spread(airframe, part.name(), mass, part.x(), part.z(), part.group()));
            sum += mass;
            momentX += mass * part.x();
            momentZ += mass * part.z();
        }
        if (design.covering() == Covering.TAPED_EDGES) {
            double mass = factors.airframeMass() * workshop.tapeLinearMass() * edges(airframe);
            double x = airframe.chordX() + 0.25 * airframe.chord();
            items.add(spread(airframe, "edge tape", mass, x, 0, MassGroup.WING));
            sum += mass;
            momentX += mass * x;
        }
        if (sum > 0) {
            items.add(spread(
                    airframe,
                    "builder's allowance",
                    workshop.allowance() * sum,
                    momentX / sum,
                    momentZ / sum,
                    MassGroup.BODY));
        }
        spars(airframe, items);
    }

    /** Tape over whole faces, kg/m² of board. */
    private static double coveringDensity(Covering covering, Workshop workshop) {
        return switch (covering) {
            case BARE, TAPED_EDGES -> 0;
            case ONE_FACE -> workshop.tapeLinearMass() / TAPE_WIDTH;
            case BOTH_FACES -> 2 * workshop.tapeLinearMass() / TAPE_WIDTH;
        };
    }

    /** Leading edges of all surfaces and the body's two lower edges, m. */
    private static double edges(Airframe airframe) {
        double sum = 2 * airframe.body().length();
        for (Surface surface : airframe.surfaces()) {
            sum += length(surface);
        }
        return sum;
    }

    private static void spars(Airframe airframe, List<MassItem> items) {
        Design design = airframe.design();
        if (design.wing().build().spar() instanceof WingSpar.Stock stock) {
            for (Surface surface : airframe.surfaces()) {
                if (surface.role() == Surface.Role.WING || surface.role() == Surface.Role.SECOND_WING) {
                    items.add(wingSpar(surface, stock.spar()));
                }
            }
        }
        if (design.body() instanceof Body.PodAndBoom pod) {
            double length = Math.max(0, pod.length() - pod.podLength()) + BOOM_OVERLAP;
            items.add(new MassItem(
                    "boom",
                    length * pod.boom().linearMass(),
                    pod.length() - 0.5 * length,
                    0,
                    0,
                    length,
                    0,
                    0,
                    MassGroup.BODY,
                    false));
        }
    }

    private static MassItem wingSpar(Surface surface, Spar spar) {
        double length = length(surface);
        double x = 0;
        double z = 0;
        for (Panel panel : surface.panels()) {
            double root = panel.rootX() + SPAR_STATION * panel.rootChord();
            double tip = panel.tipX() + SPAR_STATION * panel.tipChord();
            x += panel.breadth() * 0.5 * (root + tip);
            z += panel.breadth() * 0.5 * (panel.rootZ() + panel.tipZ());
        }
        double half = surface.mirrored() ? 0.5 * length : length;
        return new MassItem(
                "wing spar", length * spar.linearMass(), x / half, 0, z / half, 0, length, 0, MassGroup.WING, false);
    }

    /** Sum of the panels' breadths, both halves, m. */
    private static double length(Surface surface) {
        double sum = 0;
        for (Panel panel : surface.panels()) {
            sum += panel.breadth();
        }
        return surface.mirrored() ? 2 * sum : sum;
    }

    /** A mass spread over the box of its group: a wing over chord and span, a body over its length. */
    private static MassItem spread(Airframe airframe, String name, double mass, double x, double z, MassGroup group) {
        BodyShape body = airframe.body();
        Surface tail = airframe.tail();
        return switch (group) {
            case WING -> new MassItem(name, mass, x, 0, z, airframe.chord(), airframe.span(), 0, group, false);
            case TAIL ->
                tail == null
                        ? MassItem.point(name, mass, x, 0, z, group)
                        : new MassItem(name, mass, x, 0, z, tail.meanAerodynamicChord(), tail.span(), 0, group, false);
            default -> new MassItem(name, mass, x, 0, z, body.length(), body.width(), body.height(), group, false);
        };
    }
}
