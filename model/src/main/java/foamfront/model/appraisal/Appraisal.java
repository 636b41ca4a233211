package foamfront.model.appraisal;

import foamfront.model.airframe.Airframe;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.fabrication.PartsList;
import foamfront.model.fabrication.Stowage;
import foamfront.model.flight.Motions;
import foamfront.model.mass.Balance;
import foamfront.model.mass.MassBreakdown;
import foamfront.model.mishap.Mishap;
import foamfront.model.structure.ControlThrow;
import foamfront.model.structure.StructureMargins;
import java.util.List;

/**
 * Everything that is known of one design.
 *
 * @param airframe its geometry, with the design it came from
 * @param measures every measure
 * @param limits every limit of the mission that applies to it
 * @param caveats what to know about the figures
 * @param masses every item but the battery
 * @param balance where it balances
 * @param surfaces each lifting surface alone, then the whole system
 * @param neutralPoint of the whole aeroplane, body included, m aft of the wing's root leading edge
 * @param motions how it answers a disturbance at 1.3 stall speeds
 * @param polar trimmed level flight from the stall up
 * @param spanLoading section lift along wings and tail, strip by strip
 * @param power what the power plant does over the same speeds
 * @param parts everything cut or sawn
 * @param bill what is bought
 * @param structure margins of the structure
 * @param massSpread how far the flying weight may lie off either way, in four builds of five, kg
 * @param controls their sizes and throws
 * @param mishap a landing on the nose
 * @param stowage its pieces in the car
 */
public record Appraisal(
        Airframe airframe,
        MeasureValues measures,
        List<LimitCheck> limits,
        List<Caveat> caveats,
        MassBreakdown masses,
        Balance balance,
        List<LiftingSummary> surfaces,
        double neutralPoint,
        Motions motions,
        List<PolarPoint> polar,
        List<SpanPoint> spanLoading,
        List<PowerPoint> power,
        PartsList parts,
        BillOfMaterials bill,
        StructureMargins structure,
        double massSpread,
        List<ControlThrow> controls,
        Mishap mishap,
        Stowage stowage) {
    public Appraisal {
        limits = List.copyOf(limits);
        caveats = List.copyOf(caveats);
        surfaces = List.copyOf(surfaces);
        polar = List.copyOf(polar);
        spanLoading = List.copyOf(spanLoading);
        power = List.copyOf(power);
        controls = List.copyOf(controls);
    }

    /** Whether every limit holds. */
    public boolean feasible() {
        return limits.stream().allMatch(LimitCheck::holds);
    }
}
