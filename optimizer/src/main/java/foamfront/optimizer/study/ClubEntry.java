package foamfront.optimizer.study;

import org.jspecify.annotations.Nullable;

/**
 * A design's place among the aeroplanes of its club; changes nothing that is computed.
 *
 * @param role what it is for, may be empty
 * @param study the study file it answers and is judged by, or null
 * @param keepFrom parts it shares with another design, or null
 * @param alone the design file of the best that the same study gave without sharing, or null
 */
public record ClubEntry(
        String role,
        @Nullable String study,
        State state,
        @Nullable KeepFrom keepFrom,
        @Nullable String alone) {
    /** Of a design that says nothing. */
    public static final ClubEntry NONE = new ClubEntry("", null, State.IDEA, null, null);
}
