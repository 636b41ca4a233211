package foamfront.optimizer.study;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Crossing;
import foamfront.model.design.Arrangement;
import foamfront.model.design.Body;
import foamfront.model.design.BodyKind;
import foamfront.model.design.Controls;
import foamfront.model.design.Covering;
import foamfront.model.design.Design;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Load;
import foamfront.model.design.Nose;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.PowerKind;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Radio;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.UndercarriageKind;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingKind;
import foamfront.model.design.WorkshopRules;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Board;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Part;
import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;
import foamfront.model.units.Unit;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.faults.StudyException;
import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.Value;
import foamfront.optimizer.yaml.Yaml;
import foamfront.optimizer.yaml.YamlReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads a design file; missing keys take their workshop rule, which the result lists. */
public final class DesignReader {
    private final Catalogue catalogue;
    private final List<DesignFile.Taken> taken = new ArrayList<>();
    private final Rules file;

    /** Dimensions by {@link DesignVariable}, known or by rule; what the file states replaces them as it is read. */
    private final double[] rules = WorkshopRules.open();

    private @Nullable Board board;

    private DesignReader(Fields fields, Catalogue catalogue) {
        this.catalogue = catalogue;
        this.file = new Rules("", fields, taken);
    }

    /** Reads a file against the catalogue beside it, or the standard one. */
    public static DesignFile read(Path path) {
        return read(path, CatalogueReader.beside(path));
    }

    public static DesignFile read(Path path, Catalogue catalogue) {
        Faults faults = new Faults(String.valueOf(path.getFileName()));
        byte[] bytes = YamlReader.bytes(path, faults);
        if (bytes == null) {
            throw new StudyException(faults.all());
        }
        return read(bytes, catalogue, faults);
    }

    /** Reads a design from memory; {@code file} names it in messages. */
    public static DesignFile read(String file, byte[] bytes, Catalogue catalogue) {
        return read(bytes, catalogue, new Faults(file));
    }

    private static DesignFile read(byte[] bytes, Catalogue catalogue, Faults faults) {
        Yaml.Mapping mapping = YamlReader.read(bytes, faults);
        if (mapping == null) {
            throw new StudyException(faults.all());
        }
        MistakenFile.refuse(mapping, "design", "study", "Give a design file, or a row of its run: RUN#ROW.", faults);
        Fields fields = new Fields(mapping, DesignKeys.FILE, "", faults);
        DesignReader reader = new DesignReader(fields, catalogue);
        Design design = null;
        try {
            design = reader.design(fields.text(DesignKeys.DESIGN, "unnamed"));
        } catch (IllegalArgumentException e) {
            // Each figure lay within its own bounds, but a record refused them together.
            faults.add(mapping.line(), 0, "", String.valueOf(e.getMessage()), "Correct the figure.");
        }
        if (design != null && !faults.any()) {
            String refusal = Arrangement.of(design).refusal();
            if (refusal != null) {
                faults.add(
                        mapping.line(), 0, "", "this layout cannot be built: " + refusal, "Change one of the choices.");
            } else {
                Crossing crossing = Crossing.of(Airframe.of(design));
                if (crossing != null) {
                    faults.add(
                            mapping.line(),
                            0,
                            "",
                            crossing.words(),
                            "Move it clear: change its x or z, or what it stands in.");
                }
            }
        }
        ClubEntry club = ClubReader.read(fields);
        faults.stopIfAny();
        if (design == null) {
            throw new IllegalStateException("a design without faults was not read");
        }
        return new DesignFile(design, club, reader.taken);
    }

    private Design design(String name) {
        Rules controlTable = file.under(DesignKeys.CONTROLS_KEY);
        Rules wingTable = file.under(DesignKeys.WING_KEY);
        WingKind kind = wingTable.choice(DesignKeys.WING_KIND, WingKind.values(), WingKind.MONOPLANE);
        boolean tailed = kind == WingKind.MONOPLANE || kind == WingKind.BIPLANE;
        boolean ailerons = controlTable.yesNo(DesignKeys.AILERONS, !tailed);
        WingHeight height = height(wingTable, kind);
        AirframeReader airframe = new AirframeReader(file, catalogue, rules, kind, height, ailerons);
        Body body = body(airframe);
        return new Design(
                name,
                airframe.wing(wingTable, kind, body),
                airframe.tail(file.under(DesignKeys.TAIL_KEY), kind, body),
                body,
                power(file.under(DesignKeys.POWER_KEY), body.width()),
                undercarriage(file.under(DesignKeys.GEAR_KEY), airframe),
                controls(controlTable, airframe, ailerons, tailed),
                board(),
                file.choice(DesignKeys.COVERING, Covering.values(), Covering.BARE),
                radio(file.under(DesignKeys.RADIO_KEY)),
                loads());
    }

    /** Of a monoplane; other wings' rules follow a high one's. */
    private static WingHeight height(Rules table, WingKind kind) {
        if (kind == WingKind.MONOPLANE) {
            return table.choice(DesignKeys.HEIGHT, WingHeight.values(), WingHeight.HIGH);
        }
        if (table.has(DesignKeys.HEIGHT)) {
            table.fault(DesignKeys.HEIGHT, "only a monoplane's wing has a height on the body", "Delete the key.");
        }
        return WingHeight.HIGH;
    }

    private Body body(AirframeReader airframe) {
        Rules table = file.under(DesignKeys.BODY_KEY);
        BodyKind kind = table.choice(DesignKeys.BODY_KIND, BodyKind.values(), BodyKind.SQUARE_TUBE);
        double length = airframe.dimension(table, DesignKeys.BODY_LENGTH, DesignVariable.BODY_LENGTH);
        double height = airframe.dimension(table, DesignKeys.BODY_HEIGHT, DesignVariable.BODY_HEIGHT);
        Nose nose = table.choice(DesignKeys.NOSE, Nose.values(), Nose.FIXED);
        refuse(table, kind == BodyKind.POD_AND_BOOM, "'pod and boom'", DesignKeys.POD_LENGTH, DesignKeys.BOOM);
        refuse(table, kind == BodyKind.BOAT_HULL, "a boat hull", DesignKeys.HULL_STEP, DesignKeys.DEADRISE);
        if (kind == BodyKind.PROFILE_BOARD) {
            if (table.has(DesignKeys.BODY_WIDTH)) {
                table.fault(
                        DesignKeys.BODY_WIDTH, "a profile board is as wide as its board is thick", "Delete the key.");
            }
            return new Body.ProfileBoard(length, board().thickness(), height, nose);
        }
        double width = airframe.dimension(table, DesignKeys.BODY_WIDTH, DesignVariable.BODY_WIDTH);
        if (kind == BodyKind.POD_AND_BOOM) {
            double pod = airframe.dimension(table, DesignKeys.POD_LENGTH, DesignVariable.POD_LENGTH);
            Spar boom = needed(table, DesignKeys.BOOM, catalogue.spars());
            return new Body.PodAndBoom(length, width, height, nose, pod, boom);
        }
        if (kind == BodyKind.BOAT_HULL) {
            return new Body.BoatHull(
                    length,
                    width,
                    height,
                    nose,
                    airframe.dimension(table, DesignKeys.HULL_STEP, DesignVariable.STEP_POSITION),
                    airframe.dimension(table, DesignKeys.DEADRISE, DesignVariable.DEADRISE));
        }
        return kind == BodyKind.TWO_BAY_TUBE
                ? new Body.TwoBayTube(length, width, height, nose)
                : new Body.SquareTube(length, width, height, nose);
    }

    /** Keys that only one kind of body has. */
    private static void refuse(Rules table, boolean has, String owner, Key... keys) {
        for (Key key : keys) {
            if (!has && table.has(key)) {
                table.fault(key, "only " + owner + " has one", "Delete the key.");
            }
        }
    }

    /** Asked for more than once, told once. */
    private Board board() {
        Board known = board;
        if (known == null) {
            known = file.part(
                    DesignKeys.BOARD, catalogue.boards(), catalogue.boards().get(0));
            board = known;
        }
        return known;
    }

    private Power power(Rules table, double bodyWidth) {
        PowerKind kind = table.choice(DesignKeys.POWER_KIND, PowerKind.values(), PowerKind.NOSE_TRACTOR);
        Battery battery = table.part(
                DesignKeys.BATTERY, catalogue.batteries(), catalogue.batteries().get(0));
        if (kind == PowerKind.NONE) {
            refuse(table, kind, DesignKeys.MOTOR, DesignKeys.PROPELLER, DesignKeys.FAN, DesignKeys.MOTOR_STATION);
            refuse(table, kind, DesignKeys.CONTROLLER);
            return unpowered(table, battery);
        }
        Controller controller = needed(table, DesignKeys.CONTROLLER, catalogue.controllers());
        if (kind == PowerKind.DUCTED_FAN) {
            refuse(table, kind, DesignKeys.MOTOR, DesignKeys.PROPELLER, DesignKeys.MOTOR_STATION);
            Fan fan = needed(table, DesignKeys.FAN, catalogue.fans());
            return new Power.DuctedFan(fan, battery, controller);
        }
        refuse(table, kind, DesignKeys.FAN);
        PowerPlant plant = new PowerPlant(
                needed(table, DesignKeys.MOTOR, catalogue.motors()),
                needed(table, DesignKeys.PROPELLER, catalogue.propellers()),
                battery,
                controller);
        if (kind == PowerKind.TWIN_TRACTOR || kind == PowerKind.COUNTER_TWIN) {
            double station = WorkshopRules.motorStation(plant.propeller(), bodyWidth);
            return new Power.TwinTractor(
                    plant,
                    table.quantity(DesignKeys.MOTOR_STATION, station, Unit.MILLIMETRE),
                    kind == PowerKind.COUNTER_TWIN);
        }
        refuse(table, kind, DesignKeys.MOTOR_STATION);
        return kind == PowerKind.PUSHER ? new Power.Pusher(plant) : new Power.NoseTractor(plant);
    }

    private static Power unpowered(Rules table, Battery battery) {
        if (battery.cells() > Power.Unpowered.MOST_CELLS) {
            table.fault(
                    DesignKeys.BATTERY,
                    "a receiver without a speed controller stands at most " + Power.Unpowered.MOST_CELLS + " cells",
                    "Name a pack of one or two cells.");
        }
        return new Power.Unpowered(battery);
    }

    private static void refuse(Rules table, PowerKind kind, Key... keys) {
        for (Key key : keys) {
            if (table.has(key)) {
                table.fault(key, "'" + kind.words() + "' has none", "Delete the key.");
            }
        }
    }

    /** A part that this kind of power must have. */
    private static <P extends Part> P needed(Rules table, Key key, List<P> parts) {
        if (!table.has(key)) {
            table.fault(key, "the key is missing", "Name a " + key.name() + " of the catalogue.");
            return parts.get(0);
        }
        return table.part(key, parts, parts.get(0));
    }

    private Undercarriage undercarriage(Rules table, AirframeReader airframe) {
        UndercarriageKind kind = table.choice(DesignKeys.GEAR_KIND, UndercarriageKind.values(), UndercarriageKind.NONE);
        if (kind == UndercarriageKind.FLOATS) {
            if (table.has(DesignKeys.WHEEL)) {
                table.fault(DesignKeys.WHEEL, "floats have no wheel", "Delete the key.");
            }
            return new Undercarriage.Floats(
                    airframe.dimension(table, DesignKeys.FLOAT_LENGTH, DesignVariable.FLOAT_LENGTH),
                    airframe.dimension(table, DesignKeys.FLOAT_BEAM, DesignVariable.FLOAT_BEAM),
                    airframe.dimension(table, DesignKeys.DEADRISE, DesignVariable.DEADRISE));
        }
        for (Key key : List.of(DesignKeys.FLOAT_LENGTH, DesignKeys.FLOAT_BEAM, DesignKeys.DEADRISE)) {
            if (table.has(key)) {
                table.fault(key, "only floats have one here", "Delete the key.");
            }
        }
        if (kind == UndercarriageKind.NONE) {
            if (table.has(DesignKeys.WHEEL)) {
                table.fault(DesignKeys.WHEEL, "an aeroplane without undercarriage has no wheel", "Delete the key.");
            }
            return new Undercarriage.None();
        }
        Wheel wheel = table.part(DesignKeys.WHEEL, catalogue.wheels(), wheel());
        if (kind == UndercarriageKind.AMPHIBIAN) {
            return new Undercarriage.Amphibian(wheel);
        }
        return kind == UndercarriageKind.TRICYCLE
                ? new Undercarriage.Tricycle(wheel)
                : new Undercarriage.TailWheel(wheel);
    }

    /** The smallest wheel for mown grass, or the largest there is. */
    private Wheel wheel() {
        Wheel best = catalogue.wheels().get(0);
        for (Wheel wheel : catalogue.wheels()) {
            boolean fits = wheel.diameter() >= 0.06;
            boolean had = best.diameter() >= 0.06;
            if (fits == had ? (wheel.diameter() < best.diameter()) == fits : fits) {
                best = wheel;
            }
        }
        return best;
    }

    private Controls controls(Rules table, AirframeReader airframe, boolean ailerons, boolean tailed) {
        boolean rudder = table.yesNo(DesignKeys.RUDDER, tailed);
        if (!table.yesNo(DesignKeys.ELEVATOR, true)) {
            table.fault(DesignKeys.ELEVATOR, "an aeroplane needs its elevator", "Write yes, or delete the key.");
        }
        FlapKind flaps = table.choice(DesignKeys.FLAPS, FlapKind.values(), FlapKind.NONE);
        for (Key key : List.of(DesignKeys.FLAP_SPAN, DesignKeys.FLAP_CHORD)) {
            if (flaps != FlapKind.FLAPS && table.has(key)) {
                table.fault(key, "'flaps: " + flaps.words() + "' has none", "Delete the key, or write flaps: flaps.");
            }
        }
        Controls plain = new Controls(
                ailerons,
                rudder,
                flaps,
                airframe.dimension(table, DesignKeys.AILERON_SPAN, DesignVariable.AILERON_SPAN),
                airframe.dimension(table, DesignKeys.AILERON_CHORD, DesignVariable.AILERON_CHORD),
                airframe.dimension(table, DesignKeys.ELEVATOR_CHORD, DesignVariable.ELEVATOR_CHORD),
                airframe.dimension(table, DesignKeys.RUDDER_CHORD, DesignVariable.RUDDER_CHORD));
        return flaps != FlapKind.FLAPS
                ? plain
                : plain.withFlaps(
                        airframe.dimension(table, DesignKeys.FLAP_SPAN, DesignVariable.FLAP_SPAN),
                        airframe.dimension(table, DesignKeys.FLAP_CHORD, DesignVariable.FLAP_CHORD));
    }

    private Radio radio(Rules table) {
        Receiver receiver = catalogue.receivers().stream()
                .filter(one -> one.channels() >= 4)
                .findFirst()
                .orElse(catalogue.receivers().get(0));
        Servo servo = catalogue.servos().stream()
                .filter(one -> one.torque() >= 0.1)
                .findFirst()
                .orElse(catalogue.servos().get(0));
        return new Radio(
                table.part(DesignKeys.RECEIVER, catalogue.receivers(), receiver),
                table.part(DesignKeys.SERVO, catalogue.servos(), servo));
    }

    private List<Load> loads() {
        List<Load> loads = new ArrayList<>();
        for (Value item : file.items(DesignKeys.PAYLOAD)) {
            Fields fields = item.fields(DesignKeys.LOAD);
            Load load = fields == null ? null : load(fields);
            if (load != null) {
                loads.add(load);
            }
        }
        return loads;
    }

    private static @Nullable Load load(Fields fields) {
        double[] size = fields.size(DesignKeys.SIZE);
        double mass = fields.quantity(DesignKeys.MASS, 0);
        Place place = fields.choice(StudyKeys.PLACE, Place.values(), Place.BALANCE_POINT);
        Release release = fields.choice(StudyKeys.RELEASE, Release.values(), Release.NEVER);
        double descent = PayloadReader.descent(fields, release);
        double power = fields.quantity(StudyKeys.LOAD_POWER, 0);
        double view = fields.quantity(StudyKeys.VIEW, 0);
        String name = fields.text(StudyKeys.LOAD_NAME, "load");
        return size == null
                ? null
                : new Load(
                        name,
                        mass,
                        size[0],
                        size[1],
                        size[2],
                        place,
                        release == Release.IN_FLIGHT,
                        descent,
                        power,
                        view);
    }
}
