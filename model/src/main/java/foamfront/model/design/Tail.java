package foamfront.model.design;

/** What stabilises the aeroplane behind (or on) its wing. */
public sealed interface Tail {
    TailKind kind();

    /** Stabiliser on the body, fin above it. */
    record Conventional(TailPlane plane, Fin fin) implements Tail {
        @Override
        public TailKind kind() {
            return TailKind.CONVENTIONAL;
        }
    }

    /** Stabiliser on top of the fin. */
    record TTail(TailPlane plane, Fin fin) implements Tail {
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
        public TailKind kind() {
            return TailKind.NONE;
        }
    }
}
