package foamfront.model.mass;

import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Tail;

/**
 * How many servos a design needs: one for each aileron, elevon and flap, one for the elevator (two for a V-tail, whose halves
 * move apart), one for all rudders together. Common practice.
 *
 * @param wing servos sitting in the wing
 * @param tail servos sitting in the body
 */
public record MovingSurfaces(int wing, int tail) {
    public static MovingSurfaces of(Design design) {
        Controls controls = design.controls();
        int wing = (controls.ailerons() ? 2 : 0) + (controls.flaps() == FlapKind.FLAPS ? 2 : 0);
        int elevators = design.tail() instanceof Tail.None ? 0 : design.tail() instanceof Tail.VTail ? 2 : 1;
        int rudders = controls.rudder() && !(design.tail() instanceof Tail.VTail) ? 1 : 0;
        return new MovingSurfaces(wing, elevators + rudders);
    }

    public int total() {
        return wing + tail;
    }
}
