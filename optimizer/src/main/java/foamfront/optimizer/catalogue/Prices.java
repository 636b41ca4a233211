package foamfront.optimizer.catalogue;

import foamfront.model.units.Currency;
import foamfront.optimizer.faults.Fault;
import foamfront.optimizer.faults.Faults;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The currencies that a catalogue's tables name, which must all be one: that of the folder's own tables, where it has some. */
final class Prices {
    /**
     * @param own whether the table lies in the folder; otherwise it is the program's
     */
    private record Named(String file, boolean own, Header.Priced column) {
        String place() {
            return file + ":" + column.line() + ", column " + column.at();
        }
    }

    private final List<Named> all = new ArrayList<>();
    private final String folder;

    /**
     * @param folder of the own tables, for messages
     */
    Prices(String folder) {
        this.folder = folder;
    }

    void add(String file, boolean own, Header header) {
        header.priced().forEach(column -> all.add(new Named(file, own, column)));
    }

    /** Null where no table names one. */
    @Nullable
    Currency currency() {
        Named first = first();
        return first == null ? null : first.column().currency();
    }

    private @Nullable Named first() {
        return all.stream().filter(Named::own).findFirst().orElse(all.isEmpty() ? null : all.get(0));
    }

    /** What is priced in another currency than the rest. */
    List<Fault> faults() {
        Named first = first();
        List<Fault> faults = new ArrayList<>();
        List<String> lacking = new ArrayList<>();
        for (Named one : all) {
            if (first == null || one.column().currency().equals(first.column().currency())) {
                continue;
            }
            if (one.own()) {
                Faults found = new Faults(one.file());
                found.add(
                        one.column().line(),
                        one.column().at(),
                        one.column().column(),
                        "prices are in " + one.column().currency() + " here and in "
                                + first.column().currency() + " in " + first.place() + " (folder " + folder + ")",
                        "Price all tables in one currency: there are no exchange rates here.");
                faults.addAll(found.all());
            } else if (!lacking.contains(one.file())) {
                lacking.add(one.file());
            }
        }
        if (first != null && !lacking.isEmpty()) {
            Faults found = new Faults(lacking.get(0));
            found.add(
                    0,
                    0,
                    "",
                    lack(lacking, first),
                    "Add what is lacking, priced in " + first.column().currency()
                            + ", or price the folder as the program's tables are: there are no exchange rates here.");
            faults.addAll(found.all());
        }
        return faults;
    }

    private String lack(List<String> files, Named first) {
        String others = files.size() == 1 ? "" : ", nor " + String.join(", ", files.subList(1, files.size()));
        return "the folder " + folder + " has no such table" + others + "; the program's are priced in "
                + CatalogueReader.STANDARD_CURRENCY + ", not in "
                + first.column().currency() + " as " + first.place() + " is";
    }
}
