package foamfront.optimizer.runs;

import foamfront.optimizer.front.FrontJson;

/**
 * What {@code run.json} says: the only file of a run that holds times and the machine's threads.
 *
 * @param program version of foamfront
 * @param java version it ran on
 * @param study its name
 * @param studyDigest SHA-256 of the study file as read
 * @param catalogueDigest SHA-256 of the catalogue rows used
 * @param prefer region of interest asked for in place of the study's, which the search went by; empty for the study's
 * @param reported another region, to which the report alone was narrowed; empty where there was none
 * @param seed of all random numbers
 * @param budget evaluations asked for
 * @param threads workers
 * @param evaluations designs tried
 * @param feasible of them could be built and flown
 * @param faults designs at which the computation broke down
 * @param front rows of front.csv
 * @param found hypervolume at the end, as the search measures it
 * @param stopped whether somebody, or a time limit, stopped it early: the front then depends on the machine
 * @param stalled whether it ended because the front stood still
 * @param started seconds since 1970
 * @param seconds the search took
 */
public record RunRecord(
        String program,
        String java,
        String study,
        String studyDigest,
        String catalogueDigest,
        String prefer,
        String reported,
        long seed,
        long budget,
        int threads,
        long evaluations,
        long feasible,
        long faults,
        int front,
        double found,
        boolean stopped,
        boolean stalled,
        long started,
        double seconds) {

    public String json() {
        return FrontJson.document(json -> {
            json.writeStringField("foamfront", program);
            json.writeStringField("java", java);
            json.writeStringField("study", study);
            json.writeStringField("study_sha256", studyDigest);
            json.writeStringField("catalogue_sha256", catalogueDigest);
            json.writeObjectFieldStart("settings");
            json.writeNumberField("seed", seed);
            json.writeNumberField("evaluations", budget);
            json.writeNumberField("threads", threads);
            if (!prefer.isEmpty()) {
                json.writeStringField("prefer", prefer);
            }
            if (!reported.isEmpty()) {
                json.writeStringField("report_narrowed_to", reported);
            }
            json.writeEndObject();
            json.writeObjectFieldStart("counts");
            json.writeNumberField("evaluations", evaluations);
            json.writeNumberField("feasible", feasible);
            json.writeNumberField("faults", faults);
            json.writeNumberField("front", front);
            FrontJson.number(json, "hypervolume", found);
            json.writeEndObject();
            json.writeBooleanField("stopped_early", stopped);
            json.writeBooleanField("stalled", stalled);
            json.writeBooleanField("reproducible", !stopped);
            json.writeObjectFieldStart("timings");
            json.writeNumberField("started_unix_seconds", started);
            FrontJson.number(json, "search_seconds", seconds);
            json.writeEndObject();
        });
    }
}
