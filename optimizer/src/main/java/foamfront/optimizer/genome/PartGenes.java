package foamfront.optimizer.genome;

import foamfront.model.design.Power;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Board;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Part;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;
import foamfront.optimizer.study.Stock;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The parts to choose from, each kind sorted so that neighbours are alike. */
final class PartGenes {
    /** What a motor without a measured rating stands, W/kg (limits, item 1). */
    private static final double POWER_PER_MASS = 5000;

    final List<Board> boards;
    final List<Motor> motors;
    final List<Propeller> propellers;
    final List<Fan> fans;
    final List<Battery> batteries;
    /** Those that a receiver stands. */
    final List<Battery> receiverBatteries;

    final List<Controller> controllers;
    final List<Spar> spars;
    final List<Wheel> wheels;
    final List<Servo> servos;
    final List<Receiver> receivers;
    final List<Spar> booms;

    PartGenes(Stock stock, int channels) {
        boards = sorted(stock.boards(), Board::thickness, Board::arealDensity);
        motors = sorted(stock.motors(), PartGenes::power, Motor::speedConstant);
        propellers = sorted(stock.propellers(), Propeller::diameter, Propeller::pitch);
        fans = sorted(stock.fans(), Fan::diameter, fan -> fan.motor().speedConstant());
        batteries = sorted(stock.batteries(), battery -> battery.cells() * battery.capacity(), Battery::mass);
        receiverBatteries = batteries.stream()
                .filter(battery -> battery.cells() <= Power.Unpowered.MOST_CELLS)
                .toList();
        controllers = sorted(stock.controllers(), Controller::current, Controller::mass);
        spars = sorted(stock.spars(), Spar::moment, Spar::linearMass);
        booms = tubes(spars);
        wheels = sorted(stock.wheels(), Wheel::diameter, Wheel::mass);
        servos = sorted(stock.servos(), Servo::torque, Servo::mass);
        receivers = sorted(enough(stock.receivers(), channels), Receiver::mass, Receiver::channels);
    }

    /** Those with channels enough; where none has, those with the most. */
    private static List<Receiver> enough(List<Receiver> receivers, int channels) {
        int most = receivers.stream().mapToInt(Receiver::channels).max().orElse(0);
        int needed = Math.min(channels, most);
        return receivers.stream()
                .filter(receiver -> receiver.channels() >= needed)
                .toList();
    }

    /** Round ones; where there is none, all. */
    private static List<Spar> tubes(List<Spar> spars) {
        List<Spar> round =
                spars.stream().filter(spar -> spar.shape() == Spar.Shape.ROUND).toList();
        return round.isEmpty() ? spars : round;
    }

    private static double power(Motor motor) {
        return motor.continuousPower() > 0 ? motor.continuousPower() : POWER_PER_MASS * motor.mass();
    }

    /** By two figures, then by name: a total order. */
    private static <P extends Part> List<P> sorted(
            List<P> parts, ToDoubleFunction<P> first, ToDoubleFunction<P> second) {
        Function<P, String> name = Part::name;
        return parts.stream()
                .sorted(Comparator.comparingDouble(first)
                        .thenComparingDouble(second)
                        .thenComparing(name))
                .toList();
    }

    /** All kinds, in the order of {@link Kind}. */
    List<? extends Part> list(Kind kind) {
        return switch (kind) {
            case BOARD -> boards;
            case MOTOR -> motors;
            case PROPELLER -> propellers;
            case FAN -> fans;
            case BATTERY -> batteries;
            case CONTROLLER -> controllers;
            case SPAR -> spars;
            case WHEEL -> wheels;
            case SERVO -> servos;
            case RECEIVER -> receivers;
            case BOOM -> booms;
            case RECEIVER_BATTERY -> receiverBatteries;
        };
    }

    /** Kinds of part with a gene. */
    enum Kind {
        BOARD("board"),
        MOTOR("motor"),
        PROPELLER("propeller"),
        FAN("fan"),
        BATTERY("battery"),
        CONTROLLER("controller"),
        SPAR("stock spar"),
        WHEEL("wheel"),
        SERVO("servo"),
        RECEIVER("receiver"),
        BOOM("tail boom"),
        RECEIVER_BATTERY("receiver battery");

        final String words;

        Kind(String words) {
            this.words = words;
        }
    }
}
