package foamfront.model.structure;

/**
 * What the structure has in hand. Reserve factors are failure load over limit load, {@value #UNLOADED} at most, which also
 * stands for parts that are not there.
 *
 * @param limitLoad limit load factor
 * @param wingBending paper or spar, worst section of the worst wing
 * @param sparShear at the root, or in a plug-in tube
 * @param webGlue that ties web and skins or the boards of a stepped plate, worst section of the worst wing
 * @param buttGlue where pieces of wing meet end to end, the weakest of all wings
 * @param wingSeat glue or rubber bands that hold the wing on the body
 * @param tailSeat glue that holds stabiliser and fins on their edges
 * @param boomSeat glue that holds a stock boom in its pod
 * @param joint bending of a plug-in tube and its pressure on the sleeve, or a folding wing's hinge and bands
 * @param tipDeflection of the softest wing at limit load, of the semispan
 * @param divergenceSpeed the lowest, in torsion and forward-swept bending, m/s
 * @param flutterSpeed the lowest estimate for bending with torsion, m/s
 * @param boomDeflection of the tail under its greatest load, of the tail arm
 * @param boomBending strength of the tail boom, in flight and landing
 * @param tailBending strength of stabiliser and fins at their roots, the least
 * @param servoTorque fitted torque over the greatest hinge moment at top speed
 */
public record StructureMargins(
        double limitLoad,
        double wingBending,
        double sparShear,
        double webGlue,
        double buttGlue,
        double wingSeat,
        double tailSeat,
        double boomSeat,
        double joint,
        double tipDeflection,
        double divergenceSpeed,
        double flutterSpeed,
        double boomDeflection,
        double boomBending,
        double tailBending,
        double servoTorque) {
    /** Reserve of what bears no load. */
    public static final double UNLOADED = 99;

    /**
     * What the weakest of the glued joints has in hand. The tail's is not among them: where its edges are too weak builders let the fin
     * through a slot, which no pattern shows and a caveat says.
     */
    public double glue() {
        return Math.min(Math.min(webGlue, buttGlue), Math.min(wingSeat, boomSeat));
    }

    /** Which of them that is, in words. */
    public String weakestGlue() {
        double least = glue();
        if (least == UNLOADED) {
            return "no glued joint";
        }
        return least == webGlue
                ? "the glue along the wing's boards"
                : least == buttGlue
                        ? "the joint of the wing's pieces"
                        : least == wingSeat ? "the wing's hold on the body" : "the boom's seat in the pod";
    }

    /** Strength over load of either sign, at most {@link #UNLOADED}. */
    static double reserve(double strength, double load) {
        double size = Math.abs(load);
        return strength >= UNLOADED * size ? UNLOADED : strength / size;
    }
}
