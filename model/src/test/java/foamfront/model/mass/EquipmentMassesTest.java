package foamfront.model.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Servos;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Power;
import foamfront.model.design.Tail;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Undercarriage;
import foamfront.model.propulsion.PartTradeExternalTest;
import java.util.List;
import org.junit.jupiter.api.Test;

class EquipmentMassesTest {
    private static final double ROUNDING = 1e-12;
    private static final Design TRAINER = Examples.trainer();

    private static List<MassItem> items(Design design) {
        MassTable table = new MassTable();
        EquipmentMasses.add(Airframe.of(design), table);
        return table.items();
    }

    private static Servos servos(Design design) {
        return Airframe.of(design).servos();
    }

    private static double mass(List<MassItem> items, MassGroup group) {
        double sum = 0;
        for (MassItem item : items) {
            sum += item.group() == group ? item.mass() : 0;
        }
        return sum;
    }

    @Test
    void twinsHaveTwoOfEverythingButTheBattery() {
        List<MassItem> twin = items(Examples.with(TRAINER, new Power.TwinTractor(Examples.PLANT, 0.2, false)));
        double strap = 0.005;
        double single = mass(items(TRAINER), MassGroup.POWER) - strap;
        // 35 g/m of leads to either motor, 0.2 m out.
        double leads = 2 * 0.035 * 0.2;
        assertThat(mass(twin, MassGroup.POWER) - strap).isCloseTo(2 * single + leads, within(ROUNDING));
        double lateral = 0;
        for (MassItem item : twin) {
            lateral += item.mass() * item.y();
        }
        assertThat(lateral).isCloseTo(0, within(ROUNDING));
    }

    @Test
    void leadsAndConnectorsAreOfTheUsualMass() {
        for (MassItem item : items(TRAINER)) {
            if (item.name().equals("power leads")) {
                PartTradeExternalTest.TRADE.band(
                        "leads and connectors of a motor, mass", 10, 20, 1000 * item.mass(), "g");
                return;
            }
        }
        throw new AssertionError("there are no power leads");
    }

    @Test
    void aPushersMotorSitsBehindTheWing() {
        List<MassItem> pusher = items(Examples.with(TRAINER, new Power.Pusher(Examples.PLANT)));
        for (MassItem item : pusher) {
            if (item.name().equals("motor") || item.name().equals("propeller")) {
                assertThat(item.x()).isGreaterThan(TRAINER.wing().x() + 0.22);
                assertThat(item.z()).isPositive();
            }
        }
    }

    @Test
    void aFanAeroplaneHasAFanAndAGliderHasNoPowerPlant() {
        var plant = Examples.PLANT;
        List<MassItem> fan =
                items(Examples.with(TRAINER, new Power.DuctedFan(Examples.FAN, Examples.BATTERY, plant.controller())));
        // Fan with its motor, controller, leads, mount, strap.
        assertThat(mass(fan, MassGroup.POWER)).isCloseTo(0.091 + 0.022 + 0.012 + 0.008 + 0.005, within(ROUNDING));
        List<MassItem> glider = items(Examples.with(TRAINER, new Power.Unpowered(Samples.receiverBattery())));
        assertThat(mass(glider, MassGroup.POWER)).isCloseTo(0.008 + 0.005, within(ROUNDING));
    }

    @Test
    void eachPackHasItsStrapAndEachFurtherOneItsLead() {
        Design three = Records.with(TRAINER, "power.plant.battery", Examples.BATTERY.parallel(3));
        double more = mass(items(three), MassGroup.POWER) - mass(items(TRAINER), MassGroup.POWER);
        assertThat(more).isCloseTo(2 * (0.005 + 0.010), within(ROUNDING));
    }

    @Test
    void wheelsByTheirUndercarriage() {
        double skid = 0.0025;
        assertThat(mass(items(TRAINER), MassGroup.UNDERCARRIAGE)).isCloseTo(2 * 0.018 + skid, within(ROUNDING));
        Design tricycle = Examples.with(TRAINER, new Undercarriage.Tricycle(Examples.WHEEL));
        assertThat(mass(items(tricycle), MassGroup.UNDERCARRIAGE)).isCloseTo(3 * 0.018, within(ROUNDING));
        Design amphibian = Examples.with(TRAINER, new Undercarriage.Amphibian(Examples.WHEEL));
        assertThat(mass(items(amphibian), MassGroup.UNDERCARRIAGE))
                .isCloseTo(2 * 0.018 + skid + 0.012, within(ROUNDING));
        Design none = Examples.with(TRAINER, new Undercarriage.None());
        assertThat(mass(items(none), MassGroup.UNDERCARRIAGE)).isZero();
    }

    @Test
    void theMainWheelsKeepTheirDistanceToTheBalancePoint() {
        for (MassItem item : items(TRAINER)) {
            boolean main = item.name().startsWith("main wheel");
            assertThat(item.fromBalancePoint()).isEqualTo(main);
            if (main) {
                // A tail wheel's main axle lies ahead of the balance point; the track is a fifth of the span.
                assertThat(item.x()).isNegative();
                assertThat(Math.abs(item.y())).isCloseTo(0.12, within(ROUNDING));
            }
        }
    }

    @Test
    void servosByTheirControls() {
        Design flaps = Examples.with(TRAINER, new Controls(true, true, FlapKind.FLAPS, 0.5, 0.22, 0.35, 0.4));
        assertThat(servos(flaps)).isEqualTo(new Servos(4, 2));
        Design flaperons = Examples.with(TRAINER, new Controls(true, true, FlapKind.FLAPERONS, 0.5, 0.22, 0.35, 0.4));
        assertThat(servos(flaperons)).isEqualTo(new Servos(2, 2));
        Design rudder = Examples.with(TRAINER, new Controls(false, true, FlapKind.NONE, 0.5, 0.22, 0.35, 0.4));
        assertThat(servos(rudder)).isEqualTo(new Servos(0, 2));
        Design vee = Examples.with(
                TRAINER, TRAINER.wing(), new Tail.VTail(new TailPlane(0.45, 0.14, 0.8, 0, 0.6, 0, 0.82, 0.02)));
        assertThat(servos(vee)).isEqualTo(new Servos(2, 2));
        assertThat(servos(vee).total()).isEqualTo(4);
        assertThat(mass(items(flaps), MassGroup.RADIO) - mass(items(TRAINER), MassGroup.RADIO))
                .isCloseTo(2 * 0.016, within(ROUNDING));
    }
}
