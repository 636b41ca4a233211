package foamfront.model.design;

import foamfront.model.parts.Board;
import java.util.List;

/** One aeroplane as a builder would write it down. */
public record Design(
        String name,
        Wing wing,
        Tail tail,
        Body body,
        Power power,
        Undercarriage undercarriage,
        Controls controls,
        Board board,
        Covering covering,
        Radio radio,
        List<Load> loads) {
    public Design {
        loads = List.copyOf(loads);
    }

    /** Whether it leaves the hand: it has nothing to roll or float on. */
    public boolean thrown() {
        return undercarriage.kind() == UndercarriageKind.NONE && body.kind() != BodyKind.BOAT_HULL;
    }

    /** Whether it alights on water. */
    public boolean floats() {
        return body.kind() == BodyKind.BOAT_HULL || undercarriage.kind() == UndercarriageKind.FLOATS;
    }

    /** Mass of everything carried, kg. */
    public double payload() {
        double sum = 0;
        for (int i = 0; i < loads.size(); i++) {
            Load load = loads.get(i);
            sum += load.mass();
        }
        return sum;
    }
}
