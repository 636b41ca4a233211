package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Nacelle;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.airframe.Pylon;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.TipFloat;
import foamfront.model.design.Power;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.parts.Fan;
import java.util.ArrayList;
import java.util.List;

/**
 * What carries motors, wheels and floats: workshop rules, two boards thick where screws pull (common practice; sizes are
 * judgement where no line says otherwise).
 */
final class MountParts {
    private static final double PAD = 0.050; // m
    private static final double LEAST_DUCT = 1.2; // fan diameters
    private static final double STRUT = Airframe.STRUT_CHORD;

    private final PartsBuffer out;
    private final Airframe airframe;
    private final BodyShape body;

    MountParts(PartsBuffer out, Airframe airframe) {
        this.out = out;
        this.airframe = airframe;
        this.body = airframe.body();
    }

    void add() {
        out.turnTo(Assembly.POWER);
        power();
        out.turnTo(Assembly.UNDERCARRIAGE);
        undercarriage();
        out.turnTo(Assembly.WING);
        if (airframe.design().wing() instanceof Wing.Biplane biplane) {
            Rectangle strut = new Rectangle(biplane.gap(), STRUT);
            double y = 0.35 * airframe.span();
            out.part("strut", 4, true, true, strut, 2 * STRUT, centre(biplane), y, biplane.z() + 0.5 * biplane.gap());
            Rectangle cabane = new Rectangle(biplane.gap(), 2 * STRUT);
            out.part(
                    "cabane",
                    2,
                    true,
                    true,
                    cabane,
                    4 * STRUT,
                    centre(biplane),
                    0.5 * body.width(),
                    biplane.z() + 0.5 * biplane.gap());
        }
    }

    private static double centre(Wing wing) {
        return wing.x() + 0.5 * wing.planform().rootChord();
    }

    private void power() {
        Shaft shaft = airframe.stations().shaft();
        Power power = airframe.design().power();
        if (power instanceof Power.Pusher pusher) {
            double diameter = pusher.plant().motor().diameter();
            pylon(Pylon.of(pusher, airframe));
            square("motor mount", 2, diameter, shaft.motorX(), 0, shaft.z());
        } else if (power instanceof Power.TwinTractor twin) {
            double diameter = twin.plant().motor().diameter();
            Rectangle side = new Rectangle(Nacelle.LENGTH, Nacelle.height(diameter));
            out.part(
                    "nacelle side",
                    4,
                    true,
                    false,
                    side,
                    2 * Nacelle.LENGTH,
                    shaft.motorX() + Nacelle.LENGTH,
                    twin.y(),
                    shaft.z());
            square("motor mount", 4, diameter, shaft.motorX(), twin.y(), shaft.z());
        } else if (power instanceof Power.DuctedFan fan) {
            duct(fan.fan());
        }
    }

    private void pylon(Pylon pylon) {
        double foot = Pylon.FOOT_CHORD;
        Plate side = Plate.of(foot, Pylon.TOP_CHORD, pylon.height(), body.wall());
        double x = pylon.trailingX() - 0.5 * pylon.meanChord();
        double z = pylon.footZ() + 0.5 * pylon.height();
        out.part("pylon", 2, true, true, side, pylon.height() + foot, x, 0.25 * pylon.thickness(), z);
    }

    private void square(String name, int count, double motor, double x, double y, double z) {
        double side = 1.4 * motor;
        out.part(name, count, false, false, new Rectangle(side, side), 4 * side, x, y, z);
    }

    /** Strain that foam bears where its inner paper is peeled and it is rolled up (0.10 to 0.15, common practice). */
    private static final double MOST_STRAIN = 0.15;

    /**
     * The duct is one board rolled to a tube round the fan and on to the body's end, its inner paper peeled, and scored along
     * where the fan is so small that the foam would tear.
     */
    private void duct(Fan fan) {
        double front = airframe.stations().shaft().motorX() - 0.5 * Fan.LENGTH * fan.diameter();
        double length = Math.max(LEAST_DUCT * fan.diameter(), body.length() - front);
        int pieces = out.pieces(length);
        double around = Math.PI * (fan.diameter() + 2 * body.wall()) + Tube.TAB;
        double each = length / pieces;
        Pattern sheet = rolled(around, each, 0.5 * fan.diameter() + body.wall());
        out.part("duct", pieces, false, false, sheet, length + pieces * around, front + 0.5 * length, 0, 0);
    }

    /** Foam of t on the outer paper's radius R is strained by t / R, and a score's foam gives way by t p / R. */
    private Pattern rolled(double around, double length, double radius) {
        if (body.wall() <= MOST_STRAIN * radius) {
            return new Rectangle(around, length);
        }
        int facets = (int) Math.ceil(Folding.closingKerf(body.wall(), radius, around) / FoldRoom.MOST_CRUSHED);
        List<PatternLine> scores = new ArrayList<>(facets);
        for (int i = 1; i < facets; i++) {
            double x = i * around / facets;
            scores.add(new PatternLine(PatternLine.Kind.SCORE, x, 0, x, length));
        }
        return new FoldedPolygon(new double[] {0, around, around, 0}, new double[] {0, 0, length, length}, scores);
    }

    private void undercarriage() {
        Undercarriage gear = airframe.design().undercarriage();
        double belly = -0.5 * body.height();
        Flotation flotation = airframe.stations().flotation();
        if (flotation != null && flotation.tips() != null) {
            tips(flotation.tips());
        }
        if (flotation != null && flotation.count() > 1) {
            out.placeFromBalancePoint(true);
            floats(flotation);
            out.placeFromBalancePoint(false);
        } else if (!(gear instanceof Undercarriage.None)) {
            Rectangle pad = new Rectangle(PAD, Math.max(body.insideWidth(), PAD));
            double x = airframe.stations().stance().mainAxle();
            out.placeFromBalancePoint(true);
            out.part("wheel pad", 2, false, false, pad, 2 * PAD, x, 0, belly);
            out.placeFromBalancePoint(false);
            if (gear instanceof Undercarriage.Tricycle) {
                out.part(
                        "nose leg mount",
                        2,
                        false,
                        false,
                        pad,
                        2 * PAD,
                        airframe.stations().stance().secondAxle(),
                        0,
                        belly);
            }
        }
    }

    /** Two struts a float, edge-on boards that reach a chord into body and float, either side of the balance point. */
    private void floats(Flotation f) {
        PlaningForm form = f.form();
        new HullParts(out, form, "float", f.count(), f.step() - form.step(), f.y(), f.keel()).add(0);
        double height = f.strutHeight(body.height());
        double aside = Math.max(0, f.y() - 0.5 * body.width());
        double leg = Math.sqrt(height * height + aside * aside) + 2 * STRUT;
        double middle = -0.5 * (body.height() + height);
        out.part("float strut", 4, true, false, new Rectangle(leg, STRUT), 4 * STRUT, 0, 0.5 * f.y(), middle);
    }

    /** A closed square tube under each half of the wing, on one strut. */
    private void tips(TipFloat tip) {
        double x = tip.x() + 0.5 * tip.length();
        double side = tip.side();
        double z = tip.z() + 0.5 * side;
        Tube tube = new Tube(tip.length(), side, side, body.wall(), false, 0);
        out.skin("tip float", 2, tube, tip.length(), tip.length(), 4 * side, x, tip.y(), z);
        double inside = side - 2 * body.wall(); // set into the tube, so that the float keeps its length
        if (inside > 0) { // thick board leaves a small float solid
            out.part("tip float end", 4, false, false, new Rectangle(inside, inside), 4 * inside, x, tip.y(), z);
        }
        Rectangle strut = new Rectangle(tip.strut() + 0.5 * side, STRUT);
        out.part("tip float strut", 2, true, false, strut, 4 * STRUT, x, tip.y(), z + side + 0.5 * tip.strut());
    }
}
