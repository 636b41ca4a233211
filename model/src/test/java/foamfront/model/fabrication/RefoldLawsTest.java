package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.WingSection;
import foamfront.model.section.SectionShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Folding a pattern up again gives the section that was wished for, at root and tip, whatever the taper, sweep and board. */
class RefoldLawsTest {
    /** What a builder can fold to, m. */
    private static final Offset<Double> FOLDED = within(0.0005);

    private static final int PANELS = 40;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void foldedSkinsCloseToTheirSection(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < PANELS; i++) {
            double t = random.nextDouble(0.003, 0.0055);
            double root = random.nextDouble(0.14, 0.30);
            double tip = root * random.nextDouble(0.6, 1.0);
            double thickness = random.nextDouble(0.08, 0.15);
            WingSection section = random.nextBoolean()
                    ? new WingSection.FoldedFlatBottom(thickness)
                    : new WingSection.FoldedSymmetrical(thickness);
            FoldedPanel panel = new FoldedPanel(
                    Objects.requireNonNull(FoldedSection.of(section)),
                    FoldedPanel.Skins.BOTH,
                    root,
                    tip,
                    random.nextDouble(-0.03, 0.05),
                    random.nextDouble(0.3, 0.7),
                    t,
                    List.of());
            List<PatternLine> edges = edges(panel);
            closes(section, t, root, edges, true);
            closes(section, t, tip, edges, false);
        }
    }

    /** Every line along the span, from the bottom's trailing edge to the top's. */
    private static List<PatternLine> edges(FoldedPanel panel) {
        List<PatternLine> edges = new ArrayList<>();
        Outline o = panel.outline();
        edges.add(new PatternLine(PatternLine.Kind.CUT, o.x(0), o.y(0), o.x(1), o.y(1)));
        for (PatternLine line : panel.lines()) {
            if (line.kind() == PatternLine.Kind.SCORE || line.kind() == PatternLine.Kind.FOLD) {
                edges.add(line);
            }
        }
        edges.add(panel.edges().get(panel.edges().size() - 1));
        return edges;
    }

    /** Facet widths at one end, less how far a facet leans along the span, are the outline's. */
    private static void closes(WingSection section, double t, double chord, List<PatternLine> edges, boolean root) {
        SectionShape shape = SectionShape.of(section, t, chord);
        int n = shape.stations();
        boolean flat = section instanceof WingSection.FoldedFlatBottom;
        List<Double> wished = new ArrayList<>();
        for (int i = n - 1; i > 0 && !flat; i--) {
            wished.add(chord * length(shape.x(i) - shape.x(i - 1), shape.lower(i) - shape.lower(i - 1)));
        }
        if (flat) {
            wished.add(chord);
        }
        wished.add(2 * t);
        for (int i = 1; i < n; i++) {
            wished.add(chord * length(shape.x(i) - shape.x(i - 1), shape.upper(i) - shape.upper(i - 1)));
        }
        assertThat(edges).hasSize(wished.size() + 1);
        for (int i = 0; i < wished.size(); i++) {
            PatternLine a = edges.get(i);
            PatternLine b = edges.get(i + 1);
            double width = root ? length(b.x1() - a.x1(), b.y1() - a.y1()) : length(b.x2() - a.x2(), b.y2() - a.y2());
            assertThat(width).as(section + " facet " + i + " root " + root).isCloseTo(wished.get(i), FOLDED);
        }
    }

    private static double length(double dx, double dz) {
        return Math.sqrt(dx * dx + dz * dz);
    }

    @ParameterizedTest(name = "camber {0}")
    @ValueSource(doubles = {0.02, 0.04, 0.06, 0.08, 0.10})
    void aCurvedPlateBentAtItsScoresHasItsChordAndCamber(double camber) {
        double chord = 0.22;
        double developed = PlateParts.arc(camber) * chord;
        int facets = PlateParts.ARC_SCORES + 1;
        double radius = chord * (0.125 / camber + 0.5 * camber);
        double half = developed / (2 * radius); // the arc's half angle, its length being the board's
        double pitch = developed / facets;

        assertThat(2 * radius * StrictMath.sin(half)).isCloseTo(chord, FOLDED);
        assertThat(radius * (1 - StrictMath.cos(half))).isCloseTo(camber * chord, FOLDED);
        assertThat(radius * (1 - StrictMath.cos(0.5 * pitch / radius)))
                .as("a facet off the arc")
                .isLessThan(0.0005);
        assertThat(SectionShape.of(new WingSection.CurvedPlate(camber), 0.0045, chord)
                        .developedLength())
                .isCloseTo(developed, FOLDED);
    }

    @ParameterizedTest(name = "step {0}")
    @ValueSource(doubles = {0.3, 0.5, 0.7})
    void aSteppedPlateIsTwoBoardsOfItsLengths(double step) {
        double chord = 0.2;
        assertThat(SectionShape.of(new WingSection.SteppedPlate(step), 0.0045, chord)
                        .developedLength())
                .isCloseTo(chord + step * chord, FOLDED);
    }

    @ParameterizedTest(name = "board {0} m")
    @ValueSource(doubles = {0.003, 0.0045, 0.006})
    void thereIsRoomToFoldDownToAFewBoardsOfChord(double board) {
        for (WingSection section : List.of(
                new WingSection.FoldedFlatBottom(0.12),
                new WingSection.FoldedSymmetrical(0.12),
                new WingSection.CurvedPlate(0.06),
                new WingSection.SteppedPlate(0.5))) {
            assertThat(FoldRoom.of(section, board, 40 * board)).isPositive();
            assertThat(FoldRoom.of(section, board, Math.min(0.018, 6 * board)))
                    .as(section.toString())
                    .isNegative();
        }
        assertThat(FoldRoom.of(new WingSection.CurvedPlate(0.12), 0.012, 0.3))
                .isNegative(); // 1.5 mm of foam at each score
    }
}
