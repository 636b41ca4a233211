package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Covering;
import foamfront.model.design.Design;
import foamfront.model.fabrication.BuildTime;
import foamfront.model.fabrication.CutPart;
import foamfront.model.fabrication.FlatPatterns;
import foamfront.model.fabrication.PartsList;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Workshop;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Covering more of the board, on every arrangement: bare, taped edges, one face, both faces. */
class CoveringLawsTest {
    private static final double ROUNDING = 1e-12;

    /** Film of 56 kN/m on both faces of paper of 450 kN/m stiffens by an eighth, and draws as much more load to glue and web, per cent. */
    private static final double DRAWN = 13;

    private static final double TAPE = 0.048;

    static Set<String> names() {
        return Arrangements.all().keySet();
    }

    private static Design covered(String name, Covering covering) {
        return Records.with(Arrangements.of(name), "covering", covering);
    }

    private static PartsList parts(String name, Covering covering) {
        return FlatPatterns.of(Airframe.of(covered(name, covering)));
    }

    /** A tape's width covers its length in metres; a hull's bottom has a film anyway. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void patternsAndMetresOfTapeAgree(String name) {
        PartsList bare = parts(name, Covering.BARE);
        PartsList one = parts(name, Covering.ONE_FACE);
        PartsList both = parts(name, Covering.BOTH_FACES);
        double skins = 0;
        double wet = 0;
        for (int i = 0; i < one.cut().size(); i++) {
            CutPart part = one.cut().get(i);
            skins += part.coveringLength() > 0 ? part.area() : 0;
            wet += bare.cut().get(i).coveringLength();
        }
        assertThat(skins).isPositive();
        assertThat(one.tape() - bare.tape() + wet).isCloseTo(skins / TAPE, withinPercentage(1e-9));
        assertThat(both.tape() - one.tape()).isCloseTo(skins / TAPE, withinPercentage(1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void moreCoveringWeighsAndTakesMore(String name) {
        Workshop workshop = Samples.workshop();
        double mass = 0;
        double time = 0;
        double tape = 0;
        for (Covering covering : Covering.values()) {
            Airframe airframe = Airframe.of(covered(name, covering));
            PartsList parts = FlatPatterns.of(airframe);
            double heavier = 0;
            for (CutPart part : parts.cut()) {
                heavier += PartsList.mass(part, airframe.design().board(), workshop);
            }
            double longer =
                    BuildTime.of(airframe, parts, workshop, Factors.NOMINAL).total();
            double metres = parts.tape() - tape;
            if (covering != Covering.BARE) {
                assertThat(metres).as("%s", covering).isPositive();
                assertThat(heavier - mass).isCloseTo(metres * workshop.tapeLinearMass(), within(ROUNDING));
                assertThat(longer - time).isCloseTo(metres * workshop.tapeRate(), within(1e-6));
            }
            mass = heavier;
            time = longer;
            tape = parts.tape();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void moreCoveringIsStifferAndNoWeaker(String name) {
        StructureMargins less = margins(covered(name, Covering.BARE));
        assertThat(margins(covered(name, Covering.TAPED_EDGES))).isEqualTo(less);
        for (Covering covering : List.of(Covering.ONE_FACE, Covering.BOTH_FACES)) {
            StructureMargins more = margins(covered(name, covering));
            assertThat(more.wingBending()).isGreaterThanOrEqualTo(less.wingBending() * (1 - ROUNDING));
            assertThat(more.tailBending()).isGreaterThanOrEqualTo(less.tailBending());
            assertThat(more.boomBending()).isGreaterThanOrEqualTo(less.boomBending());
            assertThat(more.joint()).isGreaterThanOrEqualTo(less.joint());
            assertThat(more.tipDeflection()).isLessThan(less.tipDeflection());
            assertThat(more.boomDeflection()).isLessThanOrEqualTo(less.boomDeflection());
            assertThat(more.divergenceSpeed()).isGreaterThan(less.divergenceSpeed());
            assertThat(more.flutterSpeed()).isGreaterThan(less.flutterSpeed());
            assertThat(more.sparShear()).isGreaterThan(less.sparShear() / (1 + 0.01 * DRAWN));
            assertThat(more.webGlue()).isGreaterThan(less.webGlue() / (1 + 0.01 * DRAWN));
            less = more;
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void aCoveredBottomIsNoWeaker(String name) {
        double less = 0;
        for (Covering covering : List.of(Covering.BARE, Covering.ONE_FACE, Covering.BOTH_FACES)) {
            Airframe airframe = Airframe.of(covered(name, covering));
            Flotation flotation = airframe.stations().flotation();
            if (flotation != null) {
                double more = WaterLanding.of(airframe, flotation, 1, 8, Factors.NOMINAL)
                        .reserve();
                assertThat(more).isGreaterThanOrEqualTo(less);
                less = more;
            }
        }
    }

    private static StructureMargins margins(Design design) {
        Airframe airframe = Airframe.of(design);
        int wings = (int) airframe.surfaces().stream().filter(Surface::isWing).count();
        List<SpanLoad> spans = Collections.nCopies(wings, SpanLoad.elliptic(0.5 * airframe.span(), 0.5 / wings));
        FlightLoads loads = new FlightLoads(0.8, 0.18, 0.035, 1.225, 7, 12, 20, 4, 4.5, 0, 0);
        return Structure.margins(airframe, spans, loads, Samples.workshop().glueLinearMass(), Factors.NOMINAL);
    }
}
