package foamfront.model.appraisal;

/**
 * One lifting surface alone, or the whole system: inviscid, section slope 2π, power off, no body.
 *
 * @param name wing, second wing, tail
 * @param area m²
 * @param span m
 * @param liftCurveSlope per radian on its own area
 * @param spanEfficiency of its own lift
 * @param neutralPoint m aft of the wing's root leading edge
 */
public record LiftingSummary(
        String name, double area, double span, double liftCurveSlope, double spanEfficiency, double neutralPoint) {}
