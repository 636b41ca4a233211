package foamfront.model.appraisal;

import foamfront.model.Records;
import foamfront.model.mission.Bound;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Mission;

/** Missions with other limits. */
final class Missions {
    /** A limit of zero has no size of its own. */
    private static final double LEAST_SIZE = 1e-3;

    private Missions() {}

    static Mission with(Mission mission, Limits limits) {
        return Records.with(mission, "limits", limits);
    }

    /** Nothing asked. */
    static Mission unlimited(Mission mission) {
        Limits limits = mission.limits();
        for (Bound bound : mission.limits().all()) {
            limits = limits.without(bound.measure());
        }
        return with(mission, limits);
    }

    /** Every limit moved outward by a share of its size. */
    static Mission widened(Mission mission, double share) {
        Limits limits = mission.limits();
        for (Bound bound : mission.limits().all()) {
            limits = limits.with(
                    new Bound(bound.measure(), moved(bound.low(), -share), moved(bound.high(), share), bound.reason()));
        }
        return with(mission, limits);
    }

    private static double moved(double limit, double share) {
        return Double.isInfinite(limit) ? limit : limit + share * Math.max(Math.abs(limit), LEAST_SIZE);
    }
}
