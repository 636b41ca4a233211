package foamfront.model.fabrication;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Small pieces laid into what a delta leaves of its own rectangle: ahead of its leading edges and behind its trailing edges, on both
 * sides. Each such corner deepens outwards. Its pieces stand in rows from the rectangle's side inwards, the largest pieces first, each
 * in the first row that has room for it (shelf packing, first fit by falling size; common practice).
 */
final class Offcuts {
    /** One piece: where its box begins in the delta's own rectangle, along the grain and across. */
    record Laid(int part, double along, double across, boolean turned) {}

    /** A row of a corner: from where it is deep enough, and how far it is filled. */
    private static final class Row {
        final double depth;
        final double height;
        double filled;

        Row(double depth, double height) {
            this.depth = depth;
            this.height = height;
        }
    }

    private final int host;
    private final DeltaSheet sheet;
    private final List<Laid> laid = new ArrayList<>();
    private final int[] taken;

    private Offcuts(int host, DeltaSheet sheet, int parts) {
        this.host = host;
        this.sheet = sheet;
        taken = new int[parts];
    }

    /** Filled offcuts of the delta among the parts; null where there is none or nothing fits. */
    static @Nullable Offcuts of(List<CutPart> parts) {
        for (int i = 0; i < parts.size(); i++) {
            DeltaSheet delta = delta(parts.get(i));
            if (delta != null) {
                Offcuts offcuts = new Offcuts(i, delta, parts.size());
                offcuts.fill(parts);
                return offcuts.laid.isEmpty() ? null : offcuts;
            }
        }
        return null;
    }

    private static @Nullable DeltaSheet delta(CutPart part) {
        Pattern pattern = part.pattern() instanceof SparSeat seat ? seat.piece() : part.pattern();
        return part.count() == 1 && pattern instanceof DeltaSheet sheet ? sheet : null;
    }

    /** Which part leaves them. */
    int host() {
        return host;
    }

    /** How many pieces of a part lie in them. */
    int taken(int part) {
        return taken[part];
    }

    List<Laid> laid() {
        return laid;
    }

    private void fill(List<CutPart> parts) {
        List<Integer> order = new ArrayList<>(parts.size());
        for (int i = 0; i < parts.size(); i++) {
            if (i != host) {
                order.add(i);
            }
        }
        order.sort(Comparator.comparingDouble((Integer i) -> -size(parts.get(i)))
                .thenComparingDouble(i -> parts.get(i).pattern().length())
                .thenComparing(i -> parts.get(i).grained()));
        List<List<Row>> corners = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (int i : order) {
            CutPart part = parts.get(i);
            while (taken[i] < part.count() && place(corners, i, part)) {
                taken[i]++;
            }
        }
    }

    private static double size(CutPart part) {
        return part.pattern().length() * part.pattern().width();
    }

    private boolean place(List<List<Row>> corners, int i, CutPart part) {
        double length = part.pattern().length();
        double width = part.pattern().width();
        for (int c = 0; c < corners.size(); c++) {
            if (place(corners.get(c), c, i, length, width, false)
                    || (!part.grained() && place(corners.get(c), c, i, width, length, true))) {
                return true;
            }
        }
        return false;
    }

    /** In the first row of corner {@code c} that has room, else in a new one. */
    private boolean place(List<Row> rows, int c, int i, double along, double across, boolean turned) {
        double u = along + SheetMargins.GAP;
        double v = across + SheetMargins.GAP;
        for (Row row : rows) {
            if (v <= row.height && clear(c, row.filled + u) >= row.depth + v) {
                lay(row, c, i, along, across, turned);
                return true;
            }
        }
        double depth = rows.isEmpty() ? 0 : rows.get(rows.size() - 1).depth + rows.get(rows.size() - 1).height;
        if (clear(c, u) < depth + v) {
            return false;
        }
        Row row = new Row(depth, v);
        rows.add(row);
        lay(row, c, i, along, across, turned);
        return true;
    }

    private void lay(Row row, int c, int i, double along, double across, boolean turned) {
        double x = c % 2 == 0 ? row.filled : sheet.length() - row.filled - along;
        double y = c < 2 ? sheet.width() - row.depth - across : row.depth;
        laid.add(new Laid(i, x, y, turned));
        row.filled += along + SheetMargins.GAP;
    }

    /** Depth that is clear from the rectangle's side up to {@code in} from it; corners 0 and 1 lie ahead, 2 and 3 behind. */
    private double clear(int c, double in) {
        double out = 0.5 * sheet.length() - in;
        return out <= 0 ? 0 : c < 2 ? sheet.clearAhead(out) : sheet.clearBehind(out);
    }
}
