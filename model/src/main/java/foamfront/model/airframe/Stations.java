package foamfront.model.airframe;

/**
 * Where things sit, by workshop rules from the design's dimensions. Everything that must lie at a set distance from the balance
 * point is given relative to it, since the balance point follows from the neutral point.
 *
 * @param propellerX of the disc, m; ahead of the nose for a tractor
 * @param propellerZ of the shaft over the body axis, m
 * @param motorX centre of the motor, m
 * @param batteryFrom foremost place of the battery's front end, m
 * @param batteryTo rearmost place of the battery's rear end, m
 * @param batteryZ of its centre, m
 * @param radioX centre of the receiver, m
 * @param servoX centre of the tail servos, m
 * @param mainAxle of the main wheels aft of the balance point, m; negative ahead of it
 * @param secondAxle x of the nose or tail wheel, m
 * @param groundZ height of the ground under the body axis, m; negative
 */
public record Stations(
        double propellerX,
        double propellerZ,
        double motorX,
        double batteryFrom,
        double batteryTo,
        double batteryZ,
        double radioX,
        double servoX,
        double mainAxle,
        double secondAxle,
        double groundZ) {
    /** Distance between the main wheels over the span (common practice). */
    public static final double TRACK = 0.2;
}
