package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import foamfront.model.section.SectionShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WebGlueTest {
    private static final int STEPS = 200;
    private static final Sandwich BOARD = Sandwich.of(Examples.BOARD, Factors.NOMINAL);
    private static final WingSpar STRIP = new WingSpar.BoardStrip();

    /** Of the polynomials, per cent. */
    private static final double FITTED = 0.15;

    @ParameterizedTest(name = "h = {0} c")
    @ValueSource(doubles = {1e-5, 0.03, 0.06, 0.09, 0.12, 0.16, 0.2})
    void theWebPassesWhatTwoClosedCellsLeaveIt(double h) {
        assertThat(WebGlue.share(false, h)).isCloseTo(web(h, false), withinPercentage(FITTED));
        assertThat(WebGlue.share(true, h)).isCloseTo(web(h, true), withinPercentage(FITTED));
    }

    @Test
    void atTwelvePerCentItPassesTheStatedShare() {
        assertThat(web(0.12, false)).isCloseTo(0.57, within(5e-3));
        assertThat(web(0.12, true)).isCloseTo(0.64, within(5e-3));
    }

    /**
     * Greatest flow at either end of the web of a closed section of two cells, over V / h: V Q / I from the nose and from the
     * trailing edge towards the web, and in each cell the flow that keeps it from turning, ∮ q ds = 0.
     */
    private static double web(double thickness, boolean symmetrical) {
        double low = symmetrical ? -0.5 * thickness : 0;
        double high = symmetrical ? 0.5 * thickness : thickness;
        double first = SectionShape.FIRST_FOLD;
        double spar = SectionShape.SPAR_STATION;
        double[][] upperNose = {{0, 0}, {first, SectionShape.FIRST_HEIGHT * high}, {spar, high}};
        double[][] lowerNose = {{0, 0}, {first, SectionShape.FIRST_HEIGHT * low}, {spar, low}};
        double[][] upperTail = {{1, 0}, {spar, high}};
        double[][] lowerTail = {{1, 0}, {spar, low}};
        double[][] web = {{spar, high}, {spar, low}};
        double[] sums = new double[3]; // length, first and second moment
        for (double[][] wall : new double[][][] {upperNose, lowerNose, upperTail, lowerTail, web}) {
            walk(wall, 0, 0, sums);
        }
        double middle = sums[1] / sums[0];
        double second = sums[2] - sums[0] * middle * middle;
        double[] a = walk(upperNose, middle, 0, new double[3]);
        double[] b = walk(upperTail, middle, 0, new double[3]);
        double[] c = walk(lowerNose, middle, 0, new double[3]);
        double[] d = walk(lowerTail, middle, 0, new double[3]);
        double[] w = walk(web, middle, a[0] + b[0], new double[3]);
        double nose = a[2] + c[2] + w[2];
        double tail = b[2] + d[2] + w[2];
        double one = c[1] - a[1] - w[1];
        double two = d[1] - b[1] - w[1];
        double determinant = nose * tail - w[2] * w[2];
        double round = (one * tail - two * w[2] + two * nose - one * w[2]) / determinant;
        return Math.max(a[0] + b[0] + round, w[0] + round) * thickness / second;
    }

    /** Q at a wall's end, ∫ Q ds along it and its length, from Q at its start; adds up its length and moments. */
    private static double[] walk(double[][] wall, double middle, double start, double[] sums) {
        double q = start;
        double along = 0;
        double length = 0;
        for (int i = 0; i + 1 < wall.length; i++) {
            double ds = StrictMath.hypot(wall[i + 1][0] - wall[i][0], wall[i + 1][1] - wall[i][1]) / STEPS;
            for (int k = 0; k < STEPS; k++) {
                double z = wall[i][1] + (k + 0.5) / STEPS * (wall[i + 1][1] - wall[i][1]);
                sums[0] += ds;
                sums[1] += z * ds;
                sums[2] += z * z * ds;
                along += (q + 0.5 * (z - middle) * ds) * ds;
                q += (z - middle) * ds;
                length += ds;
            }
        }
        return new double[] {q, along, length};
    }

    @Test
    void aSparTakesItsShareOffTheGlue() {
        WingSection fold = new WingSection.FoldedFlatBottom(0.12);
        WingBeam alone = new WingBeam(BOARD, fold, STRIP, Examples.BEAD);
        WingBeam with = new WingBeam(BOARD, fold, new WingSpar.Stock(Examples.TUBE), Examples.BEAD);
        double share = alone.skinStiffness(0.25) / with.bendingStiffness(0.25);
        assertThat(share).isBetween(0.1, 0.9);
        assertThat(with.glue(0.25) / alone.glue(0.25)).isCloseTo(share, within(1e-12));
    }

    @Test
    void oneBoardHasNothingToGlue() {
        assertThat(new WingBeam(BOARD, new WingSection.FlatPlate(), STRIP, Examples.BEAD).glue(0.2))
                .isZero();
        assertThat(new WingBeam(BOARD, new WingSection.CurvedPlate(0.06), STRIP, Examples.BEAD).glue(0.2))
                .isZero();
    }

    /** Two solid boards one over the other: V Q / I = 1.5 V / h over their height h = 2 t, c wide. */
    @Test
    void aFullStepPassesShearAsOneBlock() {
        double t = 0.005;
        double c = 0.2;
        double modulus = 3e9;
        double block = modulus * c * 8 * t * t * t / 12;
        assertThat(WebGlue.step(1, c, t, modulus * t, block, 1)).isCloseTo(1.5 / (2 * t) / c, within(1e-9));
    }

    @Test
    void aFilletOnEachSideWidensTheGlue() {
        double bead = Examples.BEAD;
        assertThat(GlueBead.underEdge(bead, 4.8e-3)).isCloseTo(8.577e-3, within(5e-7));
        assertThat(GlueBead.flat(bead, 0.03)).isCloseTo(22.63e-3, within(5e-6));
        assertThat(GlueBead.flat(bead, 0.01)).isEqualTo(0.01);
    }
}
