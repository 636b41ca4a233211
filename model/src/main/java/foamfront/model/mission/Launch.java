package foamfront.model.mission;

import foamfront.model.design.Choice;

/**
 * The arm that throws a hand-launched model: a mean force over a stroke gives the release speed, ½ m V² = F s (common
 * practice), capped at 12 m/s; heavier models are not thrown at all.
 */
public enum Launch implements Choice {
    NORMAL("normal", 40, 0.8, 1.5),
    STRONG("strong", 60, 1.0, 2.5);

    private static final double FASTEST = 12; // m/s

    private final String words;
    private final double force;
    private final double stroke;
    private final double heaviest;

    Launch(String words, double force, double stroke, double heaviest) {
        this.words = words;
        this.force = force;
        this.stroke = stroke;
        this.heaviest = heaviest;
    }

    @Override
    public String words() {
        return words;
    }

    /** Release speed of a model of this mass (kg), m/s. */
    public double speed(double mass) {
        return Math.min(FASTEST, Math.sqrt(2 * force * stroke / mass));
    }

    /** Mean push of the arm on a model of this mass (kg), m/s²: v² / 2 s. */
    public double push(double mass) {
        double speed = speed(mass);
        return speed * speed / (2 * stroke);
    }

    /** Heaviest model thrown, kg. */
    public double heaviest() {
        return heaviest;
    }
}
