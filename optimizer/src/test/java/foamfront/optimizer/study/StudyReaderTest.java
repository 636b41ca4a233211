package foamfront.optimizer.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.Arrangement;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingKind;
import foamfront.model.mission.Bound;
import foamfront.model.mission.CarSpace;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Launch;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Owned;
import foamfront.model.mission.Site;
import foamfront.model.parts.Part;
import foamfront.model.units.Range;
import foamfront.model.units.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StudyReaderTest {
    /** Products of a few doubles. */
    private static final double ROUNDING = 1e-12;

    private static final String EVERY_KEY = """
            Study: towpath
            about: "short: field"
            site: {elevation: -2 m, temperature: 59 degF, surface: long grass, runway: 80 ft, obstacle: 6 ft, wind: 0 m/s, launch: strong}
            payload:
              - {name: seed bags, mass: 200 g to 900 g, density: 400 kg/m3, section: 80 mm x 80 mm, release: in flight}
              - {name: camera, mass: 1 oz, size: 30 mm x 30 mm x 25 mm, place: nose, clear view: 90 deg, power: 2 W}
            car_space: {size: 4 ft 6 in x 2 ft x 1 ft, assembled: yes}
            arrangements:
              wing: [{kind: monoplane, height: [high, shoulder]}]
              tail: [conventional, t]
              body: [square tube, two bay tube]
              power: [nose tractor, pusher behind the wing]
              landing gear: [tail wheel, tricycle]
              covering: taped edges
              wing section: [flat plate, folded flat-bottom]
              wing joint: [one piece, plug in]
              spar: [board strip, stock]
              hold down: [glued]
              controls: [rudder-elevator, ailerons]
            vary: {span: 36 in to 48 in, quarter-chord sweep: 0 deg to 10 deg}
            fix: {taper: 1, body-width: 2 3/4 in}
            boards: [brown 5 mm, White 5 mm]
            motors: 2212-920
            in the drawer: [receiver 6ch, {part: servo 9 g, count: 4}]
            must: {stall speed: at most 8 m/s, climb rate: at least 2.5 m/s, static margin: 8 % to 20 %}
            aim: {most: [payload, endurance], least: build cost}
            show in: inches
            increment: 1/4 in
            search: {evaluations: 1000, seed: 3, population: 40}
            keep from: {design: dyke-runner.yaml, parts: [wing]}
            start from: dyke-runner.yaml
            """;

    @Test
    void readsTheExample() {
        Study study = StudyReader.read(Fixtures.TRAINER);

        assertThat(study.name()).isEqualTo("school trainer");
        assertThat(study.vary()).containsEntry(DesignVariable.SPAN, new Range(0.45, 1.4));
        assertThat(study.aims())
                .containsExactly(
                        new Aim(Measure.PAYLOAD, true),
                        new Aim(Measure.ENDURANCE, true),
                        new Aim(Measure.BUILD_COST, false));
        assertThat(study.arrangements().possible()).hasSize(4);
        assertThat(study.search()).isEqualTo(new SearchSettings(20_000, 8, 200));
        assertThat(study.digest()).matches("[0-9a-f]{64}");
    }

    @ParameterizedTest
    @MethodSource("foamfront.optimizer.study.Fixtures#examples")
    void everyExampleReadsAgainstTheCatalogueBesideIt(Path example) {
        Study study = StudyReader.read(example);

        assertThat(study.arrangements().possible()).isNotEmpty();
        assertThat(study.vary()).containsKey(DesignVariable.SPAN);
    }

    @Test
    void readsEveryKey() {
        Study study = Fixtures.study(EVERY_KEY);

        assertThat(study.name()).isEqualTo("towpath");
        assertThat(study.about()).isEqualTo("short: field");
        Site site = study.site();
        assertThat(site.temperature()).isCloseTo(288.15, within(ROUNDING * 288.15));
        assertThat(site)
                .isEqualTo(new Site(
                        -2,
                        site.temperature(),
                        Ground.LONG_GRASS,
                        80 * 0.3048,
                        6 * 0.3048,
                        0,
                        0,
                        0,
                        30,
                        Launch.STRONG));
        assertThat(study.carSpace())
                .isEqualTo(new CarSpace(
                        Unit.FOOT.toSi(4) + Unit.INCH.toSi(6), Unit.FOOT.toSi(2), Unit.FOOT.toSi(1), true));
        assertThat(study.arrangements().wings())
                .containsExactly(
                        new WingChoice(WingKind.MONOPLANE, WingHeight.HIGH),
                        new WingChoice(WingKind.MONOPLANE, WingHeight.SHOULDER));
        assertThat(study.vary().keySet()).containsExactly(DesignVariable.SPAN, DesignVariable.SWEEP);
        assertThat(study.fixed()).containsEntry(DesignVariable.BODY_WIDTH, Unit.INCH.toSi(2.75));
        assertThat(study.stock().boards()).extracting(Part::name).containsExactly("white 5 mm", "brown 5 mm");
        assertThat(study.stock().motors()).extracting(Part::name).containsExactly("2212-920");
        assertThat(study.stock().batteries()).isEqualTo(Fixtures.catalogue().batteries());
        assertThat(study.drawer()).containsExactly(new Owned("receiver 6ch", 1), new Owned("servo 9 g", 4));
        assertThat(study.showIn()).isEqualTo(ShowIn.INCHES);
        assertThat(study.increment()).isEqualTo(Unit.INCH.toSi(0.25));
        assertThat(study.search()).isEqualTo(new SearchSettings(1000, 3, 40));
        assertThat(study.keepFrom()).isEqualTo(new KeepFrom("dyke-runner.yaml", List.of("wing")));
        assertThat(study.startFrom()).isEqualTo("dyke-runner.yaml");
    }

    @Test
    void whatIsThrownTakesNoRoomToTakeOff() {
        String thrown = """
                study: ridge
                arrangements: {undercarriage: none}
                vary: {span: 1 m to 2 m}
                aim: {most: [payload], least: [take-off distance]}
                """;
        assertThat(Fixtures.refusal(thrown)).contains("nothing offered takes off from ground or water");
        assertThat(Fixtures.study(thrown.replace("none", "[none, tricycle]")).aims())
                .hasSize(2);
    }

    @Test
    void whatHasNoMotorHasNoEndurance() {
        String glider = """
                study: ridge
                arrangements: {power: none}
                vary: {span: 1 m to 2 m}
                must: {climb rate: at least 1 m/s, sink rate: at most 1 m/s}
                aim: {most: [glide ratio, endurance]}
                batteries: [3S 2200]
                """;
        assertThat(Fixtures.refusal(glider))
                .contains("power none has no endurance", "power none has no climb rate", "at most 2 cells")
                .doesNotContain("no sink rate", "no glide ratio");
        assertThat(Fixtures.study(glider.replace("power: none", "power: [none, nose tractor]")
                                .replace("batteries: [3S 2200]\n", ""))
                        .arrangements()
                        .possible())
                .hasSizeGreaterThan(1);
    }

    @Test
    void aDrawerHoldsSinglePacksAndSmallThingsToo() {
        Study study = Fixtures.study(EVERY_KEY.replace(
                "[receiver 6ch, {part: servo 9 g, count: 4}]",
                "[{part: 2 x 3S 2200, count: 2}, Battery-strap, {part: \"horns, pushrods and leads\", count: 6}]"));

        assertThat(study.drawer())
                .containsExactly(
                        new Owned("3S 2200", 4),
                        new Owned("battery strap", 1),
                        new Owned("horns, pushrods and leads", 6));
        assertThat(Fixtures.refusal(EVERY_KEY.replace("[receiver 6ch, {part", "[3S 2200, 2 x 3S 2200, {part")))
                .contains("'3S 2200' is listed twice");
        assertThat(Fixtures.refusal(EVERY_KEY.replace("[receiver 6ch, {part", "[battery strip, {part")))
                .contains("the catalogue has no part 'battery strip'")
                .contains("Did you mean 'battery strap'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG"})
    void theCountryMakesNoDifference(String tag) {
        Study here = Fixtures.study(EVERY_KEY);
        String refusalHere = Fixtures.refusal(EVERY_KEY.replace("80 ft", "80000 ft"));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(Fixtures.study(EVERY_KEY)).isEqualTo(here);
            assertThat(Fixtures.study(EVERY_KEY.replace("site:", "SITE:").replace("fix:", "FIX:"))
                            .fixed())
                    .isEqualTo(here.fixed());
            assertThat(Fixtures.refusal(EVERY_KEY.replace("80 ft", "80000 ft"))).isEqualTo(refusalHere);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void layoutsAreEveryPossibleCombination() {
        Arrangements arrangements = Fixtures.study(EVERY_KEY).arrangements();

        List<Arrangement> possible = arrangements.possible();

        assertThat(arrangements.count()).isEqualTo(512);
        assertThat(possible).doesNotHaveDuplicates().hasSize(384); // plug in with a board strip falls out
    }

    @Test
    void aHeavierLoadIsLonger() {
        PayloadItem bags = Fixtures.study(EVERY_KEY).payload().get(0);

        Load load = Objects.requireNonNull(bags.at(0.512));

        assertThat(bags.searched()).isTrue();
        assertThat(load.length()).isCloseTo(0.2, within(ROUNDING));
        assertThat(load.released()).isTrue();
        assertThat(load.place()).isEqualTo(Place.BALANCE_POINT);
        assertThat(bags.at(0)).isNull();
    }

    @Test
    void aStatedRunwayLimitsTheTakeOffInPlaceOfAHundredMetres() {
        Mission stated = Fixtures.study(EVERY_KEY).mission(Fixtures.catalogue().workshop());
        assertThat(stated.limits().of(Measure.TAKE_OFF_DISTANCE))
                .extracting(Bound::high)
                .isEqualTo(80 * 0.3048);

        String silent = EVERY_KEY.replace(" runway: 80 ft,", "");
        Mission open = Fixtures.study(silent).mission(Fixtures.catalogue().workshop());
        assertThat(open.limits().of(Measure.TAKE_OFF_DISTANCE))
                .extracting(Bound::high)
                .isEqualTo(100.0);

        String own = EVERY_KEY.replace("must: {", "must: {take-off distance: at most 15 m, ");
        Mission shorter = Fixtures.study(own).mission(Fixtures.catalogue().workshop());
        assertThat(shorter.limits().of(Measure.TAKE_OFF_DISTANCE))
                .extracting(Bound::high)
                .isEqualTo(15.0);
    }

    @Test
    void theMissionHoldsTheStandingLimitsToo() {
        Mission mission = Fixtures.study(EVERY_KEY).mission(Fixtures.catalogue().workshop());

        assertThat(mission.limits().of(Measure.STALL_SPEED))
                .isEqualTo(Bound.atMost(Measure.STALL_SPEED, 8, "the study's own"));
        assertThat(mission.limits().of(Measure.ENDURANCE)).isNotNull();
        assertThat(mission.owned("servo 9 g")).isEqualTo(4);
    }
}
