package foamfront.optimizer.study;

import foamfront.model.design.WingHeight;
import foamfront.model.design.WingKind;

/**
 * One wing the search may take.
 *
 * @param height of a monoplane's wing
 */
public record WingChoice(WingKind kind, WingHeight height) {}
