package foamfront.model.fabrication;

import foamfront.model.mission.CarSpace;
import java.util.ArrayList;
import java.util.List;

/** From relative positions to places: everything pushed into the space's lower front left corner. */
final class Stower {
    private final List<Piece> pieces;
    private final BoxArrangement boxes;
    private final double growth;

    /** @param growth by which all sides are changed, so that they go in */
    Stower(List<Piece> pieces, BoxArrangement boxes, double growth) {
        this.pieces = pieces;
        this.boxes = boxes;
        this.growth = growth;
    }

    /** A single piece that only goes in turned, and may lie in any attitude. */
    Stowage turned(CarSpace car, double margin) {
        Stowed lies = new Stowed(
                pieces.get(0), boxes.which(0, 2), Stowed.ANYHOW, 0, 0, 0, car.length(), car.width(), car.height());
        return new Stowage(car, List.of(lies), margin);
    }

    Stowage stow(CarSpace car, double margin) {
        List<Stowed> lie = new ArrayList<>(pieces.size());
        double[] space = {car.length(), car.width(), car.height()};
        for (int i = 0; i < pieces.size(); i++) {
            lie.add(boxes.isLayer(i) ? layer(i, space) : box(i));
        }
        return new Stowage(car, lie, margin);
    }

    private Stowed layer(int piece, double[] space) {
        int axis = boxes.across();
        int side = boxes.thick(piece);
        double[] at = new double[3];
        at[axis] = before(piece, axis);
        double[] takes = space.clone();
        takes[axis] = along(piece, axis);
        int up = axis == 2 ? side : shorter(piece, side);
        return new Stowed(pieces.get(piece), up, axis, at[0], at[1], at[2], takes[0], takes[1], takes[2]);
    }

    private int shorter(int piece, int but) {
        int one = (but + 1) % 3;
        int two = (but + 2) % 3;
        return boxes.side(piece, one) <= boxes.side(piece, two) ? one : two;
    }

    private Stowed box(int piece) {
        return new Stowed(
                pieces.get(piece),
                boxes.which(piece, 2),
                Stowed.STRAIGHT,
                before(piece, 0),
                before(piece, 1),
                before(piece, 2),
                along(piece, 0),
                along(piece, 1),
                along(piece, 2));
    }

    private double along(int box, int axis) {
        double side = boxes.isLayer(box) ? boxes.side(box, boxes.thick(box)) : boxes.along(box, axis);
        return Math.max(0, side + growth);
    }

    /** What lies before a box along an axis, in a row of three all of it, otherwise whatever reaches furthest. */
    private double before(int box, int axis) {
        double before = 0;
        boolean row = boxes.count() == 3
                && boxes.apart(0, 1) == axis
                && boxes.apart(0, 2) == axis
                && boxes.apart(1, 2) == axis;
        for (int other = 0; other < boxes.count(); other++) {
            if (other != box && boxes.apart(box, other) == axis && first(other, box, axis)) {
                before = row ? before + along(other, axis) : Math.max(before, along(other, axis));
            }
        }
        return before;
    }

    /** The lower number lies first, unless it alone keeps apart from two that need not keep apart from each other and the body is not it. */
    private boolean first(int one, int two, int axis) {
        if (boxes.count() < 3) {
            return one < two;
        }
        int third = 3 - one - two;
        boolean oneShared = boxes.apart(one, third) == axis;
        boolean twoShared = boxes.apart(two, third) == axis;
        if (oneShared == twoShared || Math.min(one, two) == 0) {
            return one < two;
        }
        return twoShared;
    }
}
