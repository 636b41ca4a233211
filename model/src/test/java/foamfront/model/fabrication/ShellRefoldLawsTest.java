package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The wrapped shells, formers, floors and plates of every arrangement, folded and put together again, have its outside. */
class ShellRefoldLawsTest {
    /** What a builder can fold to, m. */
    private static final double FOLDED = 0.0005;

    private static final double RIGHT_ANGLE = 0.5 * Math.PI;
    private static final int NEAR = 6;

    static Stream<Design> all() {
        return Stream.concat(
                TestAeroplanes.all(),
                Arrangements.all().values().stream().flatMap(design -> Stream.concat(Stream.of(design), near(design))));
    }

    private static Stream<Design> near(Design design) {
        return Stream.iterate(1L, seed -> seed <= NEAR, seed -> seed + 1).map(seed -> Arrangements.near(design, seed));
    }

    private static List<CutPart> named(PartsList parts, Set<String> names) {
        return parts.cut().stream().filter(part -> names.contains(part.name())).toList();
    }

    /** Turned by a right angle at every fold, outer papers meeting, a wrap has the body's outside and closes on its start. */
    @ParameterizedTest
    @MethodSource("all")
    void tubesCloseToTheBodysOutside(Design design) {
        Airframe airframe = Airframe.of(design);
        BodyShape body = airframe.body();
        for (CutPart part : FlatPatterns.of(airframe).cut()) {
            if (!(part.pattern() instanceof Tube tube)) {
                continue;
            }
            boolean ofBody = Set.of("body", "nose", "body angle").contains(part.name());
            double[] end = fold(tube);
            if (!tube.angle()) {
                assertThat(end[0]).as(part.name() + " closes across").isCloseTo(0, within(FOLDED));
                assertThat(end[1]).as(part.name() + " closes upwards").isCloseTo(0, within(FOLDED));
            }
            if (ofBody) {
                assertThat(end[2]).as(part.name() + " width").isCloseTo(body.width(), within(FOLDED));
                assertThat(end[3]).as(part.name() + " height").isCloseTo(body.height(), within(FOLDED));
            }
        }
    }

    /** Where the last fold comes to lie, and the breadth and height of what was folded. */
    private static double[] fold(Tube tube) {
        double at = 0;
        double x = 0;
        double z = 0;
        double breadth = 0;
        double height = 0;
        double angle = 0;
        for (PatternLine line : tube.lines()) {
            if (line.kind() == PatternLine.Kind.FOLD) {
                double side = line.y1() - at;
                at = line.y1();
                x += side * StrictMath.cos(angle);
                z += side * StrictMath.sin(angle);
                breadth = Math.max(breadth, Math.abs(x));
                height = Math.max(height, Math.abs(z));
                angle += RIGHT_ANGLE;
            }
        }
        assertThat(tube.width() - at).as("glue tab").isBetween(0.010, 0.015);
        return new double[] {x, z, breadth, height};
    }

    @ParameterizedTest
    @MethodSource("all")
    void shellsTogetherAreAsLongAsTheBody(Design design) {
        Airframe airframe = Airframe.of(design);
        double length = 0;
        for (CutPart part : named(FlatPatterns.of(airframe), Set.of("body", "nose", "body angle"))) {
            Tube tube = (Tube) part.pattern();
            length += (tube.angle() ? 0.5 : 1) * part.count() * tube.length();
        }
        Body body = design.body();
        boolean wrapped = body instanceof Body.SquareTube || body instanceof Body.TwoBayTube;
        if (wrapped) {
            assertThat(length).isCloseTo(body.length(), within(FOLDED));
        } else if (body instanceof Body.PodAndBoom pod) {
            assertThat(length).isCloseTo(pod.podLength(), within(FOLDED));
        } else {
            assertThat(length).isZero();
        }
    }

    /** What closes a shell's ends or divides it fills its clear inside. */
    @ParameterizedTest
    @MethodSource("all")
    void formersAndFloorsFillTheInside(Design design) {
        Airframe airframe = Airframe.of(design);
        BodyShape body = airframe.body();
        if (design.body() instanceof Body.ProfileBoard) {
            return;
        }
        PartsList parts = FlatPatterns.of(airframe);
        for (CutPart part : named(parts, Set.of("firewall", "nose plate", "tail former"))) {
            assertThat(part.pattern().length() + 2 * body.wall()).isCloseTo(body.height(), within(FOLDED));
            assertThat(part.pattern().width() + 2 * body.wall()).isCloseTo(body.width(), within(FOLDED));
        }
        for (CutPart part : named(parts, Set.of("floor"))) {
            assertThat(part.pattern().width() + 2 * body.wall()).isCloseTo(body.width(), within(FOLDED));
        }
    }

    /** Plates are flat as they fly: cut, they have the area of their surfaces, and each half its panel's span. */
    @ParameterizedTest
    @MethodSource("all")
    void platesHaveTheirSurfacesAreas(Design design) {
        Airframe airframe = Airframe.of(design);
        PartsList parts = FlatPatterns.of(airframe);
        Surface tail = airframe.tail();
        if (tail != null) {
            assertThat(area(parts, "stabiliser")).isCloseTo(tail.area(), within(FOLDED * tail.span()));
        }
        if (!DeltaParts.foldsFins(airframe)) {
            double fins = 0;
            double height = 0;
            for (Surface fin : airframe.fins()) {
                fins += fin.area();
                height += fin.span();
            }
            assertThat(area(parts, "fin")).isCloseTo(fins, within(FOLDED * height + 1e-12));
        }
    }

    private static double area(PartsList parts, String name) {
        return named(parts, Set.of(name)).stream()
                .mapToDouble(part -> part.count() * part.pattern().outline().area())
                .sum();
    }
}
