package foamfront.optimizer.genome;

import foamfront.model.design.DesignVariable;
import foamfront.model.design.SparKind;
import foamfront.optimizer.genome.LayoutGenes.Digit;

/**
 * What a genome says, as whole numbers. The arrays never leave the package and are never shared.
 *
 * @param digits index of each kind
 * @param parts index in each sorted list of parts
 * @param steps grid index of each dimension
 * @param loads grid index of each load's mass
 */
@SuppressWarnings("ArrayRecordComponent") // inside one kernel, never compared
record Expression(int[] digits, int[] parts, int[] steps, int[] loads) {
    int digit(Digit digit) {
        return digits[digit.ordinal()];
    }

    /** Zero for what does not matter to this layout. */
    Expression neutral(Genome genome) {
        if (!Genome.hasAilerons(kind(genome, Digit.CONTROLS))) {
            steps[DesignVariable.AILERON_SPAN.ordinal()] = 0;
            steps[DesignVariable.AILERON_CHORD.ordinal()] = 0;
        }
        if (!Genome.isFolded(kind(genome, Digit.SECTION))) {
            steps[DesignVariable.SECTION_THICKNESS.ordinal()] = 0;
        }
        if (kind(genome, Digit.SPAR) != SparKind.STOCK) {
            parts[PartGenes.Kind.SPAR.ordinal()] = 0;
        }
        if (!Genome.hasWheels(kind(genome, Digit.UNDERCARRIAGE))) {
            parts[PartGenes.Kind.WHEEL.ordinal()] = 0;
        }
        if (Genome.hasPropeller(kind(genome, Digit.POWER))) {
            parts[PartGenes.Kind.FAN.ordinal()] = 0;
        } else {
            parts[PartGenes.Kind.MOTOR.ordinal()] = 0;
            parts[PartGenes.Kind.PROPELLER.ordinal()] = 0;
        }
        return this;
    }

    Object kind(Genome genome, Digit digit) {
        return genome.layouts.options(digit).get(digit(digit));
    }
}
