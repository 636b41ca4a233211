package foamfront.model.appraisal;

import foamfront.model.aero.GroundEffect;
import foamfront.model.airframe.Flotation;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Power;
import foamfront.model.flight.FlapSetting;
import foamfront.model.flight.GroundAndHand;
import foamfront.model.flight.GroundAttitude;
import foamfront.model.flight.GroundSetting;
import foamfront.model.flight.HighLift;
import foamfront.model.flight.TakeOffRoll;
import foamfront.model.flight.WaterRun;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Site;
import foamfront.model.parts.Wheel;
import org.jspecify.annotations.Nullable;

/** Leaving the field and coming back to it, by hand or on wheels. */
final class Airfield {
    /** Height taken off for each heaviest thrown mass too much, m: nobody throws it, however well it would fly. */
    private static final double TOO_HEAVY = 10;

    private Airfield() {}

    /** Once thrust and drag are known; {@code idle} is the drag area of the propellers that turn idly, m². */
    static void run(Workbench w, double idle) {
        landing(w, idle);
        launch(w);
        groundAttitude(w);
    }

    /** Whether the landing roll ends beyond the site's runway; where a limit already holds it there it does not. */
    static boolean rollsPast(Workbench w) {
        return w.applies(Measure.LANDING_ROLL)
                && w.get(Measure.LANDING_ROLL) > w.mission.site().runway();
    }

    private static void launch(Workbench w) {
        if (w.design.thrown()) {
            w.rule(Measure.TAKE_OFF_DISTANCE);
            w.rule(Measure.OBSTACLE_DISTANCE);
            boolean pusher = w.design.power() instanceof Power.Pusher;
            w.set(
                    Measure.LAUNCH_HEIGHT,
                    GroundAndHand.lowestAfterThrow(
                                    w.flight, w.performance, w.mission.site().launch(), w.factors.throwSpeed(), pusher)
                            - TOO_HEAVY * overweight(w));
        } else {
            w.rule(Measure.LAUNCH_HEIGHT);
            if (w.design.undercarriage().wheel() == null) {
                onFloats(w);
            } else {
                takeOff(w);
            }
        }
    }

    /** Floats or a hull without wheels leave the water, and nothing else. */
    private static void onFloats(Workbench w) {
        w.rule(Measure.OBSTACLE_DISTANCE);
        if (w.mission.site().ground() == Ground.WATER) {
            w.rule(Measure.TAKE_OFF_DISTANCE);
        } else {
            w.set(Measure.TAKE_OFF_DISTANCE, GroundAndHand.NEVER);
        }
    }

    private static void takeOff(Workbench w) {
        Site site = w.mission.site();
        HighLift flaps = flaps(w, FlapSetting.TAKE_OFF);
        GroundSetting setting = setting(w, flaps);
        double roll = GroundAndHand.takeOff(w.flight, w.performance, setting, friction(w), site.headwind());
        w.set(Measure.TAKE_OFF_DISTANCE, roll);
        if (site.obstacle() == 0) {
            w.rule(Measure.OBSTACLE_DISTANCE);
            return;
        }
        double speed = TakeOffRoll.LIFT_OFF * setting.stallSpeed();
        double drag = drag(w, flaps, speed);
        double climb = GroundAndHand.climbOver(
                w.flight, w.performance, setting.stallSpeed(), drag, site.obstacle(), site.headwind());
        w.set(Measure.OBSTACLE_DISTANCE, Math.min(GroundAndHand.NEVER, roll + climb));
    }

    /** Glide at 1.3 stall speeds, motor stopped, propeller turning idly; then on wheels, belly or water to rest. */
    private static void landing(Workbench w, double idle) {
        Site site = w.mission.site();
        double stall = w.get(Measure.LANDING_STALL_SPEED);
        double speed = GroundAndHand.APPROACH * stall;
        HighLift flaps = flaps(w, FlapSetting.LANDING);
        double drag = drag(w, flaps, speed);
        double glide = w.flight.weight() / (drag + FlightStage.pressure(w, speed) * idle);
        w.set(Measure.APPROACH_GLIDE, glide);
        Flotation flotation = w.airframe.stations().flotation();
        double roll;
        if (flotation == null || w.design.undercarriage().wheel() != null) {
            roll = GroundAndHand.landingRoll(w.flight, setting(w, flaps), idle, landingFriction(w), site.headwind());
        } else if (site.ground() == Ground.WATER) {
            roll = WaterRun.runOut(w.flight, w.performance, flotation, idle, stall, site.headwind());
        } else {
            w.rule(Measure.LANDING_ROLL);
            w.rule(Measure.LANDING_DISTANCE);
            return;
        }
        w.set(Measure.LANDING_ROLL, roll);
        if (site.obstacle() == 0) {
            w.rule(Measure.LANDING_DISTANCE);
            return;
        }
        double air = GroundAndHand.approach(stall, glide, site.obstacle(), site.headwind());
        w.set(Measure.LANDING_DISTANCE, Math.min(GroundAndHand.NEVER, air + roll));
    }

    private static double friction(Workbench w) {
        return w.factors.rollingFriction() * w.mission.site().ground().friction();
    }

    /** Of what it comes to rest on: wheels, or the belly of what is thrown. */
    private static double landingFriction(Workbench w) {
        return w.design.undercarriage().wheel() == null
                ? w.factors.rollingFriction() * w.mission.site().ground().sliding()
                : friction(w);
    }

    /** On its wheels with these flaps down, or with none. */
    private static GroundSetting setting(Workbench w, @Nullable HighLift flaps) {
        double inducedShare = GroundEffect.inducedShare(
                w.airframe.wingHeight() - w.airframe.stations().stance().groundZ(), w.airframe.span());
        return flaps == null
                ? GroundSetting.of(w.flight, w.performance, inducedShare)
                : GroundSetting.of(flaps, inducedShare);
    }

    /** In level flight with these flaps down, or with none, motor stopped and without its propeller, N. */
    private static double drag(Workbench w, @Nullable HighLift flaps, double speed) {
        return flaps == null
                ? w.flight.drag(speed)
                : FlightStage.pressure(w, speed)
                        * w.flight.referenceArea()
                        * flaps.dragCoefficient(w.flight.liftCoefficient(speed), speed);
    }

    /** Null without flaps. */
    private static @Nullable HighLift flaps(Workbench w, FlapSetting setting) {
        FlapKind kind = w.design.controls().flaps();
        return kind == FlapKind.NONE ? null : w.flight.lowered(setting.deflection(kind));
    }

    /** Raised until something touches, over what trims at the speed of lift-off. */
    private static void groundAttitude(Workbench w) {
        Wheel wheel = w.design.undercarriage().wheel();
        Flotation flotation = w.airframe.stations().flotation();
        if (wheel == null && flotation == null) {
            w.rule(Measure.GROUND_ATTITUDE);
            return;
        }
        double most =
                flotation == null ? Double.POSITIVE_INFINITY : flotation.form().sternpost();
        if (wheel != null) {
            most = Math.min(most, GroundAttitude.most(w.airframe, wheel, w.balance.x()));
        }
        w.set(Measure.GROUND_ATTITUDE, most - liftOff(w));
    }

    /** Incidence that lifts off at 1.2 stall speeds, rad. */
    private static double liftOff(Workbench w) {
        HighLift flaps = flaps(w, FlapSetting.TAKE_OFF);
        if (flaps != null) {
            return flaps.incidence(w.flight.liftCoefficient(TakeOffRoll.LIFT_OFF * flaps.stallSpeed()));
        }
        return w.flight.incidence(w.flight.liftCoefficient(TakeOffRoll.LIFT_OFF * w.flight.stallSpeed()));
    }

    private static double overweight(Workbench w) {
        return Math.max(0, w.balance.mass() / w.mission.site().launch().heaviest() - 1);
    }
}
