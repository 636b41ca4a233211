package foamfront.model.mission;

import static foamfront.model.mission.Measure.Better.HIGHER;
import static foamfront.model.mission.Measure.Better.LOWER;
import static foamfront.model.mission.Measure.Better.NEITHER;

import foamfront.model.units.Unit;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * Everything that is computed for a design and may be aimed at or limited. A new measure is one entry here and one line
 * where the appraisal fills it.
 */
public enum Measure {
    PAYLOAD("payload", Unit.GRAM, HIGHER, "mass of all loads carried"),
    ENDURANCE(
            "endurance",
            Unit.MINUTE,
            HIGHER,
            "steady level flight at the speed of least power, after one take-off and climb to 50 m and before one"
                    + " go-around, from 80 % of the battery"),
    EVERYDAY_FLIGHT("everyday flight", Unit.MINUTE, HIGHER, "0.45 of the endurance: flying as club pilots do"),
    RANGE("range", Unit.KILOMETRE, HIGHER, "distance through still air at the speed of best range, same battery rules"),
    OUT_AND_BACK(
            "out-and-back distance",
            Unit.KILOMETRE,
            HIGHER,
            "furthest point from which the stated wind lets it return"),
    BUILD_COST(
            "build cost", Unit.MONEY, LOWER, "whole sheets, consumables and bought parts that are not in the drawer"),
    BUILD_TIME("build time", Unit.MINUTE, LOWER, "cutting, folding, gluing, taping and fitting"),
    MASS("flying weight", Unit.GRAM, LOWER, "all-up mass"),
    EMPTY_MASS("empty weight", Unit.GRAM, LOWER, "all-up mass without loads and battery"),
    WING_LOADING("wing loading", Unit.GRAM_PER_SQUARE_DECIMETRE, NEITHER, "flying weight over wing area"),
    WING_CUBE_LOADING(
            "wing cube loading",
            Unit.KILOGRAM_PER_CUBIC_METRE,
            NEITHER,
            "flying weight over wing area to the power 1.5"),
    POWER_LOADING(
            "power loading", Unit.WATT_PER_KILOGRAM, NEITHER, "electrical input at full throttle over flying weight"),
    STALL_SPEED(
            "stall speed",
            Unit.METRE_PER_SECOND,
            LOWER,
            "least level speed, trimmed at the foremost balance point, power off, flaps up"),
    LANDING_STALL_SPEED(
            "landing stall speed",
            Unit.METRE_PER_SECOND,
            LOWER,
            "the same with flaps let down for landing; without flaps the stall speed itself"),
    CRUISE_SPEED(
            "cruise speed",
            Unit.METRE_PER_SECOND,
            NEITHER,
            "level speed that goes farthest out and back in the stated wind, at least 1.3 stall speeds; without a motor the speed of"
                    + " the best glide, not below 1.3 stall speeds or 1.33 winds"),
    TOP_SPEED("top speed", Unit.METRE_PER_SECOND, HIGHER, "level speed at full throttle"),
    CRUISE_RATIO("cruise over stall", Unit.RATIO, HIGHER, "cruise speed over stall speed"),
    TOP_SPEED_RATIO(
            "top over stall",
            Unit.RATIO,
            HIGHER,
            "top speed over stall speed, or over 4/3 of the wind where that is more"),
    CLIMB_RATE("climb rate", Unit.METRE_PER_SECOND, HIGHER, "best steady climb at full throttle, battery at 30 %"),
    GLIDE_RATIO("glide ratio", Unit.RATIO, HIGHER, "best lift over drag, power off"),
    WIND_GLIDE(
            "glide ratio into the wind",
            Unit.RATIO,
            HIGHER,
            "distance over the ground for the height lost, at cruise speed into the site's wind; of models without a motor"),
    APPROACH_GLIDE(
            "approach glide ratio",
            Unit.RATIO,
            LOWER,
            "lift over drag at 1.3 landing stall speeds, motor off, flaps let down: how flat it comes in over the hedge"),
    SINK_RATE("sink rate", Unit.METRE_PER_SECOND, LOWER, "least steady sink, power off"),
    THRUST_TO_WEIGHT("thrust to weight", Unit.RATIO, HIGHER, "static thrust at full throttle over weight"),
    TAKE_OFF_DISTANCE(
            "take-off distance",
            Unit.METRE,
            LOWER,
            "ground roll to 1.2 stall speeds on the site's surface, flaps as for take-off, in still air or the headwind that the"
                    + " site counts on"),
    OBSTACLE_DISTANCE(
            "obstacle distance",
            Unit.METRE,
            LOWER,
            "that roll and the flight until the site's obstacle is cleared, at full throttle and 1.2 stall speeds, battery at"
                    + " 30 %"),
    LANDING_ROLL(
            "landing roll",
            Unit.METRE,
            LOWER,
            "from touch-down at 1.15 landing stall speeds to rest, motor off, no brakes, same surface and headwind; without wheels"
                    + " it slides on its belly, with floats alone it runs out on water"),
    LANDING_DISTANCE(
            "landing distance",
            Unit.METRE,
            LOWER,
            "that roll, and before it the glide from over the site's obstacle at 1.3 landing stall speeds with its flare"),
    CROSSWIND(
            "crosswind",
            Unit.RATIO,
            HIGHER,
            "side wind at touch-down against which full rudder still points the wheels along the runway and full ailerons, where it"
                    + " has them, hold the wing level, over the landing stall speed; on wheels and with a rudder only"),
    HEADWAY(
            "headway",
            Unit.METRE_PER_SECOND,
            HIGHER,
            "speed over the ground at cruise into the site's wind; the limit on top over stall keeps a quarter of the airspeed"),
    GUST_LOAD(
            "gust load",
            Unit.RATIO,
            LOWER,
            "change of load factor by the site's vertical gust in cruise, in g: how it bounces, unless it stalls first"),
    GUST_MARGIN(
            "gust margin",
            Unit.RATIO,
            HIGHER,
            "incidence left in cruise before the stall over what the site's gust adds at once; below 1, as light models have it, the"
                    + " gust stalls the wing for a moment and bounces it no harder"),
    GROUND_ATTITUDE(
            "ground attitude to spare",
            Unit.DEGREE,
            HIGHER,
            "how far the nose can be raised on ground or water before tail wheel, tail or stern touch, over what lifts off at"
                    + " 1.2 stall speeds"),
    TURN_RADIUS(
            "turn radius",
            Unit.METRE,
            LOWER,
            "level turn at 45 degrees of bank, or as much as full throttle holds, at 1.2 stall speeds of the turn"),
    LAUNCH_HEIGHT(
            "lowest height after launch",
            Unit.METRE,
            HIGHER,
            "least height after a level throw from 1.8 m in still air, until it climbs or, without a motor, glides steadily"),
    BUOYANCY_RESERVE(
            "buoyancy reserve",
            Unit.PERCENT,
            HIGHER,
            "volume of hull or floats up to the deck beyond what floats the flying weight in fresh water, of the latter"),
    DRAUGHT("draught", Unit.MILLIMETRE, NEITHER, "of the keel at the step, at rest"),
    WATER_TRIM("trim at rest on water", Unit.DEGREE, NEITHER, "nose up, floating still"),
    WATER_HEEL(
            "righting moment on water",
            Unit.RATIO,
            HIGHER,
            "with the lee float's deck or the tip float awash, over 3 % of weight times span"),
    WATER_CLEARANCE(
            "propeller over water", Unit.MILLIMETRE, HIGHER, "from the propeller's lowest tip to still water at rest"),
    STEP_ANGLE(
            "step behind balance point",
            Unit.DEGREE,
            NEITHER,
            "seen from the balance point, from straight down to the keel at the step"),
    SPRAY_LOAD(
            "spray load",
            Unit.RATIO,
            LOWER,
            "beam loading m / w b³ of hull or float over the square of the forebody's length over its beam"),
    HUMP_THRUST(
            "thrust through the hump",
            Unit.RATIO,
            HIGHER,
            "least full-throttle thrust over the drag of water and air from rest to lift-off, battery at 30 %"),
    HUMP_TRIM("trim at the hump", Unit.DEGREE, NEITHER, "nose up until the stern touches, through the hump"),
    HUMP_LIFT("wing lift at the hump", Unit.RATIO, LOWER, "lift coefficient at the trim of the hump over the greatest"),
    STEP_TRIM(
            "trim on the step",
            Unit.DEGREE,
            NEITHER,
            "nose up at 0.7 of lift-off speed and full throttle: 6 degrees, or the nearest trim that three quarters of the elevator"
                    + " hold"),
    STEP_ELEVATOR(
            "elevator on the step",
            Unit.RATIO,
            LOWER,
            "elevator that holds that trim, of full travel; of none that can be held the least. Slipstream over the elevator, which"
                    + " would ask for less, is left out"),
    WATER_RUN("water run", Unit.METRE, LOWER, "from rest on still water to 1.2 stall speeds, no wind"),
    WATER_RUN_WIND("water run into the wind", Unit.METRE, LOWER, "the same into the site's wind"),
    HULL_STRENGTH(
            "water landing strength",
            Unit.RATIO,
            HIGHER,
            "failure load of bottom boards and float struts over that of alighting at the stall speed"),
    STATIC_MARGIN(
            "static margin",
            Unit.PERCENT,
            NEITHER,
            "neutral point behind the balance point, of the mean chord, power off"),
    POWER_ON_MARGIN(
            "static margin under power",
            Unit.PERCENT,
            NEITHER,
            "the same at full throttle and 1.2 stall speeds, by judgement without what the slipstream on wing or tail adds"),
    BALANCE_POINT("balance point", Unit.MILLIMETRE, NEITHER, "behind the leading edge of the wing's root"),
    BALANCE_SHIFT(
            "missing battery travel",
            Unit.MILLIMETRE,
            LOWER,
            "how far the battery would have to leave its bay to balance"),
    HORIZONTAL_TAIL_VOLUME(
            "horizontal tail volume", Unit.RATIO, NEITHER, "tail area times arm over wing area times mean chord"),
    VERTICAL_TAIL_VOLUME("vertical tail volume", Unit.RATIO, NEITHER, "fin area times arm over wing area times span"),
    YAW_STIFFNESS("yaw stiffness", Unit.RATIO, HIGHER, "C_n-beta per radian, body included"),
    SPIRAL_PARAMETER(
            "spiral parameter",
            Unit.RATIO,
            NEITHER,
            "tail arm over span times dihedral in degrees over C_L at 1.3 stall speeds; sweep, wing height and fins counted as the"
                    + " dihedral they stand for"),
    ROLL_RESPONSE("roll helix angle", Unit.RATIO, HIGHER, "pb/2V at full aileron, flaperons let down for landing"),
    RUDDER_ROLL("roll helix angle by rudder", Unit.RATIO, HIGHER, "pb/2V at full rudder of a model without ailerons"),
    TORQUE_ROLL(
            "motor torque",
            Unit.RATIO,
            LOWER,
            "at full throttle, over 3 % of weight times span without ailerons, 30 % of the ailerons' moment with"),
    ONE_MOTOR_OUT(
            "rudder with one motor out",
            Unit.RATIO,
            LOWER,
            "rudder that holds a twin straight at 1.2 stall speeds, one motor at full throttle and one stopped, of its travel;"
                    + " above 1 the pilot must throttle back, so that it is shown and not limited"),
    TRIM_TRAVEL(
            "elevator at stall",
            Unit.RATIO,
            LOWER,
            "elevator travel used to trim at maximum lift and the foremost balance point, flaps up or down, of full travel"),
    FLAP_TRIM(
            "elevator for flaps",
            Unit.RATIO,
            LOWER,
            "elevator travel by which landing flaps change trim at 1.3 landing stall speeds, of full travel; with flaps only"),
    ELEVON_TRIM(
            "elevons in cruise",
            Unit.RATIO,
            LOWER,
            "elevon travel used to trim at 1.3 stall speeds, of full travel; without a tail only"),
    POWER_TRIM(
            "elevator under power",
            Unit.RATIO,
            LOWER,
            "elevator travel used at full throttle and 1.2 stall speeds, of full travel"),
    ROLL_RATE(
            "roll rate",
            Unit.DEGREE_PER_SECOND,
            NEITHER,
            "at cruise with full ailerons, or full rudder where there are none"),
    RUDDER_TURN(
            "rudder turn factor",
            Unit.RATIO,
            NEITHER,
            "vertical tail volume times spiral parameter of a model without ailerons"),
    RELEASE_TRIM(
            "elevator after release",
            Unit.RATIO,
            LOWER,
            "change of elevator that letting all loads go asks for in cruise, of full travel"),
    DROP_SPEED(
            "impact speed of the drop",
            Unit.METRE_PER_SECOND,
            LOWER,
            "fastest released load at the ground, let go at the site's release height"),
    DROP_DRIFT(
            "drift of the drop",
            Unit.METRE,
            LOWER,
            "how far the stated wind carries the slowest released load, let go at the site's release height"),
    CANOPY(
            "parachute diameter",
            Unit.MILLIMETRE,
            NEITHER,
            "nominal diameter of the largest flat circular parachute that a load's descent speed needs"),
    PILOT_LEVEL(
            "pilot level",
            Unit.RATIO,
            LOWER,
            "how practised its pilot must be: at most 1 suits a beginner, at most 2 an intermediate, more the experienced; the"
                    + " worst of its parts"),
    MOTOR_LOAD("motor load", Unit.RATIO, LOWER, "electrical input at full throttle over what the motor stands"),
    CONTROLLER_LOAD(
            "controller load", Unit.RATIO, LOWER, "1.25 times the full-throttle current over the controller's rating"),
    SUPPLY_LOAD(
            "supply load",
            Unit.RATIO,
            LOWER,
            "current of receiver and busy servos over what the controller's 5 V supply gives them, without a motor over what a"
                    + " regulator or the pack gives"),
    BATTERY_LOAD("battery load", Unit.RATIO, LOWER, "full-throttle current over half the label rate or 30 C"),
    CELL_VOLTAGE("cell voltage", Unit.VOLT, HIGHER, "least cell voltage at full throttle, battery at 30 %"),
    TIP_SPEED("propeller tip speed", Unit.RATIO, LOWER, "over what its blade family stands"),
    PROPELLER_CLEARANCE(
            "propeller clearance",
            Unit.MILLIMETRE,
            HIGHER,
            "least gap between propeller and foam or, on wheels, ground"),
    LAUNCH_GRIP(
            "launch grip",
            Unit.MILLIMETRE,
            HIGHER,
            "from the balance point, where it is held and thrown, back to a pusher's propeller"),
    CLEARANCE("room inside the body", Unit.MILLIMETRE, HIGHER, "least clearance round battery, loads, motor and radio"),
    BAY_LENGTH(
            "spare bay length",
            Unit.MILLIMETRE,
            HIGHER,
            "bay left over behind all that must fit in a row, or beside the loads at the balance point if that is less"),
    BODY_REACH(
            "body reach",
            Unit.MILLIMETRE,
            HIGHER,
            "least of body ahead of the wing, behind it and under the tail, of the gap between wing and tail all along the tail,"
                    + " of keel between a bow and its step, and of a stock boom over what is needed; below 0 where wing, tail or fin"
                    + " stand in each other, by the chord they share"),
    TAIL_SIZE(
            "tail size",
            Unit.RATIO,
            LOWER,
            "largest of tail area over 0.4 wing area, tail span over 0.6 span, fin aspect ratio over 3"),
    LEAST_CHORD("least chord", Unit.MILLIMETRE, HIGHER, "shortest tip chord of wing, tail, fin and winglet"),
    WHEEL_SIZE("wheel size", Unit.MILLIMETRE, HIGHER, "wheel diameter where it must roll on grass"),
    OUTSIDE_ROOM(
            "room for loads outside",
            Unit.MILLIMETRE,
            HIGHER,
            "least of half the body's length, its width and the ground clearance over what is carried on top or below"),
    VIEW("missing clear view", Unit.DEGREE, LOWER, "angle asked for by a camera that the propeller stands in"),
    CHORD_FIT(
            "fold fit",
            Unit.MILLIMETRE,
            HIGHER,
            "room left at the wing tip for the spar inside and for the narrowest fold, step or score"),
    SHEET_FIT("sheet fit", Unit.RATIO, LOWER, "largest part's side over the sheet side it must come from"),
    WING_BENDING("wing strength", Unit.RATIO, HIGHER, "failure load over the limit load, worst section"),
    SPAR_SHEAR("spar shear strength", Unit.RATIO, HIGHER, "failure shear over limit shear at the root"),
    GLUE_STRENGTH(
            "glue strength",
            Unit.RATIO,
            HIGHER,
            "what the glue along a wing's web bears before the paper leaves the foam (0.05 to 0.2 MPa, the mean counted) over what the"
                    + " limit load asks of it; no limit unless a study sets one"),
    TIP_DEFLECTION("tip deflection", Unit.PERCENT, LOWER, "of the semispan at limit load"),
    LIMIT_LOAD("limit load factor", Unit.RATIO, NEITHER, "pull-up or gust, the larger, in g"),
    DIVERGENCE_SPEED(
            "torsion speed",
            Unit.RATIO,
            HIGHER,
            "the lower of divergence and flutter speed over top speed, a glider's over a dive at 1.4 cruise speeds"),
    FLUTTER_SPEED(
            "flutter speed",
            Unit.RATIO,
            HIGHER,
            "estimate for the wing's bending with torsion, over top speed; control surfaces not counted"),
    BOOM_STIFFNESS(
            "tail boom deflection",
            Unit.PERCENT,
            LOWER,
            "deflection of the tail under its largest load, of the tail arm"),
    BOOM_STRENGTH("tail boom strength", Unit.RATIO, HIGHER, "failure load over the limit load, in flight and landing"),
    TAIL_STRENGTH(
            "tail strength",
            Unit.RATIO,
            HIGHER,
            "failure load of stabiliser or fin at its root over full elevator at manoeuvring speed, trim at the limit load,"
                    + " gust, sideslip or rudder in cruise"),
    NOSE_JOINT(
            "nose joint strength",
            Unit.RATIO,
            HIGHER,
            "what the bands of a replaceable nose bear over thrust and landing; with such a nose only"),
    SERVO_TORQUE(
            "servo torque", Unit.RATIO, HIGHER, "fitted servo's torque over the largest hinge moment at top speed"),
    SHEETS("sheets", Unit.COUNT, LOWER, "whole stock sheets cut"),
    PACKED_LENGTH(
            "longest packed piece",
            Unit.MILLIMETRE,
            LOWER,
            "longest side of the longest piece once taken apart for the car"),
    CAR_ROOM(
            "room left in the car",
            Unit.MILLIMETRE,
            HIGHER,
            "by which each side of every packed piece could grow with all still in the car together, straight; 0 where one only goes in aslant, below 0 too long"),
    CRUSH_ROOM(
            "crush room",
            Unit.MILLIMETRE,
            HIGHER,
            "from what a landing on the nose at stall speed crushes to the foremost load; with loads only"),
    REPAIR_COST("repair cost", Unit.MONEY, LOWER, "parts and board to mend a landing on the nose at stall speed"),
    REPAIR_TIME("repair time", Unit.MINUTE, LOWER, "at the bench to mend a landing on the nose at stall speed"),
    DIFFICULTY(
            "difficulty",
            Unit.COUNT,
            LOWER,
            "points for parts, folds, bevels and unusual tools, by the workshop's table"),
    NOISE(
            "noise index",
            Unit.METRE_PER_SECOND,
            LOWER,
            "tip speed in cruise; of a pusher, whose blades chop the wake, 13 % more"),
    SECTION_REYNOLDS(
            "section Reynolds number",
            Unit.RATIO,
            HIGHER,
            "lowest on wing and tail at 1.2 stall speeds, over the lowest that sections were measured at"),
    SECTION_LIFT(
            "section lift",
            Unit.RATIO,
            LOWER,
            "largest on wing and tail in level flight at 1.2 stall speeds and at top speed, over that at which the section"
                    + " stalls"),
    MAXIMUM_LIFT(
            "maximum lift coefficient",
            Unit.RATIO,
            HIGHER,
            "trimmed at the foremost balance point, whole aeroplane, power off"),
    STALL_PLACE(
            "stall begins at",
            Unit.RATIO,
            LOWER,
            "fraction of the semispan, flaps up; 0 where the tail lets go first; near the tips it drops a wing"),
    TIP_RESERVE(
            "lift left at the tips",
            Unit.PERCENT,
            HIGHER,
            "what sections outboard of 0.7 of the semispan have left of their greatest lift where the stall begins, flaps up; little"
                    + " warns of a wing drop; not of a delta, whose edge vortices hold its tips"),
    SPAN_EFFICIENCY("span efficiency", Unit.RATIO, HIGHER, "of the whole aeroplane's drag polar, viscous"),
    ZERO_LIFT_DRAG("zero-lift drag coefficient", Unit.RATIO, LOWER, "of the parabola through the drag polar");

    /** Which way is better. */
    public enum Better {
        HIGHER,
        LOWER,
        NEITHER
    }

    /** What a model without a motor cannot have. */
    private static final Set<Measure> MOTORED = Collections.unmodifiableSet(EnumSet.of(
            ENDURANCE,
            EVERYDAY_FLIGHT,
            RANGE,
            OUT_AND_BACK,
            POWER_LOADING,
            TOP_SPEED,
            TOP_SPEED_RATIO,
            CLIMB_RATE,
            THRUST_TO_WEIGHT,
            TAKE_OFF_DISTANCE,
            OBSTACLE_DISTANCE,
            POWER_ON_MARGIN,
            TORQUE_ROLL,
            ONE_MOTOR_OUT,
            POWER_TRIM,
            MOTOR_LOAD,
            CONTROLLER_LOAD,
            BATTERY_LOAD,
            CELL_VOLTAGE,
            TIP_SPEED,
            PROPELLER_CLEARANCE,
            LAUNCH_GRIP,
            NOISE));

    private final String words;
    private final Unit unit;
    private final Better better;
    private final String definition;

    Measure(String words, Unit unit, Better better, String definition) {
        this.words = words;
        this.unit = unit;
        this.better = better;
        this.definition = definition;
    }

    /** Name in study files, tables and reports. */
    public String words() {
        return words;
    }

    /** Stable key in JSON, snake case. */
    public String key() {
        return words.replace(' ', '_').replace('-', '_');
    }

    /** Fixed unit of the tables written for programs; values inside are SI. */
    public Unit unit() {
        return unit;
    }

    public Better better() {
        return better;
    }

    public String definition() {
        return definition;
    }

    /** What a model without a motor cannot have, in this order. */
    public static Set<Measure> motored() {
        return MOTORED;
    }
}
