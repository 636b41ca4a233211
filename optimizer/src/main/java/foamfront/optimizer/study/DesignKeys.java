package foamfront.optimizer.study;

import foamfront.model.design.BodyKind;
import foamfront.model.design.Covering;
import foamfront.model.design.FinJoint;
import foamfront.model.design.FlapKind;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Nose;
import foamfront.model.design.PowerKind;
import foamfront.model.design.SectionKind;
import foamfront.model.design.SparKind;
import foamfront.model.design.TailKind;
import foamfront.model.design.UndercarriageKind;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingKind;
import foamfront.model.design.WingTips;
import foamfront.model.units.Dimension;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.KeyTable;
import foamfront.optimizer.yaml.Shape;
import java.util.List;

/** Every key of a design file, with its shape, its bounds and the workshop rule where it is missing. */
public final class DesignKeys {
    private static final double DEGREE = Math.PI / 180;

    // wing
    static final Key WING_KIND = Key.choice("kind", WingKind.values(), "of wing; monoplane");
    static final Key HEIGHT = Key.choice("height", WingHeight.values(), "of a monoplane on the body; high");
    static final Key GAP = length("gap", 0.02, 2, "of a biplane, upper wing over lower; the root chord");
    static final Key STAGGER = length("stagger", -1, 1, "of a biplane, upper wing ahead of lower; 0 mm");
    static final Key SPAN = length("span", 0.05, 5, "tip to tip; 1.2 m");
    static final Key ROOT_CHORD = length("root chord", 0.02, 2, "a sixth of the span");
    static final Key TAPER = ratio("taper", 0.05, 3, "tip chord over root chord; 1");
    static final Key SWEEP = angle("quarter-chord sweep", 65, "0 deg").alias("sweep");
    static final Key DIHEDRAL = angle("dihedral", 57, "of each side; 5 deg without ailerons, 2 deg with them");
    static final Key INCIDENCE = angle("incidence", 20, "of the root to the body axis; 2 deg");
    static final Key TIP_INCIDENCE = angle("tip incidence", 20, "as the root's");
    static final Key EDGE_X = length("x", -1, 5, "aft of the nose; a quarter of the body's length");
    static final Key EDGE_Z = length(
            "z",
            -1,
            1,
            "over the body axis; on top, a fifth below it, or underneath; a biplane's lower wing underneath");
    static final KeyTable EDGE = KeyTable.of("The leading edge of the wing's root.", EDGE_X, EDGE_Z);
    static final Key LEADING_EDGE = Key.table("leading edge", EDGE, "of the root");
    static final Key AT = ratio("at", 0.02, 0.98, "fraction of the semispan").must();
    static final Key BREAK_CHORD = length("chord", 0.02, 2, "at the break").must();
    static final Key BREAK_SWEEP = angle("sweep", 65, "outboard of the break; 0 deg");
    static final Key BREAK_DIHEDRAL = angle("dihedral", 57, "outboard of the break; 0 deg");
    static final KeyTable BREAK =
            KeyTable.of("Where chord, sweep or dihedral change.", AT, BREAK_CHORD, BREAK_SWEEP, BREAK_DIHEDRAL);
    static final Key BREAKS = Key.of("breaks", new Shape.Listing(new Shape.Table(BREAK)), "from root to tip; none");
    static final Key SECTION = Key.choice("section", SectionKind.values(), "folded flat-bottom");
    static final Key THICKNESS = ratio("section thickness", 0.03, 0.25, "of a folded section; 12 % of the chord");
    static final Key CAMBER = ratio("section camber", 0.01, 0.12, "of a curved plate; 6 % of the chord");
    static final Key STEP = ratio("section step", 0.2, 0.8, "of a stepped plate; 50 % of the chord");
    static final Key JOINT = Key.choice("joint", WingJoint.values(), "of the halves; one piece");
    static final Key SPAR = Key.of(
            "spar",
            new Shape.Either(Key.words(SparKind.BOARD_STRIP), new Shape.PartName("spar")),
            "board strip, or a catalogue name; board strip");
    static final Key HOLD_DOWN = Key.choice("hold-down", HoldDown.values(), "glued");
    static final Key TIPS = Key.choice("tips", WingTips.values(), "plain");
    static final KeyTable WING = KeyTable.of(
            "The wing.",
            WING_KIND,
            HEIGHT,
            GAP,
            STAGGER,
            SPAN,
            ROOT_CHORD,
            TAPER,
            SWEEP,
            DIHEDRAL,
            INCIDENCE,
            TIP_INCIDENCE,
            LEADING_EDGE,
            BREAKS,
            SECTION,
            THICKNESS,
            CAMBER,
            STEP,
            JOINT,
            SPAR,
            HOLD_DOWN,
            TIPS);

    // tail
    static final Key FIN_COUNT = Key.of("count", new Shape.Whole(1, 3), "fins alike; 1, without a tail 2");
    static final Key FIN_HEIGHT = length("height", 0.01, 2, "0.14 of the span");
    static final Key FIN_CHORD = length("chord", 0.01, 1, "at the root; the tail's chord");
    static final Key FIN_TAPER = ratio("taper", 0.05, 3, "0.7");
    static final Key FIN_JOINT = Key.choice("joint", FinJoint.values(), "fixed");
    static final KeyTable FIN = KeyTable.of("The fin.", FIN_COUNT, FIN_HEIGHT, FIN_CHORD, FIN_TAPER, FIN_JOINT);
    static final Key TAIL_KIND = Key.choice("kind", TailKind.values(), "of tail; conventional, a flying wing has none");
    static final Key TAIL_SPAN = length("span", 0.02, 3, "0.38 of the wing's");
    static final Key TAIL_CHORD = length("chord", 0.01, 1, "at the root; 0.6 of the wing's");
    static final Key TAIL_TAPER = ratio("taper", 0.05, 3, "1");
    static final Key TAIL_SWEEP = angle("sweep", 65, "of the quarter-chord line; 0 deg");
    static final Key TAIL_DIHEDRAL = angle("dihedral", 65, "0 deg; 35 deg of a V-tail");
    static final Key TAIL_INCIDENCE = angle("incidence", 20, "0 deg");
    static final Key TAIL_X = length("x", -1, 5, "leading edge aft of the nose; its trailing edge ends the body");
    static final Key TAIL_Z =
            length("z", -1, 2, "over the body axis; 0 mm, a T tail on top of the fin, a V-tail on the body");
    static final List<Key> PLANE =
            List.of(TAIL_SPAN, TAIL_CHORD, TAIL_TAPER, TAIL_SWEEP, TAIL_DIHEDRAL, TAIL_INCIDENCE, TAIL_X, TAIL_Z);
    static final Key FIN_KEY = Key.table("fin", FIN, "the fin");
    static final KeyTable TAIL = KeyTable.of(
            "The tail.",
            TAIL_KIND,
            TAIL_SPAN,
            TAIL_CHORD,
            TAIL_TAPER,
            TAIL_SWEEP,
            TAIL_DIHEDRAL,
            TAIL_INCIDENCE,
            TAIL_X,
            TAIL_Z,
            FIN_KEY);

    // body
    static final Key BODY_KIND = Key.choice("kind", BodyKind.values(), "of body; square tube");
    static final Key BODY_LENGTH = length("length", 0.05, 5, "0.75 of the span");
    static final Key BODY_WIDTH = length("width", 0.01, 1, "70 mm; a profile board is as wide as its board is thick");
    static final Key BODY_HEIGHT = length("height", 0.01, 1, "the body's width");
    static final Key POD_LENGTH = length("pod length", 0.05, 3, "of pod and boom; half of the body's length");
    static final Key BOOM = Key.of("boom", new Shape.PartName("spar"), "a pod's tail boom must be named");
    static final Key NOSE = Key.choice("nose", Nose.values(), "fixed");
    static final Key HULL_STEP =
            ratio("step position", 0.2, 0.8, "of a boat hull's length; under 0.4 of the wing's root chord");
    static final Key DEADRISE = angle("deadrise", 30, "of the bottom of a hull or float; 15 deg");
    static final KeyTable BODY = KeyTable.of(
            "The body.", BODY_KIND, BODY_LENGTH, BODY_WIDTH, BODY_HEIGHT, POD_LENGTH, BOOM, NOSE, HULL_STEP, DEADRISE);

    // power
    static final Key POWER_KIND = Key.choice("kind", PowerKind.values(), "where the motor is; nose tractor");
    static final Key MOTOR = Key.of("motor", new Shape.PartName("motor"), "of a propeller; a fan has its own");
    static final Key PROPELLER = Key.of("propeller", new Shape.PartName("propeller"), "all but a ducted fan need one");
    static final Key FAN = Key.of("fan", new Shape.PartName("fan"), "a ducted fan unit with its motor");
    static final Key MOTOR_STATION =
            length("motor station", 0.02, 2, "of a twin's motors from the middle; propellers 25 mm clear of the body");
    static final Key BATTERY = part("battery").must();
    static final Key CONTROLLER = part("controller");
    static final KeyTable POWER =
            KeyTable.of("What drives it.", POWER_KIND, MOTOR, PROPELLER, FAN, MOTOR_STATION, BATTERY, CONTROLLER);

    // undercarriage
    static final Key GEAR_KIND = Key.choice("kind", UndercarriageKind.values(), "of undercarriage; none");
    static final Key WHEEL = Key.of("wheel", new Shape.PartName("wheel"), "the smallest of at least 60 mm");
    static final Key FLOAT_LENGTH = length("float length", 0.1, 3, "0.72 of the body's length");
    static final Key FLOAT_BEAM = length("float beam", 0.03, 0.5, "a seventh of the float's length");
    static final KeyTable GEAR =
            KeyTable.of("What it stands on.", GEAR_KIND, WHEEL, FLOAT_LENGTH, FLOAT_BEAM, DEADRISE);

    // controls
    static final Key AILERONS =
            Key.yesNo("ailerons", "whether the wing has them, a flying wing's are its elevons; no, a flying wing yes");
    static final Key RUDDER = Key.yesNo("rudder", "whether the fin has one; yes, a flying wing no");
    static final Key ELEVATOR = Key.yesNo("elevator", "always yes");
    static final Key FLAPS = Key.choice("flaps", FlapKind.values(), "none");
    static final Key AILERON_SPAN = ratio("aileron span", 0.1, 0.95, "0.4 of the semispan");
    static final Key AILERON_CHORD = ratio("aileron chord", 0.08, 0.45, "0.22 of the wing's chord");
    static final Key FLAP_SPAN =
            ratio("flap span", 0.1, 0.9, "from the body outwards as far as ailerons leave; 0.4 of the semispan");
    static final Key FLAP_CHORD = ratio("flap chord", 0.08, 0.45, "0.25 of the wing's chord");
    static final Key ELEVATOR_CHORD = ratio("elevator chord", 0.1, 1, "0.35 of the tail's chord");
    static final Key RUDDER_CHORD = ratio("rudder chord", 0.1, 1, "0.4 of the fin's chord");
    static final KeyTable CONTROLS = KeyTable.of(
            "The moving surfaces.",
            AILERONS,
            RUDDER,
            ELEVATOR,
            FLAPS,
            AILERON_SPAN,
            AILERON_CHORD,
            FLAP_SPAN,
            FLAP_CHORD,
            ELEVATOR_CHORD,
            RUDDER_CHORD);

    // radio
    static final Key RECEIVER =
            Key.of("receiver", new Shape.PartName("receiver"), "the first of four channels or more");
    static final Key SERVO = Key.of("servo", new Shape.PartName("servo"), "the first of 0.1 N m or more");
    static final KeyTable RADIO = KeyTable.of("The radio.", RECEIVER, SERVO);

    // payload
    static final Key MASS =
            Key.quantity("mass", Dimension.MASS, 0, 10, "of the load").must();
    static final Key SIZE = Key.of("size", new Shape.Size(3), "length x width x height, length along the body")
            .must();
    static final KeyTable LOAD = KeyTable.of(
            "One thing carried.",
            StudyKeys.LOAD_NAME,
            MASS,
            SIZE,
            StudyKeys.PLACE,
            StudyKeys.RELEASE,
            StudyKeys.DESCENT,
            StudyKeys.VIEW,
            StudyKeys.LOAD_POWER);

    // the club
    static final Key ROLE = Key.text("role", "what it is for");
    static final Key CLUB_STUDY = Key.text("study", "the study file that it answers and is judged by");
    static final Key STATE = Key.choice("state", State.values(), "how far it has come; idea");
    static final Key ALONE = Key.text("alone", "the design file of the best that the same study gave without sharing");
    static final KeyTable CLUB = KeyTable.of(
            "Its place among the club's aeroplanes; changes nothing that is computed.",
            ROLE,
            CLUB_STUDY,
            STATE,
            StudyKeys.KEEP_FROM,
            ALONE);

    // the file
    static final Key DESIGN = Key.text("design", "the design's name").must();
    static final Key ABOUT = Key.text("about", "a sentence for the reader");
    static final Key WING_KEY = Key.table("wing", WING, "the wing");
    static final Key TAIL_KEY = Key.table("tail", TAIL, "the tail");
    static final Key BODY_KEY = Key.table("body", BODY, "the body");
    static final Key POWER_KEY = Key.table("power", POWER, "what drives it").must();
    static final Key GEAR_KEY =
            Key.table("undercarriage", GEAR, "what it stands on").alias("landing gear");
    static final Key CONTROLS_KEY = Key.table("controls", CONTROLS, "the moving surfaces");
    static final Key BOARD = Key.of("board", new Shape.PartName("board"), "the catalogue's first");
    static final Key COVERING = Key.choice("covering", Covering.values(), "bare");
    static final Key RADIO_KEY = Key.table("radio", RADIO, "receiver and servos");
    static final Key PAYLOAD = Key.of("payload", new Shape.Listing(new Shape.Table(LOAD)), "what it carries; nothing");
    static final Key CLUB_KEY = Key.table("club", CLUB, "its place among the club's aeroplanes");

    /** The whole file. */
    public static final KeyTable FILE = KeyTable.of(
            "A foamfront design: one aeroplane as a builder would write it down.",
            DESIGN,
            ABOUT,
            WING_KEY,
            TAIL_KEY,
            BODY_KEY,
            POWER_KEY,
            GEAR_KEY,
            CONTROLS_KEY,
            BOARD,
            COVERING,
            RADIO_KEY,
            PAYLOAD,
            CLUB_KEY);

    private DesignKeys() {}

    private static Key length(String name, double low, double high, String about) {
        return Key.quantity(name, Dimension.LENGTH, low, high, about);
    }

    private static Key ratio(String name, double low, double high, String about) {
        return Key.quantity(name, Dimension.NUMBER, low, high, about);
    }

    private static Key angle(String name, double most, String about) {
        return Key.quantity(name, Dimension.ANGLE, -most * DEGREE, most * DEGREE, about);
    }

    private static Key part(String name) {
        return Key.of(name, new Shape.PartName(name), "its catalogue name");
    }
}
