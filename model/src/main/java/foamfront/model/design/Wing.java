package foamfront.model.design;

import static foamfront.model.units.Require.finite;
import static foamfront.model.units.Require.positive;

/** The lifting arrangement: one wing, two, or a wing that is the whole aeroplane. */
public sealed interface Wing {
    WingKind kind();

    /** Shape of the wing, of the lower wing for a biplane. */
    Planform planform();

    WingBuild build();

    /** Aft position of the root's leading edge from the nose, m. */
    double x();

    /** Height of the root's leading edge over the body axis, m. */
    double z();

    /** One wing at a height on the body. */
    record Monoplane(WingHeight height, Planform planform, WingBuild build, double x, double z) implements Wing {
        public Monoplane {
            finite("wing x", x);
            finite("wing z", z);
        }

        @Override
        public WingKind kind() {
            return WingKind.MONOPLANE;
        }
    }

    /**
     * Two equal wings.
     *
     * @param gap of the upper wing over the lower, m
     * @param stagger of the upper wing ahead of the lower, m
     */
    record Biplane(Planform planform, WingBuild build, double x, double z, double gap, double stagger) implements Wing {
        public Biplane {
            finite("wing x", x);
            finite("wing z", z);
            positive("gap", gap, "m");
            finite("stagger", stagger);
        }

        @Override
        public WingKind kind() {
            return WingKind.BIPLANE;
        }
    }

    /** A swept tailless wing with elevons. */
    record FlyingWing(Planform planform, WingBuild build, double x, double z) implements Wing {
        public FlyingWing {
            finite("wing x", x);
            finite("wing z", z);
        }

        @Override
        public WingKind kind() {
            return WingKind.FLYING_WING;
        }
    }

    /** A flat triangle cut from one sheet with its fins, which are folded up at its tips, or one set on its middle. */
    record Delta(Planform planform, WingBuild build, double x, double z) implements Wing {
        public Delta {
            boolean level = planform.dihedral() == 0 && planform.incidence() == planform.tipIncidence();
            if (!level || !planform.breaks().isEmpty()) {
                throw new IllegalArgumentException("a one-sheet delta is flat: no dihedral, washout or breaks");
            }
            finite("wing x", x);
            finite("wing z", z);
        }

        @Override
        public WingKind kind() {
            return WingKind.DELTA;
        }
    }
}
