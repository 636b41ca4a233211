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
        if (!Genome.isBiplane(kind(genome, Digit.WING))) {
            steps[DesignVariable.GAP.ordinal()] = 0;
            steps[DesignVariable.STAGGER.ordinal()] = 0;
        }
        if (Genome.isCanted(kind(genome, Digit.TAIL))) {
            steps[DesignVariable.FIN_HEIGHT.ordinal()] = 0;
            steps[DesignVariable.FIN_CHORD.ordinal()] = 0;
            steps[DesignVariable.RUDDER_CHORD.ordinal()] = 0;
        } else {
            steps[DesignVariable.TAIL_CANT.ordinal()] = 0;
        }
        if (kind(genome, Digit.SPAR) != SparKind.STOCK) {
            parts[PartGenes.Kind.SPAR.ordinal()] = 0;
        }
        if (!Genome.hasWheels(kind(genome, Digit.UNDERCARRIAGE))) {
            parts[PartGenes.Kind.WHEEL.ordinal()] = 0;
        }
        return this;
    }

    Object kind(Genome genome, Digit digit) {
        return genome.layouts.options(digit).get(digit(digit));
    }
}
