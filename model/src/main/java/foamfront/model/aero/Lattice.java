package foamfront.model.aero;

import foamfront.model.airframe.Control;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.List;

/**
 * The strips of all lifting surfaces of the starboard half, as plain arrays: nodes where trailing vortices leave, and
 * one set of properties per strip. Owned and refilled by one {@link LiftingSystem}.
 *
 * <p>A section whose lift slope is κ 2π has its rows' control points at κ times the usual half row behind their
 * vortices. Derived: in two dimensions the flow condition is a Cauchy system Σ Γⱼ / (xᵢ − yⱼ) = 2π V α, whose solution
 * sums to Σ x − Σ y = κ c / 2 and so gives the lift slope κ 2π exactly for any number of rows; its centre lies at
 * c/4 + (1 − κ)(1 − 1/R) c/4, so all rows move forward by that excess to keep the section's centre at c/4.
 */
final class Lattice {
    /** Roots nearer than this are abreast, m. */
    private static final double SAME_ROOT = 1e-6;

    private final Resolution resolution;
    private final int rows;
    private final StripStations stations;
    private final double[] share;
    private boolean shared;
    private double tailRootY;
    private double tailEdgeY;

    /** Strips, nodes and surfaces in use; node of strip i's inner end is i + its surface's place. */
    int strips;

    int nodes;
    int surfaces;

    /** Leading surfaces, and their strips, that take part in rolling and yawing: wings and canted tails. */
    int lateralSurfaces;

    int lateralStrips;

    /** Place in the list of surfaces of each loaded surface, and its first strip; one more entry ends the last. */
    final int[] listed;

    final int[] firstStrip;

    /** Leading edge, and chord at the nodes, m; row position shift of the surface in chords. */
    final double[] nodeX;

    final double[] nodeY;
    final double[] nodeZ;
    final double[] nodeChord;
    final double[] nodeTwist;
    final double[] nodeShift;

    /** Control points: leading edge abreast of them, chord there, m. */
    final double[] x;

    final double[] y;
    final double[] z;
    final double[] chord;
    final double[] slopeRatio;

    /** Unit normal of the strip, upward. */
    final double[] normalY;

    final double[] normalZ;

    /** Breadth of the strip in its own plane across the stream, m. */
    final double[] breadth;

    /** Twist less zero-lift angle, rad; change of the same per radian of elevator and of flap. */
    final double[] incidence;

    final double[] elevator;
    final double[] flap;

    /** Change of incidence of the starboard strip, trailing edge down, per radian of aileron and of canted tail's rudder. */
    final double[] aileron;

    final double[] rudder;

    /** Change of the section's maximum lift per radian of elevon. */
    final double[] maximumShift;

    /** The same per radian of flap. */
    final double[] flapMaximumShift;

    /** Share of a strip's circulation in each row, and weight of each row's flow condition, row by row. */
    final double[] rowShare;

    final double[] rowWeight;

    /** Section moment coefficient about the quarter chord: at zero lift, and per radian of elevator and of flap. */
    final double[] moment;

    final double[] elevatorMoment;
    final double[] flapMoment;

    Lattice(Resolution resolution, int mostSurfaces) {
        this.resolution = resolution;
        rows = resolution.rows();
        stations = new StripStations(resolution);
        int n = mostSurfaces * resolution.mostStrips();
        int ends = n + mostSurfaces;
        listed = new int[mostSurfaces];
        firstStrip = new int[mostSurfaces + 1];
        nodeX = new double[ends];
        nodeY = new double[ends];
        nodeZ = new double[ends];
        nodeChord = new double[ends];
        nodeTwist = new double[ends];
        nodeShift = new double[ends];
        x = new double[n];
        y = new double[n];
        z = new double[n];
        chord = new double[n];
        slopeRatio = new double[n];
        normalY = new double[n];
        normalZ = new double[n];
        breadth = new double[n];
        incidence = new double[n];
        elevator = new double[n];
        flap = new double[n];
        aileron = new double[n];
        rudder = new double[n];
        maximumShift = new double[n];
        flapMaximumShift = new double[n];
        rowShare = new double[n * rows];
        rowWeight = new double[n * rows];
        share = new double[rows];
        moment = new double[n];
        elevatorMoment = new double[n];
        flapMoment = new double[n];
    }

    /** Cuts the surfaces of a half model; sections stand in the same order as the surfaces. */
    void fill(List<Surface> all, List<SectionLift> sections, double elevatorEfficiency) {
        strips = 0;
        nodes = 0;
        surfaces = 0;
        lateralSurfaces = 0;
        lateralStrips = 0;
        findTail(all);
        for (int i = 0; i < all.size(); i++) {
            Surface surface = all.get(i);
            if (carriesLift(surface)) {
                listed[surfaces] = i;
                firstStrip[surfaces] = strips;
                map(surface);
                cutNodes(surface, sections.get(i).slopeRatio());
                cutStrips(sections.get(i));
                hinge(surface, elevatorEfficiency);
                strips += stations.strips;
                nodes += stations.strips + 1;
                if (lateralSurfaces == surfaces && (isWing(surface) || isCanted(surface))) {
                    lateralSurfaces++;
                    lateralStrips = strips;
                }
                surfaces++;
            }
        }
        firstStrip[surfaces] = strips;
    }

    private static boolean carriesLift(Surface surface) {
        return surface.mirrored() && surface.role() != Surface.Role.FIN;
    }

    /** Finds the first wing that can share the stations of a tail. */
    private void findTail(List<Surface> all) {
        shared = false;
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).role() == Surface.Role.TAIL && carriesLift(all.get(i))) {
                for (int k = 0; k < all.size() && !shared; k++) {
                    if (isWing(all.get(k))) {
                        share(all.get(k), all.get(i));
                    }
                }
            }
        }
    }

    /** Cuts the tail finer until the wing has all its strips, as far as the tail's last node lies abreast of the wing. */
    private void share(Surface wing, Surface tail) {
        double length = length(wing);
        tailRootY = tail.panels().get(0).rootY();
        double half = 0.5 * tail.span() - tailRootY;
        for (int count = resolution.tailStrips(); count <= resolution.mostStrips(); count++) {
            double edge = tailRootY + half * StripStations.reach(count);
            double inner = abreast(wing, edge);
            if (!(inner < length)) {
                return;
            }
            shared = true;
            tailEdgeY = edge;
            stations.share(count);
            if (stations.isFull(length, inner)) {
                return;
            }
        }
    }

    private static boolean isWing(Surface surface) {
        return surface.role() == Surface.Role.WING || surface.role() == Surface.Role.SECOND_WING;
    }

    private static boolean isCanted(Surface surface) {
        Panel first = surface.panels().get(0);
        return first.rootZ() != first.tipZ();
    }

    private static double length(Surface surface) {
        double sum = 0;
        for (int i = 0; i < surface.panels().size(); i++) {
            sum += surface.panels().get(i).breadth();
        }
        return sum;
    }

    /** How far along the wing this y lies abreast of it, m; infinite when there is no such place. */
    private double abreast(Surface wing, double edge) {
        if (Math.abs(wing.panels().get(0).rootY() - tailRootY) > SAME_ROOT) {
            return Double.POSITIVE_INFINITY;
        }
        double along = 0;
        for (int i = 0; i < wing.panels().size(); i++) {
            Panel panel = wing.panels().get(i);
            if (edge <= panel.tipY()) {
                return along + panel.breadth() * (edge - panel.rootY()) / (panel.tipY() - panel.rootY());
            }
            along += panel.breadth();
        }
        return Double.POSITIVE_INFINITY;
    }

    private void map(Surface surface) {
        double length = length(surface);
        double inner = shared && isWing(surface) ? abreast(surface, tailEdgeY) : Double.POSITIVE_INFINITY;
        if (surface.role() == Surface.Role.TAIL) {
            if (shared) {
                stations.tailBehindWing(length);
            } else {
                stations.tailAlone(length);
            }
        } else if (inner < length) {
            stations.wingBeforeTail(length, inner);
        } else {
            stations.wingAlone(length);
        }
    }

    private void cutNodes(Surface surface, double slopeRatio) {
        double shift = 0.25 * (1 - slopeRatio) * (1 - 1.0 / rows);
        int place = 0;
        double passed = 0;
        Panel panel = surface.panels().get(0);
        for (int k = 0; k <= stations.strips; k++) {
            double s = stations.node[k];
            while (s > passed + panel.breadth() && place + 1 < surface.panels().size()) {
                passed += panel.breadth();
                panel = surface.panels().get(++place);
            }
            double t = (s - passed) / panel.breadth();
            int n = nodes + k;
            nodeX[n] = between(panel.rootX(), panel.tipX(), t);
            nodeY[n] = between(panel.rootY(), panel.tipY(), t);
            nodeZ[n] = between(panel.rootZ(), panel.tipZ(), t);
            nodeChord[n] = between(panel.rootChord(), panel.tipChord(), t);
            nodeTwist[n] = between(panel.rootTwist(), panel.tipTwist(), t);
            nodeShift[n] = shift;
        }
    }

    private static double between(double root, double tip, double t) {
        return root + (tip - root) * t;
    }

    /**
     * Shares of the rows under uniform incidence: Πᵢ (xᵢ − yⱼ) / Π (yₖ − yⱼ) over their sum κ, positions in rows.
     */
    private void shareRows(double slopeRatio) {
        for (int j = 0; j < rows; j++) {
            double product = 0.5 * slopeRatio;
            for (int k = 0; k < rows; k++) {
                if (k != j) {
                    product *= (k - j + 0.5 * slopeRatio) / (k - j);
                }
            }
            share[j] = product / (0.5 * slopeRatio * rows);
        }
    }

    private void cutStrips(SectionLift section) {
        shareRows(section.slopeRatio());
        for (int k = 0; k < stations.strips; k++) {
            int i = strips + k;
            int n = nodes + k;
            double s = stations.node[k];
            double t = (stations.control[k] - s) / (stations.node[k + 1] - s);
            x[i] = between(nodeX[n], nodeX[n + 1], t);
            y[i] = between(nodeY[n], nodeY[n + 1], t);
            z[i] = between(nodeZ[n], nodeZ[n + 1], t);
            chord[i] = between(nodeChord[n], nodeChord[n + 1], t);
            slopeRatio[i] = section.slopeRatio();
            double dy = nodeY[n + 1] - nodeY[n];
            double dz = nodeZ[n + 1] - nodeZ[n];
            double length = Math.sqrt(dy * dy + dz * dz);
            breadth[i] = length;
            normalY[i] = -dz / length;
            normalZ[i] = dy / length;
            incidence[i] = between(nodeTwist[n], nodeTwist[n + 1], t) - section.zeroLiftAngle();
            moment[i] = section.moment();
            elevator[i] = 0;
            flap[i] = 0;
            aileron[i] = 0;
            rudder[i] = 0;
            maximumShift[i] = 0;
            flapMaximumShift[i] = 0;
            for (int r = 0; r < rows; r++) {
                rowShare[i * rows + r] = share[r];
                rowWeight[i * rows + r] = share[rows - 1 - r];
            }
            elevatorMoment[i] = 0;
            flapMoment[i] = 0;
        }
    }

    private void hinge(Surface surface, double elevatorEfficiency) {
        double length = length(surface);
        for (int c = 0; c < surface.controls().size(); c++) {
            Control control = surface.controls().get(c);
            double turn = PlainFlap.effectiveness(control.chordFraction());
            switch (control.kind()) {
                case ELEVATOR -> {
                    pitch(control, length, elevatorEfficiency, turn, elevator, elevatorMoment);
                    if (isCanted(surface)) {
                        turn(control, length, turn, rudder);
                    }
                }
                case ELEVON -> {
                    pitch(control, length, elevatorEfficiency, turn, elevator, elevatorMoment);
                    turn(control, length, turn, aileron);
                    double shift = PlainFlap.maximumLiftSlope(control.chordFraction());
                    turn(control, length, elevatorEfficiency * shift, maximumShift);
                }
                case FLAP -> droop(control, length, turn);
                case FLAPERON -> {
                    droop(control, length, turn);
                    turn(control, length, turn, aileron);
                }
                case AILERON -> turn(control, length, turn, aileron);
                case RUDDER -> {}
            }
        }
    }

    private void droop(Control control, double length, double turn) {
        pitch(control, length, 1, turn, flap, flapMoment);
        turn(control, length, PlainFlap.maximumLiftSlope(control.chordFraction()), flapMaximumShift);
    }

    private void pitch(
            Control control, double length, double efficiency, double turn, double[] turns, double[] moments) {
        turn(control, length, efficiency * turn, turns);
        turn(control, length, efficiency * PlainFlap.momentSlope(control.chordFraction()), moments);
    }

    /** Adds a control's effect to the strips it covers, by the share of each that it covers. */
    private void turn(Control control, double length, double effect, double[] effects) {
        for (int k = 0; k < stations.strips; k++) {
            double from = Math.max(stations.node[k], control.from() * length);
            double to = Math.min(stations.node[k + 1], control.to() * length);
            double covered = Math.max(0, to - from) / (stations.node[k + 1] - stations.node[k]);
            effects[strips + k] += covered * effect;
        }
    }
}
