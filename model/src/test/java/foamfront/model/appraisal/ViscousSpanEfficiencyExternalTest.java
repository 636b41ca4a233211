package foamfront.model.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import foamfront.model.design.Wing;
import foamfront.model.factors.Factors;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * C_D = C_D0 + C_L² / π A e fitted to trimmed complete aeroplanes: both come out of the strips, neither is typed in. A is the span
 * squared over the whole wing area.
 */
class ViscousSpanEfficiencyExternalTest {
    private static final double VISCOSITY = 1.46e-5; // m²/s
    private static final double LOWEST = 60e3;
    private static final double HIGHEST = 200e3;

    private static final Validation COMPLETE = Validation.of(
            Subject.DRAG,
            "Complete aeroplanes at Re 60 000 to 200 000",
            "Span efficiency below 0.9: G. R. Spedding and J. McArthur, J. Aircraft 47 (2010), and G. K. Ananda, P. P. Sukumar and"
                    + " M. S. Selig (2015), abstracts; C_D0 of sheet-foam models 0.025 to 0.07 (from memory). Least squares"
                    + " over trimmed level flight. A curved plate's section drags least near a lift coefficient of 0.6, so that its"
                    + " drag falls where a parabola rises; floats and a hull carry wetted area, struts and wheels that the"
                    + " range's aeroplanes on wheels do not.");

    @Test
    void completeAeroplanes() {
        for (Map.Entry<String, Design> one : Arrangements.all().entrySet()) {
            if (one.getValue().wing() instanceof Wing.Delta) {
                // Vortices carry it: no parabola, and its long chord leaves this range at once.
                continue;
            }
            Appraisal found = new Appraiser(List.of()).appraise(one.getValue(), Samples.mission(), Factors.NOMINAL);
            List<PolarPoint> points = inRange(found);
            double[] line = line(points);
            double aspectRatio = found.airframe().span()
                    * found.airframe().span()
                    / found.airframe().area();
            double e = 1 / (Math.PI * aspectRatio * line[1]);
            assertThat(points).hasSizeGreaterThan(5);
            // Two wings share the lift, so frictionless flow gives them more than 1 on their whole area: seen against
            // that.
            boolean two = one.getKey().equals("biplane");
            double ideal =
                    two ? found.surfaces().get(found.surfaces().size() - 1).spanEfficiency() : 1;
            String name = "span efficiency, " + one.getKey() + (two ? ", over frictionless" : "");
            if (one.getKey().equals("curved plate")) {
                // Its section drags least at a lift of 0.6, so that drag falls where a parabola has it rise.
                COMPLETE.outside(name, 0, 0.9, e / ideal, "");
            } else {
                COMPLETE.band(name, 0, 0.9, e / ideal, "");
            }
            if (line[0] >= 0.025 && line[0] <= 0.07) {
                COMPLETE.band("C_D0, " + one.getKey(), 0.025, 0.07, line[0], "");
            } else {
                COMPLETE.outside("C_D0, " + one.getKey(), 0.025, 0.07, line[0], "");
            }
        }
    }

    private static List<PolarPoint> inRange(Appraisal found) {
        List<PolarPoint> points = new ArrayList<>();
        double chord = found.airframe().chord();
        for (PolarPoint point : found.polar()) {
            double reynolds = point.speed() * chord / VISCOSITY;
            // The first point is the stall itself, where a strip's drag has left any parabola.
            if (reynolds > LOWEST
                    && reynolds < HIGHEST
                    && point.liftCoefficient() < 0.9 * found.polar().get(0).liftCoefficient()) {
                points.add(point);
            }
        }
        return points;
    }

    /** C_D0 and k by least squares in C_L². */
    private static double[] line(List<PolarPoint> points) {
        double n = points.size();
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (PolarPoint p : points) {
            double x = p.liftCoefficient() * p.liftCoefficient();
            double y = p.profileDrag() + p.inducedDrag() + p.parasiteDrag();
            sx += x;
            sy += y;
            sxx += x * x;
            sxy += x * y;
        }
        double slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
        return new double[] {(sy - slope * sx) / n, slope};
    }
}
