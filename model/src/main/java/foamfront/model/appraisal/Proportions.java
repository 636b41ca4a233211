package foamfront.model.appraisal;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Crossing;
import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Stance;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Body;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Wing;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Measure;
import foamfront.model.parts.Wheel;

/** Whether the parts of an airframe stand in a sane relation to each other, before anything is computed of it. */
final class Proportions {
    private static final double TAIL_AREA = 0.4; // of the wing's, common practice
    private static final double TAIL_SPAN = 0.6; // of the wing's, common practice
    private static final double FIN_ASPECT_RATIO = 3; // common practice

    private Proportions() {}

    static void set(Workbench w, Airframe airframe) {
        double ahead = Math.min(nose(airframe), keel(airframe));
        w.set(
                Measure.BODY_REACH,
                Math.min(Math.min(reach(airframe), clear(airframe)), Math.min(ahead, boom(airframe))));
        w.set(Measure.TAIL_SIZE, tailSize(airframe));
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            Surface surface = airframe.surfaces().get(i);
            least = Math.min(least, last(surface).tipChord());
        }
        w.set(Measure.LEAST_CHORD, least);
        wheels(w);
        outside(w, airframe);
    }

    private static double reach(Airframe airframe) {
        double length = airframe.body().length();
        Panel wing = airframe.wing().panels().get(0);
        double trailing = wing.rootX() + wing.rootChord();
        double reach = length - trailing;
        if (airframe.design().wing() instanceof Wing.Biplane biplane) {
            reach = Math.min(reach, wing.rootX() - biplane.stagger());
            trailing -= Math.min(0, biplane.stagger());
            reach = Math.min(reach, length - trailing);
        }
        if (airframe.design().body() instanceof Body.PodAndBoom pod) {
            // The wing sits on the pod with its whole root.
            reach = Math.min(reach, pod.bayLength() - trailing);
        }
        Surface tail = airframe.tail();
        if (tail != null) {
            Panel root = tail.panels().get(0);
            reach = Math.min(reach, length - root.rootX() - 0.5 * root.rootChord());
            reach = Math.min(reach, root.rootX() - trailing);
            reach = Math.min(reach, gap(airframe, tail));
        }
        return reach;
    }

    /** Least between the wings' trailing edges and the tail's leading edge abreast of them: both are straight between kinks, m. */
    private static double gap(Airframe airframe, Surface tail) {
        double gap = Double.POSITIVE_INFINITY;
        for (int k = 0; k < airframe.surfaces().size(); k++) {
            Surface wing = airframe.surfaces().get(k);
            for (int i = 0; wing.isWing() && i < wing.panels().size(); i++) {
                Panel ahead = wing.panels().get(i);
                for (int j = 0; j < tail.panels().size(); j++) {
                    Panel behind = tail.panels().get(j);
                    double from = Math.max(ahead.rootY(), behind.rootY());
                    double to = Math.min(ahead.tipY(), behind.tipY());
                    if (from < to) {
                        gap = Math.min(gap, Math.min(gap(ahead, behind, from), gap(ahead, behind, to)));
                    }
                }
            }
        }
        return gap;
    }

    private static double gap(Panel ahead, Panel behind, double y) {
        double t = ahead.along(y);
        return behind.leadingEdge(behind.along(y)) - ahead.leadingEdge(t) - ahead.chord(t);
    }

    /** Below 0 by how deep one surface stands in another: the body is too short, or they are too close above each other. */
    private static double clear(Airframe airframe) {
        Crossing crossing = Crossing.of(airframe);
        return crossing == null ? Double.POSITIVE_INFINITY : -crossing.depth();
    }

    /** Body ahead of the foremost wing root, m. */
    private static double nose(Airframe airframe) {
        double foremost = Double.POSITIVE_INFINITY;
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            Surface surface = airframe.surfaces().get(i);
            if (surface.role() == Surface.Role.WING || surface.role() == Surface.Role.SECOND_WING) {
                foremost = Math.min(foremost, surface.panels().get(0).rootX());
            }
        }
        return foremost;
    }

    /** Keel of a hull or floats between bow and step, over the least that can be folded, m. */
    private static double keel(Airframe airframe) {
        Flotation flotation = airframe.stations().flotation();
        return flotation == null ? Double.POSITIVE_INFINITY : flotation.form().keelToSpare();
    }

    /** Stock left over of a tail boom, m: spliced from two lengths it would carry no tail. */
    private static double boom(Airframe airframe) {
        return airframe.design().body() instanceof Body.PodAndBoom pod
                ? pod.boom().length() - pod.boomLength()
                : Double.POSITIVE_INFINITY;
    }

    private static double tailSize(Airframe airframe) {
        double size = 0;
        Surface tail = airframe.tail();
        if (tail != null) {
            size = Math.max(tail.area() / (TAIL_AREA * airframe.area()), tail.span() / (TAIL_SPAN * airframe.span()));
        }
        for (int i = 0; i < airframe.fins().size(); i++) {
            Surface fin = airframe.fins().get(i);
            size = Math.max(size, fin.aspectRatio() / FIN_ASPECT_RATIO);
        }
        return size;
    }

    private static void wheels(Workbench w) {
        Wheel wheel = w.design.undercarriage().wheel();
        if (wheel == null || w.mission.site().ground() == Ground.TARMAC) {
            w.rule(Measure.WHEEL_SIZE);
        } else {
            w.set(Measure.WHEEL_SIZE, wheel.diameter());
        }
    }

    /** Loads on top or below: no longer than half the body, no wider, and clear of the ground, which a belly landing is not. */
    private static void outside(Workbench w, Airframe airframe) {
        double room = Double.POSITIVE_INFINITY;
        double belly = -0.5 * airframe.body().height();
        double ground = belly - airframe.stations().stance().groundZ() - Stance.GROUND_CLEARANCE;
        for (int i = 0; i < w.design.loads().size(); i++) {
            Load load = w.design.loads().get(i);
            if (load.place() == Place.ON_TOP || load.place() == Place.BELOW) {
                room = Math.min(room, 0.5 * airframe.body().length() - load.length());
                room = Math.min(room, airframe.body().width() - load.width());
            }
            if (load.place() == Place.BELOW) {
                room = Math.min(room, Math.max(0, ground) - load.height());
            }
        }
        if (room == Double.POSITIVE_INFINITY) {
            w.rule(Measure.OUTSIDE_ROOM);
        } else {
            w.set(Measure.OUTSIDE_ROOM, room);
        }
    }

    private static Panel last(Surface surface) {
        return surface.panels().get(surface.panels().size() - 1);
    }
}
