package foamfront.model.appraisal;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.flight.GroundAndHand;
import foamfront.model.flight.Stability;
import foamfront.model.mission.Measure;
import foamfront.model.structure.LoadFactor;

/**
 * What the site's wind and gust do to it. Runs once cruise and landing speeds are known.
 *
 * <ul>
 *   <li>Crosswind: touched down at V with the nose turned along the runway it slips by β against a side wind V sin β. Full rudder holds
 *       β = C_n(δ) / C_nβ, full ailerons β = C_l(δ) / C_lβ; the lesser counts (derived; B. Etkin, Dynamics of Flight, steady
 *       sideslip, from memory). Without ailerons the nose is kicked straight in the flare and the roll that follows comes too late to
 *       matter (judgement); without a rudder it lands with the nose off the runway, as light models do, and nothing is asked (common
 *       practice). A V-tail's rudder is what trim in cruise leaves of it. Weathercocking round the wheels at low speed and a canted tail's own roll are left out.
 *   <li>Gust load: Δn of {@link LoadFactor}, as the structure bears it but not cut off at the stall.
 *   <li>Gust margin: (C_L,max − C_L) / a over arctan(U / V), elevator held (derived).
 * </ul>
 */
final class WindStage {
    private WindStage() {}

    static void run(Workbench w) {
        double cruise = w.get(Measure.CRUISE_SPEED);
        w.set(Measure.HEADWAY, cruise - w.mission.site().wind());
        gust(w, cruise);
        crosswind(w);
    }

    private static void gust(Workbench w, double speed) {
        double gust = w.mission.site().gust();
        double slope = w.lifting.liftSlope();
        if (gust == 0 || !(slope > 0)) {
            w.rule(Measure.GUST_LOAD);
            w.rule(Measure.GUST_MARGIN);
            return;
        }
        double loading = w.balance.mass() * GRAVITY / w.airframe.area();
        double density = w.air().density();
        double ratio = LoadFactor.massRatio(
                loading, density, w.airframe.wing().area() / w.airframe.wing().span(), slope);
        w.set(
                Measure.GUST_LOAD,
                LoadFactor.alleviation(ratio) * LoadFactor.sharpGust(loading, density, speed, gust, slope));
        double left = (w.flight.maximumLift() - w.flight.liftCoefficient(speed)) / slope;
        w.set(Measure.GUST_MARGIN, left / StrictMath.atan2(gust, speed));
    }

    private static void crosswind(Workbench w) {
        if (w.design.undercarriage().wheel() == null || w.rudderYaw == 0) {
            w.rule(Measure.CROSSWIND);
            return;
        }
        double stiffness = w.get(Measure.YAW_STIFFNESS);
        double sideslip = stiffness > 0 ? w.rudderYaw / stiffness : 0;
        if (w.design.controls().ailerons()) {
            double lift = w.flight.liftCoefficient(GroundAndHand.TOUCH_DOWN * w.get(Measure.LANDING_STALL_SPEED));
            double roll = Math.abs(Stability.dihedralEffect(w.airframe, w.lifting.lateral(), w.balance.z(), lift));
            double ailerons =
                    -w.get(Measure.ROLL_RESPONSE) * w.lifting.lateral().rollDamping();
            sideslip = Math.min(sideslip, roll == 0 ? BalanceStage.MOST_SIDESLIP : ailerons / roll);
        }
        double held = Math.min(BalanceStage.MOST_SIDESLIP, sideslip);
        w.set(Measure.CROSSWIND, GroundAndHand.TOUCH_DOWN * StrictMath.sin(held));
    }
}
