package foamfront.model.appraisal;

import foamfront.model.flight.Performance;
import foamfront.model.mission.Measure;
import foamfront.model.propulsion.Loads;

/**
 * Flight without a motor, from a throw into still air down to the ground. There is no endurance: how long it stays up is its height
 * over its sink rate, and what slopes and thermals add is not computed.
 *
 * <p>It cruises at the speed of its best glide, not below 1.3 stall speeds nor 1.33 times the wind, as what has a motor does; and
 * its structure must stand a dive at 1.4 cruise speeds (the least ratio of design dive to cruise speed of 14 CFR 23.335(b)
 * before 2017, from memory). Into the wind w it gets L/D (1 - w/V) over the ground for the height it loses (derived).
 */
final class GlideStage {
    private static final double WIND = 1.33;
    private static final double DIVE = 1.4;

    private GlideStage() {}

    static void run(Workbench w) {
        for (Measure measure : Measure.motored()) {
            w.rule(measure);
        }
        w.set(
                Measure.SUPPLY_LOAD,
                Loads.regulator(
                        w.design.power().battery(),
                        w.design.radio().receiver().current(),
                        w.airframe.servos().current(w.design.radio())));
        w.performance.solveGlide(w.flight);
        double stall = w.flight.stallSpeed();
        double least =
                Math.max(Performance.CRUISE * stall, WIND * w.mission.site().wind());
        double cruise = Math.max(least, w.performance.glideSpeed());
        w.topSpeed = DIVE * cruise;
        w.set(Measure.CRUISE_SPEED, cruise);
        w.set(Measure.CRUISE_RATIO, cruise / stall);
        double glide = w.flight.weight() / w.flight.drag(cruise);
        w.set(Measure.WIND_GLIDE, glide * (1 - w.mission.site().wind() / cruise));
    }
}
