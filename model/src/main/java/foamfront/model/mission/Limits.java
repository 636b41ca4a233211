package foamfront.model.mission;

import static foamfront.model.mission.Bound.atLeast;
import static foamfront.model.mission.Bound.atMost;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The bounds of one study, in the order of {@link Measure}: those that always hold, each replaced where the study sets its own
 * figure. An optimiser finds every hole, so no study is without them.
 */
public final class Limits {
    private static final double DEGREE = Math.PI / 180;

    private static final List<Bound> STANDING = List.of(
            atLeast(Measure.ENDURANCE, 240, "four minutes is the least worth launching for (judgement)"),
            atMost(Measure.STALL_SPEED, 9, "trainer practice; faster stalls are for experts (common practice)"),
            atLeast(Measure.TOP_SPEED_RATIO, 1.5, "speed in hand for a gust, and twice the wind (judgement)"),
            atLeast(Measure.CLIMB_RATE, 2, "clear the hedge; by role (common practice)"),
            atLeast(Measure.WIND_GLIDE, 2, "a glider must come home against the wind: 100 m from 50 m up (judgement)"),
            atLeast(Measure.THRUST_TO_WEIGHT, 0.35, "any powered model (judgement)"),
            atMost(Measure.TAKE_OFF_DISTANCE, 100, "few club fields are longer; floats never leave land (judgement)"),
            atLeast(
                    Measure.CROSSWIND,
                    0.2,
                    "a side wind of 0.2 stall speeds, 14 CFR 23.233(a) before 2017 (from memory)"),
            atLeast(Measure.GROUND_ATTITUDE, 0, "it must lift off before its tail strikes (common practice)"),
            atLeast(Measure.LAUNCH_HEIGHT, 0.8, "thrown from 1.8 m, never lower than this (judgement)"),
            atLeast(Measure.BUOYANCY_RESERVE, 0.8, "80 % more than floats it in fresh water, 14 CFR 23.2310(a)"),
            new Bound(Measure.WATER_TRIM, -3 * DEGREE, 8 * DEGREE, "neither bow nor stern under (judgement)"),
            atLeast(Measure.WATER_HEEL, 1, "a side wind must not put a wing under (judgement)"),
            atLeast(Measure.WATER_CLEARANCE, 0.040, "propellers die of water (common practice)"),
            new Bound(
                    Measure.STEP_ANGLE,
                    0,
                    10 * DEGREE,
                    "a step ahead of the balance point will not rotate, far behind it will not run (common practice)"),
            atMost(
                    Measure.SPRAY_LOAD,
                    0.0825,
                    "heavier bottoms throw spray into the propeller (Parkinson, NACA TN 1290, 1947, from memory)"),
            atLeast(Measure.HUMP_THRUST, 1.25, "a quarter in hand or it ploughs for ever (common practice)"),
            new Bound(Measure.HUMP_TRIM, 4 * DEGREE, 12 * DEGREE, "bottoms pass the hump between these (from memory)"),
            atMost(Measure.HUMP_LIFT, 0.95, "the wing must not stall at the hump (judgement)"),
            atMost(Measure.STEP_ELEVATOR, 0.8, "a fifth of the elevator kept in hand (judgement)"),
            atLeast(Measure.HULL_STRENGTH, 1.5, "safety over the limit load (common practice)"),
            new Bound(Measure.STATIC_MARGIN, 0.05, 0.20, "static margin of models (common practice)"),
            atLeast(Measure.POWER_ON_MARGIN, 0.02, "still stable at full throttle (judgement)"),
            atMost(Measure.BALANCE_SHIFT, 0, "the battery must balance the model from inside its bay"),
            atLeast(Measure.HORIZONTAL_TAIL_VOLUME, 0.30, "below this pitch is nervous (Drela, from memory)"),
            atLeast(Measure.VERTICAL_TAIL_VOLUME, 0.02, "below this it wanders in yaw (Drela, from memory)"),
            atLeast(Measure.YAW_STIFFNESS, 0.04, "weathercock stability per radian (from memory)"),
            atLeast(Measure.ROLL_RESPONSE, 0.07, "Gilruth and Turner, NACA R-715, 1941 (from memory)"),
            atLeast(Measure.RUDDER_ROLL, 0.025, "turned by rudder and dihedral (from memory)"),
            atMost(Measure.TORQUE_ROLL, 1, "the motor must not roll the model (judgement)"),
            atMost(Measure.TRIM_TRAVEL, 0.8, "a fifth of the elevator kept in hand at the stall (judgement)"),
            atMost(
                    Measure.ELEVON_TRIM,
                    1.0 / 3,
                    "elevons held up stand for sweep, washout or reflex left out (judgement)"),
            atMost(Measure.POWER_TRIM, 0.8, "a fifth of the elevator kept in hand (judgement)"),
            new Bound(Measure.RUDDER_TURN, 0.10, 0.20, "turns by rudder without wallowing (Drela, from memory)"),
            atMost(Measure.MOTOR_LOAD, 1, "5 W/g continuous or the measured rating (from memory)"),
            atMost(Measure.CONTROLLER_LOAD, 1, "controller rated for 1.25 times the current (common practice)"),
            atMost(Measure.SUPPLY_LOAD, 1, "the 5 V supply feeds receiver and busy servos (judgement)"),
            atMost(Measure.BATTERY_LOAD, 1, "half the label rate, 30 C at most (common practice, judgement)"),
            atLeast(Measure.CELL_VOLTAGE, 3.3, "cells below this under load are being harmed (common practice)"),
            atMost(Measure.TIP_SPEED, 1, "what the blade family stands (from memory)"),
            atLeast(Measure.PROPELLER_CLEARANCE, 0.010, "10 mm to any foam (common practice)"),
            atLeast(Measure.LAUNCH_GRIP, 0.100, "a hand's breadth ahead of the propeller (judgement)"),
            atLeast(Measure.CLEARANCE, 0.005, "5 mm round everything inside (common practice)"),
            atLeast(Measure.BAY_LENGTH, 0, "everything inside must fit in a row"),
            atLeast(Measure.BODY_REACH, 0, "the body must carry wing, tail and fin clear of each other"),
            atMost(Measure.TAIL_SIZE, 1, "a larger tail is a second wing (common practice)"),
            atLeast(Measure.LEAST_CHORD, 0.060, "shorter tips are not cut and folded by hand (common practice)"),
            atLeast(Measure.WHEEL_SIZE, 0.060, "smaller wheels stop in mown grass (common practice)"),
            atLeast(
                    Measure.OUTSIDE_ROOM,
                    0,
                    "what is strapped outside must not outgrow the body or touch the ground (judgement)"),
            atMost(Measure.VIEW, 0, "nothing but the nose itself may stand in a camera's view"),
            atLeast(Measure.CHORD_FIT, 0, "the section must leave room for its spar and its folds"),
            atMost(Measure.SHEET_FIT, 1, "every part comes out of a stock sheet"),
            atLeast(Measure.CAR_ROOM, 0, "it must go into the car"),
            atLeast(Measure.WING_BENDING, 1.5, "safety over the limit load (common practice)"),
            atLeast(Measure.SPAR_SHEAR, 1.5, "safety over the limit load (common practice)"),
            atMost(Measure.TIP_DEFLECTION, 0.15, "of the semispan at limit load (judgement)"),
            atLeast(Measure.DIVERGENCE_SPEED, 1.2, "above the top speed (common practice)"),
            atMost(Measure.BOOM_STIFFNESS, 0.05, "a softer tail boom changes trim (judgement)"),
            atLeast(Measure.BOOM_STRENGTH, 1.5, "safety over the limit load (common practice)"),
            atLeast(Measure.TAIL_STRENGTH, 1.5, "safety over the limit load (common practice)"),
            atLeast(Measure.NOSE_JOINT, 1.5, "safety over the limit load (common practice)"),
            atLeast(Measure.SERVO_TORQUE, 2, "safety on the hinge moment (common practice)"),
            atLeast(Measure.SECTION_REYNOLDS, 0.5, "so small and slow that no section's figures hold (judgement)"),
            atMost(Measure.SECTION_LIFT, 1.25, "a section this far beyond its stall is not known (judgement)"));

    /** What stands for an aeroplane without a tail in place of its like, where the study sets no figure of its own. */
    private static final List<Bound> TAILLESS = List.of(
            new Bound(Measure.STATIC_MARGIN, 0.04, 0.12, "static margin of flying wings (common practice)"),
            atLeast(Measure.YAW_STIFFNESS, 0.025, "weathercock stability per radian without a tail (from memory)"));

    private final List<Bound> bounds;
    private final List<Bound> tailless;

    private Limits(List<Bound> bounds) {
        this.bounds = List.copyOf(bounds);
        this.tailless = this.bounds.stream().map(Limits::withoutTail).toList();
    }

    private static Bound withoutTail(Bound bound) {
        for (Bound other : TAILLESS) {
            if (other.measure() == bound.measure() && STANDING.contains(bound)) {
                return other;
            }
        }
        return bound;
    }

    /** The bounds that hold in every study. */
    public static Limits standing() {
        return new Limits(STANDING);
    }

    /**
     * These limits held to the site's runway, where it has a length: the take-off roll, on water both runs, and where an obstacle
     * stands at its ends all of the way over it and down again. What is thrown by hand only lands there. Past the end of a
     * runway without an obstacle a model may roll on (judgement), which a caveat says and no limit forbids: without brakes and in still
     * air it would shut 116 of the lock courier's 176 best designs out of their 25 m, and no other role but five of 321 dyke sowers.
     */
    public Limits on(Site site) {
        double runway = site.runway();
        if (runway == Double.POSITIVE_INFINITY) {
            return this;
        }
        if (site.ground() == Ground.WATER) {
            return with(atMost(Measure.WATER_RUN, runway, "the length of the site's water"))
                    .with(atMost(Measure.LANDING_ROLL, runway, "the length of the site's water"));
        }
        Limits rolling = with(atMost(Measure.TAKE_OFF_DISTANCE, runway, "the length of the site's runway"));
        return site.obstacle() == 0
                ? rolling
                : rolling.with(atMost(Measure.OBSTACLE_DISTANCE, runway, "the obstacle stands at the runway's end"))
                        .with(atMost(Measure.LANDING_DISTANCE, runway, "the obstacle stands at the runway's end"));
    }

    /** These limits with {@code bound} in place of, or beside, what was asked of its measure. */
    public Limits with(Bound bound) {
        List<Bound> changed = new ArrayList<>(bounds.size() + 1);
        for (Measure measure : Measure.values()) {
            if (measure == bound.measure()) {
                changed.add(bound);
            } else {
                Bound kept = of(measure);
                if (kept != null) {
                    changed.add(kept);
                }
            }
        }
        return new Limits(changed);
    }

    /** These limits without any on {@code measure}. */
    public Limits without(Measure measure) {
        return new Limits(
                bounds.stream().filter(bound -> bound.measure() != measure).toList());
    }

    /** The bound on a measure, or null where there is none. */
    public @Nullable Bound of(Measure measure) {
        for (Bound bound : bounds) {
            if (bound.measure() == measure) {
                return bound;
            }
        }
        return null;
    }

    /** Those for an aeroplane without a tail, or with one; in the order of {@link Measure}. */
    public List<Bound> of(boolean withoutTail) {
        return withoutTail ? tailless : bounds;
    }

    /** In the order of {@link Measure}. */
    public List<Bound> all() {
        return bounds;
    }
}
