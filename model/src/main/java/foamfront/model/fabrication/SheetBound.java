package foamfront.model.fabrication;

import foamfront.model.parts.Board;
import java.util.List;

/**
 * Sheets no nesting can do without: the area of all pieces over the usable sheet, and the pieces no two of which can share a
 * sheet because each is more than half of it both ways. Derived; a tapered piece is left out of the second count.
 */
final class SheetBound {
    private static final double ROUND = 1e-9;

    private SheetBound() {}

    static int of(List<CutPart> parts, Board board) {
        double along = SheetMargins.usable(board.length());
        double across = SheetMargins.usable(board.width());
        double area = 0;
        int large = 0;
        for (int i = 0; i < parts.size(); i++) {
            CutPart part = parts.get(i);
            area += part.area();
            Pattern pattern = part.pattern();
            boolean boxy = pattern.pairWidth() >= 2 * pattern.width();
            boolean straight = 2 * pattern.length() > along && 2 * pattern.width() > across;
            boolean turned = part.grained() || (2 * pattern.length() > across && 2 * pattern.width() > along);
            if (boxy && straight && turned) {
                large += part.count();
            }
        }
        return Math.max(large, (int) Math.ceil(area / (along * across) - ROUND));
    }
}
