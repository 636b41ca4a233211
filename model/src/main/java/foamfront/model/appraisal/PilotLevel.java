package foamfront.model.appraisal;

import foamfront.model.design.Power;
import foamfront.model.design.Tail;
import foamfront.model.mission.Measure;
import foamfront.model.units.Unit;
import java.util.List;

/**
 * How practised its pilot must be: 1 suits a beginner, 2 an intermediate pilot, beyond that the experienced. The worst part
 * decides, never the mean, for an aeroplane that forgives all but one thing is remembered for the one.
 *
 * <p>Each part is graded on a straight line through two figures. Stall speed, wing cube loading and static margin follow the
 * classes that builders use (common practice); the other figures, and what an arrangement asks by itself, are judgement.
 */
final class PilotLevel {
    private static final double BEGINNER = 1;
    private static final double INTERMEDIATE = 2;

    /** Nothing is graded above this: hopeless is no harder than hard. */
    private static final double HARDEST = 4;

    /** One measure's figure for a beginner, and that for an intermediate pilot. */
    private record Grade(Measure measure, double beginner, double intermediate) {}

    private static final List<Grade> GRADES = List.of(
            new Grade(Measure.STALL_SPEED, 7.5, 9),
            new Grade(Measure.CRUISE_SPEED, 14, 18),
            new Grade(Measure.WING_CUBE_LOADING, 7, 10),
            new Grade(Measure.STATIC_MARGIN, 0.08, 0.05),
            new Grade(Measure.YAW_STIFFNESS, 0.04, 0.025),
            new Grade(Measure.ROLL_RATE, Unit.DEGREE_PER_SECOND.toSi(180), Unit.DEGREE_PER_SECOND.toSi(360)),
            // A wing that stalls first far out drops a wing tip (common practice: roots should stall first).
            new Grade(Measure.STALL_PLACE, 2 / 3.0, 0.85),
            new Grade(Measure.TIP_RESERVE, 0.03, 0),
            new Grade(Measure.POWER_TRIM, 0.5, 0.8),
            new Grade(Measure.LAUNCH_HEIGHT, 1.2, 0.8));

    /** Turned by rudder and dihedral it must right itself; with ailerons the pilot does. */
    private static final double SPIRAL_BY_RUDDER = 5;

    private static final double SPIRAL_BY_AILERONS = 1.5;

    private PilotLevel() {}

    static double of(Workbench w) {
        double level = arrangement(w);
        for (int i = 0; i < GRADES.size(); i++) {
            Grade grade = GRADES.get(i);
            double value = w.get(grade.measure());
            if (w.applies(grade.measure()) && !Double.isNaN(value)) {
                level = Math.max(level, level(value, grade.beginner(), grade.intermediate()));
            }
        }
        double spiral = w.design.controls().ailerons() ? SPIRAL_BY_AILERONS : SPIRAL_BY_RUDDER;
        return Math.max(level, level(w.get(Measure.SPIRAL_PARAMETER), spiral, 0.4 * spiral));
    }

    /** On the straight line through both figures. */
    private static double level(double value, double beginner, double intermediate) {
        double level = BEGINNER + (value - beginner) / (intermediate - beginner);
        return Math.min(HARDEST, Math.max(BEGINNER, level));
    }

    /**
     * What the layout asks by itself: a tailless model damps pitch little; a fan blows on no tail, gathers thrust slowly and
     * lands fast; a twin yaws when one motor stops.
     */
    private static double arrangement(Workbench w) {
        if (w.design.power() instanceof Power.DuctedFan || w.design.tail() instanceof Tail.None) {
            return INTERMEDIATE;
        }
        return w.design.power() instanceof Power.TwinTractor ? 0.5 * (BEGINNER + INTERMEDIATE) : BEGINNER;
    }
}
