package foamfront.optimizer.study;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.appraisal.Appraiser;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Mission;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** Every build of an aeroplane that what is known of it allows. */
final class FlownSweep {
    private static final int STEPS = 6;
    private static final double GRAM = 0.001;

    private FlownSweep() {}

    /** At this site, as a study writes it, without what misses the published stall speed. */
    static List<Appraisal> builds(Flown row, String site) {
        Mission mission = StudyReader.read(
                        "flown.yaml",
                        ("study: flown\nsite: {" + site + "}\nvary: {span: 1 m to 2 m}\naim: {most: endurance}\n")
                                .getBytes(StandardCharsets.UTF_8),
                        FlownParts.CATALOGUE)
                .mission(FlownParts.CATALOGUE.workshop());
        String text = text(row.file());
        List<Appraisal> builds = new ArrayList<>();
        for (String motor : row.motors()) {
            for (String propeller : row.propellers()) {
                for (String avionics : row.avionics()) {
                    String parts = text.replace("MOTOR", motor)
                            .replace("PROPELLER", propeller)
                            .replace("AVIONICS", avionics);
                    for (Factors factors : row.factors()) {
                        sizes(row, parts, mission, factors, builds);
                    }
                }
            }
        }
        return builds;
    }

    private static void sizes(Flown row, String parts, Mission mission, Factors factors, List<Appraisal> builds) {
        for (int i = 0; i <= STEPS; i++) {
            String sized = parts.replace(
                    "CHORD",
                    String.format(Locale.ROOT, "%.1f mm", 1000 * row.area().at(i, STEPS) / row.span()));
            double empty = appraise(row, loaded(sized, GRAM), mission, factors)
                            .measures()
                            .of(Measure.MASS)
                    - GRAM;
            for (int k = 0; k <= STEPS; k++) {
                double load = row.mass().at(k, STEPS) - empty;
                if (load >= GRAM) {
                    Appraisal build = appraise(row, loaded(sized, load), mission, factors);
                    if (row.stall().holds(build.measures().of(Measure.STALL_SPEED))) {
                        builds.add(build);
                    }
                }
            }
        }
    }

    private static String loaded(String text, double load) {
        return text.replace("LOAD", String.format(Locale.ROOT, "%.1f g", load / GRAM));
    }

    private static Appraisal appraise(Flown row, String text, Mission mission, Factors factors) {
        return new Appraiser(List.of())
                .appraise(
                        DesignReader.read(row.file(), text.getBytes(StandardCharsets.UTF_8), FlownParts.CATALOGUE)
                                .design(),
                        mission,
                        factors);
    }

    private static String text(String name) {
        String file = "/foamfront/optimizer/flown/" + name + ".yaml";
        try (InputStream in = Objects.requireNonNull(FlownSweep.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
