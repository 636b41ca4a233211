package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Vents;
import foamfront.model.factors.Factors;
import foamfront.model.parts.Difficulty;
import foamfront.model.parts.Workshop;

/**
 * Time at the bench by the workshop's rates: metres cut, folded, glued and taped, parts marked out, bought parts fitted. The
 * two walls of a fold's groove belong to the fold, a bevelled edge counts as a cut, a score as a cut and a fold, each side of
 * a spar's seat as a cut. Vents for
 * the controller are cut too.
 *
 * @param cutting s
 * @param folding s
 * @param gluing s
 * @param taping s
 * @param marking s
 * @param fitting s
 * @param difficulty points of the workshop's table for cut and fitted pieces, folds, bevels and unusual tools
 */
public record BuildTime(
        double cutting,
        double folding,
        double gluing,
        double taping,
        double marking,
        double fitting,
        double difficulty) {
    public static BuildTime of(Airframe airframe, PartsList parts, Workshop workshop, Factors factors) {
        double cut = Vents.of(airframe.design()).cut();
        double fold = 0;
        double glue = 0;
        double tape = 0;
        int pieces = 0;
        int folds = 0;
        int bevels = 0;
        for (int i = 0; i < parts.cut().size(); i++) {
            CutPart part = parts.cut().get(i);
            Pattern pattern = part.pattern();
            int n = part.count();
            double scored = pattern.scored();
            double shallow = scored + pattern.grooved();
            cut += n * (pattern.cut() + shallow + pattern.bevelled() - 2 * pattern.folded());
            fold += n * (scored + pattern.folded());
            glue += part.glueLength();
            tape += part.tapeLength() + part.coveringLength();
            pieces += n;
            folds += n * pattern.folds();
            bevels += n * pattern.bevels();
        }
        SmallFittings small = SmallFittings.of(airframe);
        int fitted = FittedParts.count(airframe) + small.bandSets() + small.harnesses() + small.hinges();
        double k = factors.time();
        Difficulty points = workshop.difficulty();
        return new BuildTime(
                k * cut * workshop.cutRate(),
                k * fold * workshop.foldRate(),
                k * glue * workshop.glueRate(),
                k * tape * workshop.tapeRate(),
                k * pieces * workshop.partTime(),
                k * fitted * workshop.fittingTime(),
                points.part() * (pieces + fitted)
                        + points.fold() * folds
                        + points.bevel() * bevels
                        + points.tool() * Tool.count(airframe, parts));
    }

    /** s. */
    public double total() {
        return cutting + folding + gluing + taping + marking + fitting;
    }
}
