package foamfront.optimizer.explore;

import foamfront.model.parts.Battery;
import foamfront.model.parts.Part;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.front.Front;
import foamfront.optimizer.front.FrontJson;
import foamfront.optimizer.front.FrontPage;
import foamfront.optimizer.front.FrontTable;
import foamfront.optimizer.front.Layout;
import foamfront.optimizer.front.Row;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.runs.PartSheets;
import foamfront.optimizer.runs.RunFolder;
import foamfront.optimizer.search.Fault;
import foamfront.optimizer.study.DesignWriter;
import foamfront.optimizer.study.Digest;
import foamfront.optimizer.study.Stock;
import foamfront.optimizer.study.Study;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Writes what a run leaves behind, but for {@code run.json}, which only its caller can fill. */
public final class RunWriter {
    private final RunFolder folder;
    private final Task task;

    public RunWriter(RunFolder folder, Task task) {
        this.folder = folder;
        this.task = task;
    }

    /**
     * The study as read, the designs it names and the catalogue rows it may use; gives the digest of those rows.
     *
     * @param asRead the study of {@code studyText}, before anything was kept from another design
     * @param designs texts of the design files that the study names, by the name they get in the run
     */
    public String writeInputs(String studyText, Study asRead, Map<String, String> designs, Catalogue catalogue) {
        folder.write("study.yaml", studyText);
        designs.forEach(folder::write);
        Map<String, String> tables = tables(asRead, catalogue);
        String digest = digest(tables);
        if (!catalogue.currency().equals(CatalogueReader.STANDARD_CURRENCY)) {
            whole(catalogue).forEach(tables::putIfAbsent);
        }
        tables.put("sha256.txt", digest + "\n");
        folder.writeAll("catalogue", tables);
        return digest;
    }

    /** SHA-256 of the catalogue rows that a study may use. */
    public String catalogueDigest(Study asRead, Catalogue catalogue) {
        return digest(tables(asRead, catalogue));
    }

    private static String digest(Map<String, String> tables) {
        StringBuilder all = new StringBuilder();
        tables.forEach((name, text) -> all.append(name).append('\n').append(text));
        return Digest.of(all.toString());
    }

    private Map<String, String> tables(Study asRead, Catalogue catalogue) {
        List<Part> parts = used(asRead, task.study(), catalogue);
        Map<String, String> tables = new TreeMap<>();
        for (String kind : PartSheets.kinds()) {
            Table table = PartSheets.table(kind, parts, catalogue.currency());
            if (!table.rows().isEmpty()) {
                tables.put(kind + ".csv", table.csv());
            }
        }
        tables.put("workshop.csv", PartSheets.workshop(catalogue.workshop()).csv());
        return tables;
    }

    /** Every table whole: one that a folder lacks would be the program's, which is priced in another currency. */
    private static Map<String, String> whole(Catalogue catalogue) {
        Map<String, String> tables = new TreeMap<>();
        for (String kind : PartSheets.kinds()) {
            tables.put(
                    kind + ".csv",
                    PartSheets.table(kind, catalogue.parts(), catalogue.currency())
                            .csv());
        }
        return tables;
    }

    /** What the search may choose and what lies in the drawer, in the catalogue's order. */
    private static List<Part> used(Study asRead, Study searched, Catalogue catalogue) {
        Set<String> names = new HashSet<>();
        addNames(asRead.stock(), names);
        addNames(searched.stock(), names);
        asRead.drawer().forEach(owned -> names.add(owned.part()));
        return catalogue.parts().stream()
                .filter(part -> names.contains(part.name()) || inParallel(part, names))
                .toList();
    }

    /** Packs in parallel are made again from the row of one. */
    private static boolean inParallel(Part part, Set<String> names) {
        return part instanceof Battery battery
                && IntStream.rangeClosed(2, Battery.MOST_PARALLEL)
                        .anyMatch(
                                packs -> names.contains(battery.parallel(packs).name()));
    }

    private static void addNames(Stock stock, Set<String> names) {
        for (List<? extends Part> list : List.of(
                stock.boards(),
                stock.spars(),
                stock.motors(),
                stock.propellers(),
                stock.fans(),
                stock.batteries(),
                stock.controllers(),
                stock.servos(),
                stock.receivers(),
                stock.wheels())) {
            list.forEach(part -> names.add(part.name()));
        }
    }

    /** Front, layouts, designs and faults. */
    public void writeResults(Found found) {
        Study study = task.study();
        Show show = Show.of(study);
        Front front = found.front();
        folder.write("front.csv", FrontTable.of(front, 1, study.currency()).csv());
        folder.write("front.json", FrontJson.of(study.name(), front, 1, study.currency()));
        String page = front.isEmpty()
                ? Explanation.markdown(study, found, show)
                : FrontPage.markdown(study.name(), front, found.byLayout(), unmet(study, found), show)
                        + Explanation.regionPart(study, found, show);
        folder.write("front.md", noted(page, Explanation.early(found)));
        if (found.byLayout().isEmpty()) {
            folder.remove("layouts.csv");
        } else {
            folder.write("layouts.csv", layouts(found));
        }
        List<Row> rows = front.isEmpty() ? found.nearest() : found.numbered();
        Map<String, String> designs = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            String name = String.format(Locale.ROOT, "%03d.yaml", i + 1);
            designs.put(name, DesignWriter.write(rows.get(i).design()));
        }
        folder.replaceAll("designs", designs);
        if (!found.faults().isEmpty()) {
            folder.write("faults", "faults.txt", faults(found));
        }
    }

    /** Layouts that the study leaves open and of which no design meets every limit. */
    private static SortedSet<String> unmet(Study study, Found found) {
        return study.arrangements().possible().stream()
                .map(Layout::words)
                .filter(layout -> !found.met().contains(layout))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** A page with a note under its title. */
    private static String noted(String page, String note) {
        int title = page.indexOf("\n\n") + 2;
        return note.isEmpty() ? page : page.substring(0, title) + note + "\n\n" + page.substring(title);
    }

    private String layouts(Found found) {
        Map<String, Table> tables = new LinkedHashMap<>();
        int first = found.front().size() + 1;
        for (Map.Entry<String, Front> layout : found.byLayout().entrySet()) {
            tables.put(
                    layout.getKey(),
                    FrontTable.of(layout.getValue(), first, task.study().currency()));
            first += layout.getValue().size();
        }
        List<List<String>> rows = new ArrayList<>();
        tables.values().forEach(table -> rows.addAll(table.rows()));
        return new Table(tables.values().iterator().next().columns(), rows).csv();
    }

    private String faults(Found found) {
        StringBuilder text = new StringBuilder();
        text.append(found.faultCount()).append(" designs broke the computation; the first of them:\n");
        for (Fault fault : found.faults()) {
            double[] values =
                    fault.values().stream().mapToDouble(Double::doubleValue).toArray();
            text.append('\n')
                    .append(fault.message())
                    .append('\n')
                    .append(DesignWriter.write(task.genome().decode(values)));
        }
        return text.toString();
    }
}
