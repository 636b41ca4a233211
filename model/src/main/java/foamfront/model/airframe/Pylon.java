package foamfront.model.airframe;

import foamfront.model.design.Power;

/**
 * What carries a pusher's motor: two boards side by side, standing on the body or the wing, whichever is higher, up to
 * the motor's upper edge and 90 mm long there, a fifth more at the foot; the motor's mount closes it behind
 * (judgement).
 *
 * @param trailingX its upright rear edge at the motor's front, m
 * @param footZ m
 * @param height m
 * @param thickness both boards, m
 */
public record Pylon(double trailingX, double footZ, double height, double thickness) {
    /** Chord at the motor, m. */
    public static final double TOP_CHORD = 0.090;

    /** Chord at the foot, m. */
    public static final double FOOT_CHORD = 1.2 * TOP_CHORD;

    /** The pylon of an aeroplane with that power. */
    public static Pylon of(Power.Pusher pusher, Airframe airframe) {
        Shaft shaft = airframe.stations().shaft();
        double motor = pusher.plant().motor().diameter();
        double foot = Math.max(
                0.5 * airframe.body().height(), airframe.wing().panels().get(0).rootZ());
        // Never lower than the motor it carries.
        double height = Math.max(motor, shaft.z() + 0.5 * motor - foot);
        return new Pylon(
                shaft.motorX() - 0.5 * pusher.plant().motor().length(),
                foot,
                height,
                2 * airframe.body().wall());
    }

    public double meanChord() {
        return 0.5 * (FOOT_CHORD + TOP_CHORD);
    }
}
