package foamfront.optimizer.cli;

import foamfront.model.parts.Board;
import foamfront.model.structure.StripTest;
import foamfront.model.units.Dimension;
import foamfront.model.units.Numbers;
import foamfront.model.units.Quantities;
import foamfront.model.units.QuantityException;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.runs.PartSheets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A board's own stiffness from the sag of a strip: options of {@code parts} and what it prints. */
final class StripSag {
    @Option(
            names = "--strip-sag",
            paramLabel = "LENGTH",
            description = "sag of a strip of your board on two supports under a weight in the middle (2.3 mm)")
    private @Nullable String sag;

    @Option(names = "--strip-board", paramLabel = "BOARD", description = "the catalogue's board it was cut from")
    private @Nullable String board;

    @Option(names = "--strip-width", paramLabel = "LENGTH", description = "of the strip (default: 50 mm)")
    private String width = "50 mm";

    @Option(names = "--strip-span", paramLabel = "LENGTH", description = "between the supports (default: 300 mm)")
    private String span = "300 mm";

    @Option(names = "--strip-load", paramLabel = "MASS", description = "in the middle (default: 100 g)")
    private String load = "100 g";

    boolean asked() {
        return sag != null;
    }

    /** The board's row with the paper's modulus that the sag shows, and what was assumed. */
    String answer(Catalogue catalogue) {
        Board old = named(catalogue);
        StripTest strip = new StripTest(
                read("--strip-width", width, Dimension.LENGTH),
                read("--strip-span", span, Dimension.LENGTH),
                read("--strip-load", load, Dimension.MASS));
        double measured = read("--strip-sag", String.valueOf(sag), Dimension.LENGTH);
        double modulus;
        try {
            modulus = strip.faceModulus(old, measured);
        } catch (IllegalArgumentException refused) {
            throw new InputException(
                    "foamfront: " + refused.getMessage() + ".",
                    "The catalogue's board sags " + Numbers.significant(1000 * strip.sag(old), 3)
                            + " mm so; measure again, along the grain.");
        }
        Board own = new Board(
                old.name(),
                old.thickness(),
                old.arealDensity(),
                old.length(),
                old.width(),
                old.faceThickness(),
                modulus,
                old.faceStrength(),
                old.coreModulus(),
                old.coreShearModulus(),
                old.price(),
                old.provenance());
        return "The paper's modulus is " + Numbers.significant(modulus / 1e9, 3) + " GPa; the catalogue has "
                + Numbers.significant(old.faceModulus() / 1e9, 3) + " GPa, with which the strip would sag "
                + Numbers.significant(1000 * strip.sag(old), 3)
                + " mm.\nFoam and thicknesses are the catalogue's. For boards.csv in a catalogue folder of your own:\n"
                + PartSheets.table("boards", List.of(own), catalogue.currency()).csv();
    }

    private Board named(Catalogue catalogue) {
        String wanted = board == null ? catalogue.boards().get(0).name() : board.strip();
        for (Board known : catalogue.boards()) {
            if (known.name().equalsIgnoreCase(wanted)) {
                return known;
            }
        }
        throw new InputException(
                "foamfront: there is no board called '" + Text.plain(wanted) + "'.",
                "Use one of "
                        + String.join(
                                ", ",
                                catalogue.boards().stream().map(Board::name).toList())
                        + ".");
    }

    private static double read(String option, String text, Dimension dimension) {
        try {
            double value = Quantities.parse(text, dimension);
            if (!(value > 0)) {
                throw new InputException(
                        "foamfront: " + option + " " + Text.plain(text) + " is not above 0.",
                        "Give what was measured.");
            }
            return value;
        } catch (QuantityException e) {
            throw new InputException("foamfront: " + option + ": " + Text.plain(e.problem()) + ".", e.advice());
        }
    }
}
