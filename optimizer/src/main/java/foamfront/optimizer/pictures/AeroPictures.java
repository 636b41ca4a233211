package foamfront.optimizer.pictures;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.appraisal.Appraisal;
import foamfront.model.appraisal.PolarPoint;
import foamfront.model.appraisal.SpanPoint;
import foamfront.model.section.SectionPolar;
import foamfront.model.units.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * The polars of the sections of wings and tail, one curve a picture, at the Reynolds numbers of the stall speed and of twice that;
 * the aeroplane's own, its trim, and the lift along its wing.
 */
public final class AeroPictures {
    /** Between stall and top speed of most models (common practice). */
    private static final double FAST = 2;

    private static final double THOUSAND = 1000;
    private static final int POINTS = 120;
    private static final double LEAST_ANGLE = -20;
    private static final double MOST_ANGLE = 24;

    private final Map<String, String> pages = new LinkedHashMap<>();
    private final Appraisal appraisal;

    private AeroPictures(Appraisal appraisal) {
        this.appraisal = appraisal;
    }

    /** SVG pages by the names of their files. */
    public static Map<String, String> of(Appraisal appraisal) {
        AeroPictures pictures = new AeroPictures(appraisal);
        pictures.sections();
        pictures.drag();
        pictures.trim();
        pictures.span();
        return pictures.pages;
    }

    private void sections() {
        Airframe airframe = appraisal.airframe();
        for (Surface surface : airframe.surfaces()) {
            if (surface.role() != Surface.Role.FIN && !repeats(surface)) {
                double reynolds =
                        appraisal.polar().get(0).reynolds() * surface.meanAerodynamicChord() / airframe.chord();
                section(surface, reynolds, "slow", "stall speed");
                section(surface, FAST * reynolds, "fast", "twice the stall speed");
            }
        }
    }

    /** A second wing like the first has its polars. */
    private boolean repeats(Surface surface) {
        Surface wing = appraisal.airframe().wing();
        return surface.role() == Surface.Role.SECOND_WING
                && surface.section().equals(wing.section())
                && surface.meanAerodynamicChord() == wing.meanAerodynamicChord();
    }

    private void section(Surface surface, double reynolds, String pace, String speed) {
        double board = appraisal.airframe().design().board().thickness();
        SectionPolar polar = SectionPolar.of(surface.section(), board, surface.meanAerodynamicChord());
        String name = surface.role().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String words = name + " section, " + surface.section().kind().words() + ", at " + speed + ", Re "
                + Math.round(reynolds / THOUSAND) + " 000";
        String file = "section-" + name.replace(' ', '-');
        double log = StrictMath.log(reynolds);
        double[] angles = even(LEAST_ANGLE, MOST_ANGLE);
        LinePlot.Line lift = line("", angles, angle -> polar.lift(Unit.DEGREE.toSi(angle), log));
        pages.put(
                file + "-lift-" + pace + ".svg",
                new LinePlot(words, "incidence [deg]", "lift coefficient", List.of(lift)).svg());
        double[] lifts = even(polar.minimumLift(log), polar.maximumLift(log));
        LinePlot.Line drag = line("", lifts, c -> polar.drag(c, log));
        pages.put(
                file + "-drag-" + pace + ".svg",
                new LinePlot(words, "lift coefficient, stall to stall", "drag coefficient", List.of(drag)).svg());
    }

    private void drag() {
        List<LinePlot.Line> lines = List.of(
                polar("whole aeroplane", p -> p.parasiteDrag() + p.profileDrag() + p.inducedDrag()),
                polar("without induced drag", p -> p.parasiteDrag() + p.profileDrag()),
                polar("body and fittings alone", PolarPoint::parasiteDrag));
        pages.put(
                "aeroplane-drag.svg",
                new LinePlot(
                                appraisal.airframe().design().name() + ": trimmed drag, motor stopped",
                                "lift coefficient",
                                "drag coefficient",
                                lines)
                        .svg());
    }

    private void trim() {
        List<LinePlot.Line> lines = List.of(
                polar("incidence of the body", p -> Unit.DEGREE.fromSi(p.incidence())),
                polar("elevator or elevons, trailing edge down", p -> Unit.DEGREE.fromSi(p.elevator())));
        pages.put(
                "aeroplane-trim.svg",
                new LinePlot(
                                appraisal.airframe().design().name() + ": trim, motor stopped",
                                "lift coefficient",
                                "angle [deg]",
                                lines)
                        .svg());
    }

    private LinePlot.Line polar(String words, ToDoubleFunction<PolarPoint> of) {
        List<PolarPoint> points = appraisal.polar();
        return new LinePlot.Line(
                words,
                points.stream().mapToDouble(PolarPoint::liftCoefficient).toArray(),
                points.stream().mapToDouble(of).toArray());
    }

    private void span() {
        List<SpanPoint> points = appraisal.spanLoading().stream()
                .filter(point -> point.role() == Surface.Role.WING)
                .toList();
        double[] y = points.stream().mapToDouble(SpanPoint::place).toArray();
        List<LinePlot.Line> lines = List.of(
                new LinePlot.Line(
                        "at most, by its section",
                        y,
                        points.stream().mapToDouble(SpanPoint::most).toArray()),
                new LinePlot.Line(
                        "where the stall begins",
                        y,
                        points.stream().mapToDouble(SpanPoint::atStall).toArray()),
                new LinePlot.Line(
                        "at 1.3 stall speeds",
                        y,
                        points.stream().mapToDouble(SpanPoint::atCruise).toArray()));
        pages.put(
                "span-lift.svg",
                new LinePlot(
                                appraisal.airframe().design().name() + ": lift along the wing",
                                "fraction of the semispan",
                                "section lift coefficient",
                                lines)
                        .svg());
    }

    private static double[] even(double from, double to) {
        double[] x = new double[POINTS + 1];
        for (int i = 0; i <= POINTS; i++) {
            x[i] = from + (to - from) * i / POINTS;
        }
        return x;
    }

    private static LinePlot.Line line(String words, double[] x, DoubleUnaryOperator of) {
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            y[i] = of.applyAsDouble(x[i]);
        }
        return new LinePlot.Line(words, x, y);
    }
}
