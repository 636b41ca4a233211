package foamfront.optimizer.study;

import foamfront.model.design.Design;
import java.util.List;

/**
 * A design as read from its file.
 *
 * @param club its place among the club's aeroplanes
 * @param taken the values the file left to the workshop rules
 */
public record DesignFile(Design design, ClubEntry club, List<Taken> taken) {
    public DesignFile {
        taken = List.copyOf(taken);
    }

    /**
     * A value that a rule supplied.
     *
     * @param key dotted path
     * @param value as the file would have written it
     * @param rule why
     */
    public record Taken(String key, String value, String rule) {
        @Override
        public String toString() {
            return key + ": " + value + " (" + rule + ")";
        }
    }
}
