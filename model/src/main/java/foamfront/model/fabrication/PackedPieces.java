package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.HoldDown;
import foamfront.model.design.WingJoint;
import java.util.ArrayList;
import java.util.List;

/**
 * What an aeroplane comes apart into, in columns that the next one writes over: the body with tail, undercarriage and floats; and
 * the wing in one piece, in halves when it plugs in, or folded in two, upper sides together. A glued wing in one piece stays on
 * the body, and so does everything where the car takes an assembled model. Propellers come off and joiners are drawn; they,
 * battery and payload are small and travel apart, and no room is kept for them (common practice).
 */
final class PackedPieces {
    /** Body and two halves. */
    static final int MOST = 3;

    private final String[] names = new String[MOST];
    private final double[] sides = new double[3 * MOST];
    private final WingBox wing = new WingBox();
    private int count;

    /** Takes an aeroplane apart as far as it comes and need. */
    void take(Airframe airframe, boolean assembled) {
        clear();
        WingJoint joint = airframe.design().wing().build().joint();
        boolean fixed =
                joint == WingJoint.ONE_PIECE && airframe.design().wing().build().holdDown() == HoldDown.GLUED;
        if (assembled || fixed) {
            add("aeroplane", airframe, true);
            return;
        }
        add("body", airframe, false);
        wing.measure(airframe);
        if (joint == WingJoint.PLUG_IN) {
            add("wing half", wing.length(), wing.breadth(), wing.height());
            add("wing half", wing.length(), wing.breadth(), wing.height());
        } else if (joint == WingJoint.FOLDING) {
            add("folded wing", wing.length(), wing.breadth(), 2 * wing.height());
        } else {
            add("wing", wing.length(), wing.breadth(), wing.height());
        }
    }

    private void add(String name, Airframe airframe, boolean winged) {
        add(name, BodyBox.length(airframe, winged), BodyBox.width(airframe, winged), BodyBox.height(airframe, winged));
    }

    void clear() {
        count = 0;
    }

    void add(String name, double length, double breadth, double height) {
        names[count] = name;
        sides[3 * count] = length;
        sides[3 * count + 1] = breadth;
        sides[3 * count + 2] = height;
        count++;
    }

    int count() {
        return count;
    }

    /** Length, breadth or height of a piece, m. */
    double side(int piece, int which) {
        return sides[3 * piece + which];
    }

    /** Of all sides, m. */
    double longest() {
        double longest = 0;
        for (int i = 0; i < 3 * count; i++) {
            longest = Math.max(longest, sides[i]);
        }
        return longest;
    }

    List<Piece> list() {
        List<Piece> list = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            list.add(new Piece(names[i], side(i, 0), side(i, 1), side(i, 2)));
        }
        return list;
    }
}
