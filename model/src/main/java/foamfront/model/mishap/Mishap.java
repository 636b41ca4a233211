package foamfront.model.mishap;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Bay;
import foamfront.model.airframe.BodyShape;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Drive;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.fabrication.Tube;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Balance;
import foamfront.model.mass.MassBreakdown;
import foamfront.model.parts.Board;
import foamfront.model.parts.Workshop;

/**
 * A landing on the nose at stall speed.
 *
 * <p>The body crushes over m V² / 2 F. The mean force F is that of its paper walls, 0.4 σ 2 t_f over the perimeter: thin walls
 * buckle and then fold at 0.3 to 0.5 of their crushing load (judgement); the foam inside, 0.2 MPa at 28 kg/m³, adds its area.
 * A propeller ahead of the depth breaks; a battery reached is replaced, as a dented pack must be (common practice); loads
 * reached are only said. Motors, servos and radio are refitted and keep working.
 *
 * <p>Mending (common practice): a fixed nose is cut off behind the damage and built anew with a glued sleeve; a replaceable
 * one is changed for a spare if the damage stays within it. A wing under rubber bands slides off and costs its bands; a glued
 * one tears its saddle, which is glued and taped again along both sides.
 *
 * @param depth of the crushed nose, m
 * @param first what is hit first
 * @param propellers broken
 * @param battery whether it is reached
 * @param loads whether a load is reached
 * @param room from the crushed depth to the foremost load inside the body, m; NaN without one
 * @param swapped whether a spare nose mends the body
 * @param shed whether the wing slides off its bands; otherwise it tears its saddle
 * @param cost of what must be bought, the drawer not counted
 * @param time at the bench, s
 */
public record Mishap(
        double depth,
        Hit first,
        int propellers,
        boolean battery,
        boolean loads,
        double room,
        boolean swapped,
        boolean shed,
        double cost,
        double time) {
    /** What may be hit first. */
    public enum Hit {
        PROPELLER("propeller"),
        NOSE("nose"),
        BATTERY("battery"),
        LOAD("a load");

        private final String words;

        Hit(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    private static final double MEAN_CRUSH = 0.4; // of the walls' crushing load
    private static final double FOAM = 0.2e6; // Pa
    private static final double SLEEVE = 0.040; // m, half of the glued sleeve behind the damage

    /**
     * The mishap of a balanced aeroplane.
     *
     * @param speed at which it meets the ground, m/s
     */
    public static Mishap of(
            Airframe airframe,
            MassBreakdown masses,
            Balance balance,
            double speed,
            Workshop workshop,
            Factors factors) {
        Design design = airframe.design();
        double energy = 0.5 * balance.mass() * speed * speed;
        double depth = Math.min(airframe.body().length(), energy / force(airframe, factors));
        boolean ahead = design.power() instanceof Power.NoseTractor
                || (design.power() instanceof Power.TwinTractor
                        && airframe.stations().shaft().x() < depth);
        int propellers = ahead ? design.power().motors() : 0;
        double pack = balance.batteryX() - 0.5 * masses.battery().length();
        double load = masses.foremostLoad(balance.aim());
        Hit first = design.power() instanceof Power.NoseTractor
                ? Hit.PROPELLER
                : load <= Bay.FRONT && !(load > pack) ? Hit.LOAD : pack <= Bay.FRONT ? Hit.BATTERY : Hit.NOSE;
        boolean batteryHit = pack < depth;
        double piece = design.body().nosePiece();
        boolean swapped = depth <= piece;
        double built = swapped ? piece : Math.min(airframe.body().length(), depth + SLEEVE);
        return new Mishap(
                depth,
                first,
                propellers,
                batteryHit,
                load < depth,
                load - depth,
                swapped,
                shed(design),
                factors.price() * cost(airframe, propellers, batteryHit, built, workshop),
                factors.time() * time(airframe, propellers, batteryHit, swapped, built, workshop));
    }

    /** Mean crushing force of the nose, N. */
    static double force(Airframe airframe, Factors factors) {
        Board board = airframe.design().board();
        BodyShape body = airframe.body();
        boolean flat = airframe.design().body() instanceof Body.ProfileBoard;
        double around = flat ? body.height() : 2 * (body.width() + body.height());
        double paper = MEAN_CRUSH * factors.boardStrength() * board.faceStrength() * 2 * board.faceThickness();
        return around * (paper + FOAM * (board.thickness() - 2 * board.faceThickness()));
    }

    private static boolean shed(Design design) {
        return design.wing().build().holdDown() == HoldDown.RUBBER_BANDS;
    }

    private static double cost(Airframe airframe, int propellers, boolean battery, double built, Workshop workshop) {
        Design design = airframe.design();
        Board board = design.board();
        double sum = board.price() * built * width(airframe) / (board.length() * board.width());
        sum += glue(airframe, built) * workshop.glueLinearMass() * workshop.gluePrice();
        Drive drive = design.power().drive();
        if (drive instanceof PowerPlant plant) {
            sum += propellers * plant.propeller().price();
        }
        if (battery) {
            sum += design.power().battery().price();
        }
        if (shed(design)) {
            return sum + workshop.bandPrice();
        }
        double saddle = 2 * design.wing().planform().rootChord();
        return sum + saddle * (workshop.glueLinearMass() * workshop.gluePrice() + workshop.tapePrice());
    }

    private static double time(
            Airframe airframe, int propellers, boolean battery, boolean swapped, double built, Workshop workshop) {
        Design design = airframe.design();
        double sum = workshop.fittingTime()
                * (propellers + (battery ? design.power().battery().packs() : 0));
        if (design.power() instanceof Power.NoseTractor) {
            sum += workshop.fittingTime(); // the motor, on its new firewall
        }
        if (swapped) {
            sum += workshop.fittingTime();
        } else {
            double cut = 2 * (built + width(airframe));
            sum += workshop.cutRate() * cut
                    + workshop.foldRate() * 4 * built
                    + workshop.glueRate() * glue(airframe, built)
                    + 2 * workshop.partTime();
        }
        double saddle = 2 * design.wing().planform().rootChord();
        return sum + (shed(design) ? workshop.fittingTime() : saddle * (workshop.glueRate() + workshop.tapeRate()));
    }

    /** Developed width of the shell, m. */
    private static double width(Airframe airframe) {
        BodyShape body = airframe.body();
        return airframe.design().body() instanceof Body.ProfileBoard
                ? body.height()
                : Tube.wrap(body.width(), body.height());
    }

    /** The seam, the sleeve on both sides of its joint and the firewall, m. */
    private static double glue(Airframe airframe, double built) {
        BodyShape body = airframe.body();
        return built + 3 * 2 * (body.insideWidth() + body.insideHeight());
    }
}
