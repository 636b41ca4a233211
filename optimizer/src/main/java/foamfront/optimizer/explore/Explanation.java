package foamfront.optimizer.explore;

import foamfront.model.mission.Bound;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.study.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Why nothing could be built and flown. */
public final class Explanation {
    /** Less growth than this is left unsaid (judgement). */
    private static final double STANDS_STILL = 0.02;

    private Explanation() {}

    /** One sentence. */
    public static String sentence(Found found) {
        if (found.evaluations() == 0) {
            return "The search was stopped before its first designs were computed.";
        }
        String tried = found.evaluations() == 1
                ? "1 design was tried and did not meet every limit"
                : found.evaluations() + " designs were tried and none met every limit";
        if (found.blockers().isEmpty()) {
            return tried + ".";
        }
        Blocker first = found.blockers().get(0);
        String limit = " the limit on " + first.bound().measure().words() + ".";
        return first.of() == 1
                ? tried + "; the nearest misses" + limit
                : tried + "; of the " + first.of() + " that came nearest, " + first.missed()
                        + (first.missed() == 1 ? " misses" : " miss") + limit;
    }

    /** The aims that none of the designs that came nearest can have, such as a take-off distance of what is thrown; empty if none. */
    public static String lacking(Found found) {
        String lacking = found.front().aims().stream()
                .filter(aim -> !found.nearest().isEmpty()
                        && found.nearest().stream()
                                .allMatch(row -> Double.isNaN(row.measures().of(aim.measure()))))
                .map(aim -> aim.measure().words())
                .collect(Collectors.joining(", "));
        return lacking.isEmpty()
                ? ""
                : "None of the designs that came nearest has what is aimed at: " + lacking
                        + ". Drop that aim, or offer arrangements and a site that know it.";
    }

    /** The limits that rule everything out, the most missed first. */
    public static Table table(Found found, Show show) {
        List<List<String>> rows = new ArrayList<>();
        for (Blocker blocker : found.blockers()) {
            rows.add(List.of(
                    blocker.bound().measure().words(),
                    asked(blocker.bound(), show),
                    show.quantity(blocker.bound().measure(), blocker.nearest()),
                    blocker.missed() + " of " + blocker.of(),
                    blocker.bound().reason()));
        }
        return new Table(
                List.of(
                        Table.Column.text("limit"),
                        Table.Column.text("asked"),
                        Table.Column.text("nearest miss"),
                        Table.Column.text("missed by"),
                        Table.Column.text("because")),
                rows);
    }

    /** A bound as a study would say it. */
    public static String asked(Bound bound, Show show) {
        if (bound.low() == Double.NEGATIVE_INFINITY) {
            return "at most " + show.quantity(bound.measure(), bound.high());
        }
        if (bound.high() == Double.POSITIVE_INFINITY) {
            return "at least " + show.quantity(bound.measure(), bound.low());
        }
        return show.number(bound.measure(), bound.low()) + " to " + show.quantity(bound.measure(), bound.high());
    }

    static String markdown(Study study, Found found, Show show) {
        if (found.evaluations() == 0) {
            return "# " + Table.plain(study.name()) + "\n\n" + sentence(found) + "\n";
        }
        return "# " + Table.plain(study.name()) + "\n\n" + sentence(found)
                + "\n\n## Limits that rule everything out\n\n"
                + table(found, show).markdown()
                + "\nThe designs that came nearest are in designs/. Relax a limit, widen a range under vary, or allow more"
                + " parts, then explore again.\n";
    }

    /** What a reader should know of a search that its time or a signal ended; empty where neither did. */
    public static String early(Found found) {
        return found.stopped()
                ? "The search was stopped early, by its time or by hand, after " + found.evaluations()
                        + " designs. How many fit in depends on the machine, so this front cannot be repeated exactly."
                : "";
    }

    /** What the region of interest left; empty where the study prefers nothing. */
    public static String region(Study study, Found found, Show show) {
        if (study.prefer().isEmpty() || found.front().isEmpty()) {
            return "";
        }
        String wish = study.prefer().stream()
                .map(bound -> bound.measure().words() + " " + asked(bound, show))
                .collect(Collectors.joining(", "));
        return Region.holds(study, found.front().rows().get(0))
                ? "Of " + found.whole() + " best trade-offs these "
                        + found.front().size() + " lie in the region preferred (" + wish + ")."
                : "No best trade-off lies in the region preferred (" + wish + "): all " + found.whole() + " are shown.";
    }

    /** The same as a part of a page. */
    static String regionPart(Study study, Found found, Show show) {
        String region = region(study, found, show);
        return region.isEmpty() ? "" : "\n## Region of interest\n\n" + region + "\n";
    }

    /** What a reader should know of a search that ended before its front stood still; empty where it did. */
    public static String growing(Found found) {
        return found.growth() < STANDS_STILL
                ? ""
                : "The front still grew by "
                        + Math.round(100 * found.growth())
                        + " % over the last fifth of the search: more designs (--evaluations) or another seed may find better.";
    }
}
