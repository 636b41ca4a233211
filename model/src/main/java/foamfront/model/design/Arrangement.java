package foamfront.model.design;

import org.jspecify.annotations.Nullable;

/**
 * One layout: a choice of every kind, before any dimension. {@link Combination} says which go together.
 *
 * @param height of a monoplane's wing; null for other wings
 */
public record Arrangement(
        WingKind wing,
        @Nullable WingHeight height,
        TailKind tail,
        BodyKind body,
        Nose nose,
        PowerKind power,
        UndercarriageKind undercarriage,
        WingTips tips,
        FinJoint finJoint,
        Covering covering,
        SectionKind section,
        WingJoint joint,
        SparKind spar,
        HoldDown holdDown,
        ControlLayout controls) {

    /** The layout of a design. */
    public static Arrangement of(Design design) {
        Wing wing = design.wing();
        WingBuild build = wing.build();
        return new Arrangement(
                wing.kind(),
                wing instanceof Wing.Monoplane monoplane ? monoplane.height() : null,
                design.tail().kind(),
                design.body().kind(),
                design.body().nose(),
                design.power().kind(),
                design.undercarriage().kind(),
                build.tips(),
                design.tail().finJoint(),
                design.covering(),
                build.section().kind(),
                build.joint(),
                build.spar() instanceof WingSpar.Stock ? SparKind.STOCK : SparKind.BOARD_STRIP,
                build.holdDown(),
                controls(design));
    }

    /** Whether the wing is the whole aeroplane. */
    public boolean tailless() {
        return wing == WingKind.FLYING_WING || wing == WingKind.DELTA;
    }

    /** Why this layout cannot be built, or null if it can. */
    public @Nullable String refusal() {
        return Combination.refusal(this);
    }

    /** High-lift surfaces of its controls. */
    public FlapKind flaps() {
        return controls.flaps();
    }

    private static ControlLayout controls(Design design) {
        Controls controls = design.controls();
        if (controls.flaps() == FlapKind.FLAPS) {
            return ControlLayout.FLAPS;
        }
        if (controls.flaps() == FlapKind.FLAPERONS) {
            return ControlLayout.FLAPERONS;
        }
        if (!controls.ailerons()) {
            return ControlLayout.RUDDER_ELEVATOR;
        }
        return design.tail().kind() == TailKind.NONE ? ControlLayout.ELEVONS : ControlLayout.AILERONS;
    }
}
