package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.aero.BodyMoment;
import foamfront.model.aero.FinYaw;
import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.Resolution;
import foamfront.model.aero.SectionLift;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The spiral parameter of M. Drela's notes (from memory: 5 neutral) against Etkin's criterion with our derivatives. */
class SpiralExternalTest {
    private static final double LIFT = 0.6;
    private static final double DRAG = 0.06;
    private static final double BALANCE = 0.25;

    /** C_l-beta bends a little with dihedral; the straight line through two dihedrals finds the one that is asked for. */
    private static final double STRAIGHT = 0.03;

    /** Ratio of C_l-beta to C_lp over straight wings: half a spread of 1.61 to 1.66. */
    private static final double RATIO = 0.02;

    private static final Validation SPIRAL = Validation.of(
            Subject.STABILITY,
            "Spiral by two criteria",
            "B of M. Drela, MIT Unified Engineering notes, neutral at 5, beside C_l-beta C_nr − C_lr C_n-beta of B. Etkin,"
                    + " Dynamics of Flight (both from memory); the trainer of the tests.");

    /** An aeroplane with what both criteria need. */
    private record Case(Airframe airframe, LiftingSystem lifting) {
        static Case of(Design design) {
            Airframe airframe = Airframe.of(design);
            List<Surface> surfaces = airframe.surfaces();
            LiftingSystem lifting = new LiftingSystem(Resolution.DEFAULT);
            lifting.solve(surfaces, Collections.nCopies(surfaces.size(), SectionLift.FLAT_PLATE));
            return new Case(airframe, lifting);
        }

        double parameter() {
            double dihedral = Stability.dihedralEffect(airframe, lifting.lateral(), 0, LIFT);
            return Handling.spiralParameter(
                    airframe, BALANCE, LIFT, dihedral, lifting.lateral().rollDamping());
        }

        LateralDerivatives derivatives() {
            double yaw = lifting.lateral().yawStiffness(BALANCE) + BodyMoment.yawSlope(airframe);
            for (Surface fin : airframe.fins()) {
                yaw += FinYaw.stiffness(fin, 1, FinYaw.ON_BODY, BALANCE, airframe.area(), airframe.span());
            }
            return Stability.lateral(airframe, lifting, BALANCE, 0, yaw, LIFT, DRAG);
        }
    }

    private static Design with(Design design, double dihedral) {
        return Records.with(design, "wing.planform.dihedral", dihedral);
    }

    /** The arrangement with the dihedral that gives it this B. */
    private static Case at(String arrangement, double parameter) {
        Design design = Objects.requireNonNull(Arrangements.all().get(arrangement));
        double low = Case.of(with(design, 0)).parameter();
        double high = Case.of(with(design, 0.1)).parameter();
        Case found = Case.of(with(design, 0.1 * (parameter - low) / (high - low)));
        assertThat(found.parameter() / parameter).isCloseTo(1, within(STRAIGHT));
        return found;
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"trainer", "T-tail", "V-tail", "twin"})
    void bothCriteriaAgreeAwayFromNeutral(String arrangement) {
        assertThat(at(arrangement, 3).derivatives().spiralCriterion()).isNegative();
        assertThat(at(arrangement, 8).derivatives().spiralCriterion()).isPositive();
    }

    @Test
    void theyAreShownSideBySide() {
        for (double parameter : new double[] {3, 5, 8}) {
            double criterion = at("trainer", parameter).derivatives().spiralCriterion();
            double low = parameter < 5 ? -0.05 : parameter > 5 ? 0 : -0.005;
            double high = parameter < 5 ? 0 : parameter > 5 ? 0.05 : 0.005;
            SPIRAL.band(String.format(Locale.ROOT, "criterion at B = %.0f", parameter), low, high, criterion, "");
        }
    }

    @Test
    void theWorkedExample() {
        double dihedral = 6 * Math.PI / 180;
        SPIRAL.value(
                "B of arm 0.6 m, span 1.2 m, 6 degrees, C_L 0.6",
                5,
                Handling.spiralParameter(0.5, dihedral, 0.6),
                0.005,
                "");
    }

    /**
     * A straight wing with nothing above or below it has the dihedral that it was built with: the monoplane equation over aspect
     * ratios 4 to 8 and tapers 0.5 to 1 (derived; C_l-beta and C_lp as H. A. Pearson and R. T. Jones chart them, NACA R-635, 1938).
     */
    @ParameterizedTest(name = "C_l-beta {0} per dihedral, C_lp {1}")
    @CsvSource({"0.701, 0.4264", "0.8515, 0.5233", "0.8095, 0.4866", "0.955, 0.5914", "0.901, 0.5438"})
    void aStraightWingsEffectiveDihedralIsItsOwn(double perDihedral, double damping) {
        assertThat(Handling.effectiveDihedral(-0.1 * perDihedral, -damping)).isCloseTo(0.1, within(0.1 * RATIO));
    }

    /** Sweep and a high wing stand for dihedral, a low wing for anhedral. */
    @Test
    void sweepAndHeightCountInTheLimitAsInTheMotions() {
        Design trainer = with(Objects.requireNonNull(Arrangements.all().get("trainer")), 0);
        double high = Case.of(trainer).parameter();
        double swept =
                Case.of(Records.with(trainer, "wing.planform.sweep", 0.3)).parameter();
        double low = Case.of(Records.with(trainer, "wing.z", -0.04)).parameter();
        assertThat(high).isPositive();
        assertThat(swept).isGreaterThan(high + 0.5);
        assertThat(low).isLessThan(high - 0.5);
        Case one = Case.of(trainer);
        double limit = Stability.dihedralEffect(one.airframe(), one.lifting().lateral(), 0, LIFT);
        assertThat(one.derivatives().rollSideslip()).isEqualTo(limit);
    }
}
