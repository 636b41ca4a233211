package foamfront.optimizer.study;

import foamfront.model.fabrication.SmallFittings;
import foamfront.model.mission.Owned;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Part;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.faults.Nearest;
import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What lies in the drawer: parts of the catalogue, packs side by side counted singly, and the small things that fit them. */
final class DrawerReader {
    private final List<Part> parts;

    private DrawerReader(List<Part> parts) {
        this.parts = parts;
    }

    static List<Owned> read(Fields file, Catalogue catalogue) {
        DrawerReader reader = new DrawerReader(catalogue.parts());
        List<Owned> drawer = new ArrayList<>();
        for (Value item : file.items(StudyKeys.DRAWER)) {
            Owned owned = reader.owned(item);
            if (owned == null) {
                continue;
            }
            if (drawer.stream().anyMatch(other -> other.part().equals(owned.part()))) {
                item.fault("'" + owned.part() + "' is listed twice", "List it once, with its count.");
            } else {
                drawer.add(owned);
            }
        }
        return drawer;
    }

    private @Nullable Owned owned(Value item) {
        Fields fields = item.isMapping() ? item.fields(StudyKeys.OWNED) : null;
        Value name = fields == null ? item : fields.value(StudyKeys.PART);
        String text = name == null ? null : name.text();
        if (name == null || text == null) {
            return null;
        }
        int count = fields == null ? 1 : (int) fields.whole(StudyKeys.COUNT, 1);
        for (String fitting : SmallFittings.NAMES) {
            if (Nearest.plain(fitting).equals(Nearest.plain(text))) {
                return new Owned(fitting, count);
            }
        }
        Part part = Catalogue.find(parts, text);
        if (part == null) {
            List<String> names = Stream.concat(parts.stream().map(Part::name), SmallFittings.NAMES.stream())
                    .toList();
            StockReader.unknown(name, text, "part", Nearest.advice(text, names, "part"));
            return null;
        }
        return part instanceof Battery battery
                ? new Owned(battery.pack(), count * battery.packs())
                : new Owned(part.name(), count);
    }
}
