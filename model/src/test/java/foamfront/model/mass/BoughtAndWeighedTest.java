package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.FlapKind;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.fabrication.FlatPatterns;
import foamfront.model.factors.Factors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is bought is what flies: as many servos and wheels on the bill as in the masses. */
class BoughtAndWeighedTest {
    private static final double ROUNDING = 1e-12;
    private static final double SERVO_FITTED = 0.007; // kg, horn, pushrod and lead

    static Stream<Design> all() {
        Design biplane = Arrangements.of("biplane");
        Design fins = Arrangements.of("flying wing");
        return Stream.concat(
                Arrangements.all().values().stream(),
                Stream.of(
                        Records.with(biplane, "controls.flaps", FlapKind.FLAPS),
                        Records.with(Samples.trainer(), "tail.fin.count", 3),
                        Records.with(fins, "tail.fin.count", 1)));
    }

    @ParameterizedTest
    @MethodSource("all")
    void servos(Design design) {
        double receiver = Math.max(0.005, design.radio().receiver().mass());
        double each = design.radio().servo().mass() + SERVO_FITTED;
        MassBreakdown masses = masses(design);
        // A biplane's upper ailerons hang on wires from the lower ones and have no servo of their own.
        double links = masses.items().stream()
                .filter(item -> item.name().startsWith("link to the upper wing"))
                .mapToDouble(MassItem::mass)
                .sum();
        double radio = masses.mass(MassGroup.RADIO) - links;

        assertThat(radio).isCloseTo(receiver + each * bought(design, "servo 9 g"), within(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("all")
    void wheels(Design design) {
        double weighed = 0;
        for (MassItem item : masses(design).items()) {
            weighed += item.group() == MassGroup.UNDERCARRIAGE && item.name().contains(" wheel") ? item.mass() : 0;
        }

        double wheel = Arrangements.wheel().mass();
        assertThat(weighed)
                .isCloseTo(wheel * bought(design, Arrangements.wheel().name()), within(ROUNDING));
    }

    private static MassBreakdown masses(Design design) {
        Airframe airframe = Airframe.of(design);
        return MassBreakdown.of(airframe, FlatPatterns.of(airframe), Samples.workshop(), Factors.NOMINAL);
    }

    private static double bought(Design design, String name) {
        Airframe airframe = Airframe.of(design);
        return BillOfMaterials.of(airframe, FlatPatterns.of(airframe), 1, Samples.mission(), Factors.NOMINAL)
                .lines()
                .stream()
                .filter(line -> line.item().equals(name))
                .mapToDouble(BillOfMaterials.Line::quantity)
                .sum();
    }
}
