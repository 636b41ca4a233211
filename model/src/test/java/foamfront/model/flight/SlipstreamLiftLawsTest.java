package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.Resolution;
import foamfront.model.aero.SectionLift;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Shaft;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.propulsion.Slipstream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Power on neutral point and trim: signs, limits and a sum by hand. */
class SlipstreamLiftLawsTest {
    private static final double ROUNDING = 1e-12;
    private static final double SPEED = 9; // m/s
    private static final double DENSITY = 1.225; // kg/m³
    private static final double THRUST = 6; // N
    private static final double FORCE = 0.004; // m² per rad
    private static final double ALPHA = 0.06; // rad

    private final SlipstreamLift stream = new SlipstreamLift();
    private final LiftingSystem lifting = new LiftingSystem(Resolution.DEFAULT);

    private Airframe solved(Design design) {
        return solved(design, SectionLift.FLAT_PLATE);
    }

    private Airframe solved(Design design, SectionLift section) {
        Airframe airframe = Airframe.of(design);
        lifting.solve(
                airframe.surfaces(),
                airframe.surfaces().stream().map(s -> section).toList());
        return airframe;
    }

    private static double disc(Airframe airframe) {
        double radius = airframe.stations().shaft().radius();
        return Math.PI * radius * radius;
    }

    @Test
    void withoutThrustAndForceNothingMoves() {
        Airframe airframe = solved(Arrangements.of("trainer"));
        stream.blow(1, 0, SPEED, DENSITY, disc(airframe), 0);
        stream.place(airframe, lifting, -0.5, 0.3, ALPHA, -0.05);
        assertThat(stream.trimChange()).isZero();
        assertThat(stream.controlGain()).isZero();
        assertThat(stream.shift(0, -0.03, 0.35)).isZero();
    }

    /** H. S. Ribner, NACA R-820, 1945: a propeller ahead of the neutral point destabilises, one behind it stabilises. */
    @ParameterizedTest
    @ValueSource(strings = {"trainer", "pusher", "twin", "delta", "flying wing"})
    void normalForceAheadDestabilisesAndBehindStabilises(String name) {
        Airframe airframe = solved(Arrangements.of(name));
        double x = airframe.stations().shaft().x();
        double neutral = lifting.neutralPoint();
        stream.blow(1, 0, SPEED, DENSITY, disc(airframe), 0);
        stream.place(airframe, lifting, -0.5, 0.3, ALPHA, 0);
        assertThat(stream.shift(FORCE, x, neutral) * (x - neutral)).isPositive();
        assertThat(x > neutral).isEqualTo(name.equals("pusher"));
    }

    /** What blows alike on everything moves no neutral point: each lift grows as all do. */
    @Test
    void aStreamOverTheWholeAeroplaneMovesNoNeutralPoint() {
        Airframe airframe = solved(Arrangements.of("trainer"));
        double area = Math.PI * 500 * 500;
        stream.blow(1, 0.5 * DENSITY * area * SPEED * SPEED, SPEED, DENSITY, area, 0);
        stream.place(airframe, lifting, -0.5, 0.3, ALPHA, 0);
        assertThat(stream.shift(0, 0, areaCentre(airframe))).isCloseTo(0, within(1e-3));
        assertThat(stream.controlGain()).isPositive();
    }

    /** Centre of the surfaces' lift slopes at their quarter chords, m. */
    private double areaCentre(Airframe airframe) {
        double moment = 0;
        double sum = 0;
        for (int s = 0; s < lifting.surfaceCount(); s++) {
            moment += lifting.surfaceLiftSlope(s)
                    * airframe.surfaces().get(lifting.listed(s)).quarterChordX();
            sum += lifting.surfaceLiftSlope(s);
        }
        return moment / sum;
    }

    /** Wing and tail by hand, on momentum theory's far stream and the disc's own: the moment at the same lift, blown and not. */
    @Test
    void trimMovesBySumsByHand() {
        Airframe airframe = solved(Arrangements.of("trainer"), new SectionLift(-0.04, 0.95, -0.06));
        double elevator = -0.08;
        double balance = 0.30;
        double body = 0.2;
        double area = disc(airframe);
        double scale = lifting.referenceArea() * lifting.referenceChord();
        stream.blow(1, THRUST, SPEED, DENSITY, area, FORCE);
        stream.place(airframe, lifting, lifting.momentSlope(balance) + body, balance, ALPHA, elevator);
        double lift = lifting.liftCoefficient(ALPHA, elevator, 0) * lifting.referenceArea();
        // Lift and moment in the stream are linear in incidence.
        double[] none = blown(airframe, 0, elevator, balance);
        double[] unit = blown(airframe, 1, elevator, balance);
        double alpha = (lift - none[0]) / (unit[0] - none[0]);
        double[] with = blown(airframe, alpha, elevator, balance);
        assertThat(with[0]).isCloseTo(lift, within(ROUNDING));
        double without = still(ALPHA, elevator, balance) + body * ALPHA * scale;
        assertThat(alpha).isLessThan(ALPHA - 0.005);
        assertThat(stream.trimChange() * scale).isCloseTo(with[1] + body * alpha * scale - without, within(ROUNDING));
        assertThat(Slipstream.atDisc(THRUST, SPEED, area, DENSITY)).isCloseTo(atDisc(area), within(ROUNDING));
    }

    private static double atDisc(double area) {
        return 0.5 * (Math.sqrt(SPEED * SPEED + 2 * THRUST / (DENSITY * area)) - SPEED);
    }

    /** Moment without power about a point, over dynamic pressure, m³. */
    private double still(double alpha, double elevator, double balance) {
        return (lifting.fixedMoment(balance)
                        + lifting.momentSlope(balance) * alpha
                        + lifting.elevatorMomentSlope(balance) * elevator)
                * lifting.referenceArea()
                * lifting.referenceChord();
    }

    /** Lift (m²) and moment (m³) of wing and tail in the stream. */
    private double[] blown(Airframe airframe, double alpha, double elevator, double balance) {
        double lift = lifting.liftCoefficient(alpha, elevator, 0) * lifting.referenceArea();
        double moment = still(alpha, elevator, balance);
        for (int s = 0; s < 2; s++) {
            double[] share = gains(airframe, s);
            double x = airframe.surfaces().get(lifting.listed(s)).quarterChordX();
            double a = lifting.surfaceLiftSlope(s);
            double rest = lifting.surfaceLift(s, 0, elevator, 0);
            double added = share[0] * a * alpha + share[1] * rest;
            lift += added;
            moment += added * (balance - x) + share[1] * lifting.surfaceSectionMoment(s, elevator, 0);
        }
        return new double[] {lift, moment};
    }

    /** Shares by which a surface's lift grows: by incidence and by setting. */
    private static double[] gains(Airframe airframe, int s) {
        Shaft shaft = airframe.stations().shaft();
        double area = disc(airframe);
        double w = atDisc(area);
        double kept = 1 - FORCE * SPEED / (2 * area * (SPEED + w));
        Surface surface = airframe.surfaces().get(s);
        double d = surface.quarterChordX() - shaft.x();
        double u = w * (1 + d / Math.hypot(d, shaft.radius()));
        double radius = shaft.radius() * Math.sqrt((SPEED + w) / (SPEED + u));
        double height = surface.panels().get(0).rootZ() - shaft.z();
        double share = 2 * Math.sqrt(Math.max(0, radius * radius - height * height)) / surface.span();
        double r = (SPEED + u) / SPEED;
        return new double[] {share * (r * kept - 1), share * (r * r - 1)};
    }

    /** The neutral point that a limit may count on, by hand: wing and propeller take, and a tail that steadies gives nothing. */
    @Test
    void noStabilityIsCreditedToTheStream() {
        Airframe low = solved(Records.with(Arrangements.of("trainer"), "tail.plane.z", 0.0));
        double x = low.stations().shaft().x();
        double neutral = lifting.neutralPoint();
        stream.blow(1, THRUST, SPEED, DENSITY, disc(low), FORCE);
        stream.place(low, lifting, -0.4, 0.3, ALPHA, 0);
        double gained = gains(low, 0)[0] * lifting.surfaceLiftSlope(0);
        double wing = low.wing().quarterChordX();
        double hand = (FORCE * (x - neutral) + gained * (wing - neutral))
                / (lifting.liftSlope() * lifting.referenceArea() + FORCE + gained);
        assertThat(hand).isNegative();
        assertThat(stream.assuredShift(FORCE, x, neutral)).isCloseTo(hand, within(ROUNDING));
        assertThat(stream.shift(FORCE, x, neutral)).isGreaterThan(hand + 0.005);
    }

    /** Without thrust a disc that turns the air takes lift from the tail, and this counts. */
    @Test
    void whatTheStreamTakesFromTheTailCounts() {
        Airframe low = solved(Records.with(Arrangements.of("trainer"), "tail.plane.z", 0.0));
        double x = low.stations().shaft().x();
        double neutral = lifting.neutralPoint();
        stream.blow(1, 0, SPEED, DENSITY, disc(low), FORCE);
        stream.place(low, lifting, -0.4, 0.3, ALPHA, 0);
        double force = FORCE * (x - neutral) / (lifting.liftSlope() * lifting.referenceArea() + FORCE);
        assertThat(stream.assuredShift(FORCE, x, neutral)).isLessThan(force - 1e-5);
    }

    /** A tail on the shaft's line stands in the stream, one on top of a high fin does not. */
    @Test
    void aTailOutOfTheStreamGainsNothing() {
        Airframe low = solved(Records.with(Arrangements.of("trainer"), "tail.plane.z", 0.0));
        stream.blow(1, 6, SPEED, DENSITY, disc(low), 0);
        stream.place(low, lifting, -0.4, 0.3, ALPHA, 0);
        double inStream = stream.controlGain();
        Airframe high = solved(Records.with(Arrangements.of("T-tail"), "tail.plane.z", 0.4));
        stream.place(high, lifting, -0.4, 0.3, ALPHA, 0);
        assertThat(inStream).isPositive();
        assertThat(stream.controlGain()).isZero();
    }

    /** Each of a twin's streams covers as much of one half of the wing as lies within its radius. */
    @Test
    void aTwinsStreamsCoverTheirOwnStretches() {
        Airframe twin = solved(Arrangements.of("twin"));
        Shaft shaft = twin.stations().shaft();
        double radius = 0.9 * shaft.radius();
        Surface wing = twin.wing();
        double t = shaft.y() / (0.5 * wing.span());
        double z = wing.panels().get(0).rootZ()
                + t * (wing.panels().get(0).tipZ() - wing.panels().get(0).rootZ());
        double half = Math.sqrt(radius * radius - (z - shaft.z()) * (z - shaft.z()));
        assertThat(SlipstreamLift.covered(wing, shaft, radius))
                .isCloseTo(2 * half / (0.5 * wing.span()), within(ROUNDING));
    }
}
