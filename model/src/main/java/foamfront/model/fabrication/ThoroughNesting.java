package foamfront.model.fabrication;

import foamfront.model.parts.Board;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Nesting for a design somebody will build: some thousand orders tried instead of a handful, and every piece's place given. */
public final class ThoroughNesting {
    private ThoroughNesting() {}

    /**
     * A plan that is never worse than the quick count of {@link SheetNester}.
     *
     * @param seed start of the search's fixed sequence of moves
     * @param tries passes; 16 000 take a tenth of a second for one aeroplane and no longer depend on the seed's luck
     */
    public static SheetPlan of(PartsList parts, Board board, long seed, int tries) {
        SheetPlan plain = of(parts, board, seed, tries, null);
        Offcuts offcuts = plain.sheets() > plain.bound() ? Offcuts.of(parts.cut()) : null;
        if (offcuts == null) {
            return plain;
        }
        SheetPlan filled = of(parts, board, seed, tries, offcuts);
        return filled.sheets() < plain.sheets() ? filled : plain;
    }

    private static SheetPlan of(PartsList parts, Board board, long seed, int tries, @Nullable Offcuts offcuts) {
        RectanglePacker packer = new RectanglePacker();
        SheetItems items = new SheetItems();
        items.load(packer, parts.cut(), board, offcuts);
        new OrderSearch(packer).thorough(seed, tries);
        int bound = SheetBound.of(parts.cut(), board);
        List<Placement> places = new ArrayList<>(parts.pieces());
        for (int i = 0; i < items.size(); i++) {
            Pattern pattern = parts.cut().get(items.part(i)).pattern();
            double along = SheetMargins.RIM + packer.atY[i];
            double across = SheetMargins.RIM + packer.atX[i];
            if (items.pair(i)) {
                addPair(places, items.part(i), pattern, packer.bin[i], along, across, packer.turned[i]);
            } else {
                places.add(new Placement(items.part(i), packer.bin[i], along, across, packer.turned[i], false));
                if (offcuts != null && items.part(i) == offcuts.host()) {
                    for (Offcuts.Laid piece : offcuts.laid()) {
                        places.add(new Placement(
                                piece.part(),
                                packer.bin[i],
                                along + piece.along(),
                                across + piece.across(),
                                piece.turned(),
                                false));
                    }
                }
            }
        }
        int sheets = packer.bins();
        double used = parts.area() / (sheets * board.length() * board.width());
        return new SheetPlan(sheets, bound, used, places);
    }

    /** The second piece lies beyond the first across the piece's width; a turned pair runs back along the sheet. */
    private static void addPair(
            List<Placement> places, int part, Pattern pattern, int sheet, double along, double across, boolean turned) {
        double step = pattern.pairWidth() + SheetMargins.GAP - pattern.width();
        places.add(new Placement(part, sheet, turned ? along + step : along, across, turned, false));
        places.add(new Placement(part, sheet, along, turned ? across : across + step, turned, true));
    }
}
