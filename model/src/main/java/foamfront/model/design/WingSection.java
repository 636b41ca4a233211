package foamfront.model.design;

import static foamfront.model.units.Require.within;

/** A wing section as folded from board. Its thickness over the board's own is set by the spar inside. */
public sealed interface WingSection {
    SectionKind kind();

    /** One board, edges rounded. */
    record FlatPlate() implements WingSection {
        @Override
        public SectionKind kind() {
            return SectionKind.FLAT_PLATE;
        }
    }

    /**
     * A plate with a second board on top from the leading edge to the step.
     *
     * @param step where it ends, fraction of chord
     */
    record SteppedPlate(double step) implements WingSection {
        public SteppedPlate {
            within("step", step, 0.2, 0.8, "of chord");
        }

        @Override
        public SectionKind kind() {
            return SectionKind.STEPPED_PLATE;
        }
    }

    /**
     * One board bent to an arc.
     *
     * @param camber greatest height over the chord line, fraction of chord
     */
    record CurvedPlate(double camber) implements WingSection {
        public CurvedPlate {
            within("camber", camber, 0, 0.12, "of chord");
        }

        @Override
        public SectionKind kind() {
            return SectionKind.CURVED_PLATE;
        }
    }

    /**
     * One sheet folded at the leading edge: flat below, straight facets over a spar above.
     *
     * @param thickness outside thickness, fraction of chord
     */
    record FoldedFlatBottom(double thickness) implements WingSection {
        public FoldedFlatBottom {
            within("thickness", thickness, 0.03, 0.25, "of chord");
        }

        @Override
        public SectionKind kind() {
            return SectionKind.FOLDED_FLAT_BOTTOM;
        }
    }

    /**
     * Facets alike above and below a spar.
     *
     * @param thickness outside thickness, fraction of chord
     */
    record FoldedSymmetrical(double thickness) implements WingSection {
        public FoldedSymmetrical {
            within("thickness", thickness, 0.03, 0.25, "of chord");
        }

        @Override
        public SectionKind kind() {
            return SectionKind.FOLDED_SYMMETRICAL;
        }
    }
}
