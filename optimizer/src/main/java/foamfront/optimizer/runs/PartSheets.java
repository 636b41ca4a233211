package foamfront.optimizer.runs;

import foamfront.model.parts.Battery;
import foamfront.model.parts.Board;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Difficulty;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Part;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;
import foamfront.model.parts.Workshop;
import foamfront.model.units.Currency;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.front.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Parts as tables, one for each kind, in the form of the catalogue: what is written here reads back as the same parts. */
public final class PartSheets {
    private static final Sheet<Board> BOARDS = new Sheet<Board>("boards", Board.class)
            .number("thickness", Unit.MILLIMETRE, Board::thickness)
            .number("areal density", Unit.GRAM_PER_SQUARE_METRE, Board::arealDensity)
            .number("length", Unit.MILLIMETRE, Board::length)
            .number("width", Unit.MILLIMETRE, Board::width)
            .number("face thickness", Unit.MILLIMETRE, Board::faceThickness)
            .number("face modulus", Unit.GIGAPASCAL, Board::faceModulus)
            .number("face strength", Unit.MEGAPASCAL, Board::faceStrength)
            .number("core modulus", Unit.MEGAPASCAL, Board::coreModulus)
            .number("core shear modulus", Unit.MEGAPASCAL, Board::coreShearModulus);
    private static final Sheet<Spar> SPARS = new Sheet<Spar>("spars", Spar.class)
            .text("shape", spar -> spar.shape().name().toLowerCase(Locale.ROOT))
            .number("width", Unit.MILLIMETRE, Spar::width)
            .number("height", Unit.MILLIMETRE, Spar::height)
            .number("bore", Unit.MILLIMETRE, Spar::bore)
            .number("modulus", Unit.GIGAPASCAL, Spar::modulus)
            .number("strength", Unit.MEGAPASCAL, Spar::strength)
            .number("density", Unit.KILOGRAM_PER_CUBIC_METRE, Spar::density)
            .number("length", Unit.MILLIMETRE, Spar::length);
    private static final Sheet<Motor> MOTORS = new Sheet<Motor>("motors", Motor.class)
            .number("mass", Unit.GRAM, Motor::mass)
            .number("diameter", Unit.MILLIMETRE, Motor::diameter)
            .number("length", Unit.MILLIMETRE, Motor::length)
            .number("speed constant", Unit.RPM_PER_VOLT, Motor::speedConstant)
            .number("resistance", Unit.MILLIOHM, Motor::resistance)
            .number("no-load current", Unit.AMPERE, Motor::noLoadCurrent)
            .number("no-load voltage", Unit.VOLT, Motor::noLoadVoltage)
            .number("continuous power", Unit.WATT, Motor::continuousPower);
    private static final Sheet<Propeller> PROPELLERS = curves(new Sheet<Propeller>("propellers", Propeller.class)
            .text("family", propeller -> propeller.family().words())
            .number("diameter", Unit.INCH, Propeller::diameter)
            .number("pitch", Unit.INCH, Propeller::pitch)
            .number("blades", Unit.COUNT, Propeller::blades)
            .number("mass", Unit.GRAM, Propeller::mass));
    private static final Sheet<Fan> FANS = new Sheet<Fan>("fans", Fan.class)
            .number("diameter", Unit.MILLIMETRE, fan -> fan.law().diameter())
            .number("hub", Unit.MILLIMETRE, fan -> fan.law().hub())
            .number("exit", Unit.PERCENT, fan -> fan.law().exit())
            .number("rotor efficiency", Unit.PERCENT, fan -> fan.law().efficiency())
            .number("thrust", Unit.NEWTON, fan -> fan.law().thrust())
            .number("speed", Unit.REVOLUTION_PER_MINUTE, fan -> fan.law().rotation())
            .number("mass", Unit.GRAM, Fan::mass)
            .number("motor mass", Unit.GRAM, fan -> fan.motor().mass())
            .number("motor diameter", Unit.MILLIMETRE, fan -> fan.motor().diameter())
            .number("motor length", Unit.MILLIMETRE, fan -> fan.motor().length())
            .number("speed constant", Unit.RPM_PER_VOLT, fan -> fan.motor().speedConstant())
            .number("resistance", Unit.MILLIOHM, fan -> fan.motor().resistance())
            .number("no-load current", Unit.AMPERE, fan -> fan.motor().noLoadCurrent())
            .number("no-load voltage", Unit.VOLT, fan -> fan.motor().noLoadVoltage())
            .number("continuous power", Unit.WATT, fan -> fan.motor().continuousPower());
    private static final Sheet<Battery> BATTERIES = new Sheet<Battery>("batteries", Battery.class)
            .number("cells", Unit.COUNT, Battery::cells)
            .number("capacity", Unit.MILLIAMPERE_HOUR, Battery::capacity)
            .number("rating", Unit.RATIO, Battery::rating)
            .number("mass", Unit.GRAM, Battery::mass)
            .number("length", Unit.MILLIMETRE, Battery::length)
            .number("width", Unit.MILLIMETRE, Battery::width)
            .number("height", Unit.MILLIMETRE, Battery::height)
            .number("cell resistance", Unit.MILLIOHM, Battery::cellResistance);
    private static final Sheet<Controller> CONTROLLERS = new Sheet<Controller>("controllers", Controller.class)
            .number("current", Unit.AMPERE, Controller::current)
            .number("supply current", Unit.AMPERE, Controller::supply)
            .number("mass", Unit.GRAM, Controller::mass)
            .number("length", Unit.MILLIMETRE, Controller::length)
            .number("width", Unit.MILLIMETRE, Controller::width)
            .number("height", Unit.MILLIMETRE, Controller::height)
            .number("resistance", Unit.MILLIOHM, Controller::resistance);
    private static final Sheet<Servo> SERVOS = new Sheet<Servo>("servos", Servo.class)
            .number("mass", Unit.GRAM, Servo::mass)
            .number("torque", Unit.NEWTON_METRE, Servo::torque)
            .number("current", Unit.AMPERE, Servo::current)
            .number("length", Unit.MILLIMETRE, Servo::length)
            .number("width", Unit.MILLIMETRE, Servo::width)
            .number("height", Unit.MILLIMETRE, Servo::height);
    private static final Sheet<Receiver> RECEIVERS = new Sheet<Receiver>("receivers", Receiver.class)
            .number("channels", Unit.COUNT, Receiver::channels)
            .number("mass", Unit.GRAM, Receiver::mass)
            .number("current", Unit.AMPERE, Receiver::current)
            .number("length", Unit.MILLIMETRE, Receiver::length)
            .number("width", Unit.MILLIMETRE, Receiver::width)
            .number("height", Unit.MILLIMETRE, Receiver::height);
    private static final Sheet<Wheel> WHEELS = new Sheet<Wheel>("wheels", Wheel.class)
            .number("diameter", Unit.MILLIMETRE, Wheel::diameter)
            .number("width", Unit.MILLIMETRE, Wheel::width)
            .number("mass", Unit.GRAM, Wheel::mass);

    private static final List<Sheet<?>> ALL =
            List.of(BOARDS, SPARS, MOTORS, PROPELLERS, FANS, BATTERIES, CONTROLLERS, SERVOS, RECEIVERS, WHEELS);

    private PartSheets() {}

    private static Sheet<Propeller> curves(Sheet<Propeller> sheet) {
        String[] terms = {"a0", "a1", "a2", "a3", "a4", "b0", "b1"};
        for (int i = 0; i < terms.length; i++) {
            int term = i;
            sheet.number("thrust " + terms[i], Unit.RATIO, p -> p.curves().thrustTerms()[term]);
        }
        for (int i = 0; i < terms.length; i++) {
            int term = i;
            sheet.number("power " + terms[i], Unit.RATIO, p -> p.curves().powerTerms()[term]);
        }
        return sheet.number(
                        "lowest speed",
                        Unit.REVOLUTION_PER_MINUTE,
                        p -> p.curves().lowestSpeed())
                .number(
                        "highest speed",
                        Unit.REVOLUTION_PER_MINUTE,
                        p -> p.curves().highestSpeed())
                .number("furthest advance ratio", Unit.RATIO, p -> p.curves().furthestAdvance());
    }

    /** Words of the kinds, as {@code motors}. */
    public static List<String> kinds() {
        return ALL.stream().map(sheet -> sheet.kind).toList();
    }

    /** The table of one kind with those of {@code parts} that are of it, in their order, priced in {@code currency}. */
    public static Table table(String kind, List<? extends Part> parts, Currency currency) {
        for (Sheet<?> sheet : ALL) {
            if (sheet.kind.equals(kind)) {
                return sheet.table(parts, currency);
            }
        }
        throw new IllegalArgumentException("there are no parts called " + kind);
    }

    /** Consumables and working rates as the catalogue has them. */
    public static Table workshop(Workshop workshop) {
        List<Table.Column> heads = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        String money = " [" + workshop.currency() + "]";
        rate(heads, cells, "tape linear mass [g/m]", Unit.GRAM_PER_METRE.fromSi(workshop.tapeLinearMass()));
        rate(heads, cells, "tape price per m" + money, workshop.tapePrice());
        rate(heads, cells, "glue linear mass [g/m]", Unit.GRAM_PER_METRE.fromSi(workshop.glueLinearMass()));
        rate(heads, cells, "glue price per kg" + money, workshop.gluePrice());
        rate(heads, cells, "linkage price" + money, workshop.linkagePrice());
        rate(heads, cells, "power fittings price" + money, workshop.powerFittingsPrice());
        rate(heads, cells, "strap price" + money, workshop.strapPrice());
        rate(heads, cells, "band price" + money, workshop.bandPrice());
        rate(heads, cells, "harness price" + money, workshop.harnessPrice());
        rate(heads, cells, "switch price" + money, workshop.switchPrice());
        rate(heads, cells, "regulator price" + money, workshop.regulatorPrice());
        rate(heads, cells, "cut rate [min/m]", Unit.MINUTE_PER_METRE.fromSi(workshop.cutRate()));
        rate(heads, cells, "fold rate [min/m]", Unit.MINUTE_PER_METRE.fromSi(workshop.foldRate()));
        rate(heads, cells, "glue rate [min/m]", Unit.MINUTE_PER_METRE.fromSi(workshop.glueRate()));
        rate(heads, cells, "tape rate [min/m]", Unit.MINUTE_PER_METRE.fromSi(workshop.tapeRate()));
        rate(heads, cells, "part time [min]", Unit.MINUTE.fromSi(workshop.partTime()));
        rate(heads, cells, "fitting time [min]", Unit.MINUTE.fromSi(workshop.fittingTime()));
        rate(heads, cells, "allowance [%]", Unit.PERCENT.fromSi(workshop.allowance()));
        Difficulty points = workshop.difficulty();
        rate(heads, cells, "part difficulty", points.part());
        rate(heads, cells, "fold difficulty", points.fold());
        rate(heads, cells, "bevel difficulty", points.bevel());
        rate(heads, cells, "tool difficulty", points.tool());
        heads.add(Table.Column.text("provenance"));
        cells.add("invented for the demo");
        return new Table(heads, List.of(cells));
    }

    private static void rate(List<Table.Column> heads, List<String> cells, String head, double value) {
        heads.add(Table.Column.number(head));
        cells.add(Numbers.exact(value));
    }

    /** The columns of one kind of part. */
    private static final class Sheet<P extends Part> {
        private final String kind;
        private final Class<P> type;
        private final List<Table.Column> heads = new ArrayList<>();
        private final List<Function<P, String>> cells = new ArrayList<>();

        Sheet(String kind, Class<P> type) {
            this.kind = kind;
            this.type = type;
            text("name", Part::name);
        }

        Sheet<P> text(String head, Function<P, String> of) {
            heads.add(Table.Column.text(head));
            cells.add(of);
            return this;
        }

        Sheet<P> number(String head, Unit unit, ToDoubleFunction<P> of) {
            heads.add(Table.Column.number(unit.symbol().isEmpty() ? head : head + " [" + unit.symbol() + "]"));
            cells.add(part -> Numbers.exact(unit.fromSi(of.applyAsDouble(part))));
            return this;
        }

        Table table(List<? extends Part> parts, Currency currency) {
            List<Table.Column> columns = new ArrayList<>(heads);
            columns.add(Table.Column.number("price [" + currency + "]"));
            columns.add(Table.Column.text("provenance"));
            List<List<String>> rows = new ArrayList<>();
            for (Part part : parts) {
                if (type.isInstance(part)) {
                    rows.add(row(type.cast(part)));
                }
            }
            return new Table(columns, rows);
        }

        private List<String> row(P part) {
            List<String> row = new ArrayList<>();
            cells.forEach(cell -> row.add(cell.apply(part)));
            row.add(Numbers.exact(part.price()));
            row.add(part.provenance().words());
            return row;
        }
    }
}
