package foamfront.model.design;

import static foamfront.model.units.Require.within;

/**
 * The moving surfaces. A tailless wing's ailerons are its elevons and serve as elevator too.
 *
 * @param ailerons whether the wing has ailerons; without them the aeroplane is turned by rudder and dihedral
 * @param rudder whether the fin has one
 * @param flaps high-lift surfaces
 * @param aileronSpan one aileron's length, fraction of the semispan, ending at the tip
 * @param aileronChord fraction of the local wing chord
 * @param elevatorChord fraction of the tail's chord
 * @param rudderChord fraction of the fin's chord
 */
public record Controls(
        boolean ailerons,
        boolean rudder,
        FlapKind flaps,
        double aileronSpan,
        double aileronChord,
        double elevatorChord,
        double rudderChord) {
    public Controls {
        within("aileron span", aileronSpan, 0.1, 0.95, "of the semispan");
        within("aileron chord", aileronChord, 0.08, 0.45, "of the chord");
        within("elevator chord", elevatorChord, 0.1, 1, "of the tail's chord");
        within("rudder chord", rudderChord, 0.1, 1, "of the fin's chord");
        if (!ailerons && !rudder) {
            throw new IllegalArgumentException("an aeroplane needs ailerons or a rudder to turn");
        }
    }
}
