package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Design;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a wing lets go first, what its tips have left there, and what arrangements can lift. */
class StallLawsTest {
    private static final double WEIGHT = 10; // N
    private static final double DEGREE = Math.PI / 180;

    private static TrimmedFlight with(String path, double value) {
        return of(Records.with(Samples.trainer(), path, value));
    }

    private static TrimmedFlight of(Design design) {
        return Flights.of(design, WEIGHT).flight;
    }

    private static Design tapered(double taper) {
        return Records.with(Samples.trainer(), "wing.planform.taper", taper);
    }

    /** c_l / C_L of the monoplane equation: a straight wing's greatest at its root, one of taper 0.5 at 0.5 to 0.6. */
    @Test
    void aStraightWingLetsGoAtTheRootAndATaperedOneFurtherOut() {
        assertThat(of(tapered(1)).stallPlace()).isLessThan(0.3);
        assertThat(of(tapered(0.5)).stallPlace()).isBetween(0.4, 0.75);
        assertThat(of(tapered(0.25)).stallPlace()).isGreaterThan(0.65);
    }

    @Test
    void taperTakesFromTheTipsAndWashoutGivesBack() {
        double straight = of(tapered(1)).tipReserve();
        double tapered = of(tapered(0.5)).tipReserve();
        double pointed = of(tapered(0.25)).tipReserve();
        assertThat(straight).isGreaterThan(0.1);
        assertThat(tapered).isBetween(0.0, straight);
        assertThat(pointed).isLessThanOrEqualTo(0.02);
        double root = Samples.trainer().wing().planform().incidence();
        Design washed = Records.with(tapered(0.5), "wing.planform.tipIncidence", root - 3 * DEGREE);
        assertThat(of(washed).tipReserve()).isGreaterThan(tapered + 0.02);
        assertThat(of(washed).stallPlace()).isLessThan(of(tapered(0.5)).stallPlace());
    }

    /** Sweep back loads the tips, sweep forward the root. */
    @Test
    void sweepBackMovesTheStallOutwards() {
        double plain = with("wing.planform.sweep", 0).tipReserve();
        double back = with("wing.planform.sweep", 25 * DEGREE).tipReserve();
        double forward = with("wing.planform.sweep", -10 * DEGREE).tipReserve();
        assertThat(back).isLessThan(plain - 0.02);
        assertThat(forward).isGreaterThan(plain);
    }

    /** No aeroplane lifts more than its sections would all together, and the first strip is the wing's measure. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"trainer", "biplane", "V-tail", "twin", "curved plate", "symmetrical"})
    void theTipsNeverHaveLessThanNothingWhereTheWingLetsGoFurtherIn(String name) {
        TrimmedFlight flight = of(Arrangements.of(name));
        if (flight.stallPlace() < Strips.TIP) {
            assertThat(flight.tipReserve()).isGreaterThan(0);
        } else {
            assertThat(flight.tipReserve()).isBetween(-1e-12, 1e-12);
        }
    }

    /** Elevons raised to trim take lift off the wing, and a balance point further ahead asks for more of them. */
    @Test
    void aFlyingWingsMaximumLiftIsTheTrimmedOne() {
        Design wing = Arrangements.of("flying wing");
        Flights middle = Flights.of(wing, WEIGHT);
        double chord = middle.lifting.referenceChord();
        TrimmedFlight ahead = Flights.balanced(wing, WEIGHT, middle.balanceX - 0.08 * chord).flight;
        TrimmedFlight aft = Flights.balanced(wing, WEIGHT, middle.balanceX + 0.08 * chord).flight;
        assertThat(ahead.maximumLift()).isLessThan(middle.flight.maximumLift() - 0.02);
        assertThat(aft.maximumLift()).isGreaterThan(middle.flight.maximumLift());
        assertThat(ahead.elevatorAtStall()).isLessThan(middle.flight.elevatorAtStall());
    }
}
