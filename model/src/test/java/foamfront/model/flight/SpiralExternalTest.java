package foamfront.model.flight;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.aero.FinYaw;
import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.Resolution;
import foamfront.model.aero.SectionLift;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import java.util.Collections;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The spiral parameter of M. Drela's notes (from memory: 5 neutral) against Etkin's criterion with our derivatives. */
class SpiralExternalTest {
    private static final double LIFT = 0.6;
    private static final double DRAG = 0.06;

    @ParameterizedTest(name = "B = {0}")
    @CsvSource({"3, -1", "8, 1"})
    void bothCriteriaAgreeAwayFromNeutral(double parameter, double sign) {
        double balance = 0.25;
        Design design = Samples.trainer();
        double now = Handling.spiralParameter(Airframe.of(design), balance, LIFT);
        double dihedral = design.wing().planform().dihedral() * parameter / now;
        Airframe airframe = Airframe.of(Records.with(design, "wing.planform.dihedral", dihedral));
        assertThat(Handling.spiralParameter(airframe, balance, LIFT)).isBetween(0.99 * parameter, 1.01 * parameter);

        LiftingSystem lifting = new LiftingSystem(Resolution.DEFAULT);
        lifting.solve(
                airframe.surfaces(), Collections.nCopies(airframe.surfaces().size(), SectionLift.FLAT_PLATE));
        Surface fin = airframe.fins().get(0);
        double yaw = FinYaw.stiffness(fin, 1, FinYaw.ON_BODY, balance, airframe.area(), airframe.span());
        LateralDerivatives whole = Stability.lateral(airframe, lifting, balance, 0, yaw, LIFT, DRAG);
        assertThat(Math.signum(whole.spiralCriterion())).isEqualTo(sign);
    }
}
