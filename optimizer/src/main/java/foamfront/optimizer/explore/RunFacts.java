package foamfront.optimizer.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What must be the same for a run to go on: with other figures it would end nowhere that an uninterrupted run ends.
 *
 * @param program version of foamfront
 * @param study SHA-256 of the study file
 * @param designs SHA-256 of the design files that the study names
 * @param catalogue SHA-256 of the catalogue rows used
 * @param region of interest in place of the study's, as it was asked for in one line; empty for the study's
 * @param seed of all random numbers
 * @param evaluations the budget: schedules depend on it
 */
public record RunFacts(
        String program, String study, String designs, String catalogue, String region, long seed, long evaluations) {
    private static final String REGION = "region preferred";

    /** As {@code name: value} lines. */
    String lines() {
        StringBuilder text = new StringBuilder();
        named().forEach((name, value) ->
                text.append(name).append(": ").append(value).append('\n'));
        return text.toString();
    }

    private Map<String, String> named() {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("version of foamfront", program);
        facts.put("study", study);
        facts.put("designs the study names", designs);
        facts.put("catalogue", catalogue);
        facts.put(REGION, region);
        facts.put("seed", Long.toString(seed));
        facts.put("evaluations", Long.toString(evaluations));
        return facts;
    }

    /** A number in the lines of a checkpoint. */
    public static long number(String lines, String name) {
        return Long.parseLong(value(lines, name));
    }

    /** The region in the lines of a checkpoint. */
    public static String region(String lines) {
        return value(lines, REGION);
    }

    private static String value(String lines, String name) {
        return lines.lines()
                .filter(line -> line.startsWith(name + ": "))
                .findFirst()
                .map(line -> line.substring(name.length() + 2))
                .orElse("");
    }

    /** What differs from the lines of a checkpoint, each as a few words; empty where the run may go on. */
    public List<String> changes(String lines) {
        List<String> changes = new ArrayList<>();
        named().forEach((name, now) -> {
            String then = value(lines, name);
            if (!then.equals(now)) {
                changes.add(now.length() == 64 ? "the " + name : name + " (" + then + " then, " + now + " now)");
            }
        });
        return changes;
    }
}
