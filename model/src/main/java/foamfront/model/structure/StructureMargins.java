package foamfront.model.structure;

/**
 * What the structure has in hand. Reserve factors are failure load over limit load, {@value #UNLOADED} at most, which also
 * stands for parts that are not there.
 *
 * @param limitLoad limit load factor
 * @param wingBending paper or spar, worst section of the worst wing
 * @param sparShear at the root, or in a plug-in tube
 * @param webGlue that ties web and skins or the boards of a stepped plate, worst section of the worst wing
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

    /** Strength over load of either sign, at most {@link #UNLOADED}. */
    static double reserve(double strength, double load) {
        double size = Math.abs(load);
        return strength >= UNLOADED * size ? UNLOADED : strength / size;
    }
}
