package foamfront.optimizer.genome;

import foamfront.model.design.BodyKind;
import foamfront.model.design.ControlLayout;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.PowerKind;
import foamfront.model.design.SectionKind;
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
        if (!Kinds.hasAilerons(kind(genome, Digit.CONTROLS))) {
            clear(DesignVariable.AILERON_SPAN, DesignVariable.AILERON_CHORD);
        }
        if (kind(genome, Digit.CONTROLS) != ControlLayout.FLAPS) {
            clear(DesignVariable.FLAP_SPAN, DesignVariable.FLAP_CHORD);
        }
        if (!Kinds.isFolded(kind(genome, Digit.SECTION))) {
            clear(DesignVariable.SECTION_THICKNESS);
        }
        if (kind(genome, Digit.SECTION) != SectionKind.CURVED_PLATE) {
            clear(DesignVariable.SECTION_CAMBER);
        }
        if (kind(genome, Digit.SECTION) != SectionKind.STEPPED_PLATE) {
            clear(DesignVariable.SECTION_STEP);
        }
        if (!Kinds.isBiplane(kind(genome, Digit.WING))) {
            clear(DesignVariable.GAP, DesignVariable.STAGGER);
        }
        if (Kinds.isDelta(kind(genome, Digit.WING))) {
            clear(DesignVariable.DIHEDRAL, DesignVariable.WASHOUT);
            clear(DesignVariable.OUTER_DIHEDRAL, DesignVariable.BEND_POSITION);
            clear(DesignVariable.CUT_OUT_DEPTH, DesignVariable.CUT_OUT_BREADTH);
        }
        if (genome.dimensions.shapesWings()) {
            Builder.Bent bent = Builder.bent(genome, this);
            if (!bent.bends()) {
                clear(DesignVariable.BEND_POSITION);
            }
            if (!bent.isCut()) {
                clear(DesignVariable.CUT_OUT_BREADTH);
            }
        }
        Object body = kind(genome, Digit.BODY);
        if (body == BodyKind.PROFILE_BOARD) {
            clear(DesignVariable.BODY_WIDTH);
        }
        boolean hull = Kinds.isHull(body);
        boolean floats = Kinds.isFloats(kind(genome, Digit.UNDERCARRIAGE));
        if (!hull) {
            clear(DesignVariable.STEP_POSITION);
        }
        if (!floats) {
            clear(DesignVariable.FLOAT_LENGTH, DesignVariable.FLOAT_BEAM);
        }
        if (!hull && !floats) {
            clear(DesignVariable.DEADRISE);
        }
        if (!Kinds.hasBoom(body)) {
            clear(DesignVariable.POD_LENGTH);
            without(PartGenes.Kind.BOOM);
        }
        Object tail = kind(genome, Digit.TAIL);
        if (Kinds.isCanted(tail)) {
            clear(DesignVariable.FIN_HEIGHT, DesignVariable.FIN_CHORD, DesignVariable.RUDDER_CHORD);
        } else {
            clear(DesignVariable.TAIL_CANT);
        }
        if (!Kinds.isTail(tail)) {
            clear(DesignVariable.TAIL_SPAN, DesignVariable.TAIL_CHORD, DesignVariable.TAIL_INCIDENCE);
            clear(DesignVariable.ELEVATOR_CHORD, DesignVariable.RUDDER_CHORD);
        }
        if (kind(genome, Digit.SPAR) != SparKind.STOCK) {
            without(PartGenes.Kind.SPAR);
        }
        if (!Kinds.hasWheels(kind(genome, Digit.UNDERCARRIAGE))) {
            without(PartGenes.Kind.WHEEL);
        }
        Object power = kind(genome, Digit.POWER);
        if (!Kinds.hasPropeller(power)) {
            without(PartGenes.Kind.MOTOR, PartGenes.Kind.PROPELLER);
        }
        if (power != PowerKind.DUCTED_FAN) {
            without(PartGenes.Kind.FAN);
        }
        if (Kinds.hasMotor(power)) {
            without(PartGenes.Kind.RECEIVER_BATTERY);
        } else {
            without(PartGenes.Kind.BATTERY, PartGenes.Kind.CONTROLLER);
        }
        return this;
    }

    private void without(PartGenes.Kind... kinds) {
        for (PartGenes.Kind kind : kinds) {
            parts[kind.ordinal()] = 0;
        }
    }

    private void clear(DesignVariable... dimensions) {
        for (DesignVariable dimension : dimensions) {
            steps[dimension.ordinal()] = 0;
        }
    }

    Object kind(Genome genome, Digit digit) {
        return genome.layouts.options(digit).get(digit(digit));
    }
}
