package foamfront.model.airframe;

import foamfront.model.design.Design;
import foamfront.model.design.Radio;
import foamfront.model.design.Tail;
import java.util.List;

/**
 * How many servos move the surfaces of an aeroplane, for masses, bill, current and room alike. Each side of a wing has one for
 * every control along it, which drives the upper wing of a biplane through a link; a straight tail has one for its elevator, a
 * V-tail two, as its halves move apart; all rudders are linked to one. Common practice.
 *
 * @param wing sitting in the wing
 * @param tail sitting in the body, for what moves at the tail
 */
public record Servos(int wing, int tail) {
    static Servos of(Design design, List<Surface> surfaces) {
        int halves = design.tail() instanceof Tail.VTail ? 2 : 1;
        int wing = 0;
        int elevators = 0;
        int rudders = 0;
        for (int i = 0; i < surfaces.size(); i++) {
            Surface surface = surfaces.get(i);
            int controls = surface.controls().size();
            switch (surface.role()) {
                case WING -> wing += 2 * controls;
                case SECOND_WING -> {}
                case TAIL -> elevators += halves * controls;
                case FIN -> rudders = Math.max(rudders, controls);
            }
        }
        return new Servos(wing, elevators + rudders);
    }

    public int total() {
        return wing + tail;
    }

    /** Mean of all together, A. */
    public double current(Radio radio) {
        return total() * radio.servo().current();
    }
}
