package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.mission.CarSpace;

/**
 * Whether the pieces of an aeroplane go into the car together. One piece is asked alone, in any attitude ({@link Room}). Several
 * lie with their edges along the car's, exactly ({@link BoxArrangement}). Where they do not go in so, some may lie aslant in a
 * face of the space: each in a layer as thick as its third side, layers on one another, the others straight in what is left. A
 * piece of p by q turned in a face can grow until that face's rectangle is full, so an arrangement with layers leaves the least of
 * that and of what the layers, as boxes without sides in their face, and the others leave (derived). Like a single piece aslant it
 * leaves 0 at most. What would go into the corners beside an aslant piece, layers across different axes and pieces turned about
 * all three axes are not looked for.
 *
 * <p>A kernel: it keeps its columns from one aeroplane to the next. The pieces of the sample trainer take 0.2 µs; those of random
 * designs of the three shipped studies whose wings come off 0.7 to 3.2 on average and 8.5 at most, 12.9 in one run on a busy
 * machine, the longest those that do not go in (measured). Of 20 000 boxes like bodies and wings at random in tight cars 12 398
 * went in with layers across different axes too, 12 183 do without.
 */
public final class CarLoad {
    /** Bisection of how far a rectangle must shrink to turn in another, to 0.1 mm in a metre. */
    private static final int HALVINGS = 14;

    final PackedPieces pieces = new PackedPieces();
    private final BoxArrangement boxes = new BoxArrangement();

    /** Along x, y, z, m. */
    private final double[] space = new double[3];

    /** Of the best arrangement: which side of a piece is across its layer, or {@link #NONE}; and across which axis. */
    private final int[] layer = new int[PackedPieces.MOST];

    private int across;

    private static final int NONE = -1;

    /** While layers are tried. */
    private final int[] tried = new int[PackedPieces.MOST];

    private double margin;

    /** Packs an aeroplane. */
    public void load(Airframe airframe, CarSpace car) {
        pieces.take(airframe, car.assembled());
        pack(car);
    }

    /** Packs the pieces there are. */
    void pack(CarSpace car) {
        margin = pieces.count() == 1
                ? Room.beside(car, pieces.side(0, 0), pieces.side(0, 1), pieces.side(0, 2))
                : together(car);
    }

    /** Longest side of the longest piece, m. */
    public double longest() {
        return pieces.longest();
    }

    /** By how much every side of every piece could grow, m; 0 where one only goes in aslant, negative by what they are too long. */
    public double margin() {
        return margin;
    }

    /** Where everything lies. */
    public Stowage stowage(CarSpace car) {
        begin(car);
        boolean alone = pieces.count() == 1;
        for (int i = 0; i < pieces.count(); i++) {
            if (!alone && layer[i] != NONE) {
                boxes.lay(i, across, layer[i]);
            }
        }
        boolean straight = boxes.margin() >= margin;
        Stower stower = new Stower(pieces.list(), boxes, Math.min(0, margin));
        return alone && !straight ? stower.turned(car, margin) : stower.stow(car, margin);
    }

    private void begin(CarSpace car) {
        space[0] = car.length();
        space[1] = car.width();
        space[2] = car.height();
        boxes.begin(space[0], space[1], space[2]);
        for (int i = 0; i < pieces.count(); i++) {
            boxes.add(pieces.side(i, 0), pieces.side(i, 1), pieces.side(i, 2));
        }
    }

    private double together(CarSpace car) {
        begin(car);
        double best = boxes.margin();
        for (int i = 0; i < pieces.count(); i++) {
            layer[i] = NONE;
            tried[i] = NONE;
        }
        for (int axis = 0; axis < 3 && best < 0; axis++) {
            best = aslant(axis, 0, 0, false, best);
        }
        return best;
    }

    /** The best of all choices of layers across an axis from one piece on, where those before leave no more than a cap. */
    private double aslant(int axis, int piece, double cap, boolean layered, double floor) {
        if (piece == pieces.count()) {
            double found = layered ? Math.min(cap, boxes.margin(floor, cap)) : floor;
            if (found > floor) {
                across = axis;
                System.arraycopy(tried, 0, layer, 0, piece);
                return found;
            }
            return floor;
        }
        double best = aslant(axis, piece + 1, cap, layered, floor);
        for (int side = 0; side < 3 && best < cap; side++) {
            double turned = turned(axis, piece, side, best);
            if (turned > best) {
                boxes.lay(piece, axis, side);
                tried[piece] = side;
                best = aslant(axis, piece + 1, Math.min(cap, turned), true, best);
                tried[piece] = NONE;
                boxes.stand(piece);
            }
        }
        return best;
    }

    /**
     * By how much, 0 at most, a piece's other two sides must change to turn in the face across an axis; a floor or below where that
     * is not enough.
     */
    private double turned(int axis, int piece, int side, double floor) {
        double u = space[(axis + 1) % 3];
        double v = space[(axis + 2) % 3];
        double p = pieces.side(piece, (side + 1) % 3);
        double q = pieces.side(piece, (side + 2) % 3);
        if (pieces.side(piece, side) + floor > space[axis] || !turns(u, v, p, q, floor)) {
            return floor;
        }
        if (turns(u, v, p, q, 0)) {
            return 0;
        }
        double fits = floor;
        double large = 0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (fits + large);
            if (turns(u, v, p, q, middle)) {
                fits = middle;
            } else {
                large = middle;
            }
        }
        return fits;
    }

    private static boolean turns(double u, double v, double p, double q, double change) {
        return Room.flat(u, v, Math.max(0, p + change), Math.max(0, q + change));
    }
}
