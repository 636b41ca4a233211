package foamfront.optimizer.study;

import foamfront.model.parts.Battery;
import foamfront.model.parts.Board;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.Receiver;
import foamfront.model.parts.Servo;
import foamfront.model.parts.Spar;
import foamfront.model.parts.Wheel;
import java.util.List;

/** The parts a study lets the search choose from, in the catalogue's order; every list has at least one. */
public record Stock(
        List<Board> boards,
        List<Spar> spars,
        List<Motor> motors,
        List<Propeller> propellers,
        List<Fan> fans,
        List<Battery> batteries,
        List<Controller> controllers,
        List<Servo> servos,
        List<Receiver> receivers,
        List<Wheel> wheels) {
    public Stock {
        boards = List.copyOf(boards);
        spars = List.copyOf(spars);
        motors = List.copyOf(motors);
        propellers = List.copyOf(propellers);
        fans = List.copyOf(fans);
        batteries = List.copyOf(batteries);
        controllers = List.copyOf(controllers);
        servos = List.copyOf(servos);
        receivers = List.copyOf(receivers);
        wheels = List.copyOf(wheels);
    }
}
