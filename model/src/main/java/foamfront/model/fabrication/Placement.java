package foamfront.model.fabrication;

/**
 * One piece on a sheet. Its bounding box, along the grain and across it, starts at the given corner.
 *
 * @param part index in the parts list
 * @param sheet from 0
 * @param along corner of its box from the sheet's corner, along the sheet's long side, m
 * @param across m
 * @param turned by 90°: the piece's own length lies across the sheet
 * @param reversed by 180° besides, head to tail with its fellow
 */
public record Placement(int part, int sheet, double along, double across, boolean turned, boolean reversed) {
    /** Where a point of the pattern with outline {@code frame} lies along the sheet, m. */
    public double along(Outline frame, double x, double y) {
        return along + (turned ? up(frame, y, !reversed) : right(frame, x, reversed));
    }

    /** Where it lies across the sheet, m. */
    public double across(Outline frame, double x, double y) {
        return across + (turned ? right(frame, x, reversed) : up(frame, y, reversed));
    }

    private static double right(Outline frame, double x, boolean back) {
        return back ? frame.left() + frame.length() - x : x - frame.left();
    }

    private static double up(Outline frame, double y, boolean back) {
        return back ? frame.low() + frame.width() - y : y - frame.low();
    }
}
