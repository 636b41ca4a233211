package foamfront.model.fabrication;

import java.util.List;

/** The V under a control's hinge: relieved for 30° of travel, so each wall stands t tan 15° off the hinge (derived). */
final class HingeGroove {
    /** tan 15° = 2 − √3. */
    static final double WALL = 2 - Math.sqrt(3);

    private HingeGroove() {}

    static void add(List<PatternLine> lines, PatternLine hinge, double thickness, PatternLine.Kind kind) {
        add(lines, hinge, WALL * thickness, -WALL * thickness, kind);
    }

    /** Two lines beside {@code hinge}, at the given distances to its left. */
    static void add(List<PatternLine> lines, PatternLine hinge, double left, double right, PatternLine.Kind kind) {
        double length = hinge.length();
        double nx = -(hinge.y2() - hinge.y1()) / length;
        double ny = (hinge.x2() - hinge.x1()) / length;
        lines.add(beside(hinge, left * nx, left * ny, kind));
        lines.add(beside(hinge, right * nx, right * ny, kind));
    }

    private static PatternLine beside(PatternLine line, double dx, double dy, PatternLine.Kind kind) {
        return new PatternLine(kind, line.x1() + dx, line.y1() + dy, line.x2() + dx, line.y2() + dy);
    }
}
