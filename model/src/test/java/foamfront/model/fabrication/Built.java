package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.BodyShape;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import java.util.List;
import org.assertj.core.data.Offset;

/** An aeroplane and its parts, seen by the tests that fold them up again. */
record Built(Design design, Airframe airframe, PartsList parts) {
    /** What a builder can fold to, m. */
    static final Offset<Double> FOLDED = within(0.0005);

    static Built of(Design design) {
        Airframe airframe = Airframe.of(design);
        return new Built(design, airframe, FlatPatterns.of(airframe));
    }

    double board() {
        return design.board().thickness();
    }

    BodyShape body() {
        return airframe.body();
    }

    /** Longest piece that comes out of the sheet, m. */
    double sheet() {
        return SheetMargins.usable(design.board().length());
    }

    Surface surface(Surface.Role role) {
        return airframe.surfaces().stream()
                .filter(one -> one.role() == role)
                .findFirst()
                .orElseThrow();
    }

    List<CutPart> named(String name) {
        return parts.cut().stream().filter(part -> part.name().equals(name)).toList();
    }

    /** Length of all pieces of that name laid in a row, m. */
    double row(String name) {
        return named(name).stream()
                .mapToDouble(part -> part.count() * part.pattern().length())
                .sum();
    }

    /** A piece cut {@code length} along the grain and {@code width} across. */
    static void measures(CutPart part, double length, double width) {
        assertThat(part.pattern().outline().length())
                .as(part.name() + " length")
                .isCloseTo(length, FOLDED);
        assertThat(part.pattern().outline().width()).as(part.name() + " width").isCloseTo(width, FOLDED);
    }

    /** Some edge of the piece is that long. */
    static void hasEdge(CutPart part, String what, double length) {
        Outline o = part.pattern().outline();
        double nearest = Double.MAX_VALUE;
        for (int i = 0, j = o.size() - 1; i < o.size(); j = i++) {
            double edge = edge(o, j, i);
            nearest = Math.abs(edge - length) < Math.abs(nearest - length) ? edge : nearest;
        }
        assertThat(nearest).as(part.name() + " " + what).isCloseTo(length, FOLDED);
    }

    static double edge(Outline o, int from, int to) {
        return Outline.distance(o.x(from), o.y(from), o.x(to), o.y(to));
    }
}
