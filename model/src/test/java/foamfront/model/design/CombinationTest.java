package foamfront.model.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
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
    void whatTheModelComputes() {
        assertThat(Support.computed(WingKind.values()))
                .containsExactly(WingKind.MONOPLANE, WingKind.BIPLANE, WingKind.FLYING_WING, WingKind.DELTA);
        assertThat(Support.computed(TailKind.values()))
                .containsExactly(TailKind.CONVENTIONAL, TailKind.T_TAIL, TailKind.V_TAIL, TailKind.NONE);
        assertThat(Support.computed(BodyKind.values()))
                .containsExactly(
                        BodyKind.SQUARE_TUBE,
                        BodyKind.TWO_BAY_TUBE,
                        BodyKind.POD_AND_BOOM,
                        BodyKind.PROFILE_BOARD,
                        BodyKind.BOAT_HULL);
        assertThat(Support.computed(PowerKind.values()))
                .containsExactly(
                        PowerKind.NOSE_TRACTOR,
                        PowerKind.PUSHER,
                        PowerKind.TWIN_TRACTOR,
                        PowerKind.COUNTER_TWIN,
                        PowerKind.DUCTED_FAN);
        assertThat(Support.computed(SectionKind.values())).containsExactly(SectionKind.values());
    }

    @Test
    void everyKindOfChoiceHasOneTheModelComputes() {
        List<Choice[]> kinds = List.of(
                WingKind.values(),
                WingHeight.values(),
                TailKind.values(),
                BodyKind.values(),
                Nose.values(),
                PowerKind.values(),
                UndercarriageKind.values(),
                WingTips.values(),
                FinJoint.values(),
                Covering.values(),
                SectionKind.values(),
                WingJoint.values(),
                SparKind.values(),
                HoldDown.values(),
                ControlLayout.values());
        assertThat(kinds)
                .allSatisfy(kind -> assertThat(Stream.of(kind).anyMatch(one -> Support.refusal(one) == null))
                        .isTrue());
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
