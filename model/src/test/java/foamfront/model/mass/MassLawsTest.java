package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.fabrication.CutPart;
import foamfront.model.fabrication.FlatPatterns;
import foamfront.model.fabrication.PartsList;
import foamfront.model.factors.Factors;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MassLawsTest {
    /** Forty terms of order one in double precision. */
    private static final double ROUNDING = 1e-12;

    private static final int CASES = 40;

    private static List<MassItem> items(SplittableRandom random) {
        List<MassItem> items = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            items.add(new MassItem(
                    "thing",
                    random.nextDouble(0.005, 0.3),
                    random.nextDouble(0, 1),
                    random.nextDouble(-0.5, 0.5),
                    random.nextDouble(-0.1, 0.1),
                    random.nextDouble(0, 0.3),
                    random.nextDouble(0, 0.3),
                    random.nextDouble(0, 0.3),
                    i < 2 ? MassGroup.RELEASED : MassGroup.BODY,
                    false));
        }
        return items;
    }

    private static MassBreakdown with(List<MassItem> items) {
        return new MassBreakdown(
                items, new MassItem("battery", 0.2, 0, 0, 0.01, 0.1, 0.03, 0.02, MassGroup.BATTERY, false));
    }

    private static Balance at(MassBreakdown masses, double shift) {
        return Balance.solve(
                masses,
                new BatteryBay(shift, shift + 0.8, 0.1, 0),
                1 + shift,
                new Balance.Reference(0.50 + shift, 0.2, 0.48 + shift));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void addedMassMovesTheCentreTowardsItself(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int k = 0; k < CASES; k++) {
            List<MassItem> items = items(random);
            double before = with(items).centreX(0.3, 0.4, 0);
            double mass = with(items).mass();
            double x = random.nextDouble(-0.2, 1.2);
            items.add(MassItem.point("more", 0.1, x, 0, 0, MassGroup.BODY));
            double after = with(items).centreX(0.3, 0.4, 0);
            assertThat(with(items).mass()).isCloseTo(mass + 0.1, within(ROUNDING));
            assertThat(after - before).isCloseTo((x - before) * 0.1 / (mass + 0.1), within(ROUNDING));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theDatumDoesNotMatter(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int k = 0; k < CASES; k++) {
            List<MassItem> items = items(random);
            List<MassItem> moved = new ArrayList<>();
            for (MassItem i : items) {
                moved.add(new MassItem(
                        i.name(),
                        i.mass(),
                        i.x() + 0.7,
                        i.y(),
                        i.z(),
                        i.length(),
                        i.breadth(),
                        i.height(),
                        i.group(),
                        false));
            }
            Balance a = at(with(items), 0);
            Balance b = at(with(moved), 0.7);
            assertThat(b.marginFull()).isCloseTo(a.marginFull(), within(10 * ROUNDING));
            assertThat(b.marginReleased()).isCloseTo(a.marginReleased(), within(10 * ROUNDING));
            assertThat(b.missingTravel()).isCloseTo(a.missingTravel(), within(10 * ROUNDING));
            Inertia p = Inertia.of(with(items), a);
            Inertia q = Inertia.of(with(moved), b);
            assertThat(q.xx()).isCloseTo(p.xx(), within(ROUNDING));
            assertThat(q.yy()).isCloseTo(p.yy(), within(ROUNDING));
            assertThat(q.zz()).isCloseTo(p.zz(), within(ROUNDING));
            assertThat(q.xz()).isCloseTo(p.xz(), within(ROUNDING));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void inertiaIsPositiveDefiniteAndKeepsTheTriangleInequality(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int k = 0; k < CASES; k++) {
            MassBreakdown masses = with(items(random));
            Inertia i = Inertia.of(masses, at(masses, 0));
            assertThat(i.xx()).isPositive().isLessThanOrEqualTo(i.yy() + i.zz());
            assertThat(i.yy()).isLessThanOrEqualTo(i.xx() + i.zz());
            assertThat(i.zz()).isLessThanOrEqualTo(i.xx() + i.yy());
            assertThat(i.xx() * i.yy() - i.xy() * i.xy()).isPositive();
            double determinant = i.xx() * (i.yy() * i.zz() - i.yz() * i.yz())
                    - i.xy() * (i.xy() * i.zz() + i.yz() * i.xz())
                    - i.xz() * (i.xy() * i.yz() + i.yy() * i.xz());
            assertThat(determinant).isPositive();
        }
    }

    @ParameterizedTest(name = "dx {0}")
    @ValueSource(doubles = {0.01, 0.03, -0.02})
    void batteryForwardRaisesTheMarginByItsShareOfTheMass(double dx) {
        MassBreakdown masses = with(items(new SplittableRandom(7)));
        double chord = 0.2;
        double before = (0.5 - masses.centreX(0.3, 0.4, 0)) / chord;
        double after = (0.5 - masses.centreX(0.3 - dx, 0.4, 0)) / chord;
        assertThat(after - before).isCloseTo(0.2 / masses.mass() * dx / chord, within(ROUNDING));
    }

    @Test
    void splittingABoardChangesNothing() {
        Airframe airframe = Airframe.of(Examples.trainer());
        PartsList whole = FlatPatterns.of(airframe);
        List<CutPart> split = MassRelationsLawsTest.single(whole);
        assertThat(split).hasSizeGreaterThan(whole.cut().size());
        MassBreakdown a = MassBreakdown.of(airframe, whole, Examples.WORKSHOP, Factors.NOMINAL);
        MassBreakdown b =
                MassBreakdown.of(airframe, new PartsList(split, whole.stock()), Examples.WORKSHOP, Factors.NOMINAL);
        Balance one = Balance.of(a, airframe, 0.375);
        Balance two = Balance.of(b, airframe, 0.375);
        assertThat(b.mass()).isCloseTo(a.mass(), within(ROUNDING));
        assertThat(two.batteryX()).isCloseTo(one.batteryX(), within(ROUNDING));
        assertThat(two.z()).isCloseTo(one.z(), within(ROUNDING));
        assertThat(Inertia.of(b, two).yy()).isCloseTo(Inertia.of(a, one).yy(), within(ROUNDING));
        assertThat(Inertia.of(b, two).xx()).isCloseTo(Inertia.of(a, one).xx(), within(ROUNDING));
    }
}
