package foamfront.optimizer.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;

/**
 * The islands of a search and what they share: at the end of every epoch their archives are merged in island order and some
 * designs move on to the next island in the ring. The number of islands comes from the budget, so that threads change only
 * who computes, never what.
 */
final class Archipelago implements AutoCloseable {
    /** At most about this many epochs (merging and measuring cost a few milliseconds each). */
    private static final int EPOCHS = 100;

    private static final int SHORTEST_EPOCH = 10;

    /** One in this many survivors' worth of designs migrates (judgement). */
    private static final int MIGRANT_SHARE = 10;

    private final Settings settings;
    private final Schema schema;
    private final ExecutorService pool;
    private final List<Island> islands = new ArrayList<>();
    private final Archive merged;
    private final VolumeGauge gauge;
    private final List<Progress> history = new ArrayList<>();
    private final int niches;
    private final List<Double> resolution;
    private final long epoch;

    private long epochs;
    private boolean stopped;

    Archipelago(Problem problem, Settings settings) {
        this.settings = settings;
        int count = settings.islands();
        int perIsland = Math.max(1, settings.threads() / count);
        pool = Executors.newFixedThreadPool(
                Math.min(settings.threads(), count) + count * (perIsland - 1), Archipelago::daemon);
        schema = new Schema(problem);
        for (int k = 0; k < count; k++) {
            islands.add(new Island(problem, schema, settings, k, new Workers(problem, perIsland, pool)));
        }
        merged = new Archive(problem, settings.archiveCap());
        gauge = new VolumeGauge(problem.objectives());
        resolution = problem.resolution();
        niches = problem.niches().count();
        long generations = settings.islandBudget(0) / settings.islandPopulation();
        epoch = Math.max(SHORTEST_EPOCH, generations / EPOCHS);
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "search");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Goes on from the last state kept. Stopped in the middle of an epoch the islands stand at different generations: that is
     * what is kept, before anything is merged, so that the epoch can be finished later.
     */
    void run(Checkpoints checkpoints, Listener listener, BooleanSupplier stop) {
        String last = checkpoints.last();
        if (last == null) {
            checkpoints.offer(this::state, true);
        } else {
            exchange(new Player(last, schema));
            islands.forEach(Island::checkProblem);
        }
        while (!isFinished() && !stopped) {
            advance(stop);
            if (!islands.stream().allMatch(island -> island.hasReached(end()))) {
                stopped = true;
                checkpoints.offer(this::state, true);
                merge();
                return;
            }
            merge();
            epochs++;
            migrate();
            Progress progress = measure();
            history.add(progress);
            listener.progress(progress);
            stopped = stop.getAsBoolean() && !isFinished();
            checkpoints.offer(this::state, stopped || isFinished());
        }
    }

    private boolean isFinished() {
        return islands.stream().allMatch(Island::isFinished) || isStalled();
    }

    private boolean isStalled() {
        return Stall.isReached(history, settings.stall());
    }

    /** The generation at which the epoch under way ends. */
    private long end() {
        return 1 + (epochs + 1) * epoch;
    }

    private void advance(BooleanSupplier stop) {
        long end = end();
        List<Future<?>> running = new ArrayList<>();
        for (Island island : islands) {
            running.add(pool.submit(() -> island.advance(end, stop)));
        }
        running.forEach(Workers::await);
    }

    private void merge() {
        islands.forEach(island -> merged.takeArrivals(island.archive()));
    }

    private String state() {
        Recorder recorder = new Recorder();
        exchange(recorder);
        return recorder.text();
    }

    private void exchange(Tape tape) {
        epochs = tape.whole("epochs", epochs);
        islands.forEach(island -> island.exchange(tape));
        merged.exchange(tape);
        gauge.exchange(tape);
        List<double[]> rows =
                tape.rows("history", history.stream().map(Progress::row).toList());
        history.clear();
        rows.forEach(row -> history.add(Progress.of(row)));
    }

    private void migrate() {
        if (islands.size() == 1) {
            return;
        }
        int count = Math.max(1, settings.islandPopulation() / MIGRANT_SHARE);
        List<List<Fitness>> leaving =
                islands.stream().map(island -> island.emigrants(count)).toList();
        for (int k = 0; k < islands.size(); k++) {
            islands.get((k + 1) % islands.size()).receive(leaving.get(k));
        }
    }

    private Progress measure() {
        List<Fitness> front = merged.front();
        long evaluations = evaluations();
        gauge.read(merged, front, feasible());
        return new Progress(
                evaluations,
                settings.evaluations(),
                front.size(),
                gauge.volume(),
                evaluations == 0 ? 0 : (double) feasible() / evaluations);
    }

    private long evaluations() {
        return islands.stream()
                .mapToLong(island -> island.appraiser().evaluations())
                .sum();
    }

    private long feasible() {
        return islands.stream()
                .mapToLong(island -> island.appraiser().feasible())
                .sum();
    }

    Outcome outcome() {
        List<List<Member>> nicheFronts = new ArrayList<>();
        for (int niche = 0; niche < niches; niche++) {
            nicheFronts.add(members(merged.front(niche)));
        }
        List<Member> front = members(refiled());
        return new Outcome(
                front,
                nicheFronts,
                front.isEmpty() ? members(merged.nearest()) : List.of(),
                evaluations(),
                feasible(),
                stopped,
                isStalled(),
                islands.stream()
                        .flatMap(island -> island.appraiser().faults().stream())
                        .toList(),
                islands.stream()
                        .mapToLong(island -> island.appraiser().faultCount())
                        .sum(),
                history);
    }

    /**
     * The merged front with what the last populations add to it, filed by the problem's own resolution: where the archive's boxes
     * have doubled, the evenly thinned populations fill its gaps.
     */
    private List<Fitness> refiled() {
        EpsilonArchive front = new EpsilonArchive(resolution, Integer.MAX_VALUE);
        merged.front().forEach(front::offer);
        islands.forEach(island -> island.feasible().forEach(front::offer));
        return front.members();
    }

    private static List<Member> members(List<Fitness> designs) {
        return designs.stream()
                .map(fitness -> new Member(fitness.design(), fitness.evaluation()))
                .toList();
    }

    @Override
    public void close() {
        pool.shutdownNow();
    }
}
