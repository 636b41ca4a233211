package foamfront.optimizer.cli;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Which options the bench hears beside which: one that would go unheard is a fault, not a surprise. */
final class Heard {
    private static final Set<String> ALWAYS = Set.of("--csv", "--json", "--catalogue");

    private static final Set<String> FIT = Set.of("--fit", "--name", "--motor", "--motor-mass", "--controller");

    private static final Set<String> COEFFICIENTS =
            Set.of("--rpm", "--propeller", "--diameter", "--pitch", "--family", "--blades");

    /** By the option that names a part, those that describe the same part by numbers. */
    private static final Map<String, List<String>> NUMBERS = Map.of(
            "--motor", List.of("--kv", "--resistance", "--no-load-current", "--motor-mass"),
            "--propeller", List.of("--diameter", "--pitch", "--family", "--blades"),
            "--battery", List.of("--cells", "--capacity", "--rating"),
            "--fan",
                    List.of(
                            "--motor",
                            "--kv",
                            "--resistance",
                            "--no-load-current",
                            "--motor-mass",
                            "--propeller",
                            "--diameter",
                            "--pitch",
                            "--family",
                            "--blades"));

    private Heard() {}

    /** Refuses what would go unheard among the options that were given. */
    static void check(Set<String> given) {
        if (given.contains("--csv") && given.contains("--json")) {
            throw new InputException("foamfront: --csv and --json cannot both be printed.", "Keep one of them.");
        }
        if (given.contains("--fit")) {
            only("--fit", FIT, given);
        } else if (given.contains("--rpm")) {
            only("--rpm", COEFFICIENTS, given);
        } else if (given.contains("--name")) {
            throw new InputException("foamfront: --name is for a fitted motor.", "Add --fit, or leave --name out.");
        }
        for (String name : List.of("--fan", "--motor", "--propeller", "--battery")) {
            boolean weighed = name.equals("--motor") && given.contains("--fit");
            for (String number : NUMBERS.getOrDefault(name, List.of())) {
                if (given.contains(name) && given.contains(number) && !weighed) {
                    throw new InputException(
                            "foamfront: " + name + " and " + number + " both describe the same part.",
                            "Give one of them.");
                }
            }
        }
    }

    private static void only(String use, Set<String> heard, Set<String> given) {
        for (String option : new TreeSet<>(given)) {
            if (!heard.contains(option) && !ALWAYS.contains(option)) {
                throw new InputException(
                        "foamfront: " + option + " has no say beside " + use + ".",
                        "Leave one of them out; see foamfront bench --help.");
            }
        }
    }
}
