package foamfront.model.fabrication;

import foamfront.model.parts.Board;
import foamfront.model.parts.Workshop;
import java.util.List;

/**
 * Everything that is cut or sawn for one aeroplane.
 *
 * @param cut from board
 * @param stock from tubes, rods and strips
 */
public record PartsList(List<CutPart> cut, List<StockPiece> stock) {
    public PartsList {
        cut = List.copyOf(cut);
        stock = List.copyOf(stock);
    }

    /** Board in all parts, m². */
    public double area() {
        double sum = 0;
        for (int i = 0; i < cut.size(); i++) {
            CutPart part = cut.get(i);
            sum += part.area();
        }
        return sum;
    }

    /** Number of cut pieces. */
    public int pieces() {
        int sum = 0;
        for (int i = 0; i < cut.size(); i++) {
            CutPart part = cut.get(i);
            sum += part.count();
        }
        return sum;
    }

    /** Bends and hinges in all pieces. */
    public int folds() {
        int sum = 0;
        for (int i = 0; i < cut.size(); i++) {
            CutPart part = cut.get(i);
            sum += part.count() * part.pattern().folds();
        }
        return sum;
    }

    /** Tape in all, covering included, m. */
    public double tape() {
        double sum = 0;
        for (int i = 0; i < cut.size(); i++) {
            CutPart part = cut.get(i);
            sum += part.tapeLength() + part.coveringLength();
        }
        return sum;
    }

    /** Glue bead in all, m. */
    public double glue() {
        double sum = 0;
        for (int i = 0; i < cut.size(); i++) {
            CutPart part = cut.get(i);
            sum += part.glueLength();
        }
        return sum;
    }

    /** Mass of one kind of part with its glue and tape, kg. */
    public static double mass(CutPart part, Board board, Workshop workshop) {
        return part.area() * board.arealDensity()
                + part.glueLength() * workshop.glueLinearMass()
                + (part.tapeLength() + part.coveringLength()) * workshop.tapeLinearMass();
    }

    /** The largest piece's side over the usable sheet side it must come from; above 1 it cannot be cut. */
    public double sheetFit(Board board) {
        double along = SheetMargins.usable(board.length());
        double across = SheetMargins.usable(board.width());
        double worst = 0;
        for (int i = 0; i < cut.size(); i++) {
            CutPart part = cut.get(i);
            double length = part.pattern().length();
            double width = part.pattern().width();
            double straight = Math.max(length / along, width / across);
            double turned = Math.max(length / across, width / along);
            worst = Math.max(worst, part.grained() ? straight : Math.min(straight, turned));
        }
        return worst;
    }
}
