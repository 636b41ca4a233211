package foamfront.optimizer.front;

import foamfront.model.appraisal.Caution;
import foamfront.model.design.Design;
import foamfront.model.mission.Measure;
import foamfront.optimizer.study.Aim;
import java.util.ArrayList;
import java.util.List;

/** What people read first. */
public final class Sentences {
    private static final String PROPELLER =
            "Keep clear of a connected propeller and within every part's rated current; charge and store lithium batteries in a"
                    + " fireproof place, never unattended, and never charge a dented, swollen or pierced one.";

    private static final String BATTERY =
            "Charge and store lithium batteries in a fireproof place, never unattended, and"
                    + " never charge a dented, swollen or pierced one.";

    private static final String UNPROVEN =
            "Figures are computed, not flown: check the balance point and throws before the first flight, and fly by your"
                    + " local rules.";

    /** Beside every range but that of a camera carrier, whose own caution has it all. */
    private static final String RANGE =
            "A computed range is no leave to fly beyond sight: keep the aeroplane in sight, and battery"
                    + " for the way back against the wind. Local rules decide.";

    private Sentences() {}

    /**
     * What these designs ask in particular, then what every model asks.
     *
     * @param ranges whether a range stands beside them
     */
    public static List<String> cautions(List<Design> designs, boolean ranges) {
        List<String> all = new ArrayList<>();
        List<Caution> particular = Caution.of(designs);
        if (ranges && !particular.contains(Caution.CAMERA)) { // which says the same
            all.add(RANGE);
        }
        particular.forEach(caution -> all.add(caution.sentence()));
        boolean motors = designs.isEmpty()
                || designs.stream().anyMatch(design -> design.power().motors() > 0);
        all.add(motors ? PROPELLER : BATTERY);
        all.add(UNPROVEN);
        return all;
    }

    /** What the designs of a front ask. */
    public static List<String> cautions(Front front) {
        boolean ranges = front.aims().stream()
                .map(Aim::measure)
                .anyMatch(measure -> measure == Measure.RANGE || measure == Measure.OUT_AND_BACK);
        return cautions(front.rows().stream().map(Row::design).toList(), ranges);
    }

    /** One sentence on the whole front. */
    public static String verdict(Front front, Show show, int firstNumber) {
        if (front.isEmpty()) {
            return "No design met every limit.";
        }
        List<String> ranges = new ArrayList<>();
        for (Aim aim : front.aims()) {
            ranges.add(range(front, aim, show));
        }
        int best = front.compromise();
        String size = front.size() == 1
                ? "One design can be built and flown and is best on every aim"
                : front.size() + " designs can be built and flown and none beats another on every aim";
        return size + " (" + String.join(", ", ranges) + "); the best compromise is row " + (firstNumber + best)
                + ", a " + front.rows().get(best).layout() + ".";
    }

    private static String range(Front front, Aim aim, Show show) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Row row : front.rows()) {
            low = Math.min(low, row.measures().of(aim.measure()));
            high = Math.max(high, row.measures().of(aim.measure()));
        }
        String least = show.number(aim.measure(), low);
        String most = show.quantity(aim.measure(), high);
        return aim.measure().words() + (low == high ? " " + most : " " + least + " to " + most);
    }
}
