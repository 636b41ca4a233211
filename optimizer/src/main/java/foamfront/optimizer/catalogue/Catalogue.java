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
import foamfront.model.units.Currency;
import foamfront.optimizer.faults.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
    private static final Pattern PARALLEL = Pattern.compile("\\s*([2-" + Battery.MOST_PARALLEL + "])\\s*[xX]\\s*(.+)");

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

    /** Of every price in it. */
    public Currency currency() {
        return workshop.currency();
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

    /**
     * The part of this name among {@code parts}, capitals, hyphens and spaces aside; null if there is none. Of batteries also
     * two to four alike in parallel, {@code 2 x 3S 2200}.
     */
    public static <P extends Part> @Nullable P find(List<P> parts, String name) {
        P single = single(parts, name);
        Matcher packs = PARALLEL.matcher(name);
        if (single != null || !packs.matches()) {
            return single;
        }
        P one = single(parts, packs.group(2));
        return one instanceof Battery battery ? together(battery, Integer.parseInt(packs.group(1))) : null;
    }

    /** P is Battery here: the pack came from a list of P. */
    @SuppressWarnings("unchecked")
    private static <P extends Part> P together(Battery battery, int packs) {
        return (P) battery.parallel(packs);
    }

    private static <P extends Part> @Nullable P single(List<P> parts, String name) {
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
