package foamfront.model.airframe;

import foamfront.model.parts.Fan;

/**
 * A fan's two openings in the body's sides, just ahead of it: together as large as its swept annulus where the sides have room.
 * Each leaves 10 mm of side above and below, and is no longer than half the fan's diameter, so that the body keeps its corners and
 * its stiffness (judgement).
 */
public final class Intakes {
    private static final double EDGE = 0.010; // m
    private static final double LONGEST = 0.5; // fan diameters

    private Intakes() {}

    /** Area of both over the fan's swept annulus: 1, or less in a low body. */
    public static double ratio(BodyShape body, Fan fan) {
        double height = Math.max(0, body.insideHeight() - 2 * EDGE);
        return Math.min(1, 2 * height * LONGEST * fan.diameter() / fan.annulus());
    }
}
