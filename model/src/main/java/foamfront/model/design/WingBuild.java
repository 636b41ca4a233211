package foamfront.model.design;

/** How a wing is made: section, joint, spar, hold-down and tips. */
public record WingBuild(WingSection section, WingJoint joint, WingSpar spar, HoldDown holdDown, WingTips tips) {}
