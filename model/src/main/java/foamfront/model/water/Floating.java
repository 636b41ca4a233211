package foamfront.model.water;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.airframe.TipFloat;

/**
 * How an aeroplane lies on still fresh water: draught and trim at which displacement carries the weight and its centre lies
 * under the balance point, by Newton's method on volume and moment of the cross-sections, {@value #STATIONS} of equal length
 * (derived; Archimedes). Trim turns the water's surface through the sections; heel is small.
 *
 * @param draught of the keel ahead of the step at the step, m
 * @param trim nose up, rad
 * @param volume of all floats up to their decks, tip floats left out, m³
 * @param displaced m³
 * @param heeling righting moment with the lee deck or tip float awash, N m
 */
public record Floating(double draught, double trim, double volume, double displaced, double heeling) {
    static final int STATIONS = 32;
    private static final int STEPS = 25;
    private static final double CLOSE = 1e-9; // m, m per m
    private static final double STEEPEST = 0.5; // tangent of the trim

    /**
     * Floats an aeroplane.
     *
     * @param mass kg
     * @param behind step aft of the balance point, m
     * @param above balance point over the keel, m
     */
    public static Floating of(Flotation flotation, double mass, double behind, double above) {
        PlaningForm form = flotation.form();
        double volume = flotation.count() * volume(form);
        double asked = mass / Water.DENSITY;
        if (asked >= volume) {
            return new Floating(form.vee() + form.depth(), 0, volume, volume, 0);
        }
        double each = asked / flotation.count();
        double[] rest = rest(form, each, behind, above);
        double heeling = heeling(flotation, form, asked, rest[0], above);
        return new Floating(rest[0], StrictMath.atan(rest[1]), volume, asked, heeling);
    }

    /** Of one hull or float up to its deck, m³. */
    public static double volume(PlaningForm form) {
        return sum(form, 10 * (form.vee() + form.depth()), 0).volume;
    }

    /** Volume, its centre and the water plane at a draught and a tangent of trim, x from the step, z from the keel. */
    private record Displaced(
            double volume, double momentX, double momentZ, double plane, double planeX, double planeXx) {}

    private static Displaced sum(PlaningForm form, double draught, double slope) {
        double dx = form.length() / STATIONS;
        double volume = 0;
        double momentX = 0;
        double momentZ = 0;
        double plane = 0;
        double planeX = 0;
        double planeXx = 0;
        for (int i = 0; i < STATIONS; i++) {
            double at = (i + 0.5) * dx;
            double x = at - form.step();
            double rise = form.rise(at);
            double height = draught + x * slope - rise;
            double plate = form.plate(at);
            if (height <= plate) {
                continue;
            }
            double area = (form.sectionArea(height, rise) - form.sectionArea(plate, rise)) * dx;
            double breadth = form.breadth(height, rise) * dx;
            volume += area;
            momentX += area * x;
            momentZ += area * (rise + 0.5 * (plate + Math.min(height, form.vee() + form.depth() - rise)));
            plane += breadth;
            planeX += breadth * x;
            planeXx += breadth * x * x;
        }
        return new Displaced(volume, momentX, momentZ, plane, planeX, planeXx);
    }

    /** Draught and tangent of trim. */
    private static double[] rest(PlaningForm form, double asked, double behind, double above) {
        double draught = form.vee() + asked / (form.beam() * form.length());
        double slope = 0;
        for (int i = 0; i < STEPS; i++) {
            Displaced d = sum(form, draught, slope);
            double missing = asked - d.volume;
            // Nose up the balance point moves aft over the step by its height times the slope, the buoyancy's centre
            // too.
            double moment = asked * (-behind + above * slope) - d.momentX - d.momentZ * slope;
            double stiff = d.planeXx - asked * above + d.momentZ;
            double plane = Math.max(d.plane, 0.1 * form.beam() * form.length());
            double least = 0.02 * form.beam() * form.length() * form.length() * form.length();
            double cross = d.planeX;
            double determinant = plane * Math.max(stiff, least) - cross * cross;
            if (!(determinant > 0.05 * plane * least)) {
                cross = 0;
                determinant = plane * Math.max(stiff, least);
            }
            double sink = (missing * Math.max(stiff, least) - moment * cross) / determinant;
            double turn = (moment * plane - missing * cross) / determinant;
            draught += Math.max(-0.2 * form.depth(), Math.min(0.2 * form.depth(), sink));
            slope = Math.max(-STEEPEST, Math.min(STEEPEST, slope + Math.max(-0.05, Math.min(0.05, turn))));
            if (Math.abs(sink) < CLOSE && Math.abs(turn) < CLOSE) {
                break;
            }
        }
        return new double[] {draught, slope};
    }

    /**
     * Righting moment heeled until the lee float's deck, or the whole tip float, is awash: what the lee float carries more than
     * the other, at their distance, less what the weight's height above the water takes. A hull's own breadth helps it by its
     * metacentric radius b³ l / 12 V.
     */
    private static double heeling(Flotation flotation, PlaningForm form, double asked, double draught, double above) {
        double weight = asked * Water.DENSITY * GRAVITY;
        TipFloat tips = flotation.tips();
        if (tips == null) {
            double lee = Math.min(volume(form), asked) - 0.5 * asked;
            double freeboard = form.vee() + form.depth() - draught;
            return 2 * flotation.y() * lee * Water.DENSITY * GRAVITY
                    - weight * (above - draught) * Math.max(0, freeboard) / flotation.y();
        }
        double height = tips.z() + tips.side() - flotation.keel() - draught;
        double heel = Math.max(0, height) / tips.y();
        double radius = form.beam() * form.beam() * form.beam() * 0.7 * form.length() / (12 * asked);
        double centre = 0.6 * draught;
        return tips.volume() * Water.DENSITY * GRAVITY * tips.y() - weight * (above - centre - radius) * heel;
    }

    /** What is left of the floats' volume over what floats the weight, as a share of the latter. */
    public double reserve(double mass) {
        return volume * Water.DENSITY / mass - 1;
    }

    /** Height of the water's surface over the keel at {@code x} aft of the step, m. */
    public double surface(double x) {
        return draught + x * StrictMath.tan(trim);
    }
}
