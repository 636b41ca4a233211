package foamfront.model.airframe;

/**
 * A plain hinged control along part of a surface.
 *
 * @param kind what it does
 * @param chordFraction of the local chord behind the hinge
 * @param from inner end, fraction of the surface's semispan
 * @param to outer end, fraction of the surface's semispan
 */
public record Control(Kind kind, double chordFraction, double from, double to) {
    /** What a control does. */
    public enum Kind {
        ELEVATOR,
        AILERON,
        ELEVON,
        FLAP,
        /** An aileron that droops as flap too. */
        FLAPERON,
        RUDDER
    }
}
