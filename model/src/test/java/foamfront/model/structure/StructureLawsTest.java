package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StructureLawsTest {
    /** Linear in the load but for rounding. */
    private static final double ROUNDING = 1e-9;

    private static FlightLoads loads(double mass, double wingMass) {
        // Fast enough for the pull-up and no gust, so that n = 4 whatever the mass.
        return new FlightLoads(mass, wingMass, 0.03, 1.225, 7, 12, 20, 0, 4.5, 0, 0);
    }

    private static StructureMargins margins(Airframe airframe, FlightLoads loads, Factors factors) {
        return Structure.margins(
                airframe, List.of(SpanLoad.elliptic(0.5 * airframe.span(), 0.5)), loads, Examples.GLUE, factors);
    }

    static WingSection[] sections() {
        return new WingSection[] {
            new WingSection.FlatPlate(),
            new WingSection.SteppedPlate(0.5),
            new WingSection.CurvedPlate(0.06),
            new WingSection.FoldedFlatBottom(0.12),
            new WingSection.FoldedSymmetrical(0.12)
        };
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sections")
    void loadTimesKDividesTheReserveByK(WingSection section) {
        Airframe airframe = airframe(1.2, section);
        StructureMargins one = margins(airframe, loads(0.8, 0), Factors.NOMINAL);
        StructureMargins three = margins(airframe, loads(2.4, 0), Factors.NOMINAL);
        assertThat(three.limitLoad()).isEqualTo(one.limitLoad());
        assertThat(three.wingBending()).isCloseTo(one.wingBending() / 3, withinPercentage(ROUNDING));
        assertThat(three.sparShear()).isCloseTo(one.sparShear() / 3, withinPercentage(ROUNDING));
        assertThat(three.tipDeflection()).isCloseTo(one.tipDeflection() * 3, withinPercentage(ROUNDING));
        assertThat(three.divergenceSpeed()).isEqualTo(one.divergenceSpeed());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sections")
    void aLongerWingIsSofterAndWeaker(WingSection section) {
        StructureMargins before = margins(airframe(0.8, section), loads(0.8, 0.1), Factors.NOMINAL);
        for (double span = 1.0; span < 2.1; span += 0.2) {
            StructureMargins after = margins(airframe(span, section), loads(0.8, 0.1), Factors.NOMINAL);
            assertThat(after.tipDeflection()).isGreaterThan(before.tipDeflection());
            assertThat(after.wingBending()).isLessThan(before.wingBending());
            assertThat(after.divergenceSpeed()).isLessThan(before.divergenceSpeed());
            before = after;
        }
    }

    /** A lifting tail leaves the wing a download; a wing alike above and below bears it like lift. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("sections")
    void aDownloadIsALoad(WingSection section) {
        Airframe airframe = airframe(1.2, section);
        FlightLoads loads = loads(0.8, 0);
        StructureMargins up = margins(airframe, loads, Factors.NOMINAL);
        StructureMargins down = Structure.margins(
                airframe, List.of(SpanLoad.elliptic(0.6, -0.5)), loads, Examples.GLUE, Factors.NOMINAL);
        assertThat(down.wingBending()).isLessThan(StructureMargins.UNLOADED);
        assertThat(down.sparShear()).isCloseTo(up.sparShear(), withinPercentage(ROUNDING));
        assertThat(down.tipDeflection()).isCloseTo(up.tipDeflection(), withinPercentage(ROUNDING));
        if (section instanceof WingSection.FoldedSymmetrical || section instanceof WingSection.FlatPlate) {
            assertThat(down.wingBending()).isCloseTo(up.wingBending(), withinPercentage(ROUNDING));
        }
    }

    @ParameterizedTest(name = "wing {0} kg")
    @ValueSource(doubles = {0.1, 0.3})
    void theWingsOwnMassRelievesIt(double wingMass) {
        Airframe airframe = airframe(1.2, new WingSection.FoldedFlatBottom(0.12));
        StructureMargins heavy = margins(airframe, loads(0.8, 0), Factors.NOMINAL);
        StructureMargins relieved = margins(airframe, loads(0.8, wingMass), Factors.NOMINAL);
        assertThat(relieved.wingBending())
                .isCloseTo(heavy.wingBending() * 0.8 / (0.8 - wingMass), withinPercentage(ROUNDING));
    }

    @ParameterizedTest(name = "factor {0}")
    @ValueSource(doubles = {0.7, 1.3})
    void boardFactorsActOnStrengthAndStiffness(double k) {
        Airframe airframe = airframe(1.2, new WingSection.FoldedFlatBottom(0.12));
        FlightLoads loads = loads(0.8, 0.1);
        StructureMargins nominal = margins(airframe, loads, Factors.NOMINAL);
        StructureMargins stiff = margins(airframe, loads, factors(1, k));
        StructureMargins strong = margins(airframe, loads, factors(k, 1));
        assertThat(stiff.tipDeflection()).isCloseTo(nominal.tipDeflection() / k, withinPercentage(ROUNDING));
        assertThat(stiff.divergenceSpeed())
                .isCloseTo(nominal.divergenceSpeed() * Math.sqrt(k), withinPercentage(ROUNDING));
        // Crushing at 12.5 MPa, wrinkling at 20.8 MPa: the factor acts until wrinkling takes over.
        assertThat(strong.wingBending()).isCloseTo(nominal.wingBending() * k, withinPercentage(ROUNDING));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void everyFigureIsFiniteAndNoneBelowZero(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        WingSection[] sections = sections();
        for (int k = 0; k < 200; k++) {
            WingSpar spar = random.nextBoolean() ? new WingSpar.BoardStrip() : new WingSpar.Stock(Examples.TUBE);
            WingJoint joint = random.nextBoolean() ? WingJoint.ONE_PIECE : WingJoint.PLUG_IN;
            Airframe airframe = Airframe.of(
                    Examples.design(random.nextDouble(0.3, 3), sections[random.nextInt(sections.length)], spar, joint));
            double stall = random.nextDouble(2, 15);
            FlightLoads loads = new FlightLoads(
                    random.nextDouble(0.05, 4),
                    random.nextDouble(0, 2),
                    random.nextDouble(0, 0.2),
                    1.225,
                    stall,
                    stall * random.nextDouble(0.8, 3),
                    stall * random.nextDouble(0.8, 4),
                    random.nextDouble(0, 6),
                    random.nextDouble(2, 6),
                    0,
                    0);
            StructureMargins m = margins(airframe, loads, Factors.NOMINAL);
            double[] figures = {
                m.limitLoad(),
                m.wingBending(),
                m.sparShear(),
                m.joint(),
                m.tipDeflection(),
                m.divergenceSpeed(),
                m.boomDeflection(),
                m.boomBending(),
                m.tailBending(),
                m.servoTorque()
            };
            for (double figure : figures) {
                assertThat(figure).isFinite().isNotNegative();
            }
        }
    }

    private static Factors factors(double strength, double stiffness) {
        return new Factors(1, 1, 1, 1, 1, 1, 1, 1, 1, strength, stiffness, 1, 1, 1, 1);
    }

    private static Airframe airframe(double span, WingSection section) {
        return Airframe.of(Examples.design(span, section, new WingSpar.BoardStrip(), WingJoint.ONE_PIECE));
    }
}
