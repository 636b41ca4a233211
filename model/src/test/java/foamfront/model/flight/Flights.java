package foamfront.model.flight;

import foamfront.model.Samples;
import foamfront.model.aero.BodyMoment;
import foamfront.model.aero.LeadingEdgeVortex;
import foamfront.model.aero.LiftingSystem;
import foamfront.model.aero.ParasiteBuildUp;
import foamfront.model.aero.PlainFlap;
import foamfront.model.aero.Resolution;
import foamfront.model.aero.SectionLift;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.atmosphere.Atmosphere;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.section.SectionPolar;
import java.util.ArrayList;
import java.util.List;

/** A design in the air at a weight and balance point of the test's choosing. */
final class Flights {
    static final Atmosphere AIR = Atmosphere.standard(0);

    /** Of the mean chord. */
    private static final double MARGIN = 0.10;

    final LiftingSystem lifting = new LiftingSystem(Resolution.DEFAULT);
    final TrimmedFlight flight = new TrimmedFlight(lifting);
    final double balanceX;
    final double bodyMoment;

    private Flights(Design design, double weight, double stated, double forward, Factors factors) {
        Airframe airframe = Airframe.of(design);
        List<Surface> surfaces = airframe.surfaces();
        SectionPolar[] polars = new SectionPolar[surfaces.size()];
        List<SectionLift> sections = new ArrayList<>();
        for (int i = 0; i < polars.length; i++) {
            Surface surface = surfaces.get(i);
            polars[i] = SectionPolar.of(surface.section(), design.board().thickness(), surface.meanAerodynamicChord());
            sections.add(new SectionLift(polars[i].zeroLiftAngle(), 0.95, polars[i].momentCoefficient()));
        }
        lifting.solve(surfaces, sections, PlainFlap.SMALL_ANGLE_EFFICIENCY);
        bodyMoment = BodyMoment.pitchSlope(airframe, lifting);
        double neutral = -(lifting.momentSlope(0) + bodyMoment) * lifting.referenceChord() / lifting.liftSlope();
        balanceX = Double.isNaN(stated) ? neutral - MARGIN * lifting.referenceChord() : stated;
        flight.prepare(
                lifting,
                surfaces,
                polars,
                balanceX,
                balanceX - forward,
                bodyMoment,
                LeadingEdgeVortex.of(airframe),
                ParasiteBuildUp.of(airframe, AIR),
                AIR,
                weight,
                factors);
    }

    static Flights of(Design design, double weight) {
        return new Flights(design, weight, Double.NaN, 0, Factors.NOMINAL);
    }

    /** Balanced at a stated point, m from the nose. */
    static Flights balanced(Design design, double weight, double x) {
        return new Flights(design, weight, x, 0, Factors.NOMINAL);
    }

    /** With a balance point that can move forward in flight, m. */
    static Flights moving(Design design, double weight, double forward) {
        return new Flights(design, weight, Double.NaN, forward, Factors.NOMINAL);
    }

    static TrimmedFlight trainer(double weight) {
        return of(Samples.trainer(), weight).flight;
    }

    static Flights of(Design design, double weight, Factors factors) {
        return new Flights(design, weight, Double.NaN, 0, factors);
    }
}
