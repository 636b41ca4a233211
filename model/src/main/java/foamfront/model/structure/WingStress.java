package foamfront.model.structure;

import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import java.util.List;

/**
 * Moment, shear, deflection and torsion along one half wing, stepped from tip to root over the strips of a {@link SpanLoad}.
 *
 * <p>Paper fails by compression first, so a wing bent up is judged by its upper face and one bent down by its lower.
 * Two cases: the limit load in flight, relieved by the wing's own weight; and a landing on the body, lift gone, when
 * that weight and an engine's bend it down (in flight an engine's relief is left out, on the safe side). Weight is
 * spread like the lift's size.
 *
 * <p>Shear and moment are exact at the strips' edges for loads at the strips' stations. Deflection is
 * δ = ∫ (M / EI)(l − y) dy, M cubic on each strip between its edges' moments and shears, EI that of the strip's middle,
 * plus the shear of plates, ∫ V / (S c) dy.
 *
 * <p>Torsional divergence of a straight wing, by Rayleigh's quotient q_D = ∫ GJ θ'² dy / ∫ a e c² θ² dy with the twist
 * θ = (3η − η³) / 2 of a linear torque: within 0.13 % of the uniform wing's π² GJ / (4 l² a e c²) (R. L. Bisplinghoff,
 * H. Ashley and R. L. Halfman, Aeroelasticity (1955), from memory; derived from GJ θ'' + q a e c² θ = 0). Sweep back
 * would only raise it.
 *
 * <p>Sweep forward by Λ lets bending add to the incidence, and the two act as in series: 1 / q_D = 1 / q_T + 1 / q_B,
 * which for a uniform wing is the 1 + 0.39 (l / e)(GJ / EI) tan Λ of F. W. Diederich and B. Budiansky, NACA TN 1680
 * (1948) (from memory). Bending alone, with w = 6η² − 4η³ + η⁴ of an even load as trial and as weight (Galerkin's
 * method on EI w'''' = q a c w' tan Λ, y along the projected span, sections turned with the sweep; derived):
 *
 * <pre>q_B = ∫ EI w''² dy / ∫ a c w w' tan Λ (1 + tan² Λ) dy</pre>
 *
 * It lies 1.1 % above the uniform wing's exact 6.33 EI / (a c l³ tan Λ).
 *
 * <p>Flutter of bending with torsion, where bending is much the softer: V_F = b ω_α √(r² / (2 κ (1/2 + a + x))), the
 * approximate formula of T. Theodorsen and I. E. Garrick, NACA Report 685 (1940), and S. Pines, J. Aeronautical Sciences
 * 25 (1958) (both from memory). With κ = π ρ b² / m and K = m b² r² ω_α² it is K / (a c d) of dynamic pressure, d the way from
 * the quarter-chord back to the centre of mass: torsional divergence with that way in place of the elastic axis's
 * (derived). Damping and the bending's own stiffness, left out, raise it; servos behind the skins' centre, left out too, lower
 * it. Real measurements of foam wings there are none.
 *
 * <p>The lift slope is the real one of sections along the stream, which has the wing's own cos Λ in it; chords across the
 * swept beam are c cos Λ, its length l / cos Λ, and both cancel from the torsion. Against the coupled equation of a
 * uniform wing (WingStressTest) 0 to 2 % high, so at most 1 % in speed. Sweep of the quarter-chord, panel by panel; aft
 * sweep outboard takes off what forward sweep inboard adds, never more.
 *
 * @param rootMoment in flight or landing, the greater, N m
 * @param rootShear in flight or landing, the greater, N
 * @param face greatest compressive stress in the paper, Pa
 * @param spar greatest stress in a stock spar, Pa
 * @param glue greatest shear stress in the glue between the boards, Pa
 * @param deflection of the tip at the limit load, m
 * @param divergence dynamic pressure times lift slope, q_D a, Pa
 * @param flutter dynamic pressure times lift slope, q_F a, Pa
 */
record WingStress(
        double rootMoment,
        double rootShear,
        double face,
        double spar,
        double glue,
        double deflection,
        double divergence,
        double flutter) {
    /**
     * What bends one half wing, N.
     *
     * @param lift at the limit load; a strip of share s carries s times this
     * @param relief own weight of the half wing times the limit load factor
     * @param landing own weight of the half wing times the landing's load factor, lift gone
     * @param engine weight of an engine on the half wing times the landing's load factor; 0 without one
     * @param engineY its station, m
     */
    record Forces(double lift, double relief, double landing, double engine, double engineY) {}

    static WingStress of(SpanLoad load, WingBeam beam, Surface wing, Forces forces) {
        double l = load.semispan();
        List<Panel> panels = wing.panels();
        int panel = panels.size() - 1;
        double outer = l;
        double shear = 0;
        double moment = 0;
        double face = 0;
        double spar = 0;
        double glue = 0;
        double deflection = 0;
        double strain = 0;
        double work = 0;
        double bendStrain = 0;
        double bendWork = 0;
        double greatestShear = 0;
        double greatestMoment = 0;
        double landingShear = 0;
        double landingMoment = 0;
        double parts = load.size();
        double own = parts > 0 ? 1 / parts : 0;
        double e = beam.elasticOffset();
        for (int i = load.strips() - 1; i >= 0; i--) {
            double w = load.width(i);
            double inner = outer - w;
            double part = own * Math.abs(load.share(i));
            double force = forces.lift() * load.share(i) - forces.relief() * part;
            double weight = forces.landing() * part;
            double innerShear = shear + force;
            double innerMoment = moment + shear * w + force * (load.y(i) - inner);
            double middle = outer - 0.5 * w;
            panel = at(panels, panel, middle);
            double c = chord(panels.get(panel), middle);
            double stiffness = beam.bendingStiffness(c);
            deflection += bending(w, l - inner, l - outer, innerMoment, moment, innerShear, shear) / stiffness
                    + 0.5 * w * (shear + innerShear) * beam.shearFlexibility(c);
            double eta = middle / l;
            bendStrain += w * stiffness * curvature(eta) * curvature(eta);
            bendWork += w * c * l * l * l * lean(eta) * forward(panels.get(panel));
            double slope = 1.5 * (1 - eta * eta) / l;
            double twist = 0.5 * eta * (3 - eta * eta);
            strain += w * beam.torsionStiffness(c) * slope * slope;
            work += w * e * c * c * twist * twist;
            panel = at(panels, panel, inner);
            double edge = chord(panels.get(panel), inner);
            landingMoment += landingShear * w + weight * (load.y(i) - inner);
            landingShear += weight;
            if (forces.engineY() > inner && forces.engineY() <= outer) {
                landingMoment += forces.engine() * (forces.engineY() - inner);
                landingShear += forces.engine();
            }
            face = Math.max(face, beam.faceStress(innerMoment, edge));
            face = Math.max(face, beam.faceStress(-landingMoment, edge));
            greatestMoment = Math.max(Math.abs(innerMoment), landingMoment);
            greatestShear = Math.max(Math.abs(innerShear), landingShear);
            glue = Math.max(glue, greatestShear * beam.glue(edge));
            spar = Math.max(spar, beam.sparStress(greatestMoment, edge));
            shear = innerShear;
            moment = innerMoment;
            outer = inner;
        }
        double softness = work / strain + Math.max(0, bendWork) / bendStrain;
        double flutter = strain / work * e / beam.massOffset();
        return new WingStress(greatestMoment, greatestShear, face, spar, glue, deflection, 1 / softness, flutter);
    }

    /** w'' of the trial deflection over η. */
    private static double curvature(double eta) {
        return 12 * (1 - eta) * (1 - eta);
    }

    /** w w' of the trial deflection over η. */
    private static double lean(double eta) {
        double square = eta * eta;
        return square * (6 - 4 * eta + square) * 4 * eta * (3 - 3 * eta + square);
    }

    /** tan Λ (1 + tan² Λ) of the panel's quarter-chord, forward positive. */
    private static double forward(Panel panel) {
        double breadth = panel.tipY() - panel.rootY();
        double run = panel.rootX() + 0.25 * panel.rootChord() - panel.tipX() - 0.25 * panel.tipChord();
        double tangent = breadth > 0 ? run / breadth : 0;
        return tangent * (1 + tangent * tangent);
    }

    /** ∫ M r dy over a strip, r the arm to the tip, by the trapezoid with its end correction. */
    private static double bending(
            double w, double innerArm, double outerArm, double innerM, double outerM, double innerV, double outerV) {
        double a = innerM * innerArm;
        double b = outerM * outerArm;
        double slopeA = -innerV * innerArm - innerM;
        double slopeB = -outerV * outerArm - outerM;
        return 0.5 * w * (a + b) + w * w / 12 * (slopeA - slopeB);
    }

    /** The panel holding y, searched inward from {@code start}. */
    private static int at(List<Panel> panels, int start, double y) {
        int i = start;
        while (i > 0 && y < panels.get(i).rootY()) {
            i--;
        }
        return i;
    }

    private static double chord(Panel panel, double y) {
        double breadth = panel.tipY() - panel.rootY();
        double f = breadth > 0 ? (y - panel.rootY()) / breadth : 0;
        return panel.rootChord() + f * (panel.tipChord() - panel.rootChord());
    }
}
