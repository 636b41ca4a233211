package foamfront.model.fabrication;

import foamfront.model.parts.Board;

/**
 * How many whole sheets a parts list takes, in a few microseconds. Belongs to one worker and owns its scratch arrays; the answer
 * depends on the parts and the board only, not on their order nor on earlier calls.
 */
public final class SheetNester {
    private final RectanglePacker packer = new RectanglePacker();
    private final OrderSearch search = new OrderSearch(packer);
    private final SheetItems items = new SheetItems();

    /** Whole sheets, at least {@link SheetPlan#bound}. */
    public int sheets(PartsList parts, Board board) {
        items.load(packer, parts.cut(), board);
        int sheets = count();
        if (sheets <= 1) {
            return sheets;
        }
        Offcuts offcuts = Offcuts.of(parts.cut());
        if (offcuts == null) {
            return sheets;
        }
        items.load(packer, parts.cut(), board, offcuts);
        return Math.min(sheets, count());
    }

    private int count() {
        return (int) Math.ceil(search.quick(packer.bound()) - Skyline.FLUSH);
    }
}
