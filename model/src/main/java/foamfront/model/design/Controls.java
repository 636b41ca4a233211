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
 * @param flapSpan one flap's length, fraction of the semispan, from {@value #FLAP_ROOT} outwards as far as ailerons leave
 * @param flapChord fraction of the local wing chord
 */
public record Controls(
        boolean ailerons,
        boolean rudder,
        FlapKind flaps,
        double aileronSpan,
        double aileronChord,
        double elevatorChord,
        double rudderChord,
        double flapSpan,
        double flapChord) {
    /** Where flaps begin, fraction of the semispan: beside the body. */
    public static final double FLAP_ROOT = 0.1;

    /** Ailerons leave flaps at least a tenth of the semispan, less is not worth two servos (judgement). */
    public static final double MOST_AILERON_BESIDE_FLAPS = 0.8;

    public Controls {
        within("aileron span", aileronSpan, 0.1, 0.95, "of the semispan");
        within("aileron chord", aileronChord, 0.08, 0.45, "of the chord");
        within("elevator chord", elevatorChord, 0.1, 1, "of the tail's chord");
        within("rudder chord", rudderChord, 0.1, 1, "of the fin's chord");
        within("flap span", flapSpan, 0.1, 0.9, "of the semispan");
        within("flap chord", flapChord, 0.08, 0.45, "of the chord");
        if (flaps == FlapKind.FLAPERONS && !ailerons) {
            throw new IllegalArgumentException("flaperons are ailerons that droop as flaps too: they need ailerons");
        }
        if (flaps == FlapKind.FLAPS && ailerons && !(aileronSpan <= MOST_AILERON_BESIDE_FLAPS)) {
            throw new IllegalArgumentException("ailerons along " + aileronSpan
                    + " of the semispan leave no room for flaps; make them at most "
                    + MOST_AILERON_BESIDE_FLAPS);
        }
        if (!ailerons && !rudder) {
            throw new IllegalArgumentException("an aeroplane needs ailerons or a rudder to turn");
        }
    }

    /** With flaps, if it has any, as the workshop rules have them. */
    public Controls(
            boolean ailerons,
            boolean rudder,
            FlapKind flaps,
            double aileronSpan,
            double aileronChord,
            double elevatorChord,
            double rudderChord) {
        this(
                ailerons,
                rudder,
                flaps,
                aileronSpan,
                aileronChord,
                elevatorChord,
                rudderChord,
                WorkshopRules.FLAP_SPAN,
                WorkshopRules.FLAP_CHORD);
    }

    /** The same with flaps of these dimensions. */
    public Controls withFlaps(double span, double chord) {
        return new Controls(
                ailerons, rudder, flaps, aileronSpan, aileronChord, elevatorChord, rudderChord, span, chord);
    }

    /** Outer end of the flaps, fraction of the semispan. */
    public double flapEnd() {
        return Math.min(FLAP_ROOT + flapSpan, ailerons ? 1 - aileronSpan : 1);
    }
}
