package foamfront.optimizer.study;

import foamfront.model.design.BodyKind;
import foamfront.model.design.Choice;
import foamfront.model.design.ControlLayout;
import foamfront.model.design.Covering;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.FinJoint;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Nose;
import foamfront.model.design.Place;
import foamfront.model.design.PowerKind;
import foamfront.model.design.SectionKind;
import foamfront.model.design.SparKind;
import foamfront.model.design.TailKind;
import foamfront.model.design.UndercarriageKind;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingKind;
import foamfront.model.design.WingTips;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Launch;
import foamfront.model.mission.Measure;
import foamfront.model.units.Dimension;
import foamfront.model.units.Range;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.KeyTable;
import foamfront.optimizer.yaml.Shape;
import java.util.Arrays;
import java.util.List;

/** Every key of a study file, with its shape, its bounds and what stands where it is missing. */
public final class StudyKeys {
    private static final double DEGREE = Math.PI / 180;

    // site
    static final Key ELEVATION =
            Key.quantity("elevation", Dimension.LENGTH, -450, 5000, "height of the field above the sea; 0 m");
    static final Key TEMPERATURE =
            Key.quantity("temperature", Dimension.TEMPERATURE, 233.15, 323.15, "of the air; 15 degC");
    static final Key SURFACE = Key.choice("surface", Ground.values(), "what it takes off from; short grass");
    static final Key RUNWAY =
            Key.quantity("runway", Dimension.LENGTH, 1, 2000, "length that wheels may roll before lift-off; 100 m");
    static final Key OBSTACLE = Key.quantity(
            "obstacle",
            Dimension.LENGTH,
            0.1,
            30,
            "height of the hedge or fence at the runway's ends, to be cleared in taking off and landing; none");
    static final Key WIND =
            Key.quantity("wind", Dimension.SPEED, 0, 15, "mean wind it must come home against; 4 m/s, in a hall 0");
    static final Key HEADWIND = Key.quantity(
            "headwind",
            Dimension.SPEED,
            0,
            15,
            "part of the wind counted on from ahead in taking off and landing, half of it is prudent; 0 m/s");
    static final Key GUST =
            Key.quantity("gust", Dimension.SPEED, 0, 15, "upward gust met in cruise; 4 m/s, 0 without wind");
    static final Key RELEASE_HEIGHT =
            Key.quantity("release height", Dimension.LENGTH, 1, 120, "over ground at which loads are let go; 30 m");
    static final Key LAUNCH = Key.choice("launch", Launch.values(), "the arm that throws it; normal");
    static final KeyTable SITE = KeyTable.of(
            "The flying field and its air.",
            ELEVATION,
            TEMPERATURE,
            SURFACE,
            RUNWAY,
            OBSTACLE,
            WIND,
            HEADWIND,
            GUST,
            RELEASE_HEIGHT,
            LAUNCH);

    // payload
    static final Key LOAD_NAME = Key.text("name", "what is carried").must();
    static final Key MASS = Key.of(
                    "mass",
                    new Shape.Span(Dimension.MASS, 0, 10),
                    "one figure, or the range the search may choose from; a range needs density and section")
            .must();
    static final Key SIZE = Key.of("size", new Shape.Size(3), "length x width x height, length along the body");
    static final Key DENSITY =
            Key.quantity("density", Dimension.DENSITY, 5, 12000, "as packed; the length then grows with the mass");
    static final Key SECTION = Key.of("section", new Shape.Size(2), "width x height of a load given by density");
    static final Key PLACE = Key.choice("place", Place.values(), "where it rides; at the balance point");
    static final Key RELEASE = Key.choice("release", Release.values(), "whether it is dropped; never");
    static final Key DESCENT = Key.quantity(
            "descent",
            Dimension.SPEED,
            0.5,
            20,
            "speed at which a released load's parachute lets it down; no parachute");
    static final Key VIEW =
            Key.quantity("clear view", Dimension.ANGLE, 0, 360 * DEGREE, "angle a camera must see freely; none");
    static final Key LOAD_POWER = Key.quantity("power", Dimension.POWER, 0, 200, "drawn from the flight battery; 0 W");
    static final KeyTable LOAD = KeyTable.of(
            "One thing carried.", LOAD_NAME, MASS, SIZE, DENSITY, SECTION, PLACE, RELEASE, DESCENT, VIEW, LOAD_POWER);

    // car space
    static final Key CAR_SIZE =
            Key.of("size", new Shape.Size(3), "longest side first").must();
    static final Key ASSEMBLED = Key.yesNo("assembled", "whether it must go in without being taken apart; no");
    static final KeyTable CAR = KeyTable.of("Room in the car.", CAR_SIZE, ASSEMBLED);

    // arrangements
    static final Key WING_KIND =
            Key.choice("kind", WingKind.values(), "of wing").must();
    static final Key HEIGHT = Key.of("height", listing(WingHeight.values()), "of a monoplane's wing; high");
    static final KeyTable WING_CHOICE = KeyTable.of("A wing the search may take.", WING_KIND, HEIGHT);
    static final Key WING = Key.of(
            "wing",
            new Shape.Listing(new Shape.Either(Key.words(WingKind.values()), new Shape.Table(WING_CHOICE))),
            "wings the search may take; a high monoplane");
    static final Key TAIL = choices("tail", TailKind.values(), "conventional");
    static final Key BODY = choices("body", BodyKind.values(), "square tube");
    static final Key POWER = choices("power", PowerKind.values(), "nose tractor");
    static final Key UNDERCARRIAGE =
            choices("undercarriage", UndercarriageKind.values(), "none").alias("landing gear");
    static final Key COVERING = choices("covering", Covering.values(), "bare");
    static final Key WING_TIPS = choices("wing tips", WingTips.values(), "plain");
    static final Key WING_SECTION = choices("wing section", SectionKind.values(), "folded flat-bottom");
    static final Key WING_JOINT = choices("wing joint", WingJoint.values(), "one piece");
    static final Key SPAR = choices("spar", SparKind.values(), "board strip and stock");
    static final Key HOLD_DOWN = choices("hold-down", HoldDown.values(), "glued and rubber bands");
    static final Key CONTROLS = choices("controls", ControlLayout.values(), "rudder-elevator");
    static final Key NOSE = choices("nose", Nose.values(), "fixed");
    static final Key FIN_JOINT = choices("fin joint", FinJoint.values(), "fixed");
    static final KeyTable ARRANGEMENTS = KeyTable.of(
            "The layouts the search may take.",
            WING,
            TAIL,
            BODY,
            POWER,
            UNDERCARRIAGE,
            COVERING,
            WING_TIPS,
            WING_SECTION,
            WING_JOINT,
            SPAR,
            HOLD_DOWN,
            CONTROLS,
            NOSE,
            FIN_JOINT);

    // dimensions
    static final KeyTable VARY = new KeyTable("Dimensions the search chooses, each from a range.", dimensions(true));
    static final KeyTable FIX = new KeyTable("Dimensions the study states.", dimensions(false));

    // drawer
    static final Key PART =
            Key.of("part", new Shape.PartName("part"), "its catalogue name").must();
    static final Key COUNT = Key.of("count", new Shape.Whole(1, 1000), "how many; 1");
    static final KeyTable OWNED = KeyTable.of("A part already in the drawer.", PART, COUNT);

    // limits and aims
    static final KeyTable MUST = new KeyTable("Limits that must hold, besides the standing ones.", limits());
    static final Key MOST = Key.of("most", measures(), "measures to get the most of");
    static final Key LEAST = Key.of("least", measures(), "measures to get the least of");
    static final KeyTable AIM = KeyTable.of("What to trade off.", MOST, LEAST);

    static final KeyTable PREFER = new KeyTable(
            "The region of interest: what lies outside can be built and flown but is looked at last and not reported.",
            limits());

    // search
    /** More take months on any machine (judgement). */
    public static final long MOST_EVALUATIONS = 1_000_000_000;

    static final Key EVALUATIONS =
            Key.of("evaluations", new Shape.Whole(100, MOST_EVALUATIONS), "designs to try; 50000");
    static final Key SEED = Key.of("seed", new Shape.Whole(0, Long.MAX_VALUE / 10), "of every random choice; 1");
    static final Key POPULATION =
            Key.of("population", new Shape.Whole(20, 5000), "designs kept between generations; 200");
    static final Key TIME = Key.quantity(
            "time", Dimension.TIME, 1, 30 * 86400, "stops the search, which then cannot be repeated exactly; no limit");
    static final Key STALL = Key.quantity(
            "stall",
            Dimension.NUMBER,
            0,
            0.5,
            "stops where the hypervolume of the trade-offs grew by less than this over the last fifth of the search; 0 % for never");
    static final Key COST_STEP = Key.quantity(
            "cost step",
            Dimension.MONEY,
            1e-3,
            1e9,
            "difference in cost that counts; ten of the currency's smallest coins, 0.10 USD or 10 JPY");
    static final KeyTable SEARCH =
            KeyTable.of("How long to search.", EVALUATIONS, SEED, POPULATION, TIME, STALL, COST_STEP);

    // shared parts
    static final Key KEEP_DESIGN = Key.text("design", "a design file").must();
    static final Key KEEP_PARTS = Key.of(
                    "parts", new Shape.Listing(new Shape.Text()), "keys of the design file to keep")
            .must();
    static final KeyTable KEEP = KeyTable.of("Parts shared with another aeroplane.", KEEP_DESIGN, KEEP_PARTS);

    // the file
    static final Key STUDY = Key.text("study", "the study's name").must();
    static final Key ABOUT = Key.text("about", "a sentence for the report");
    static final Key SITE_KEY = Key.table("site", SITE, "the flying field and its air");
    static final Key PAYLOAD = Key.of("payload", new Shape.Listing(new Shape.Table(LOAD)), "what it carries; nothing");
    static final Key CAR_SPACE = Key.table("car space", CAR, "room in the car; 1.4 m x 0.8 m x 0.5 m taken apart");
    static final Key ARRANGEMENTS_KEY = Key.table("arrangements", ARRANGEMENTS, "the layouts the search may take");
    static final Key VARY_KEY =
            Key.table("vary", VARY, "dimensions the search chooses").must();
    static final Key FIX_KEY = Key.table("fix", FIX, "dimensions the study states; all others follow their rule");
    static final Key BOARDS = parts("boards", "board");
    static final Key SPARS = parts("spars", "spar");
    static final Key MOTORS = parts("motors", "motor");
    static final Key PROPELLERS = parts("propellers", "propeller");
    static final Key FANS = parts("fans", "fan");
    static final Key BATTERIES = parts("batteries", "battery");
    static final Key CONTROLLERS = parts("controllers", "controller");
    static final Key SERVOS = parts("servos", "servo");
    static final Key RECEIVERS = parts("receivers", "receiver");
    static final Key WHEELS = parts("wheels", "wheel");
    static final Key DRAWER = Key.of(
            "in the drawer",
            new Shape.Listing(new Shape.Either(new Shape.PartName("part"), new Shape.Table(OWNED))),
            "parts that cost nothing");
    static final Key MUST_KEY = Key.table("must", MUST, "limits that must hold");
    static final Key AIM_KEY = Key.table("aim", AIM, "what to trade off, for example {most: payload}")
            .must();
    static final Key PREFER_KEY =
            Key.table("prefer", PREFER, "the region of the trade-off to look at, by measures under aim; all of it");
    static final Key SHOW_IN = Key.choice("show in", ShowIn.values(), "units people read; metric");
    static final Key INCREMENT =
            Key.quantity("increment", Dimension.LENGTH, 0.0005, 0.05, "lengths are multiples of it; 5 mm");
    static final Key SEARCH_KEY = Key.table("search", SEARCH, "how long to search");
    static final Key KEEP_FROM = Key.table("keep from", KEEP, "parts shared with another aeroplane");
    static final Key START_FROM = Key.text("start from", "a design file that seeds the search");

    /** The whole file. */
    public static final KeyTable FILE = KeyTable.of(
            "A foamfront study: what is asked of a foam-board model aeroplane.",
            STUDY,
            ABOUT,
            SITE_KEY,
            PAYLOAD,
            CAR_SPACE,
            ARRANGEMENTS_KEY,
            VARY_KEY,
            FIX_KEY,
            BOARDS,
            SPARS,
            MOTORS,
            PROPELLERS,
            FANS,
            BATTERIES,
            CONTROLLERS,
            SERVOS,
            RECEIVERS,
            WHEELS,
            DRAWER,
            MUST_KEY,
            AIM_KEY,
            PREFER_KEY,
            SHOW_IN,
            INCREMENT,
            SEARCH_KEY,
            KEEP_FROM,
            START_FROM);

    private StudyKeys() {}

    private static Shape listing(Choice[] values) {
        return new Shape.Listing(Key.words(values));
    }

    private static Key choices(String name, Choice[] values, String standing) {
        return Key.of(name, listing(values), "choices for the search; " + standing);
    }

    private static Key parts(String name, String kind) {
        return Key.of(name, new Shape.Listing(new Shape.PartName(kind)), "catalogue names to choose from; all of them");
    }

    private static List<Key> dimensions(boolean ranges) {
        return Arrays.stream(DesignVariable.values())
                .map(variable -> {
                    Range workshop = variable.workshop();
                    Dimension dimension = variable.unit().dimension();
                    Shape shape = ranges
                            ? new Shape.Span(dimension, workshop.low(), workshop.high())
                            : new Shape.Quantity(dimension, workshop.low(), workshop.high());
                    Key key = Key.of(variable.words(), shape, "by rule " + variable.rule());
                    return variable == DesignVariable.SWEEP ? key.alias("quarter-chord sweep") : key;
                })
                .toList();
    }

    private static List<Key> limits() {
        return Arrays.stream(Measure.values())
                .map(measure ->
                        Key.of(measure.words(), new Shape.Limit(measure.unit().dimension()), measure.definition()))
                .toList();
    }

    private static Shape measures() {
        return new Shape.Listing(new Shape.Words(
                Arrays.stream(Measure.values()).map(Measure::words).toList()));
    }
}
