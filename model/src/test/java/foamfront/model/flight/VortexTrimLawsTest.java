package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.aero.LeadingEdgeVortex;
import foamfront.model.aero.LiftingSystem;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Trim over edge vortices: Polhamus's two parts, balanced moments, and no jump where the vortices begin. */
class VortexTrimLawsTest {
    private static final double ROUNDING = 1e-9;
    private static final double WEIGHT = 4;

    private final Design delta = Arrangements.of("delta");
    private final Flights flown = Flights.of(delta, WEIGHT);
    private final LeadingEdgeVortex edge = Objects.requireNonNull(LeadingEdgeVortex.of(Airframe.of(delta)));

    @Test
    void liftAndMomentAreTheSumsOfTheirParts() {
        LiftingSystem lifting = flown.lifting;
        for (double lift = -0.2; lift < 0.9; lift += 0.05) {
            double alpha = flown.flight.incidence(lift);
            double elevon = flown.flight.elevator(lift);
            double s = Math.sin(alpha);
            double c = Math.cos(alpha);
            double normal = c * (lifting.liftSlope() * s + lifting.elevatorLiftSlope() * elevon);
            double vortex = 3.2 * s * Math.abs(s);
            assertThat(c * (normal + vortex)).isCloseTo(lift, within(ROUNDING));
            double moment = flown.bodyMoment * s
                    + c
                            * (lifting.momentSlope(flown.balanceX) * s
                                    + lifting.elevatorMomentSlope(flown.balanceX) * elevon)
                    + vortex * (flown.balanceX - edge.centreX()) / lifting.referenceChord();
            assertThat(moment).isCloseTo(0, within(ROUNDING));
        }
    }

    /** The slopes that the quick pitching motion takes are those of lift and moment written out, the elevon held. */
    @Test
    void slopesAreTheDerivativesOfLiftAndMoment() {
        double h = 1e-5;
        // Vortex lift turns its curvature round at zero lift, which the difference sees as K h.
        double turned = 4 * h;
        for (double lift = -0.2; lift < 0.9; lift += 0.1) {
            double alpha = flown.flight.incidence(lift);
            double elevon = flown.flight.elevator(lift);
            double slope = (liftAt(alpha + h, elevon) - liftAt(alpha - h, elevon)) / (2 * h);
            double stiffness = (momentAt(alpha + h, elevon) - momentAt(alpha - h, elevon)) / (2 * h);
            assertThat(flown.flight.liftSlope(lift)).isCloseTo(slope, within(turned));
            assertThat(flown.flight.momentSlope(lift)).isCloseTo(stiffness, within(turned));
        }
        // Vortices stiffen lift with incidence, which attached flow does not.
        assertThat(flown.flight.liftSlope(0.6)).isGreaterThan(1.05 * flown.flight.liftSlope(0));
    }

    private double liftAt(double alpha, double elevon) {
        double s = Math.sin(alpha);
        double c = Math.cos(alpha);
        LiftingSystem lifting = flown.lifting;
        return c * (c * (lifting.liftSlope() * s + lifting.elevatorLiftSlope() * elevon) + 3.2 * s * Math.abs(s));
    }

    private double momentAt(double alpha, double elevon) {
        double s = Math.sin(alpha);
        LiftingSystem lifting = flown.lifting;
        double x = flown.balanceX;
        return flown.bodyMoment * s
                + Math.cos(alpha) * (lifting.momentSlope(x) * s + lifting.elevatorMomentSlope(x) * elevon)
                + 3.2 * s * Math.abs(s) * (x - edge.centreX()) / lifting.referenceChord();
    }

    /** The elevon that flight itself asks for before and after. */
    @Test
    void lettingALoadGoTrimsBetweenTwoFlightsOverVortices() {
        Flights light = Flights.balanced(delta, 0.8 * WEIGHT, flown.balanceX - 0.01);
        double full = flown.flight.liftCoefficient(14);
        double after = light.flight.liftCoefficient(14);
        double shift = ReleaseTrim.elevatorShift(
                flown.lifting, edge, flown.bodyMoment, flown.balanceX, full, light.balanceX, after);
        assertThat(shift)
                .isCloseTo(light.flight.elevator(after) - flown.flight.elevator(full), within(ROUNDING))
                .isNotCloseTo(
                        ReleaseTrim.elevatorShift(
                                flown.lifting, null, flown.bodyMoment, flown.balanceX, full, light.balanceX, after),
                        within(1e-4));
    }

    @Test
    void dragBeyondFrictionIsLiftTimesTheTangentOfIncidence() {
        for (double speed = 9; speed < 30; speed += 3) {
            flown.flight.drag(speed);
            double lift = flown.flight.liftCoefficient(speed);
            assertThat(flown.flight.inducedDrag())
                    .isCloseTo(lift * Math.tan(flown.flight.incidence(lift)), within(ROUNDING));
        }
    }

    @Test
    void maximumLiftIsThatOfTwentyDegreesButNoMoreThanTheCap() {
        TrimmedFlight flight = flown.flight;
        assertThat(flight.maximumLift()).isBetween(0.5, LeadingEdgeVortex.MOST_LIFT + ROUNDING);
        assertThat(flight.incidence(flight.maximumLift())).isLessThan(LeadingEdgeVortex.USABLE + ROUNDING);
        assertThat(flight.liftCoefficient(flight.stallSpeed())).isCloseTo(flight.maximumLift(), within(1e-6));
    }

    @Test
    void vorticesLiftMoreThanAttachedFlowAtTheSameIncidence() {
        double lift = 0.8 * flown.flight.maximumLift();
        double alpha = flown.flight.incidence(lift);
        double elevon = flown.flight.elevator(lift);

        assertThat(lift).isGreaterThan(flown.lifting.liftCoefficient(alpha, elevon, 0));
        assertThat(flown.lifting.liftCoefficient(flown.flight.loadIncidence(lift), elevon, 0))
                .isCloseTo(lift, within(ROUNDING));
    }

    /** A twentieth of a degree of sweep moves nothing by more than what it is worth: no jump for a search to sit on. */
    @Test
    void nothingJumpsWithSweep() {
        double step = Math.toRadians(0.05);
        double stall = Double.NaN;
        double drag = Double.NaN;
        for (double sweep = Math.toRadians(10); sweep < Math.toRadians(44); sweep += step) {
            TrimmedFlight flight = Flights.of(Records.with(delta, "wing.planform.sweep", sweep), WEIGHT).flight;
            if (!Double.isNaN(stall)) {
                assertThat(flight.stallSpeed() / stall).isCloseTo(1, within(0.006));
                assertThat(flight.drag(15) / drag).isCloseTo(1, within(0.006));
            }
            stall = flight.stallSpeed();
            drag = flight.drag(15);
        }
    }
}
