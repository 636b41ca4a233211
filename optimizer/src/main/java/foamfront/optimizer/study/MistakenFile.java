package foamfront.optimizer.study;

import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.yaml.Yaml;

/** A study where a design belongs, or the other way round: one fault instead of one for each of its keys. */
final class MistakenFile {
    private MistakenFile() {}

    /**
     * Stops where the file names itself as the other kind.
     *
     * @param belongs the key by which a file of the kind wanted names itself
     * @param other likewise the other kind's
     * @param advice what would be right
     * @throws StudyException if so
     */
    static void refuse(Yaml.Mapping mapping, String belongs, String other, String advice, Faults faults) {
        for (Yaml.Entry entry : mapping.entries()) {
            if (entry.key().text().equals(other) && !has(mapping, belongs)) {
                faults.add(
                        entry.key().line(),
                        entry.key().column(),
                        "",
                        "this is a " + other + ", where a " + belongs + " belongs",
                        advice);
                faults.stopIfAny();
            }
        }
    }

    private static boolean has(Yaml.Mapping mapping, String key) {
        return mapping.entries().stream().anyMatch(entry -> entry.key().text().equals(key));
    }
}
