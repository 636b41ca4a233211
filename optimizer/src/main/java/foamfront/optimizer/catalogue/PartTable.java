package foamfront.optimizer.catalogue;

import static foamfront.model.units.Dimension.AREAL_DENSITY;
import static foamfront.model.units.Dimension.CHARGE;
import static foamfront.model.units.Dimension.COUNT;
import static foamfront.model.units.Dimension.CURRENT;
import static foamfront.model.units.Dimension.DENSITY;
import static foamfront.model.units.Dimension.FORCE;
import static foamfront.model.units.Dimension.LENGTH;
import static foamfront.model.units.Dimension.MASS;
import static foamfront.model.units.Dimension.MONEY;
import static foamfront.model.units.Dimension.NUMBER;
import static foamfront.model.units.Dimension.POWER;
import static foamfront.model.units.Dimension.PRESSURE;
import static foamfront.model.units.Dimension.RESISTANCE;
import static foamfront.model.units.Dimension.ROTATION;
import static foamfront.model.units.Dimension.SPEED_CONSTANT;
import static foamfront.model.units.Dimension.TORQUE;
import static foamfront.model.units.Dimension.VOLTAGE;

import foamfront.model.parts.Battery;
import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Board;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Fan;
import foamfront.model.parts.FanLaw;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Part;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerCurves;
import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;
import foamfront.model.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The tables of parts: file, columns, and the part a row makes.
 *
 * @param file name of the CSV file
 * @param columns besides name, price and provenance, which all have
 */
record PartTable<P extends Part>(String file, List<Column> columns, Function<Row, P> part) {
    static final PartTable<Board> BOARDS = table(
            "boards.csv",
            row -> new Board(
                    row.text("name"),
                    row.si("thickness"),
                    row.si("areal density"),
                    row.si("length"),
                    row.si("width"),
                    row.si("face thickness"),
                    row.si("face modulus"),
                    row.si("face strength"),
                    row.si("core modulus"),
                    row.si("core shear modulus"),
                    row.price(),
                    row.provenance()),
            of(LENGTH, "thickness", "length", "width", "face thickness"),
            of(AREAL_DENSITY, "areal density"),
            of(PRESSURE, "face modulus", "face strength", "core modulus", "core shear modulus"));

    static final PartTable<Spar> SPARS = table(
            "spars.csv",
            row -> new Spar(
                    row.text("name"),
                    row.word("shape", Spar.Shape.values(), shape -> shape.name().toLowerCase(Locale.ROOT)),
                    row.si("width"),
                    row.si("height"),
                    row.si("bore"),
                    row.si("modulus"),
                    row.si("strength"),
                    row.si("density"),
                    row.si("length"),
                    row.price(),
                    row.provenance()),
            List.of(Column.text("shape")),
            of(LENGTH, "width", "height", "bore", "length"),
            of(PRESSURE, "modulus", "strength"),
            of(DENSITY, "density"));

    static final PartTable<Motor> MOTORS = table(
            "motors.csv",
            row -> new Motor(
                    row.text("name"),
                    row.si("mass"),
                    row.si("diameter"),
                    row.si("length"),
                    row.si("speed constant"),
                    row.si("resistance"),
                    row.si("no-load current"),
                    row.si("no-load voltage"),
                    row.si("continuous power"),
                    row.price(),
                    row.provenance()),
            of(MASS, "mass"),
            of(LENGTH, "diameter", "length"),
            of(SPEED_CONSTANT, "speed constant"),
            of(RESISTANCE, "resistance"),
            of(CURRENT, "no-load current"),
            of(VOLTAGE, "no-load voltage"),
            of(POWER, "continuous power"));

    static final PartTable<Propeller> PROPELLERS = table(
            "propellers.csv",
            row -> new Propeller(
                    row.text("name"),
                    row.word("family", BladeFamily.values(), BladeFamily::words),
                    row.si("diameter"),
                    row.si("pitch"),
                    row.whole("blades"),
                    row.si("mass"),
                    curves(row),
                    row.price(),
                    row.provenance()),
            List.of(Column.text("family")),
            of(LENGTH, "diameter", "pitch"),
            of(COUNT, "blades"),
            of(MASS, "mass"),
            of(NUMBER, terms("thrust")),
            of(NUMBER, terms("power")),
            of(ROTATION, "lowest speed", "highest speed"),
            of(NUMBER, "furthest advance ratio"));

    static final PartTable<Fan> FANS = table(
            "fans.csv",
            row -> new Fan(
                    row.text("name"),
                    new FanLaw(
                            row.si("diameter"),
                            row.si("hub"),
                            row.si("exit"),
                            row.si("rotor efficiency"),
                            row.si("thrust"),
                            row.si("speed")),
                    row.si("mass"),
                    fanMotor(row),
                    row.price(),
                    row.provenance()),
            of(LENGTH, "diameter", "hub", "motor diameter", "motor length"),
            of(NUMBER, "exit", "rotor efficiency"),
            of(FORCE, "thrust"),
            of(ROTATION, "speed"),
            of(MASS, "mass", "motor mass"),
            of(SPEED_CONSTANT, "speed constant"),
            of(RESISTANCE, "resistance"),
            of(CURRENT, "no-load current"),
            of(VOLTAGE, "no-load voltage"),
            of(POWER, "continuous power"));

    static final PartTable<Battery> BATTERIES = table(
            "batteries.csv",
            row -> new Battery(
                    row.text("name"),
                    row.whole("cells"),
                    row.si("capacity"),
                    row.si("rating"),
                    row.si("mass"),
                    row.si("length"),
                    row.si("width"),
                    row.si("height"),
                    row.si("cell resistance"),
                    row.price(),
                    row.provenance()),
            of(COUNT, "cells"),
            of(CHARGE, "capacity"),
            of(NUMBER, "rating"),
            of(MASS, "mass"),
            of(LENGTH, "length", "width", "height"),
            of(RESISTANCE, "cell resistance"));

    static final PartTable<Controller> CONTROLLERS = table(
            "controllers.csv",
            row -> new Controller(
                    row.text("name"),
                    row.si("current"),
                    row.si("supply current"),
                    row.si("mass"),
                    row.si("length"),
                    row.si("width"),
                    row.si("height"),
                    row.si("resistance"),
                    row.price(),
                    row.provenance()),
            of(CURRENT, "current", "supply current"),
            of(MASS, "mass"),
            of(LENGTH, "length", "width", "height"),
            of(RESISTANCE, "resistance"));

    static final PartTable<Servo> SERVOS = table(
            "servos.csv",
            row -> new Servo(
                    row.text("name"),
                    row.si("mass"),
                    row.si("torque"),
                    row.si("current"),
                    row.si("length"),
                    row.si("width"),
                    row.si("height"),
                    row.price(),
                    row.provenance()),
            of(MASS, "mass"),
            of(TORQUE, "torque"),
            of(CURRENT, "current"),
            of(LENGTH, "length", "width", "height"));

    static final PartTable<Receiver> RECEIVERS = table(
            "receivers.csv",
            row -> new Receiver(
                    row.text("name"),
                    row.whole("channels"),
                    row.si("mass"),
                    row.si("current"),
                    row.si("length"),
                    row.si("width"),
                    row.si("height"),
                    row.price(),
                    row.provenance()),
            of(COUNT, "channels"),
            of(MASS, "mass"),
            of(CURRENT, "current"),
            of(LENGTH, "length", "width", "height"));

    static final PartTable<Wheel> WHEELS = table(
            "wheels.csv",
            row -> new Wheel(
                    row.text("name"),
                    row.si("diameter"),
                    row.si("width"),
                    row.si("mass"),
                    row.price(),
                    row.provenance()),
            of(LENGTH, "diameter", "width"),
            of(MASS, "mass"));

    @SafeVarargs
    private static <P extends Part> PartTable<P> table(String file, Function<Row, P> part, List<Column>... columns) {
        List<Column> all = new ArrayList<>();
        all.add(Column.text("name"));
        for (List<Column> some : columns) {
            all.addAll(some);
        }
        all.add(Column.of("price", MONEY));
        all.add(Column.text("provenance"));
        return new PartTable<>(file, List.copyOf(all), part);
    }

    private static List<Column> of(Dimension dimension, String... names) {
        List<Column> columns = new ArrayList<>();
        for (String name : names) {
            columns.add(Column.of(name, dimension));
        }
        return columns;
    }

    private static String[] terms(String curve) {
        return Stream.of("a0", "a1", "a2", "a3", "a4", "b0", "b1")
                .map(term -> curve + " " + term)
                .toArray(String[]::new);
    }

    private static Motor fanMotor(Row row) {
        return new Motor(
                row.text("name"),
                row.si("motor mass"),
                row.si("motor diameter"),
                row.si("motor length"),
                row.si("speed constant"),
                row.si("resistance"),
                row.si("no-load current"),
                row.si("no-load voltage"),
                row.si("continuous power"),
                0,
                row.provenance());
    }

    private static PropellerCurves curves(Row row) {
        return new PropellerCurves(
                values(row, terms("thrust")),
                values(row, terms("power")),
                row.si("lowest speed"),
                row.si("highest speed"),
                row.si("furthest advance ratio"));
    }

    private static double[] values(Row row, String[] columns) {
        double[] values = new double[columns.length];
        for (int i = 0; i < columns.length; i++) {
            values[i] = row.si(columns[i]);
        }
        return values;
    }
}
