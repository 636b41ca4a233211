package foamfront.optimizer.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Power;
import foamfront.model.design.Tail;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.optimizer.faults.StudyException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class DesignReaderTest {
    private static final String SHORT = """
            design: dyke runner
            power: {motor: 2212-920, propeller: 9x4.5 thin electric, battery: 3S 2200, controller: 30 A}
            """;

    private static final String LONG = """
            design: "dyke: runner"
            wing:
              height: high
              span: 1.2 m
              root chord: 200 mm
              taper: 0.8
              dihedral: 3 deg
              incidence: 2 deg
              tip incidence: 1 deg
              leading edge: {x: 250 mm, z: 60 mm}
              breaks: [{at: 0.5, chord: 200 mm, dihedral: 8 deg}]
              section thickness: 11 %
              joint: plug in
              spar: tube 8/6
            tail: {kind: T, span: 420 mm, chord: 120 mm, incidence: -1 deg, x: 850 mm, fin: {height: 170 mm, chord: 130 mm}}
            body: {kind: two-bay tube, length: 900 mm, width: 85 mm, height: 70 mm}
            power: {kind: pusher behind the wing, motor: 2212-920, propeller: 9x4.5 thin electric, battery: 3S 2200, controller: 30 A}
            landing gear: {kind: tail wheel}
            controls: {ailerons: yes, rudder: yes}
            covering: taped edges
            payload: [{name: camera, mass: 30 g, size: 30 mm x 30 mm x 25 mm, place: nose, clear view: 90 deg}]
            """;

    static Design trainer() {
        return read(LONG).design();
    }

    private static final String VEE = SHORT + "tail: {kind: V, chord: 130 mm}\n";

    private static final String TWO = SHORT + "wing: {kind: biplane, span: 950 mm, gap: 170 mm, stagger: 30 mm}\n";

    private static final String WING = SHORT + "wing: {kind: flying wing, sweep: 25 deg, tip incidence: -4 deg}\n";

    private static final String DELTA =
            SHORT + "wing: {kind: one-sheet delta, span: 600 mm}\nbody: {kind: profile board, height: 60 mm}\n";

    private static final String POD = SHORT + "body: {kind: pod and boom, boom: tube 8/6, pod length: 400 mm}\n";

    private static DesignFile read(String text) {
        return DesignReader.read("design.yaml", text.getBytes(StandardCharsets.UTF_8), Fixtures.catalogue());
    }

    @Test
    void packsInParallelAreReadAndWrittenByTheirCount() {
        Design one = read(SHORT).design();
        Design two =
                read(SHORT.replace("battery: 3S 2200", "battery: 2 x 3S 2200")).design();
        assertThat(two.power().battery()).isEqualTo(one.power().battery().parallel(2));
        assertThat(read(DesignWriter.write(two)).design().power().battery())
                .isEqualTo(two.power().battery());
    }

    @Test
    void whatIsMissingFollowsTheWorkshopRulesAndIsListed() {
        DesignFile file = read(SHORT);

        assertThat(file.design().wing().planform().span()).isEqualTo(1.2);
        assertThat(file.design().wing().planform().rootChord()).isEqualTo(0.2);
        assertThat(file.taken())
                .extracting(DesignFile.Taken::toString)
                .contains(
                        "wing.span: 1200 mm (tip to tip; 1.2 m)",
                        "wing.root chord: 200 mm (a sixth of the span)",
                        "wing.spar: board strip (board strip, or a catalogue name; board strip)",
                        "board: white 5 mm (the catalogue's first)");
        assertThat(file.taken()).doesNotHaveDuplicates().hasSizeGreaterThan(40);
    }

    @Test
    void rulesSeeWhatTheFileStates() {
        Design design =
                read(SHORT + "wing: {span: 900 mm}\nbody: {length: 800 mm}\n").design();

        assertThat(design.wing().planform().rootChord()).isEqualTo(0.15);
        assertThat(design.wing().x()).isEqualTo(0.2);
        assertThat(design.tail())
                .isInstanceOfSatisfying(
                        Tail.Conventional.class,
                        tail -> assertThat(tail.plane().x()).isEqualTo(0.71));
    }

    @Test
    void readsEveryKey() {
        Design design = trainer();

        assertThat(design.name()).isEqualTo("dyke: runner");
        assertThat(design.wing()).isInstanceOf(Wing.Monoplane.class);
        assertThat(design.wing().planform().breaks()).hasSize(1);
        assertThat(design.wing().build().spar())
                .isInstanceOfSatisfying(
                        WingSpar.Stock.class,
                        stock -> assertThat(stock.spar().name()).isEqualTo("tube 8/6"));
        assertThat(design.tail()).isInstanceOf(Tail.TTail.class);
        assertThat(design.body()).isInstanceOf(Body.TwoBayTube.class);
        assertThat(design.power()).isInstanceOf(Power.Pusher.class);
        assertThat(design.undercarriage())
                .isInstanceOfSatisfying(
                        Undercarriage.TailWheel.class,
                        gear -> assertThat(gear.wheel().name()).isEqualTo("65 mm"));
        assertThat(design.loads()).hasSize(1);
    }

    @Test
    void aVTailIsItsOwnFinAndStandsUpByItsRule() {
        assertThat(read(VEE).design().tail())
                .isInstanceOfSatisfying(
                        Tail.VTail.class,
                        tail -> assertThat(tail.plane().dihedral())
                                .isEqualTo(Quantities.parse("35 deg", Dimension.ANGLE)));
        assertRefused(
                SHORT + "tail: {kind: V, fin: {height: 100 mm}}\n", "design.yaml:3  tail.fin: a V-tail is its own");
    }

    @Test
    void aBiplaneHasGapAndStaggerAndNoHeight() {
        assertThat(read(TWO).design().wing()).isInstanceOfSatisfying(Wing.Biplane.class, wing -> {
            assertThat(wing.gap()).isEqualTo(0.17);
            assertThat(wing.stagger()).isEqualTo(0.03);
            assertThat(wing.z()).isEqualTo(-0.035);
        });
        assertRefused(SHORT + "wing: {kind: biplane, height: low}\n", "design.yaml:3  wing.height: only a monoplane");
        assertRefused(SHORT + "wing: {gap: 100 mm}\n", "design.yaml:3  wing.gap: only a biplane");
    }

    @Test
    void aFlyingWingHasElevonsTwoFinsAndNoTail() {
        Design wing = read(WING).design();
        assertThat(wing.tail())
                .isInstanceOfSatisfying(
                        Tail.None.class, none -> assertThat(none.fin().count()).isEqualTo(2));
        assertThat(wing.controls().ailerons()).isTrue();
        assertThat(wing.controls().rudder()).isFalse();
        assertRefused(WING + "tail: {span: 300 mm}\n", "design.yaml:4  tail.span: without a tail");
        assertRefused(WING + "tail: {kind: V}\n", "a flying wing or delta has no tail");
    }

    @Test
    void aDeltaIsAFlatPlateWithItsTipsFoldedUp() {
        Design delta = read(DELTA).design();
        assertThat(delta.wing()).isInstanceOf(Wing.Delta.class);
        assertThat(delta.wing().build().section()).isEqualTo(new WingSection.FlatPlate());
        assertThat(delta.wing().planform().dihedral()).isZero();
        assertThat(delta.body().width()).isEqualTo(delta.board().thickness());
        assertThat(delta.tail())
                .isInstanceOfSatisfying(
                        Tail.None.class,
                        none -> assertThat(none.fin().chord())
                                .isCloseTo(delta.wing().planform().tipChord(), within(1e-6)));
        assertThat(DesignWriter.write(read(DesignWriter.write(delta)).design())).isEqualTo(DesignWriter.write(delta));
        assertRefused(DELTA.replace("600 mm", "600 mm, dihedral: 3 deg"), "a one-sheet delta is flat");
        assertRefused(DELTA.replace("height:", "width: 60 mm, height:"), "body.width: a profile board is as wide as");
        assertRefused(DELTA.replace("600 mm", "600 mm, section: curved plate"), "is a flat plate");
    }

    @Test
    void aPodHasABoomThatIsNamed() {
        Design pod = read(POD).design();
        assertThat(pod.body())
                .isInstanceOfSatisfying(
                        Body.PodAndBoom.class,
                        body -> assertThat(body.boom().name()).isEqualTo("tube 8/6"));
        assertThat(DesignWriter.write(read(DesignWriter.write(pod)).design())).isEqualTo(DesignWriter.write(pod));
        assertRefused(POD.replace("boom: tube 8/6, ", ""), "design.yaml:3  body.boom: the key is missing");
        assertRefused(SHORT + "body: {boom: tube 8/6}\n", "design.yaml:3  body.boom: only 'pod and boom' has one");
    }

    @Test
    void inchesAreReadToo() {
        Design design =
                read(SHORT + "body: {width: 3 1/2 in, height: 2.75 in}\n").design();

        assertThat(design.body().width()).isEqualTo(3.5 * 0.0254);
        assertThat(DesignWriter.write(design)).contains("  width: 88.9 mm\n").contains("  height: 69.85 mm\n");
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        for (String file : new String[] {SHORT, LONG, VEE, TWO, WING}) {
            Design design = read(file).design();
            String text = DesignWriter.write(design);

            DesignFile back = read(text);

            assertThat(back.design()).isEqualTo(design);
            assertThat(back.taken()).isEmpty();
            assertThat(DesignWriter.write(back.design())).isEqualTo(text);
        }
    }

    @Test
    void writesForReaders() {
        assertThat(DesignWriter.write(trainer()))
                .startsWith("design: \"dyke: runner\"\nwing:\n  kind: monoplane\n  height: high\n  span: 1200 mm\n")
                .contains("  dihedral: 3 deg\n")
                .contains("  leading edge: {x: 250 mm, z: 60 mm}\n")
                .contains("    size: 30 mm x 30 mm x 25 mm\n");
    }

    @Test
    void hostileNamesSurvive() {
        for (String name : new String[] {
            "a: b # c", "\"q\" \\ {x}", "yes", "é\u2028\ud83d\ude00", "- x", "1", "=1+1", "'", "x\u0085y"
        }) {
            Design good = trainer();
            Design design = new Design(
                    name,
                    good.wing(),
                    good.tail(),
                    good.body(),
                    good.power(),
                    good.undercarriage(),
                    good.controls(),
                    good.board(),
                    good.covering(),
                    good.radio(),
                    good.loads());

            assertThat(read(DesignWriter.write(design)).design().name()).isEqualTo(name);
        }
    }

    @Test
    void refusesWithAdvice() {
        assertRefused(SHORT.replace("2212-920", "2212-900"), "design.yaml:2  power.motor: the catalogue has no motor");
        assertRefused(SHORT.replace("motor: 2212-920, ", ""), "design.yaml:2  power.motor: the key is missing");
        assertRefused(SHORT + "wing: {joint: plug in}\n", "plug-in wing halves slide on a stock spar");
        assertRefused(SHORT + "wing: {span: 12 m}\n", "design.yaml:3  wing.span: 12 m lies outside");
        assertRefused(SHORT + "controls: {rudder: no}\n", "needs ailerons or a rudder");
        assertRefused(SHORT + "controls: {elevator: no}\n", "design.yaml:3  controls.elevator: an aeroplane needs");
        assertRefused(SHORT + "undercarriage: {wheel: 65 mm}\n", "has no wheel");
        assertRefused(SHORT + "wing: {span: 0 mm}\n", "design.yaml:3  wing.span: 0 mm");
        assertRefused(SHORT + "wing: {root chord: NaN}\n", "design.yaml:3  wing.root chord:");
        String tail = "tail: {x: 250 mm, z: 35 mm}\n";
        assertRefused(SHORT + "wing: {leading edge: {x: 225 mm, z: 35 mm}}\n" + tail, "the tail stands in the wing");
        assertRefused(SHORT + "wing: {kind: biplane, gap: 20 mm}\n", "the upper wing stands in the wing");
        assertRefused("", "the file is empty");
    }

    private static void assertRefused(String text, String message) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(StudyException.class).hasMessageContaining(message);
    }
}
