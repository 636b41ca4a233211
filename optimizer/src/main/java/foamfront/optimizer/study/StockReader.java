package foamfront.optimizer.study;

import foamfront.model.parts.Part;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The parts a study names, looked up in the catalogue. */
final class StockReader {
    private StockReader() {}

    static Stock read(Fields file, Catalogue catalogue) {
        return new Stock(
                chosen(file, StudyKeys.BOARDS, catalogue.boards(), "board"),
                chosen(file, StudyKeys.SPARS, catalogue.spars(), "spar"),
                chosen(file, StudyKeys.MOTORS, catalogue.motors(), "motor"),
                chosen(file, StudyKeys.PROPELLERS, catalogue.propellers(), "propeller"),
                chosen(file, StudyKeys.FANS, catalogue.fans(), "fan"),
                chosen(file, StudyKeys.BATTERIES, catalogue.batteries(), "battery"),
                chosen(file, StudyKeys.CONTROLLERS, catalogue.controllers(), "controller"),
                chosen(file, StudyKeys.SERVOS, catalogue.servos(), "servo"),
                chosen(file, StudyKeys.RECEIVERS, catalogue.receivers(), "receiver"),
                chosen(file, StudyKeys.WHEELS, catalogue.wheels(), "wheel"));
    }

    /** The part of a name, or null with a fault that suggests the nearest. */
    static <P extends Part> @Nullable P part(Value name, List<P> parts, String kind) {
        String text = name.text();
        if (text == null) {
            return null;
        }
        P part = Catalogue.find(parts, text);
        if (part == null) {
            unknown(name, text, kind, Catalogue.advice(parts, text, kind));
        }
        return part;
    }

    static void unknown(Value name, String text, String kind, String advice) {
        String shown = text.length() > 40 ? text.substring(0, 37) + "..." : text;
        name.fault("the catalogue has no " + kind + " '" + shown + "'", advice);
    }

    /** The parts named, in the catalogue's order, packs in parallel last; all where the study names none. */
    private static <P extends Part> List<P> chosen(Fields file, Key key, List<P> all, String kind) {
        List<P> named = new ArrayList<>();
        for (Value item : file.items(key)) {
            P part = part(item, all, kind);
            if (part != null) {
                named.add(part);
            }
        }
        Stream<P> listed = all.stream().filter(named::contains);
        Stream<P> composed = named.stream().filter(part -> !all.contains(part));
        return named.isEmpty()
                ? all
                : Stream.concat(listed, composed).distinct().toList();
    }
}
