package foamfront.optimizer.catalogue;

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
import foamfront.model.parts.Workshop;
import foamfront.optimizer.faults.Nearest;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every part that can be bought, in the order of its tables. Names are unique throughout.
 *
 * @param workshop consumables and working rates
 * @param digest SHA-256 of the tables, in hexadecimal
 */
public record Catalogue(
        List<Board> boards,
        List<Spar> spars,
        List<Motor> motors,
        List<Propeller> propellers,
        List<Fan> fans,
        List<Battery> batteries,
        List<Controller> controllers,
        List<Servo> servos,
        List<Receiver> receivers,
        List<Wheel> wheels,
        Workshop workshop,
        String digest) {
    public Catalogue {
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

    /** All parts, table after table. */
    public List<Part> parts() {
        List<Part> all = new ArrayList<>();
        all.addAll(boards);
        all.addAll(spars);
        all.addAll(motors);
        all.addAll(propellers);
        all.addAll(fans);
        all.addAll(batteries);
        all.addAll(controllers);
        all.addAll(servos);
        all.addAll(receivers);
        all.addAll(wheels);
        return all;
    }

    /** The part of this name among {@code parts}, capitals, hyphens and spaces aside; null if there is none. */
    public static <P extends Part> @Nullable P find(List<P> parts, String name) {
        String plain = Nearest.plain(name);
        for (P part : parts) {
            if (Nearest.plain(part.name()).equals(plain)) {
                return part;
            }
        }
        return null;
    }

    /** Advice for a name that is not among {@code parts}. */
    public static String advice(List<? extends Part> parts, String name, String kind) {
        return Nearest.advice(name, parts.stream().map(Part::name).toList(), kind);
    }
}
