package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.mission.CarSpace;
import java.util.List;

/**
 * An aeroplane in the car: its pieces and where they lie.
 *
 * @param car the space
 * @param pieces the body first; with a negative margin as they lie once every side is that much shorter
 * @param margin by which every side of every piece could grow, m; 0 where one only goes in aslant
 */
public record Stowage(CarSpace car, List<Stowed> pieces, double margin) {
    private static final List<String> UPRIGHT = List.of("on end", "on its side", "upright");
    private static final List<String> LAID = List.of("on end", "on edge", "flat");
    private static final List<String> TO_OTHER = List.of("end to end with", "beside", "on");
    private static final List<String> EACH_OTHER = List.of("end to end", "side by side", "on each other");

    public Stowage {
        pieces = List.copyOf(pieces);
    }

    /** Of an aeroplane in a car. */
    public static Stowage of(Airframe airframe, CarSpace car) {
        CarLoad load = new CarLoad();
        load.load(airframe, car);
        return load.stowage(car);
    }

    /** Longest side of the longest piece, m. */
    public double longest() {
        double longest = 0;
        for (Stowed lies : pieces) {
            longest = Math.max(longest, lies.piece().longest());
        }
        return longest;
    }

    /** How everything lies: "body upright, wing halves flat on each other, beside the body". */
    public String words() {
        Stowed body = pieces.get(0);
        String first = body.piece().name() + " " + attitude(body, UPRIGHT);
        if (pieces.size() == 1) {
            return first;
        }
        Stowed one = pieces.get(1);
        String laid = attitude(one, LAID);
        String there = toBody(one);
        if (pieces.size() == 2) {
            return first + ", " + one.piece().name() + " " + laid + " " + there;
        }
        Stowed two = pieces.get(2);
        String laidToo = attitude(two, LAID);
        String thereToo = toBody(two);
        if (laid.equals(laidToo) && there.equals(thereToo)) {
            return first + ", wing halves " + laid + " " + EACH_OTHER.get(axis(one, two)) + ", " + there;
        }
        return first + ", one wing half " + laid + " " + there + ", the other " + laidToo + " " + thereToo;
    }

    private String toBody(Stowed wing) {
        Stowed body = pieces.get(0);
        int axis = axis(body, wing);
        return (axis == 2 && wing.before(body, axis) ? "under" : TO_OTHER.get(axis)) + " the body";
    }

    /** Along which two keep apart: one over the other before one beside it. */
    private static int axis(Stowed one, Stowed two) {
        int axis = 2;
        while (axis > 0 && !one.before(two, axis) && !two.before(one, axis)) {
            axis--;
        }
        return axis;
    }

    private String attitude(Stowed lies, List<String> words) {
        String up = words.get(lies.up());
        return switch (lies.layer()) {
            case Stowed.STRAIGHT -> across(lies) ? up + " across the car" : up;
            case 0 -> "aslant against an end of the space";
            case 1 -> "aslant against a side of the space";
            case 2 -> up + " and aslant";
            default -> "aslant";
        };
    }

    /** Whether its longer side that lies does so along the shorter of the space. */
    private boolean across(Stowed lies) {
        return lies.dy() > lies.dx() && car.length() > car.width();
    }
}
