package foamfront.optimizer.explore;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.mass.MassGroup;
import foamfront.model.mission.Measure;
import java.util.Arrays;
import java.util.Set;

/** What a band may be laid round, for one design: its measures, its wing and its shares of mass. */
final class Figures {
    private static final Set<MassGroup> AIRFRAME =
            Set.of(MassGroup.WING, MassGroup.TAIL, MassGroup.BODY, MassGroup.UNDERCARRIAGE);

    private Figures() {}

    /** SI value of a figure. */
    static double of(Appraisal appraisal, String figure) {
        return switch (figure) {
            case "span" -> appraisal.airframe().design().wing().planform().span();
            case "wing area" ->
                appraisal.measures().of(Measure.MASS) / appraisal.measures().of(Measure.WING_LOADING);
            case "airframe share" -> share(appraisal, AIRFRAME);
            case "battery share" -> share(appraisal, Set.of(MassGroup.BATTERY));
            case "power plant share" -> share(appraisal, Set.of(MassGroup.POWER));
            case "radio share" -> share(appraisal, Set.of(MassGroup.RADIO));
            default -> appraisal.measures().of(measure(figure));
        };
    }

    /** Share of the mass without loads. */
    private static double share(Appraisal appraisal, Set<MassGroup> groups) {
        double own =
                appraisal.measures().of(Measure.MASS) - appraisal.measures().of(Measure.PAYLOAD);
        double sum = groups.contains(MassGroup.BATTERY)
                ? appraisal.masses().battery().mass()
                : 0;
        return (sum
                        + appraisal.masses().items().stream()
                                .filter(item -> groups.contains(item.group()))
                                .mapToDouble(item -> item.mass())
                                .sum())
                / own;
    }

    private static Measure measure(String words) {
        return Arrays.stream(Measure.values())
                .filter(measure -> measure.words().equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no measure '" + words + "'"));
    }
}
