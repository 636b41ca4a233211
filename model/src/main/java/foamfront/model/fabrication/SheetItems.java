package foamfront.model.fabrication;

import foamfront.model.parts.Board;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rectangles a parts list asks for: each piece's bounding box, tapered pieces two by two head to tail where that saves board.
 * Every box is grown by the gap between parts and so is the sheet.
 */
final class SheetItems {
    private int[] part = new int[64];
    private boolean[] pair = new boolean[64];
    private int n;

    void load(RectanglePacker packer, List<CutPart> parts, Board board) {
        load(packer, parts, board, null);
    }

    /** Without what lies in offcuts. */
    void load(RectanglePacker packer, List<CutPart> parts, Board board, @Nullable Offcuts offcuts) {
        double across = SheetMargins.usable(board.width()) + SheetMargins.GAP;
        packer.clear(across, SheetMargins.usable(board.length()) + SheetMargins.GAP);
        n = 0;
        for (int i = 0; i < parts.size(); i++) {
            CutPart cut = parts.get(i);
            Pattern pattern = cut.pattern();
            double length = pattern.length() + SheetMargins.GAP;
            double width = pattern.width() + SheetMargins.GAP;
            double both = cut.count() > 1 ? pattern.pairWidth() + 2 * SheetMargins.GAP : Double.POSITIVE_INFINITY;
            boolean pairs = both < 2 * width - SheetMargins.GAP && both <= across;
            int left = cut.count() - (offcuts == null ? 0 : offcuts.taken(i));
            while (pairs && left > 1) {
                add(packer, i, true, both, length, !cut.grained());
                left -= 2;
            }
            while (left-- > 0) {
                add(packer, i, false, width, length, !cut.grained());
            }
        }
    }

    private void add(RectanglePacker packer, int i, boolean two, double width, double length, boolean mayTurn) {
        if (n == part.length) {
            part = Arrays.copyOf(part, 2 * n);
            pair = Arrays.copyOf(pair, 2 * n);
        }
        part[n] = i;
        pair[n++] = two;
        packer.add(width, length, mayTurn);
    }

    int size() {
        return n;
    }

    /** Which part rectangle i stands for. */
    int part(int i) {
        return part[i];
    }

    /** Whether rectangle i holds two pieces head to tail. */
    boolean pair(int i) {
        return pair[i];
    }
}
