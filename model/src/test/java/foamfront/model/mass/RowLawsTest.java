package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Bay;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.parts.Fan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** In a single bay nothing lies inside anything else once the measures say that there is room. */
class RowLawsTest {
    private static final int SEEDS = 4000;
    private static final double ROUNDING = 1e-12;

    /** What lies from one place to another along the body, m. */
    private record Stretch(String name, double from, double to) {
        static Stretch about(String name, double x, double length) {
            return new Stretch(name, x - 0.5 * length, x + 0.5 * length);
        }
    }

    @Test
    void nothingOverlapsWhereThereIsRoom() {
        int roomy = 0;
        int crowded = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Design design = Records.with(Arrangements.any(seed), "loads", loads(random));
            Airframe airframe = Airframe.of(design);
            if (design.body() instanceof Body.TwoBayTube) {
                continue;
            }
            double aim = airframe.chordX() + airframe.chord() * random.nextDouble(0.1, 0.6);
            if (hasRoom(airframe, aim)) {
                roomy++;
                assertDisjoint(row(airframe, aim), airframe.body().length());
            } else {
                crowded++;
            }
        }
        assertThat(roomy).isGreaterThan(SEEDS / 10);
        assertThat(crowded).isGreaterThan(SEEDS / 10);
    }

    private static List<Load> loads(SplittableRandom random) {
        List<Load> loads = new ArrayList<>();
        for (Place place : List.of(Place.NOSE, Place.BEHIND_NOSE, Place.BALANCE_POINT, Place.BALANCE_POINT)) {
            if (random.nextBoolean()) {
                loads.add(new Load("cargo", 0.05, random.nextDouble(0.01, 0.15), 0.03, 0.03, place, false, 0, 0));
            }
        }
        return loads;
    }

    private static boolean hasRoom(Airframe airframe, double aim) {
        Bay bay = airframe.stations().bay();
        BatteryBay battery = BatteryBay.of(airframe);
        return bay.spare(airframe.design().power().battery()) >= 0
                && bay.endRoom(aim) >= 0
                && battery.overlap(battery.nearest(aim, aim), aim) < ROUNDING;
    }

    private static List<Stretch> row(Airframe airframe, double aim) {
        Design design = airframe.design();
        Bay bay = airframe.stations().bay();
        List<Stretch> row = new ArrayList<>();
        var controller = Bay.controller(design.power());
        if (controller != null) {
            row.add(Stretch.about("controller", bay.controllerX(), controller.length()));
        }
        if (airframe.servos().tail() > 0) {
            row.add(Stretch.about("servos", bay.servoX(), design.radio().servo().length()));
        }
        row.add(Stretch.about(
                "receiver", bay.radioX(), design.radio().receiver().length()));
        if (design.power() instanceof Power.DuctedFan ducted) {
            row.add(Stretch.about("fan", bay.fanX(), Fan.LENGTH * ducted.fan().diameter()));
        }
        double length = design.power().battery().length();
        row.add(Stretch.about("battery", BatteryBay.of(airframe).nearest(aim, aim), length));
        MassTable loads = new MassTable();
        LoadRow.add(airframe, loads);
        for (MassItem load : loads.items()) {
            row.add(Stretch.about(load.name(), load.xAt(aim), load.length()));
        }
        return row;
    }

    private static void assertDisjoint(List<Stretch> row, double end) {
        row.sort(Comparator.comparingDouble(Stretch::from));
        assertThat(row.get(0).from()).isNotNegative();
        for (int i = 1; i < row.size(); i++) {
            assertThat(row.get(i).from())
                    .as("%s", row)
                    .isGreaterThan(row.get(i - 1).to() - ROUNDING);
        }
        assertThat(row.get(row.size() - 1).to()).isLessThan(end);
    }
}
