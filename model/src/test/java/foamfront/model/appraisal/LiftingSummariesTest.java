package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An appraisal says of every lifting surface of every arrangement what it lifts, how well and where. */
class LiftingSummariesTest {
    static Set<String> arrangements() {
        return Arrangements.all().keySet();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("arrangements")
    void namesEverySurfaceThatLifts(String name) {
        Design design = Arrangements.of(name);
        List<LiftingSummary> said = new Appraiser(List.of())
                .appraise(design, Samples.mission(), Factors.NOMINAL)
                .surfaces();
        List<Surface> lifting = Airframe.of(design).surfaces().stream()
                .filter(surface -> surface.role() != Surface.Role.FIN)
                .toList();

        assertThat(said).hasSize(lifting.size() + 1);
        assertThat(said.get(lifting.size()).name()).isEqualTo("all together");
        for (int i = 0; i < lifting.size(); i++) {
            LiftingSummary summary = said.get(i);
            Surface surface = lifting.get(i);
            String role = surface.role().name().replace('_', ' ');
            assertThat(summary.name()).isEqualToIgnoringCase(role);
            assertThat(summary.area()).isEqualTo(surface.area());
            assertThat(summary.span()).isEqualTo(surface.span());
            // No lone surface lifts more than an ellipse of its span would, nor, level, with less induced drag by 2 %.
            Panel outer = surface.panels().get(surface.panels().size() - 1);
            double most = outer.tipZ() - surface.panels().get(0).rootZ() > 0.2 * outer.tipY() ? 1.1 : 1.02;
            double aspectRatio = surface.aspectRatio();
            assertThat(summary.liftCurveSlope()).isBetween(0.5 * Math.PI, 2 * Math.PI / (1 + 2 / aspectRatio));
            assertThat(summary.spanEfficiency()).isBetween(0.8, most);
            double leading = surface.panels().get(0).rootX()
                    - lifting.get(0).panels().get(0).rootX();
            double last = surface.panels().stream()
                    .mapToDouble(panel -> panel.tipX() + panel.tipChord())
                    .max()
                    .orElseThrow();
            assertThat(summary.neutralPoint())
                    .isBetween(leading, last - lifting.get(0).panels().get(0).rootX());
        }
    }
}
