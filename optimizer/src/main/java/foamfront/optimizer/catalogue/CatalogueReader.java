package foamfront.optimizer.catalogue;

import static foamfront.model.units.Dimension.LINEAR_MASS;
import static foamfront.model.units.Dimension.MONEY;
import static foamfront.model.units.Dimension.NUMBER;
import static foamfront.model.units.Dimension.PACE;
import static foamfront.model.units.Dimension.TIME;

import foamfront.model.parts.Difficulty;
import foamfront.model.parts.Part;
import foamfront.model.parts.Workshop;
import foamfront.model.units.Currency;
import foamfront.optimizer.faults.Fault;
import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.faults.Nearest;
import foamfront.optimizer.faults.StudyException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads a catalogue: a folder of CSV tables, or the one that travels with the program. Faults carry the table's file, line and
 * column; all tables are read before stopping.
 */
public final class CatalogueReader {
    private static final String DEFAULT = "/foamfront/catalogue/";
    private static final String WORKSHOP = "workshop.csv";
    private static final List<Column> WORKSHOP_COLUMNS = List.of(
            Column.of("tape linear mass", LINEAR_MASS),
            Column.of("tape price per m", MONEY),
            Column.of("glue linear mass", LINEAR_MASS),
            Column.of("glue price per kg", MONEY),
            Column.of("linkage price", MONEY),
            Column.of("power fittings price", MONEY),
            Column.of("strap price", MONEY),
            Column.of("band price", MONEY),
            Column.of("harness price", MONEY),
            Column.of("switch price", MONEY),
            Column.of("regulator price", MONEY),
            Column.of("cut rate", PACE),
            Column.of("fold rate", PACE),
            Column.of("glue rate", PACE),
            Column.of("tape rate", PACE),
            Column.of("part time", TIME),
            Column.of("fitting time", TIME),
            Column.of("allowance", NUMBER),
            Column.of("part difficulty", NUMBER),
            Column.of("fold difficulty", NUMBER),
            Column.of("bevel difficulty", NUMBER),
            Column.of("tool difficulty", NUMBER),
            Column.text("provenance"));

    /** Of the tables that travel with the program. */
    public static final Currency STANDARD_CURRENCY = new Currency("USD");

    /** Where a table's bytes come from; null where it has no such table. */
    private interface Source {
        byte @Nullable [] bytes(String file) throws IOException;
    }

    private final Source own;
    private final Prices prices;

    /** Whether the table read last was the folder's. */
    private boolean inFolder;

    private final List<Fault> faults = new ArrayList<>();
    private final Map<String, String> names = new HashMap<>();
    private final MessageDigest digest = sha256();

    /** What {@code own} lacks is the program's. */
    private CatalogueReader(Source own, String folder) {
        this.own = own;
        this.prices = new Prices(folder);
    }

    /** The catalogue that travels with the program. */
    public static Catalogue standard() {
        return new CatalogueReader(file -> null, "").read();
    }

    /** A folder's tables; those it lacks come from the standard catalogue. */
    public static Catalogue folder(Path folder) {
        Source own = file -> {
            Path table = folder.resolve(file);
            if (!Files.isRegularFile(table)) {
                return null;
            }
            try (InputStream in = Files.newInputStream(table)) {
                return in.readNBytes((1 << 20) + 1);
            }
        };
        return new CatalogueReader(own, folder.toString()).read();
    }

    /** The folder {@code catalogue} beside a study file if there is one, otherwise the standard catalogue. */
    public static Catalogue beside(Path study) {
        Path folder = study.resolveSibling("catalogue");
        return Files.isDirectory(folder) ? folder(folder) : standard();
    }

    /**
     * The catalogue of a design file: the folder {@code catalogue} beside it, or that of the folder above, because a club's designs
     * lie below its studies and a run's below its tables; otherwise the standard one.
     */
    public static Catalogue ofDesign(Path design) {
        Path folder = design.toAbsolutePath().normalize().getParent();
        boolean above = folder != null
                && folder.getParent() != null // beside the root folder would be beside wherever the program runs
                && !Files.isDirectory(folder.resolve("catalogue"));
        return beside(folder != null && above ? folder : design);
    }

    private Catalogue read() {
        var boards = table(PartTable.BOARDS);
        var spars = table(PartTable.SPARS);
        var motors = table(PartTable.MOTORS);
        var propellers = table(PartTable.PROPELLERS);
        var fans = table(PartTable.FANS);
        var batteries = table(PartTable.BATTERIES);
        var controllers = table(PartTable.CONTROLLERS);
        var servos = table(PartTable.SERVOS);
        var receivers = table(PartTable.RECEIVERS);
        var wheels = table(PartTable.WHEELS);
        Workshop workshop = workshop();
        faults.addAll(prices.faults());
        if (workshop == null || !faults.isEmpty()) {
            throw new StudyException(faults);
        }
        return new Catalogue(
                boards,
                spars,
                motors,
                propellers,
                fans,
                batteries,
                controllers,
                servos,
                receivers,
                wheels,
                workshop,
                HexFormat.of().formatHex(digest.digest()));
    }

    private <P extends Part> List<P> table(PartTable<P> table) {
        Faults found = new Faults(table.file());
        List<P> parts = new ArrayList<>();
        List<Csv.Line> lines = lines(table.file(), found);
        if (!lines.isEmpty()) {
            Header header = header(table.file(), lines.get(0), table.columns(), found);
            for (Csv.Line line : lines.subList(1, found.any() ? 1 : lines.size())) {
                P part = part(table, new Row(header, line, found), found);
                if (part != null) {
                    parts.add(part);
                }
            }
            if (parts.isEmpty() && !found.any()) {
                found.add(0, 0, "", "the table has no rows", "Add at least one part below the header.");
            }
        }
        faults.addAll(found.all());
        return parts;
    }

    private <P extends Part> @Nullable P part(PartTable<P> table, Row row, Faults found) {
        int before = found.count();
        try {
            P part = table.part().apply(row);
            String other = names.putIfAbsent(Nearest.plain(part.name()), table.file() + ":" + row.number());
            if (other != null) {
                row.fault("name", "'" + part.name() + "' stands already in " + other, "Give each part its own name.");
            }
            return part;
        } catch (IllegalArgumentException e) {
            // A record's constructor refused the figures; cells that could not be read have their own fault already.
            if (found.count() == before) {
                row.fault("", String.valueOf(e.getMessage()), "Correct the figure.");
            }
            return null;
        }
    }

    private @Nullable Workshop workshop() {
        Faults found = new Faults(WORKSHOP);
        List<Csv.Line> lines = lines(WORKSHOP, found);
        Workshop workshop = null;
        if (!lines.isEmpty()) {
            Header header = header(WORKSHOP, lines.get(0), WORKSHOP_COLUMNS, found);
            Currency currency = prices.currency();
            if (lines.size() != 2) {
                found.add(0, 0, "", "the table needs exactly one row below its header", "Keep one row of rates.");
            } else if (!found.any() && currency != null) {
                workshop = workshop(new Row(header, lines.get(1), found), currency, found);
            }
        }
        faults.addAll(found.all());
        return workshop;
    }

    private static @Nullable Workshop workshop(Row row, Currency currency, Faults found) {
        try {
            return new Workshop(
                    currency,
                    row.si("tape linear mass"),
                    row.si("tape price per m"),
                    row.si("glue linear mass"),
                    row.si("glue price per kg"),
                    row.si("linkage price"),
                    row.si("power fittings price"),
                    row.si("strap price"),
                    row.si("band price"),
                    row.si("harness price"),
                    row.si("switch price"),
                    row.si("regulator price"),
                    row.si("cut rate"),
                    row.si("fold rate"),
                    row.si("glue rate"),
                    row.si("tape rate"),
                    row.si("part time"),
                    row.si("fitting time"),
                    row.si("allowance"),
                    new Difficulty(
                            row.si("part difficulty"),
                            row.si("fold difficulty"),
                            row.si("bevel difficulty"),
                            row.si("tool difficulty")));
        } catch (IllegalArgumentException e) {
            if (!found.any()) {
                row.fault("", String.valueOf(e.getMessage()), "Correct the figure.");
            }
            return null;
        }
    }

    private Header header(String file, Csv.Line line, List<Column> columns, Faults found) {
        Header header = file.equals(WORKSHOP)
                ? new Header(line, columns, found, CatalogueReader::lacking)
                : new Header(line, columns, found);
        prices.add(file, inFolder, header);
        return header;
    }

    /** What to do about a column that a workshop's table lacks: of its one row the program's figure can be told. */
    private static String lacking(Column column) {
        String advice =
                "Add it to the header and " + (column.dimension() == MONEY ? "your price" : "its cell") + " to the row";
        try {
            byte[] bytes = packed(WORKSHOP);
            List<Csv.Line> lines = bytes == null ? List.of() : Csv.read(bytes, new Faults(WORKSHOP));
            for (int i = 0; lines.size() == 2 && i < lines.get(0).cells().size(); i++) {
                String head = lines.get(0).cells().get(i);
                if (Header.name(head).equals(column.name())) {
                    return advice + "; the program's table has "
                            + lines.get(1).cells().get(i) + " under '" + head + "'.";
                }
            }
        } catch (IOException e) {
            return advice + "."; // the fault stands without the example
        }
        return advice + ".";
    }

    private List<Csv.Line> lines(String file, Faults found) {
        byte[] bytes = null;
        try {
            bytes = own.bytes(file);
            inFolder = bytes != null;
            if (bytes == null) {
                bytes = packed(file);
            }
        } catch (IOException e) {
            found.add(0, 0, "", "the table cannot be read: " + e.getMessage(), "Check its permissions.");
        }
        if (bytes == null) {
            if (!found.any()) {
                found.add(0, 0, "", "the catalogue lacks this table", "Add it, with its header.");
            }
            return List.of();
        }
        digest.update(file.getBytes(StandardCharsets.UTF_8));
        digest.update(bytes);
        List<Csv.Line> lines = Csv.read(bytes, found);
        if (lines.isEmpty() && !found.any()) {
            found.add(0, 0, "", "the table is empty", "Write its header and rows.");
        }
        return lines;
    }

    private static byte @Nullable [] packed(String file) throws IOException {
        try (InputStream in = CatalogueReader.class.getResourceAsStream(DEFAULT + file)) {
            return in == null ? null : in.readAllBytes();
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
