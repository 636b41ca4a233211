package foamfront.model.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Nose;
import foamfront.model.design.Place;
import java.util.List;
import org.junit.jupiter.api.Test;

class BayTest {
    private static final double ROUNDING = 1e-12;
    private static final Design TRAINER = Samples.trainer();

    private static Bay bay(Design design, Load... loads) {
        return Airframe.of(Records.with(design, "loads", List.of(loads)))
                .stations()
                .bay();
    }

    private static Load load(Place place, double length) {
        return new Load("cargo", 0.05, length, 0.03, 0.03, place, false, 0, 0);
    }

    @Test
    void theRowStartsBehindTheFirewallAndTheController() {
        // 10 mm of firewall and gap, controller 42 + 5, load 100 + 5.
        Bay bay = bay(TRAINER, load(Place.NOSE, 0.1));
        assertThat(bay.controllerX()).isCloseTo(0.031, within(ROUNDING));
        assertThat(bay.loadsFrom()).isCloseTo(0.057, within(ROUNDING));
        assertThat(bay.from()).isCloseTo(0.162, within(ROUNDING));
    }

    @Test
    void aPushersControllerLiesBehindTheBattery() {
        Bay bay = bay(Arrangements.of("pusher"));
        // The wing's trailing edge at 420 mm ends the battery's room; then 42 + 5 mm of controller and one row of
        // servos.
        assertThat(bay.from()).isCloseTo(Bay.FRONT, within(ROUNDING));
        assertThat(bay.to()).isCloseTo(0.42, within(ROUNDING));
        assertThat(bay.controllerX()).isCloseTo(0.446, within(ROUNDING));
        assertThat(bay.servoX()).isCloseTo(0.472 + 0.0115, within(ROUNDING));
    }

    @Test
    void twoRowsOfServosStandBehindEachOther() {
        Bay abreast = bay(TRAINER);
        Bay narrow = bay(Records.with(TRAINER, "body.width", 0.030));
        assertThat(narrow.behind() - abreast.behind()).isCloseTo(0.028, within(ROUNDING));
        assertThat(narrow.radioX() - abreast.radioX()).isCloseTo(0.028, within(ROUNDING));
        assertThat(narrow.servoX() - abreast.servoX()).isCloseTo(0.014, within(ROUNDING));
    }

    @Test
    void theRowAtTheBalancePointStartsBehindTheLoadsForTheNose() {
        Bay bay = bay(TRAINER, load(Place.NOSE, 0.15), load(Place.BALANCE_POINT, 0.10));
        // Nose loads end at 207 mm, the gap at 212; a row centred on 250 mm starts at 200: 12 mm are missing.
        assertThat(bay.endRoom(0.25)).isCloseTo(-0.012, within(ROUNDING));
        assertThat(bay.endRoom(0.30)).isCloseTo(0.038, within(ROUNDING));
    }

    @Test
    void theRowAtTheBalancePointEndsAheadOfTheServos() {
        Bay bay = bay(TRAINER, load(Place.BALANCE_POINT, 0.30));
        // Battery, gap and row need the room from 57 to 452 mm, where the servos' gap starts; centred on 320 mm it ends
        // at 470.
        assertThat(bay.to()).isCloseTo(0.452, within(ROUNDING));
        assertThat(bay.endRoom(0.32)).isCloseTo(-0.018, within(ROUNDING));
    }

    @Test
    void underAFloorTheRowMayRunOnToTheBodysEnd() {
        Design twoBays = Records.with(TRAINER, "body", new Body.TwoBayTube(0.86, 0.07, 0.1, Nose.FIXED));
        Bay bay = bay(twoBays, load(Place.BALANCE_POINT, 0.30));
        assertThat(bay.endRoom(0.30)).isCloseTo(0.3 - 0.15 - 0.057, within(ROUNDING));
        assertThat(bay.endRoom(0.80)).isCloseTo(0.855 - 0.95, within(ROUNDING));
    }

    @Test
    void everythingInsideAPodStaysAheadOfItsEnd() {
        Design pod = Arrangements.of("pod and boom");
        Bay bay = bay(pod);
        assertThat(bay.end()).isEqualTo(0.42);
        assertThat(bay.radioX() + 0.5 * pod.radio().receiver().length()).isCloseTo(0.42 - Bay.GAP, within(ROUNDING));
    }

    @Test
    void spareLengthIsWhatTheRowLeaves() {
        double battery = TRAINER.power().battery().length();
        Bay bare = bay(TRAINER);
        Bay laden = bay(TRAINER, load(Place.BALANCE_POINT, 0.10));
        assertThat(bare.spare(TRAINER.power().battery()))
                .isCloseTo(0.86 - 0.057 - battery - bare.behind(), within(ROUNDING));
        assertThat(laden.spare(TRAINER.power().battery()))
                .isCloseTo(bare.spare(TRAINER.power().battery()) - 0.105, within(ROUNDING));
    }

    @Test
    void underAFloorTheLoadsTakeNoneOfTheBatterysLength() {
        Design twoBays = Records.with(TRAINER, "body", new Body.TwoBayTube(0.86, 0.07, 0.1, Nose.FIXED));
        double battery = TRAINER.power().battery().length();
        Bay bay = bay(twoBays, load(Place.BALANCE_POINT, 0.15));
        assertThat(bay.spare(TRAINER.power().battery()))
                .isCloseTo(0.86 - 0.057 - battery - bay.behind(), within(ROUNDING));
        Bay pole = bay(twoBays, load(Place.BALANCE_POINT, 0.90));
        assertThat(pole.spare(TRAINER.power().battery())).isCloseTo(0.86 - 0.057 - 0.905, within(ROUNDING));
    }
}
