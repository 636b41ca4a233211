package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Pylon;
import foamfront.model.airframe.TipFloat;
import foamfront.model.airframe.Vents;
import foamfront.model.design.Covering;
import foamfront.model.design.Design;
import foamfront.model.design.FinJoint;
import foamfront.model.design.Nose;
import foamfront.model.design.Power;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.factors.Factors;
import foamfront.model.mission.CarSpace;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Owned;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Board;
import foamfront.model.parts.Difficulty;
import foamfront.model.parts.Workshop;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Money, minutes, consumables and the car. */
class BenchTest {
    private static final double ROUNDING = 1e-9;

    static Stream<Design> all() {
        return TestAeroplanes.all();
    }

    private static Factors factors(double price, double time) {
        return new Factors(1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, price, time);
    }

    private static double cost(Design design, Mission mission, Factors factors) {
        Airframe airframe = Airframe.of(design);
        return BillOfMaterials.cost(airframe, FlatPatterns.of(airframe), 3, mission, factors);
    }

    @ParameterizedTest
    @MethodSource("all")
    void pricesAndMinutesScaleWithTheirFactors(Design design) {
        Mission mission = TestAeroplanes.mission();
        double once = cost(design, mission, Factors.NOMINAL);
        assertThat(cost(design, mission, factors(1.3, 1))).isCloseTo(1.3 * once, within(ROUNDING));
        Airframe airframe = Airframe.of(design);
        PartsList parts = FlatPatterns.of(airframe);
        BuildTime time = BuildTime.of(airframe, parts, mission.workshop(), Factors.NOMINAL);
        BuildTime slow = BuildTime.of(airframe, parts, mission.workshop(), factors(1, 1.7));
        assertThat(slow.total()).isCloseTo(1.7 * time.total(), within(1e-6));
        assertThat(slow.difficulty()).isEqualTo(time.difficulty());
        long slanted = 0;
        for (CutPart part : parts.cut()) {
            slanted += part.count()
                    * part.pattern().lines().stream()
                            .filter(line -> line.kind() == PatternLine.Kind.BEVEL)
                            .count();
        }
        int fitted = FittedParts.count(airframe)
                + SmallFittings.of(airframe).bandSets()
                + SmallFittings.of(airframe).hinges();
        assertThat(time.difficulty())
                .isEqualTo(parts.pieces() + fitted + parts.folds() + 0.5 * slanted + 10 * Tool.count(airframe, parts));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"trainer,1", "plugged in,1", "folding wing,0", "twin,2", "tail wheel,2", "floats,2", "hull,3"})
    void eachUnusualToolCountsOnce(String arrangement, int tools) {
        // Stock spar: saw; two motors: soldering iron; wheels: wire bender; seams in water: brush.
        Airframe airframe = Airframe.of(Arrangements.of(arrangement));
        assertThat(Tool.count(airframe, FlatPatterns.of(airframe))).isEqualTo(tools);
    }

    @Test
    void theClubsOwnPointsCount() {
        Airframe airframe = Airframe.of(Arrangements.of("tail wheel"));
        PartsList parts = FlatPatterns.of(airframe);
        Workshop easy = Records.with(TestAeroplanes.WORKSHOP, "difficulty", new Difficulty(0, 0, 0, 7));
        assertThat(BuildTime.of(airframe, parts, easy, Factors.NOMINAL).difficulty())
                .isEqualTo(2 * 7);
    }

    @Test
    void aFirstTrainerTakesSixToTenHours() {
        // common practice; rates of 1 min per 0.1 m of cut and 1.5 min per 0.1 m of joint belong to that figure
        Airframe airframe = Airframe.of(TestAeroplanes.trainer(1.2));
        BuildTime time = BuildTime.of(airframe, FlatPatterns.of(airframe), TestAeroplanes.WORKSHOP, Factors.NOMINAL);
        assertThat(time.total() / 3600).isBetween(6.0, 10.0);
    }

    @Test
    void ventsAreCutToo() {
        Design plain = TestAeroplanes.trainer(1.2);
        Design strong = Records.scaled(plain, "power.plant.controller.current", 4);
        // Openings four times as large have edges twice as long.
        assertThat(cutting(strong) - cutting(plain))
                .isCloseTo(
                        TestAeroplanes.WORKSHOP.cutRate() * Vents.of(plain).cut(), within(ROUNDING * cutting(plain)));
    }

    private static double cutting(Design design) {
        Airframe airframe = Airframe.of(design);
        PartsList parts = FlatPatterns.of(airframe);
        return BuildTime.of(airframe, parts, TestAeroplanes.WORKSHOP, Factors.NOMINAL)
                .cutting();
    }

    @Test
    void thePylonIsCutAsItStandsInTheStream() {
        Design design = TestAeroplanes.trainer(1.2);
        Airframe airframe = Airframe.of(design);
        Pylon pylon = Pylon.of((Power.Pusher) design.power(), airframe);
        assertThat(FlatPatterns.of(airframe).cut()).anySatisfy(part -> {
            assertThat(part.name()).isEqualTo("pylon");
            assertThat(part.area()).isCloseTo(2 * pylon.meanChord() * pylon.height(), within(ROUNDING));
            assertThat(part.z()).isCloseTo(pylon.footZ() + 0.5 * pylon.height(), within(ROUNDING));
        });
        assertThat(pylon.footZ()).isCloseTo(0.5 * design.body().height(), within(ROUNDING));
    }

    /** What stays on the body as it stands takes the room its tips stand up to: half the span times the slope (derived). */
    @Test
    void dihedralOfAWingThatStaysOnNeedsRoom() {
        Design flat = Records.with(Arrangements.of("trainer"), "wing.planform.dihedral", 0.0);
        Design bent = Records.with(flat, "wing.planform.dihedral", Math.toRadians(20));
        CarSpace car = new CarSpace(3, 3, 0.5, true);
        double tip = 0.5 * Airframe.of(flat).span() * StrictMath.tan(Math.toRadians(20));
        double wing = Airframe.of(bent).wing().panels().get(0).rootZ();
        double stands = tip + wing + thickness(flat) - top(flat);
        assertThat(stands).isPositive();
        double lost = Stowage.of(Airframe.of(flat), car).margin()
                - Stowage.of(Airframe.of(bent), car).margin();
        assertThat(lost).isCloseTo(stands, within(ROUNDING));
    }

    /** Of a folded wing at its longest chord. */
    private static double thickness(Design design) {
        WingSection.FoldedFlatBottom section =
                (WingSection.FoldedFlatBottom) design.wing().build().section();
        return section.thickness() * design.wing().planform().rootChord();
    }

    @Test
    void whatHangsBelowTheBodyCounts() {
        Design flat = Records.with(Arrangements.of("trainer"), "wing.planform.dihedral", 0.0);
        Design bent = Records.with(flat, "wing.planform.dihedral", Math.toRadians(-20));
        Airframe airframe = Airframe.of(bent);
        double tip =
                airframe.wing().panels().get(0).rootZ() - 0.5 * airframe.span() * StrictMath.tan(Math.toRadians(20));
        assertThat(tip).isLessThan(-0.5 * flat.body().height());
        assertThat(BodyBox.height(airframe, true)).isCloseTo(top(flat) - tip, within(ROUNDING));
    }

    @Test
    void aWingThatStaysOnIsAsThickAsItsSection() {
        Design flat = Records.with(Arrangements.of("trainer"), "wing.planform.dihedral", 0.0);
        Design low = Records.with(flat, "tail.fin.height", 0.01);
        Airframe airframe = Airframe.of(low);
        double over = airframe.wing().panels().get(0).rootZ() + thickness(low);
        double belly = Math.max(
                0.5 * low.body().height(), -airframe.stations().stance().groundZ());
        assertThat(over).isGreaterThan(0.5 * low.body().height() + 0.01);
        assertThat(BodyBox.height(airframe, true)).isCloseTo(over + belly, within(ROUNDING));
    }

    /** Track is a fifth of the span from middle to middle of the wheels. */
    @Test
    void wheelsStandApart() {
        Design narrow = Records.with(Arrangements.of("tail wheel"), "tail.plane.span", 0.1);
        Airframe airframe = Airframe.of(narrow);
        double wheel = Objects.requireNonNull(narrow.undercarriage().wheel()).width();
        assertThat(BodyBox.width(airframe, false)).isCloseTo(0.2 * airframe.span() + wheel, within(ROUNDING));
    }

    private static double top(Design design) {
        Airframe airframe = Airframe.of(design);
        return airframe.surfaces().stream()
                .flatMap(surface -> surface.panels().stream())
                .mapToDouble(Panel::tipZ)
                .max()
                .orElseThrow();
    }

    @Test
    void whatLiesInTheDrawerCostsNothing() {
        Design design = TestAeroplanes.trainer(1.2);
        double bare = cost(design, TestAeroplanes.mission(), Factors.NOMINAL);
        Mission servos = TestAeroplanes.mission(new Owned("9 g", 2), new Owned("3S 2200", 1));
        // elevator, rudder and two ailerons: two of four servos and the battery are there
        assertThat(cost(design, servos, Factors.NOMINAL)).isCloseTo(bare - 2 * 4 - 18, within(ROUNDING));
        Mission plenty = TestAeroplanes.mission(new Owned("light 5 mm", 9));
        assertThat(cost(design, plenty, Factors.NOMINAL)).isCloseTo(bare - 3 * 1.5, within(ROUNDING));
    }

    /** Two packs side by side are two of the drawer's, with two straps and a lead between them. */
    @Test
    void packsInParallelAreSinglePacksOnTheBill() {
        Design one = TestAeroplanes.trainer(1.2);
        Battery single = one.power().battery();
        Design two = Records.with(one, "power.plant.battery", single.parallel(2));
        double strap = TestAeroplanes.WORKSHOP.strapPrice();
        double harness = TestAeroplanes.WORKSHOP.harnessPrice();
        double bare = cost(one, TestAeroplanes.mission(), Factors.NOMINAL);
        double both = cost(two, TestAeroplanes.mission(), Factors.NOMINAL);
        Mission owning = TestAeroplanes.mission(new Owned("3S 2200", 2));
        Mission half = TestAeroplanes.mission(new Owned("3S 2200", 1));

        assertThat(two.power().battery().name()).isEqualTo("2 x 3S 2200");
        assertThat(both).isCloseTo(bare + single.price() + strap + harness, within(ROUNDING));
        assertThat(cost(two, owning, Factors.NOMINAL)).isCloseTo(both - 2 * single.price(), within(ROUNDING));
        assertThat(cost(two, half, Factors.NOMINAL)).isCloseTo(both - single.price(), within(ROUNDING));
        // A pack and a harness more to fit.
        assertThat(fitting(two) - fitting(one)).isCloseTo(2 * TestAeroplanes.WORKSHOP.fittingTime(), within(ROUNDING));
    }

    private static double fitting(Design design) {
        Airframe airframe = Airframe.of(design);
        return BuildTime.of(airframe, FlatPatterns.of(airframe), TestAeroplanes.WORKSHOP, Factors.NOMINAL)
                .fitting();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "'horns, pushrods and leads', 3, 2.4",
        "power leads and screws, 1, 1.5",
        "battery strap, 1, 0.4",
        "rubber bands with pegs, 2, 1.0"
    })
    void smallFittingsMayLieInTheDrawer(String name, int count, double saved) {
        Design design = TestAeroplanes.trainer(1.2);
        double bare = cost(design, TestAeroplanes.mission(), Factors.NOMINAL);
        Mission owning = TestAeroplanes.mission(new Owned(name, count));
        assertThat(SmallFittings.NAMES).contains(name);
        assertThat(cost(design, owning, Factors.NOMINAL)).isCloseTo(bare - saved, within(ROUNDING));
    }

    @Test
    void billHoldsOneLineForEveryKindOfPart() {
        Airframe airframe = Airframe.of(TestAeroplanes.all().toList().get(10));
        BillOfMaterials bill =
                BillOfMaterials.of(airframe, FlatPatterns.of(airframe), 5, TestAeroplanes.mission(), Factors.NOMINAL);
        assertThat(bill.lines().stream().map(BillOfMaterials.Line::item))
                .containsExactly(
                        "light 5 mm",
                        "tube 8/6",
                        "tape",
                        "glue",
                        "2212-920",
                        "8x4",
                        "20 A",
                        "3S 2200",
                        "six channels",
                        "9 g",
                        "horns, pushrods and leads",
                        "power leads and screws",
                        "battery strap",
                        "rubber bands with pegs");
        // two halves of 1.1 m are each spliced from a 1 m tube and a rest; rests and joiner share a third
        assertThat(bill.lines().get(1).quantity()).isEqualTo(3);
        assertThat(bill.lines().get(9).quantity()).isEqualTo(4);
    }

    @Test
    void sheetOfTheScalesWeighsWhatItWeighs() {
        // 20 x 30 in, 297.1 g/m²: 115.0 g on a kitchen scale (hobby article on foam boards, 15 June 2013)
        Board board = TestAeroplanes.BOARD;
        CutPart whole = new CutPart(
                "sheet", Assembly.BODY, 1, false, true, new Rectangle(0.762, 0.508), 0, 0, 0, 0, 0, 0, false);
        assertThat(whole.area()).isCloseTo(0.387096, within(1e-9));
        assertThat(PartsList.mass(whole, board, TestAeroplanes.WORKSHOP)).isCloseTo(0.1150, within(0.00005));
    }

    @ParameterizedTest(name = "{0} mm bead")
    @CsvSource({"2,3.0", "3,6.7", "4,11.9", "5,18.7"})
    void roundBeadOfHotMelt(double diameter, double gramsPerMetre) {
        double density = 950; // kg/m³, from memory
        double linear = density * Math.PI / 4 * diameter * diameter * 1e-6;
        CutPart part =
                new CutPart("joint", Assembly.BODY, 2, false, true, new Rectangle(0.1, 0.1), 0.5, 0, 0, 0, 0, 0, false);
        assertThat(1000 * linear * part.glueLength()).isCloseTo(gramsPerMetre, within(0.05));
    }

    @Test
    void coveringTapeWeighsItsArealMass() {
        // 48 mm tape of 2.0 g/m is 41.4 g/m² within the rounding of 2.0
        Design design = TestAeroplanes.all().toList().get(7);
        assertThat(design.covering()).isEqualTo(Covering.BOTH_FACES);
        for (CutPart part : FlatPatterns.of(Airframe.of(design)).cut()) {
            double grams = 1000 * part.coveringLength() * TestAeroplanes.WORKSHOP.tapeLinearMass();
            if (part.covering() > 0) {
                assertThat(grams / (2 * part.area())).isCloseTo(41.4, within(0.05 / 2.0 * 41.4));
            }
        }
    }

    @Test
    void glueAndTapeAreTheUsualShareOfABareAeroplane() {
        Design design = TestAeroplanes.trainer(1.2);
        PartsList parts = FlatPatterns.of(Airframe.of(design));
        double board = parts.area() * design.board().arealDensity();
        double glue = parts.glue() * TestAeroplanes.WORKSHOP.glueLinearMass();
        double tape = 0;
        for (CutPart part : parts.cut()) {
            tape += part.tapeLength() * TestAeroplanes.WORKSHOP.tapeLinearMass();
        }
        // 8 to 15 % of bare board (common practice), a tenth more for a two-bay body with its floor glued on both edges
        assertThat((glue + tape) / board).isBetween(0.08, 0.165);
    }

    @Test
    void wingInHalvesPacksShorter() {
        CarSpace car = TestAeroplanes.CAR;
        List<Design> designs = TestAeroplanes.all().toList();
        Stowage trainer = Stowage.of(Airframe.of(designs.get(0)), car);
        assertThat(trainer.longest()).isCloseTo(1.2, within(ROUNDING));
        Stowage glider = Stowage.of(Airframe.of(designs.get(3)), car);
        assertThat(glider.longest()).isBetween(1.0, 1.2);
        Stowage whole = Stowage.of(Airframe.of(designs.get(3)), new CarSpace(1.1, 0.8, 0.5, true));
        assertThat(whole.longest()).isCloseTo(2.0, within(0.01));
        assertThat(whole.margin()).isNegative();
    }

    @Test
    void aWingFoldedInTwoPacksHalfAsLongAndTwiceAsThick() {
        Design open = Arrangements.of("folding wing");
        Design whole = Records.with(open, "wing.build.joint", WingJoint.ONE_PIECE);
        double span = open.wing().planform().span();
        double chord = open.wing().planform().rootChord();
        double body = Airframe.of(open).body().length();
        CarSpace low = new CarSpace(1.2, 1.0, 0.12 * chord * 1.99, false);

        assertThat(Stowage.of(Airframe.of(whole), TestAeroplanes.CAR).longest()).isCloseTo(span, within(ROUNDING));
        assertThat(Stowage.of(Airframe.of(open), TestAeroplanes.CAR).longest())
                .isCloseTo(Math.max(0.5 * span, body), within(0.05));
        assertThat(Stowage.of(Airframe.of(open), low).margin()).isNegative();
    }

    @Test
    void aFinThatFoldsTakesItsHeightOffTheBody() {
        Design folding = Arrangements.of("folding fin");
        Design fixed = Records.with(folding, "tail.fin.joint", FinJoint.FIXED);
        CarSpace flat = new CarSpace(2, 2, 0.2, true);
        double gained = Stowage.of(Airframe.of(folding), flat).margin()
                - Stowage.of(Airframe.of(fixed), flat).margin();
        assertThat(gained).isBetween(0.10, 0.18);
        // Taped, not glued, along both sides of its root.
        CutPart hinged = fin(folding);
        assertThat(hinged.glue()).isZero();
        assertThat(hinged.tape()).isCloseTo(fin(fixed).glue(), within(ROUNDING));
    }

    @Test
    void floatsPackAsBroadAsTheyStandAndTipFloatsUnderTheWing() {
        CarSpace flat = new CarSpace(3, 3, 0.3, false);
        Design plain = Arrangements.of("trainer");
        Design floats = Records.with(plain, "undercarriage", new Undercarriage.Floats(1.5, 0.10, 0.26));
        assertThat(Stowage.of(Airframe.of(floats), flat).longest()).isCloseTo(1.5, within(ROUNDING));
        // Their outsides stand 0.25 span and a beam apart, broader than the tail.
        CarSpace narrow = new CarSpace(3, 0.45, 3, false);
        assertThat(Stowage.of(Airframe.of(Records.with(floats, "tail.plane.span", 0.3)), narrow)
                        .margin())
                .isCloseTo(0.45 - 0.40, within(ROUNDING));
        assertThat(Stowage.of(Airframe.of(Records.with(floats, "undercarriage.beam", 0.2)), narrow)
                        .margin())
                .isNegative();
        Design hull = Arrangements.of("hull");
        TipFloat tip = Objects.requireNonNull(
                Objects.requireNonNull(Airframe.of(hull).stations().flotation()).tips());
        double low = hull.body().height() + tip.side() + tip.strut() - 0.001;
        Design small = Records.with(hull, "tail.fin.height", 0.01);
        CarSpace shallow = new CarSpace(3, 3, low, false);
        assertThat(Stowage.of(Airframe.of(small), shallow).margin()).isNegative();
    }

    private static CutPart fin(Design design) {
        return FlatPatterns.of(Airframe.of(design)).cut().stream()
                .filter(part -> part.name().equals("fin"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aReplaceableNoseIsAShellOfItsOwn() {
        Design nosed = Records.with(Arrangements.of("two bays"), "body.length", 0.7);
        Design fixed = Records.with(nosed, "body.nose", Nose.FIXED);
        PartsList parts = FlatPatterns.of(Airframe.of(nosed));
        assertThat(parts.cut()).anySatisfy(part -> {
            assertThat(part.name()).isEqualTo("nose");
            assertThat(part.pattern().length()).isCloseTo(nosed.body().nosePiece(), within(ROUNDING));
        });
        // The same shell in two, and two tongues more.
        double tongues = 2 * 0.060 * Airframe.of(nosed).body().insideHeight();
        assertThat(parts.area()).isCloseTo(FlatPatterns.of(Airframe.of(fixed)).area() + tongues, within(ROUNDING));
    }

    @Test
    void smallFittingsArePricedByTheWorkshop() {
        Design plain = TestAeroplanes.trainer(1.2);
        Airframe airframe = Airframe.of(plain);
        SmallFittings small = SmallFittings.of(airframe);
        assertThat(small.linkages()).isEqualTo(4);
        Mission dear = Records.scaled(TestAeroplanes.mission(), "workshop.linkagePrice", 2);
        assertThat(cost(plain, dear, Factors.NOMINAL) - cost(plain, TestAeroplanes.mission(), Factors.NOMINAL))
                .isCloseTo(4 * 0.8, within(ROUNDING));
    }

    @Test
    void roomLeftGrowsWithTheCar() {
        Airframe airframe = Airframe.of(TestAeroplanes.trainer(1.0));
        double small = Stowage.of(airframe, new CarSpace(1.3, 1.2, 0.4, true)).margin();
        double large = Stowage.of(airframe, new CarSpace(1.4, 1.3, 0.5, true)).margin();
        assertThat(large).isCloseTo(small + 0.1, within(ROUNDING));
    }

    /** Two alike, 200 high, over one another in 450: (450 - 400) / 2; by length 100 would be left. */
    @Test
    void twoPiecesShareWhatIsLeft() {
        BoxArrangement boxes = new BoxArrangement();
        boxes.begin(1.0, 0.45, 0.45);
        boxes.add(0.9, 0.4, 0.2);
        boxes.add(0.9, 0.4, 0.2);
        assertThat(boxes.margin()).isCloseTo(0.025, within(ROUNDING));
    }
}
