package foamfront.optimizer.study;

import foamfront.model.design.Place;
import foamfront.model.units.Range;
import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Value;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The payload of a study: loads of one size, or of a density and a section whose length grows with the mass. */
final class PayloadReader {
    private PayloadReader() {}

    static List<PayloadItem> read(Fields file) {
        List<PayloadItem> payload = new ArrayList<>();
        for (Value item : file.items(StudyKeys.PAYLOAD)) {
            Fields fields = item.fields(StudyKeys.LOAD);
            PayloadItem load = fields == null ? null : load(fields);
            if (load != null) {
                if (payload.stream().anyMatch(other -> other.name().equals(load.name()))) {
                    item.fault("'" + load.name() + "' is listed twice", "Give each load its own name.");
                }
                payload.add(load);
            }
        }
        return payload;
    }

    private static @Nullable PayloadItem load(Fields fields) {
        Range mass = fields.range(StudyKeys.MASS);
        double[] size = fields.size(StudyKeys.SIZE);
        double[] section = fields.size(StudyKeys.SECTION);
        double density = fields.quantity(StudyKeys.DENSITY, Double.NaN);
        String name = fields.text(StudyKeys.LOAD_NAME, "load");
        Place place = fields.choice(StudyKeys.PLACE, Place.values(), Place.BALANCE_POINT);
        Release release = fields.choice(StudyKeys.RELEASE, Release.values(), Release.NEVER);
        double descent = descent(fields, release);
        double power = fields.quantity(StudyKeys.LOAD_POWER, 0);
        double view = fields.quantity(StudyKeys.VIEW, 0);
        if (mass == null || !consistent(fields, mass)) {
            return null;
        }
        boolean released = release == Release.IN_FLIGHT;
        if (size != null) {
            return new PayloadItem(
                    name, mass, Double.NaN, size[0], size[1], size[2], place, released, descent, power, view);
        }
        return section == null || Double.isNaN(density)
                ? null
                : new PayloadItem(
                        name, mass, density, Double.NaN, section[0], section[1], place, released, descent, power, view);
    }

    /** Of a released load's parachute, m/s; 0 without one. */
    static double descent(Fields fields, Release release) {
        double descent = fields.quantity(StudyKeys.DESCENT, 0);
        if (descent > 0 && release != Release.IN_FLIGHT) {
            fields.fault(
                    StudyKeys.DESCENT,
                    "a load that stays on board needs no parachute",
                    "Write 'release: in flight' beside it, or delete the key.");
            return 0;
        }
        return descent;
    }

    /** Either a size, or a density with a section; a range of masses needs the latter. */
    private static boolean consistent(Fields fields, Range mass) {
        boolean size = fields.has(StudyKeys.SIZE);
        boolean density = fields.has(StudyKeys.DENSITY);
        boolean section = fields.has(StudyKeys.SECTION);
        String example = "Write 'density: 400 kg/m3, section: 80 mm x 80 mm' instead of a size.";
        if (!mass.single() && (size || !density)) {
            fields.fault(
                    size ? StudyKeys.SIZE : StudyKeys.MASS,
                    "a range of masses needs the density of the load, so that more mass takes more room",
                    example);
            return false;
        }
        if (size && (density || section)) {
            fields.fault(StudyKeys.SIZE, "a size and a density say the same thing twice", "Keep one of them.");
            return false;
        }
        if (!size && !(density && section)) {
            fields.fault(
                    density ? StudyKeys.SECTION : StudyKeys.SIZE,
                    "the room this load takes is missing",
                    "Write 'size: 30 mm x 30 mm x 25 mm', or a density with a section.");
            return false;
        }
        return true;
    }
}
