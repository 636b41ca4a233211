package foamfront.model.section;

import foamfront.model.design.WingSection;
import foamfront.model.design.WingSection.CurvedPlate;
import foamfront.model.design.WingSection.FlatPlate;
import foamfront.model.design.WingSection.FoldedFlatBottom;
import foamfront.model.design.WingSection.FoldedSymmetrical;
import foamfront.model.design.WingSection.SteppedPlate;
import java.util.stream.Stream;

/** Sections that the tests share. */
final class Sections {
    static final double BOARD = 0.005; // m
    static final double CHORD = 0.2; // m

    private Sections() {}

    static Stream<WingSection> everyKind() {
        return Stream.of(
                new FlatPlate(),
                new SteppedPlate(0.4),
                new CurvedPlate(0.03),
                new CurvedPlate(0.06),
                new CurvedPlate(0.12),
                new FoldedFlatBottom(0.06),
                new FoldedFlatBottom(0.105),
                new FoldedFlatBottom(0.15),
                new FoldedFlatBottom(0.25),
                new FoldedSymmetrical(0.03),
                new FoldedSymmetrical(0.10),
                new FoldedSymmetrical(0.18));
    }

    static SectionPolar polar(WingSection section) {
        return SectionPolar.of(section, BOARD, CHORD);
    }

    /** Without a blunt trailing edge to speak of: a fold of paper. */
    static SectionPolar sharp(WingSection section) {
        return SectionPolar.of(section, 1e-9, CHORD);
    }
}
