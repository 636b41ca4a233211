package foamfront.model.appraisal;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.factors.Factors;
import foamfront.model.mass.MassGroup;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A model without a motor. */
class GliderTest {
    private static final Design GLIDER = Arrangements.of("glider");

    /** The polar's table is read between its points by a parabola. */
    private static final double READ = 2e-3;

    private final Appraiser appraiser = new Appraiser(List.of());

    private Appraisal of(Design design) {
        return of(design, Samples.mission());
    }

    private Appraisal of(Design design, Mission mission) {
        return appraiser.appraise(design, mission, Factors.NOMINAL);
    }

    @Test
    void whatNeedsAMotorIsNeitherMeasuredNorLimited() {
        Appraisal glider = of(GLIDER);
        for (Measure measure : Measure.motored()) {
            assertThat(glider.measures().of(measure)).as(measure.words()).isNaN();
        }
        assertThat(glider.limits())
                .noneMatch(check -> Measure.motored().contains(check.bound().measure()));
        assertThat(glider.power()).isEmpty();
        assertThat(glider.caveats()).contains(Caveat.STILL_AIR).doesNotContain(Caveat.PROPELLER_RANGE);
        assertThat(glider.bill().lines()).noneMatch(line -> line.item().contains("thin electric"));
    }

    /** Glide and sink from the polar that is shown: least drag, and least power over weight (derived). */
    @Test
    void glideAndSinkAreThoseOfItsPolar() {
        Appraisal glider = of(GLIDER);
        double weight = glider.balance().mass() * GRAVITY;
        double ratio = 0;
        double sink = Double.POSITIVE_INFINITY;
        for (PolarPoint point : glider.polar()) {
            ratio = Math.max(ratio, weight / point.drag());
            sink = Math.min(sink, point.drag() * point.speed() / weight);
        }
        assertThat(glider.measures().of(Measure.GLIDE_RATIO)).isBetween(ratio * (1 - READ), ratio * 1.02);
        assertThat(glider.measures().of(Measure.SINK_RATE)).isBetween(sink * 0.98, sink * (1 + READ));
        // No propeller stands in the stream: better than the same airframe's with its motor stopped.
        assertThat(ratio).isGreaterThan(of(Samples.trainer()).measures().of(Measure.GLIDE_RATIO));
    }

    @Test
    void itCruisesAtItsBestGlideOrAgainstTheWind() {
        Appraisal light = of(GLIDER);
        double ratio =
                light.measures().of(Measure.CRUISE_SPEED) / light.measures().of(Measure.STALL_SPEED);
        assertThat(ratio).isCloseTo(light.measures().of(Measure.CRUISE_RATIO), within(1e-12));
        Mission windy = Records.with(Samples.mission(), "site.wind", 9.0);
        assertThat(of(GLIDER, windy).measures().of(Measure.CRUISE_SPEED)).isCloseTo(1.33 * 9, within(1e-9));
        assertThat(ratio).isGreaterThanOrEqualTo(1.3);
    }

    /** Five times the mean of every servo at once, against a regulator of 3 A or the pack's 30 C (closed form). */
    @Test
    void itsServosAskNoMoreThanRegulatorAndPackGive() {
        Appraisal glider = of(GLIDER);
        int servos = Airframe.of(GLIDER).servos().total();
        double current = GLIDER.radio().receiver().current()
                + 5 * servos * GLIDER.radio().servo().current();
        assertThat(glider.measures().of(Measure.SUPPLY_LOAD)).isCloseTo(current / 3, within(1e-12));
        Design faint = Records.with(GLIDER, "power.battery.rating", 2.0);
        assertThat(of(faint).measures().of(Measure.SUPPLY_LOAD))
                .as("a pack of 450 mAh and 2 C, half believed, gives 0.45 A")
                .isCloseTo(current / 0.45, within(1e-9));
        assertThat(of(faint).limits())
                .anyMatch(check -> check.bound().measure() == Measure.SUPPLY_LOAD && !check.holds());
    }

    /** Over the ground it loses the wind's share of its glide (derived): a quarter is left at 1.33 winds. */
    @Test
    void againstAWindItMustComeHome() {
        Appraisal still = of(GLIDER, Records.with(Samples.mission(), "site.wind", 0.0));
        assertThat(still.measures().of(Measure.WIND_GLIDE))
                .isLessThanOrEqualTo(still.measures().of(Measure.GLIDE_RATIO));
        Appraisal gale = of(GLIDER, Records.with(Samples.mission(), "site.wind", 12.0));
        assertThat(gale.measures().of(Measure.WIND_GLIDE))
                .isLessThan(0.25 * gale.measures().of(Measure.GLIDE_RATIO));
        assertThat(gale.limits()).anyMatch(check -> check.bound().measure() == Measure.WIND_GLIDE && !check.holds());
        assertThat(of(Samples.trainer()).limits())
                .noneMatch(check -> check.bound().measure() == Measure.WIND_GLIDE);
    }

    @Test
    void itWeighsAndCostsWhatItHas() {
        Appraisal glider = of(GLIDER);
        // Strap 5 g, switch and regulator 8 g; no motor, propeller or controller.
        assertThat(glider.masses().mass(MassGroup.POWER)).isCloseTo(0.013, within(1e-12));
        assertThat(glider.masses().battery().mass())
                .isEqualTo(Samples.receiverBattery().mass());
        double dearer = of(Samples.trainer()).bill().cost() - glider.bill().cost();
        assertThat(glider.bill().lines())
                .extracting(BillOfMaterials.Line::item)
                .contains("switch and regulator")
                .doesNotContain("power leads and screws");
        double plant = Samples.motor().price()
                + Samples.propeller().price()
                + Samples.controller().price()
                + Samples.battery().price()
                + Samples.mission().workshop().powerFittingsPrice()
                - Samples.receiverBattery().price()
                - 5;
        assertThat(dearer).isCloseTo(plant, within(0.05));
    }

    /** Thrown faster than it stalls it sinks no more than its glide; too heavy to throw fast enough it drops. */
    @Test
    void aThrowFasterThanItsStallLosesLittleHeight() {
        assertThat(of(GLIDER).measures().of(Measure.LAUNCH_HEIGHT)).isGreaterThan(1.6);
        Design heavy = Records.with(GLIDER, "loads[0].mass", 1.0);
        assertThat(of(heavy).measures().of(Measure.LAUNCH_HEIGHT)).isLessThan(0.8);
    }

    /** 1.4 cruise speeds, whatever the battery's charge. */
    @Test
    void itsStructureIsHeldToADive() {
        Appraisal glider = of(GLIDER);
        double flutter = glider.structure().flutterSpeed();
        double dive = 1.4 * glider.measures().of(Measure.CRUISE_SPEED);
        assertThat(glider.measures().of(Measure.FLUTTER_SPEED)).isCloseTo(flutter / dive, within(1e-12));
    }

    /** An appraiser that flew a motor before remembers nothing of it. */
    @Test
    void noThrustIsLeftOverFromTheAeroplaneBefore() {
        Appraisal fresh = new Appraiser(List.of()).appraise(GLIDER, Samples.mission(), Factors.NOMINAL);
        of(Samples.trainer());
        assertThat(of(GLIDER).measures()).isEqualTo(fresh.measures());
    }

    @Test
    void itsCautionsAreAGliders() {
        assertThat(Caution.of(List.of(GLIDER))).containsExactly(Caution.CAMERA, Caution.GLIDER);
        assertThat(Caution.of(List.of(Samples.trainer()))).doesNotContain(Caution.GLIDER);
    }
}
