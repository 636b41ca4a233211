package foamfront.model.fabrication;

import java.util.List;

/**
 * Where every piece lies.
 *
 * @param sheets whole sheets cut
 * @param bound sheets no plan can do without; waste is measured against it
 * @param usedArea board in the pieces over board in the sheets
 * @param placements one for each piece
 */
public record SheetPlan(int sheets, int bound, double usedArea, List<Placement> placements) {
    public SheetPlan {
        placements = List.copyOf(placements);
    }
}
