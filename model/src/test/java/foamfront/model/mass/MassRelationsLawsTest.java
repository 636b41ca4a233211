package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.fabrication.CutPart;
import foamfront.model.fabrication.FlatPatterns;
import foamfront.model.fabrication.PartsList;
import foamfront.model.factors.Factors;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold between two weighings, over two hundred designs of every arrangement. */
class MassRelationsLawsTest {
    private static final int CASES = 200;

    /** Some hundred terms of order one in double precision. */
    private static final double ROUNDING = 1e-12;

    private record Weighed(Airframe airframe, PartsList parts, MassBreakdown masses, Balance balance) {
        static Weighed of(Design design) {
            Airframe airframe = Airframe.of(design);
            return of(airframe, FlatPatterns.of(airframe));
        }

        static Weighed of(Airframe airframe, PartsList parts) {
            MassBreakdown masses = MassBreakdown.of(airframe, parts, Samples.workshop(), Factors.NOMINAL);
            double neutralPoint = airframe.chordX() + 0.4 * airframe.chord();
            return new Weighed(airframe, parts, masses, Balance.of(masses, airframe, neutralPoint));
        }

        Inertia inertia() {
            return Inertia.of(masses, balance);
        }
    }

    /** A symmetric aeroplane balances on its plane of symmetry, so that nothing rolls, yaws or slips it by itself. */
    @Test
    void everyArrangementIsSymmetric() {
        for (int seed = 0; seed < CASES; seed++) {
            Weighed weighed = Weighed.of(Arrangements.any(seed));
            Inertia inertia = weighed.inertia();
            assertThat(weighed.masses().centreY()).isCloseTo(0, within(ROUNDING));
            assertThat(inertia.xy()).isCloseTo(0, within(ROUNDING));
            assertThat(inertia.yz()).isCloseTo(0, within(ROUNDING));
        }
    }

    /** The mirror image of a lopsided load weighs and pitches the same, and hangs as far over the other side. */
    @Test
    void theMirrorImageHangsOverTheOtherSide() {
        for (int seed = 0; seed < CASES; seed++) {
            MassBreakdown plain = Weighed.of(Arrangements.any(seed)).masses();
            SplittableRandom random = new SplittableRandom(seed);
            double y = random.nextDouble(0.05, 0.5);
            double x = random.nextDouble(0.1, 0.6);
            MassBreakdown right = with(plain, x, y);
            MassBreakdown left = with(plain, x, -y);
            Balance balance = balance(right);
            Balance mirrored = balance(left);
            Inertia one = Inertia.of(right, balance);
            Inertia other = Inertia.of(left, mirrored);
            assertThat(left.centreY()).isCloseTo(-right.centreY(), within(ROUNDING));
            assertThat(right.centreY()).isPositive();
            assertThat(mirrored.x()).isCloseTo(balance.x(), within(ROUNDING));
            assertThat(other.xy()).isCloseTo(-one.xy(), within(ROUNDING));
            assertThat(other.yz()).isCloseTo(-one.yz(), within(ROUNDING));
            assertThat(other.xx()).isCloseTo(one.xx(), within(ROUNDING));
            assertThat(other.zz()).isCloseTo(one.zz(), within(ROUNDING));
            assertThat(other.xz()).isCloseTo(one.xz(), within(ROUNDING));
        }
    }

    private static MassBreakdown with(MassBreakdown plain, double x, double y) {
        List<MassItem> items = new ArrayList<>(plain.items());
        items.add(MassItem.point("camera on a wing", 0.1, x, y, 0.02, MassGroup.PAYLOAD));
        return new MassBreakdown(items, plain.battery());
    }

    private static Balance balance(MassBreakdown masses) {
        return Balance.solve(masses, new BatteryBay(0.05, 0.5, 0.1, 0), 0.9, new Balance.Reference(0.32, 0.2, 0.30));
    }

    /** Two parts cut singly weigh and balance as the same two cut in one go. */
    @Test
    void splittingBoardsChangesNoMassProperty() {
        for (int seed = 0; seed < CASES; seed++) {
            Weighed whole = Weighed.of(Arrangements.any(seed));
            Weighed split = Weighed.of(
                    whole.airframe(),
                    new PartsList(single(whole.parts()), whole.parts().stock()));
            assertThat(split.masses().mass()).isCloseTo(whole.masses().mass(), within(ROUNDING));
            assertThat(split.balance().batteryX()).isCloseTo(whole.balance().batteryX(), within(ROUNDING));
            assertThat(split.balance().x()).isCloseTo(whole.balance().x(), within(ROUNDING));
            assertThat(split.balance().z()).isCloseTo(whole.balance().z(), within(ROUNDING));
            assertThat(split.inertia().xx()).isCloseTo(whole.inertia().xx(), within(ROUNDING));
            assertThat(split.inertia().yy()).isCloseTo(whole.inertia().yy(), within(ROUNDING));
            assertThat(split.inertia().zz()).isCloseTo(whole.inertia().zz(), within(ROUNDING));
        }
    }

    /** Every cut part on its own. */
    static List<CutPart> single(PartsList parts) {
        List<CutPart> split = new ArrayList<>();
        for (CutPart p : parts.cut()) {
            for (int i = 0; i < p.count(); i++) {
                split.add(new CutPart(
                        p.name(),
                        p.assembly(),
                        1,
                        false,
                        p.grained(),
                        p.pattern(),
                        p.glue(),
                        p.tape(),
                        p.covering(),
                        p.x(),
                        p.y(),
                        p.z(),
                        p.fromBalancePoint()));
            }
        }
        return split;
    }

    /** A battery moved forward by dx raises the static margin by its share of the mass times dx over the chord. */
    @Test
    void aBatteryForwardRaisesTheMarginByItsShareOfTheMass() {
        for (int seed = 0; seed < CASES; seed++) {
            Weighed w = Weighed.of(Arrangements.any(seed));
            MassBreakdown masses = w.masses();
            double dx = new SplittableRandom(seed).nextDouble(-0.05, 0.05);
            double x = w.balance().batteryX();
            double aim = w.balance().aim();
            double moved = masses.centreX(x, aim, 0) - masses.centreX(x - dx, aim, 0);
            double share = masses.battery().mass() / masses.mass();
            assertThat(moved / w.airframe().chord())
                    .isCloseTo(share * dx / w.airframe().chord(), within(ROUNDING));
        }
    }
}
