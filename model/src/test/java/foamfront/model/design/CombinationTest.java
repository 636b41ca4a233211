package foamfront.model.design;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Records;
import org.junit.jupiter.api.Test;

class CombinationTest {
    private static final Arrangement TRAINER = new Arrangement(
            WingKind.MONOPLANE,
            WingHeight.HIGH,
            TailKind.CONVENTIONAL,
            BodyKind.SQUARE_TUBE,
            Nose.FIXED,
            PowerKind.NOSE_TRACTOR,
            UndercarriageKind.NONE,
            WingTips.PLAIN,
            FinJoint.FIXED,
            Covering.BARE,
            SectionKind.FOLDED_FLAT_BOTTOM,
            WingJoint.ONE_PIECE,
            SparKind.BOARD_STRIP,
            HoldDown.RUBBER_BANDS,
            ControlLayout.RUDDER_ELEVATOR);

    @Test
    void aTrainerCanBeBuilt() {
        assertThat(TRAINER.refusal()).isNull();
    }

    @Test
    void aPlugInWingNeedsAStockSpar() {
        Arrangement plugIn = with(HoldDown.GLUED, WingHeight.HIGH, WingJoint.PLUG_IN, SparKind.BOARD_STRIP);

        assertThat(plugIn.refusal()).isEqualTo("plug-in wing halves slide on a stock spar");
        assertThat(with(HoldDown.GLUED, WingHeight.HIGH, WingJoint.PLUG_IN, SparKind.STOCK)
                        .refusal())
                .isNull();
    }

    @Test
    void bandsNeedAWingOnTheOutside() {
        assertThat(with(HoldDown.RUBBER_BANDS, WingHeight.SHOULDER, WingJoint.ONE_PIECE, SparKind.STOCK)
                        .refusal())
                .contains("shoulder wing");
        assertThat(with(HoldDown.RUBBER_BANDS, WingHeight.HIGH, WingJoint.PLUG_IN, SparKind.STOCK)
                        .refusal())
                .contains("one piece across the body");
    }

    @Test
    void aTaillessWingFoldsOnlyWithItsFins() {
        for (FinJoint fins : FinJoint.values()) {
            Arrangement wing = new Arrangement(
                    WingKind.FLYING_WING,
                    WingHeight.HIGH,
                    TailKind.NONE,
                    BodyKind.SQUARE_TUBE,
                    Nose.FIXED,
                    PowerKind.NOSE_TRACTOR,
                    UndercarriageKind.NONE,
                    WingTips.PLAIN,
                    fins,
                    Covering.BARE,
                    SectionKind.FOLDED_SYMMETRICAL,
                    WingJoint.FOLDING,
                    SparKind.BOARD_STRIP,
                    HoldDown.RUBBER_BANDS,
                    ControlLayout.ELEVONS);
            if (fins == FinJoint.FIXED) {
                assertThat(wing.refusal()).contains("fixed fins stand");
            } else {
                assertThat(wing.refusal()).isNull();
            }
        }
    }

    @Test
    void everyRuleHasAReasonAndSparesTheTrainer() {
        assertThat(Combination.table()).allSatisfy(rule -> {
            assertThat(rule.reason()).isNotBlank();
            assertThat(rule.impossible().test(TRAINER)).isFalse();
        });
    }

    @Test
    void withoutAMotorItIsThrown() {
        assertThat(unpowered(UndercarriageKind.NONE, BodyKind.POD_AND_BOOM).refusal())
                .isNull();
        assertThat(unpowered(UndercarriageKind.TRICYCLE, BodyKind.SQUARE_TUBE).refusal())
                .contains("leaves the hand");
        assertThat(unpowered(UndercarriageKind.FLOATS, BodyKind.SQUARE_TUBE).refusal())
                .contains("leaves the hand");
        assertThat(unpowered(UndercarriageKind.NONE, BodyKind.BOAT_HULL).refusal())
                .contains("leaves the hand");
    }

    private static Arrangement unpowered(UndercarriageKind undercarriage, BodyKind body) {
        Arrangement glider = Records.with(TRAINER, "power", PowerKind.NONE);
        return Records.with(Records.with(glider, "undercarriage", undercarriage), "body", body);
    }

    private static Arrangement with(HoldDown holdDown, WingHeight height, WingJoint joint, SparKind spar) {
        return new Arrangement(
                TRAINER.wing(),
                height,
                TRAINER.tail(),
                TRAINER.body(),
                TRAINER.nose(),
                TRAINER.power(),
                TRAINER.undercarriage(),
                TRAINER.tips(),
                TRAINER.finJoint(),
                TRAINER.covering(),
                TRAINER.section(),
                joint,
                spar,
                holdDown,
                TRAINER.controls());
    }
}
