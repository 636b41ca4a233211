package foamfront.model.structure;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Body;
import foamfront.model.parts.Spar;

/**
 * What carries the tail: a cantilever from the wing's trailing edge (a boom: from the pod's end) to the tail's quarter-chord.
 *
 * <p>Square tube: paper of four walls, I = 2 t_f (b h² / 2 + h³ / 6) about the middle lines b × h, J after Bredt.
 * Profile board: two upright faces. Stock tube: its own I, J = 2 I with G = E / 25 (pultruded carbon, from memory).
 * Tail loads are those of a plate at its greatest lift coefficient, 0.7 (judgement), at the manoeuvring speed V_s √n or
 * the top speed if that is less. Derived but for the marked figures.
 *
 * @param deflection of the tail under its greatest load, of the tail arm; or the twist under the fin's (rad) if that is more
 * @param reserve strength over the greater of tail load and landing
 */
record TailBoom(double deflection, double reserve) {
    /** Greatest lift coefficient of a flat plate. */
    static final double PLATE_LIFT = 0.7;

    private static final double TUBE_SHEAR = 1.0 / 25;

    /** No boom, nothing to break. */
    static final TailBoom NONE = new TailBoom(0, StructureMargins.UNLOADED);

    static TailBoom of(Airframe airframe, FlightLoads loads, double limit, Sandwich board, double strength) {
        Surface tail = airframe.tail();
        if (tail == null) {
            return NONE;
        }
        Panel root = tail.panels().get(0);
        double tailX = root.rootX() + 0.25 * root.rootChord();
        double wingX = airframe.chordX() + 0.25 * airframe.chord();
        double start = airframe.design().wing().x()
                + airframe.design().wing().planform().rootChord();
        if (airframe.design().body() instanceof Body.PodAndBoom pod) {
            start = Math.max(start, pod.podLength());
        }
        double length = tailX - start;
        double arm = tailX - wingX;
        if (length <= 0 || arm <= 0) {
            return NONE;
        }
        Beam beam = Beam.of(airframe, board, strength);
        double speed = Math.min(loads.topSpeed(), loads.stallSpeed() * Math.sqrt(limit));
        double pressure = PLATE_LIFT * 0.5 * loads.density() * speed * speed;
        double force = pressure * tail.area();
        double bend = force * length * length * length / (3 * beam.bending()) / arm;
        double torque = 0;
        for (int i = 0; i < airframe.fins().size(); i++) {
            Surface fin = airframe.fins().get(i);
            Panel panel = fin.panels().get(0);
            torque += pressure * fin.area() * Math.abs(0.5 * (panel.rootZ() + panel.tipZ()));
        }
        double twist = torque * length / beam.torsion();
        double landing = LoadFactor.landing() * Atmosphere.GRAVITY * loads.tailMass() * length;
        double moment = Math.max(force * length, landing);
        return new TailBoom(Math.max(bend, twist), StructureMargins.reserve(beam.moment(), moment));
    }

    /**
     * A boom's section.
     *
     * @param bending E I in the vertical plane, N m²
     * @param torsion G J, N m²
     * @param moment it bears, N m
     */
    record Beam(double bending, double torsion, double moment) {
        static Beam of(Airframe airframe, Sandwich board, double strength) {
            Body body = airframe.design().body();
            double wall = 2 * board.face();
            if (body instanceof Body.PodAndBoom pod) {
                Spar boom = pod.boom();
                double stiffness = boom.modulus() * boom.secondMoment();
                return new Beam(stiffness, 2 * TUBE_SHEAR * stiffness, boom.moment());
            }
            if (body instanceof Body.ProfileBoard) {
                double h = body.height();
                double second = wall * h * h * h / 12;
                double d = board.depth();
                double torsion = WingBeam.SHEAR_RATIO * board.faceModulus() * wall * h * d * d;
                return new Beam(board.faceModulus() * second, torsion, strength * second / (0.5 * h));
            }
            double b = Math.max(board.thickness(), body.width() - board.thickness());
            double tall = body.height();
            if (airframe.stations().flotation() != null
                    && airframe.stations().flotation().count() == 1) {
                // A hull grows shallow behind its step: its height half-way between step and stern stands for all.
                PlaningForm form = airframe.stations().flotation().form();
                tall -= form.rise(0.5 * (form.step() + form.length()));
            }
            double h = Math.max(board.thickness(), tall - board.thickness());
            double second = wall * (0.5 * b * h * h + h * h * h / 6);
            double torsion = WingBeam.SHEAR_RATIO
                    * board.faceModulus()
                    * ThinTube.rectangle(b, h, wall).torsionConstant();
            return new Beam(board.faceModulus() * second, torsion, strength * second / (0.5 * h));
        }
    }
}
