package foamfront.model.design;

/** What stabilises the aeroplane behind (or on) its wing. */
public sealed interface Tail {
    TailKind kind();

    /** How its fins are joined; fixed where it has none. */
    default FinJoint finJoint() {
        return FinJoint.FIXED;
    }

    /** Stabiliser on the body, fin above it. */
    record Conventional(TailPlane plane, Fin fin) implements Tail {
        @Override
        public FinJoint finJoint() {
            return fin.joint();
        }

        @Override
        public TailKind kind() {
            return TailKind.CONVENTIONAL;
        }
    }

    /** Stabiliser on top of the fin. */
    record TTail(TailPlane plane, Fin fin) implements Tail {
        @Override
        public FinJoint finJoint() {
            return fin.joint();
        }

        @Override
        public TailKind kind() {
            return TailKind.T_TAIL;
        }
    }

    /** Two canted surfaces that are stabiliser and fin at once; their dihedral is the cant. */
    record VTail(TailPlane plane) implements Tail {
        @Override
        public TailKind kind() {
            return TailKind.V_TAIL;
        }
    }

    /** Fins on a tailless wing. */
    record None(Fin fin) implements Tail {
        @Override
        public FinJoint finJoint() {
            return fin.joint();
        }

        @Override
        public TailKind kind() {
            return TailKind.NONE;
        }
    }
}
