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

    /**
     * Of a replaceable nose piece, tongue excluded, m: at most a quarter of what it comes off, body or pod (judgement: what a
     * hard landing crushes); 0 of a fixed one.
     */
    default double nosePiece() {
        return nose() == Nose.REPLACEABLE ? Math.min(NOSE_PIECE, 0.25 * bayLength()) : 0;
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

    /** Where that room starts, m from the nose. */
    default double bayFrom() {
        return 0;
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
     * A planing hull: a box with a V bottom under it, stepped, rising behind the step. Its height is that of its sides.
     *
     * @param step position of the step, fraction of length
     * @param deadrise of each half of the bottom, rad
     */
    record BoatHull(double length, double width, double height, Nose nose, double step, double deadrise)
            implements Body {
        private static final double SHALLOW = 0.4; // of the height lost behind the step ends the room inside
        private static final double AFTERBODY = 0.123; // rise over run of the bottom there

        public BoatHull {
            size(length, width, height);
            within("step", step, 0.2, 0.8, "of length");
            within("deadrise", deadrise, 0, 0.6, "rad");
        }

        /** To where the rising bottom has taken four tenths of the height. */
        @Override
        public double bayLength() {
            double rise = SHALLOW * height / AFTERBODY;
            return Math.min(length, step * length + rise);
        }

        /** Behind the bow plate, which leans back at 45 degrees below half the sides' height. */
        @Override
        public double bayFrom() {
            return Math.min(0.5 * height + 0.5 * width * StrictMath.tan(deadrise), 0.5 * length);
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
