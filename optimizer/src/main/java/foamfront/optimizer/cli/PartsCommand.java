package foamfront.optimizer.cli;

import foamfront.model.parts.Part;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.runs.PartSheets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code parts}: the catalogue. */
@Command(
        name = "parts",
        description = "Lists the parts catalogue.",
        mixinStandardHelpOptions = true,
        version = "foamfront " + Main.VERSION)
final class PartsCommand implements Callable<Integer> {
    /** Columns that only the computation reads. */
    private static final String HIDDEN = "(thrust|power) [ab]\\d|(lowest|highest) speed .*|furthest .*";

    private final Console console;

    @Option(
            names = "--type",
            paramLabel = "KIND",
            description = "only boards, spars, motors, propellers, batteries ...")
    private @Nullable String kind;

    @Option(names = "--catalogue", paramLabel = "FOLDER", description = "tables of your own (default: the program's)")
    private @Nullable Path folder;

    @Parameters(paramLabel = "TEXT", arity = "0..*", description = "only parts whose row has all of these words")
    private List<String> words = List.of();

    @Mixin
    private StripSag strip = new StripSag();

    PartsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Catalogue catalogue = folder == null ? CatalogueReader.standard() : OwnTables.in(folder);
        if (strip.asked()) {
            console.out().print(strip.answer(catalogue));
            return Exit.FINE;
        }
        List<Part> parts = catalogue.parts();
        int count = 0;
        for (String sheet : kinds()) {
            Table table = matching(PartSheets.table(sheet, parts, catalogue.currency()));
            if (!table.rows().isEmpty()) {
                console.out().println((count > 0 ? "\n" : "") + sheet);
                console.out().print(table.text());
                count += table.rows().size();
            }
        }
        if (count == 0) {
            console.err().println("No part matches.");
        }
        return Exit.FINE;
    }

    private List<String> kinds() {
        String wanted = kind;
        if (wanted == null) {
            return PartSheets.kinds();
        }
        String plain = wanted.strip().toLowerCase(Locale.ROOT);
        for (String known : PartSheets.kinds()) {
            if (known.equals(plain) || known.equals(plain + "s") || known.equals(plain.replaceAll("y$", "ies"))) {
                return List.of(known);
            }
        }
        throw new InputException(
                "foamfront: there are no parts called '" + Text.plain(wanted) + "'.",
                "Use one of " + String.join(", ", PartSheets.kinds()) + ".");
    }

    private Table matching(Table table) {
        List<Integer> shown = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            if (!table.columns().get(i).head().matches(HIDDEN)) {
                shown.add(i);
            }
        }
        List<List<String>> rows = new ArrayList<>();
        for (List<String> row : table.rows()) {
            String all = String.join(" ", row).toLowerCase(Locale.ROOT);
            if (words.stream().allMatch(word -> all.contains(word.toLowerCase(Locale.ROOT)))) {
                rows.add(shown.stream().map(row::get).toList());
            }
        }
        return new Table(shown.stream().map(table.columns()::get).toList(), rows);
    }
}
