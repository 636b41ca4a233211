package foamfront.model.parts;

import static foamfront.model.units.Require.notNegative;

/**
 * Points of the difficulty index: what each thing to do adds for a builder of little practice. Judgement; a club sets its own.
 *
 * @param part each piece cut or fitted
 * @param fold each bend or paper hinge
 * @param bevel each slanted cut
 * @param tool each tool that a knife, a rule and a glue gun do not stand in for
 */
public record Difficulty(double part, double fold, double bevel, double tool) {
    public Difficulty {
        notNegative("difficulty of a part", part, "");
        notNegative("difficulty of a fold", fold, "");
        notNegative("difficulty of a bevel", bevel, "");
        notNegative("difficulty of a tool", tool, "");
    }
}
