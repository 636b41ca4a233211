package foamfront.model.design;

import static foamfront.model.units.Require.positive;
import static foamfront.model.units.Require.within;

import foamfront.model.parts.Spar;

/** The body, from the nose at x = 0 aft; its axis lies half-way up its height. */
public sealed interface Body {
    BodyKind kind();

    /** Outside length, m. */
    double length();

    /** Outside width, m. */
    double width();

    /** Outside height, m. */
    double height();

    Nose nose();

    /** Of a replaceable nose piece, tongue excluded, m (judgement: what a hard landing crushes); 0 of a fixed one. */
    default double nosePiece() {
        return nose() == Nose.REPLACEABLE ? Math.min(NOSE_PIECE, 0.25 * length()) : 0;
    }

    /** Longest replaceable nose piece, m. */
    double NOSE_PIECE = 0.120;

    /** Room for things inside, from the nose aft, m. */
    default double bayLength() {
        return length();
    }

    /** Outside height where the tail stands, m. */
    default double tailHeight() {
        return height();
    }

    /** A four-sided tube wrapped from one board, one bay for battery and payload. */
    record SquareTube(double length, double width, double height, Nose nose) implements Body {
        public SquareTube {
            size(length, width, height);
        }

        @Override
        public BodyKind kind() {
            return BodyKind.SQUARE_TUBE;
        }
    }

    /** A four-sided tube with a floor along it: the battery slides above, the payload below. */
    record TwoBayTube(double length, double width, double height, Nose nose) implements Body {
        public TwoBayTube {
            size(length, width, height);
        }

        @Override
        public BodyKind kind() {
            return BodyKind.TWO_BAY_TUBE;
        }
    }

    /**
     * A box pod ahead, a stock tube behind, glued in over the pod's last 100 mm (12 to 15 diameters, common practice).
     *
     * @param podLength m
     */
    record PodAndBoom(double length, double width, double height, Nose nose, double podLength, Spar boom)
            implements Body {
        /** How far the boom reaches into the pod, m. */
        public static final double ENGAGED = 0.100;

        public PodAndBoom {
            size(length, width, height);
            positive("pod length", podLength, "m");
        }

        @Override
        public double bayLength() {
            return Math.min(podLength, length);
        }

        @Override
        public double tailHeight() {
            return boom.height();
        }

        /** Of the tube sawn for it, m. */
        public double boomLength() {
            return length - bayLength() + ENGAGED;
        }

        @Override
        public BodyKind kind() {
            return BodyKind.POD_AND_BOOM;
        }
    }

    /** One upright board; its width is the board's thickness. */
    record ProfileBoard(double length, double width, double height, Nose nose) implements Body {
        public ProfileBoard {
            size(length, width, height);
        }

        @Override
        public BodyKind kind() {
            return BodyKind.PROFILE_BOARD;
        }
    }

    /**
     * A planing hull.
     *
     * @param step position of the step, fraction of length
     */
    record BoatHull(double length, double width, double height, Nose nose, double step) implements Body {
        public BoatHull {
            size(length, width, height);
            within("step", step, 0.2, 0.8, "of length");
        }

        @Override
        public BodyKind kind() {
            return BodyKind.BOAT_HULL;
        }
    }

    private static void size(double length, double width, double height) {
        positive("body length", length, "m");
        positive("body width", width, "m");
        positive("body height", height, "m");
    }
}
