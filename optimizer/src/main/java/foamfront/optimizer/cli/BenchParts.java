package foamfront.optimizer.cli;

import foamfront.model.design.Drive;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.parts.Battery;
import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Motor;
import foamfront.model.parts.Part;
import foamfront.model.parts.Propeller;
import foamfront.model.parts.PropellerRegression;
import foamfront.model.parts.Provenance;
import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.faults.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that put parts on the bench, from the catalogue by name or by numbers. */
final class BenchParts {
    /** Cell resistance times capacity, ohm A s: 12 mohm Ah, as in the catalogue (from memory). */
    private static final double CELL_CONSTANT = 0.012 * 3600;

    @Option(names = "--motor", paramLabel = "NAME", description = "a motor of the catalogue")
    @Nullable
    String motor;

    @Option(names = "--kv", paramLabel = "QUANTITY", description = "or its speed constant, for example '1000 rpm/V'")
    @Nullable
    String speedConstant;

    @Option(
            names = "--resistance",
            paramLabel = "QUANTITY",
            description = "of its winding, for example '130 mohm'; under load 1.8 times that counts")
    @Nullable
    String resistance;

    @Option(names = "--no-load-current", paramLabel = "QUANTITY", description = "for example '0.7 A', at 10 V")
    @Nullable
    String noLoadCurrent;

    @Option(names = "--motor-mass", paramLabel = "QUANTITY", description = "says what it bears: 5 W for each gram")
    @Nullable
    String motorMass;

    @Option(
            names = "--propeller",
            paramLabel = "NAME",
            description = "a propeller of the catalogue; the size alone is its first family's")
    @Nullable
    String propeller;

    @Option(names = "--diameter", paramLabel = "QUANTITY", description = "or its diameter, for example 10in")
    @Nullable
    String diameter;

    @Option(names = "--pitch", paramLabel = "QUANTITY", description = "its pitch, for example 4.7in")
    @Nullable
    String pitch;

    @Option(names = "--family", paramLabel = "FAMILY", description = "its blades: thin electric, slow flyer, sport ...")
    @Nullable
    String family;

    @Option(names = "--blades", paramLabel = "COUNT", description = "2, 3 or 4 (default: 2)")
    int blades = 2;

    @Option(names = "--fan", paramLabel = "NAME", description = "or a ducted fan of the catalogue, with its motor")
    @Nullable
    String fan;

    @Option(names = "--battery", paramLabel = "NAME", description = "a battery of the catalogue, or '2 x' one")
    @Nullable
    String battery;

    @Option(names = "--cells", paramLabel = "COUNT", description = "or its cells in series")
    @Nullable
    Integer cells;

    @Option(names = "--capacity", paramLabel = "QUANTITY", description = "for example '2200 mAh'")
    @Nullable
    String capacity;

    @Option(names = "--parallel", paramLabel = "COUNT", description = "packs side by side (default: 1)")
    int packs = 1;

    @Option(names = "--rating", paramLabel = "C", description = "its label (default: 30)")
    double rating = 30;

    @Option(
            names = "--controller",
            paramLabel = "NAME",
            description = "a controller of the catalogue (default: its largest)")
    @Nullable
    String controller;

    private final List<String> notes = new ArrayList<>();

    Motor motor(Catalogue catalogue) {
        String name = motor;
        if (name != null) {
            return part(catalogue.motors(), name, "motor");
        }
        double kv = Stated.quantity(
                "--kv", Stated.first("motor", "--motor", "--kv", speedConstant), Dimension.SPEED_CONSTANT);
        return Stated.made(() -> new Motor(
                "a motor by numbers",
                mass(1),
                0.03,
                0.03,
                kv,
                Stated.quantity(
                        "--resistance", Stated.beside("--kv", "--resistance", resistance), Dimension.RESISTANCE),
                Stated.quantity(
                        "--no-load-current",
                        Stated.beside("--kv", "--no-load-current", noLoadCurrent),
                        Dimension.CURRENT),
                10,
                0,
                0,
                Provenance.INVENTED));
    }

    /** What the motor was said to weigh, kg. */
    double mass(double otherwise) {
        return motorMass == null ? otherwise : Stated.quantity("--motor-mass", motorMass, Dimension.MASS);
    }

    /** Everything together. */
    Drive drive(Catalogue catalogue) {
        String name = fan;
        if (name == null) {
            return new PowerPlant(motor(catalogue), propeller(catalogue), battery(catalogue), controller(catalogue));
        }
        return new Power.DuctedFan(part(catalogue.fans(), name, "fan"), battery(catalogue), controller(catalogue));
    }

    /** Whether the motor's mass is known. */
    boolean massKnown() {
        return fan != null || motor != null || motorMass != null;
    }

    Propeller propeller(Catalogue catalogue) {
        String name = propeller;
        if (name != null) {
            Propeller whole = Catalogue.find(catalogue.propellers(), name);
            return whole != null ? whole : firstOfSize(name, catalogue.propellers());
        }
        return bySize(catalogue);
    }

    /** The size alone names the first family that has it; a note names the others. */
    private Propeller firstOfSize(String size, List<Propeller> all) {
        List<Propeller> sizes = all.stream()
                .filter(p -> Nearest.plain(p.name()).startsWith(Nearest.plain(size) + " "))
                .toList();
        if (sizes.isEmpty()) {
            return part(all, size, "propeller");
        }
        if (sizes.size() > 1) {
            notes.add(Text.plain(size) + " is taken as " + sizes.get(0).name() + "; it is also made as "
                    + String.join(", ", sizes.stream().skip(1).map(Part::name).toList()) + ".");
        }
        return sizes.get(0);
    }

    /** What was taken for granted, for the standard error. */
    List<String> notes() {
        return List.copyOf(notes);
    }

    private Propeller bySize(Catalogue catalogue) {
        double d = Stated.quantity(
                "--diameter", Stated.first("propeller", "--propeller", "--diameter", diameter), Dimension.LENGTH);
        double p = Stated.quantity("--pitch", Stated.beside("--diameter", "--pitch", pitch), Dimension.LENGTH);
        BladeFamily blade = family(Stated.beside("--diameter", "--family", family));
        Arguments.within("--blades", blades, 2, 4);
        PropellerRegression regression = new PropellerRegression(catalogue.propellers());
        if (regression.isEmpty()) {
            throw new InputException(
                    "foamfront: the catalogue has no measured propeller to tell another size from.",
                    "Name a propeller, or leave --catalogue out.");
        }
        double[] range = regression.range();
        inside("--diameter", d, range[0], range[1], diameter);
        inside("--pitch", p, range[2] * d, range[3] * d, pitch);
        return new Propeller(
                "a " + diameter + " x " + pitch + " " + blade.words(),
                blade,
                d,
                p,
                blades,
                0.01,
                regression.predict(blade, d, p, blades),
                0,
                Provenance.REGRESSION);
    }

    /** The regression knows nothing outside what was measured. */
    private static void inside(String option, double si, double low, double high, @Nullable String written) {
        if (!(si >= low * (1 - 1e-9) && si <= high * (1 + 1e-9))) {
            var unit = Quantities.unit(written == null ? "" : written, Dimension.LENGTH);
            throw new InputException(
                    "foamfront: " + option + " " + written + " lies outside the measured propellers.",
                    "Use " + Quantities.print(low, unit, 2) + " to " + Quantities.print(high, unit, 2) + ".");
        }
    }

    private static BladeFamily family(String words) {
        for (BladeFamily known : BladeFamily.values()) {
            if (Nearest.plain(known.words()).equals(Nearest.plain(words))) {
                return known;
            }
        }
        List<String> known =
                Arrays.stream(BladeFamily.values()).map(BladeFamily::words).toList();
        throw new InputException(
                "foamfront: there is no blade family '" + Text.plain(words) + "'.",
                Nearest.advice(words, known, "family"));
    }

    Battery battery(Catalogue catalogue) {
        Arguments.within("--parallel", packs, 1, Battery.MOST_PARALLEL);
        return pack(catalogue).parallel(packs);
    }

    private Battery pack(Catalogue catalogue) {
        String name = battery;
        if (name != null) {
            return part(catalogue.batteries(), name, "battery");
        }
        Integer count = Stated.first("battery", "--battery", "--cells", cells);
        Arguments.within("--cells", count, 1, 14);
        double charge =
                Stated.quantity("--capacity", Stated.beside("--cells", "--capacity", capacity), Dimension.CHARGE);
        return Stated.made(() -> new Battery(
                count + "S " + capacity,
                count,
                charge,
                rating,
                0.1,
                0.1,
                0.03,
                0.02,
                charge > 0 ? CELL_CONSTANT / charge : 1,
                0,
                Provenance.INVENTED));
    }

    Controller controller(Catalogue catalogue) {
        String name = controller;
        if (name != null) {
            return part(catalogue.controllers(), name, "controller");
        }
        Controller largest = catalogue.controllers().get(0);
        for (Controller each : catalogue.controllers()) {
            largest = each.current() > largest.current() ? each : largest;
        }
        return largest;
    }

    static <P extends Part> P part(List<P> parts, String name, String kind) {
        P found = Catalogue.find(parts, name);
        if (found == null) {
            throw new InputException(
                    "foamfront: the catalogue has no " + kind + " '" + Text.plain(name) + "'.",
                    Catalogue.advice(parts, name, kind));
        }
        return found;
    }
}
