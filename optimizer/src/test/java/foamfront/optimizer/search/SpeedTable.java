package foamfront.optimizer.search;

import foamfront.optimizer.explore.StudyProblems;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Locale;

/**
 * How fast the search is, by processor time, so that whatever else the machine does matters little. Started by
 * {@code ./test --speed}, which gives it the heap that ten million evaluations must fit into.
 */
final class SpeedTable {
    private static final String STUDY = "school-trainer";
    /** The compiler still works on the search well after the first hundred thousand designs. */
    private static final long WARM_UP = 300_000;

    private static final long BUDGET = 60_000;
    private static final int REPEATS = 3;
    private static final double NANO = 1e-9;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Problem problem = StudyProblems.of(STUDY);

    private SpeedTable() {}

    /** [budget=60000]: evaluations of a search; a third and four times as many are tried as well. */
    public static void main(String[] arguments) {
        long budget = arguments.length == 0 ? BUDGET : Long.parseLong(arguments[0].replace("budget=", ""));
        new SpeedTable().print(budget);
    }

    /**
     * One search.
     *
     * @param seconds processor time of all threads, with compiler and collector
     * @param serial processor time of the thread that merges islands and measures the front
     * @param wall time on the wall clock, s
     */
    private record Cost(Outcome outcome, double seconds, double serial, double wall) {
        double each() {
            return 1e6 * seconds / outcome.evaluations();
        }
    }

    private Cost search(long budget, int population, int threads) {
        long cpu = processCpu();
        long serial = THREADS.getCurrentThreadCpuTime();
        long wall = System.nanoTime();
        Outcome outcome =
                Search.run(problem, new Settings(budget, 1, threads, population, 1000), Listener.NONE, () -> false);
        return new Cost(
                outcome,
                NANO * (processCpu() - cpu),
                NANO * (THREADS.getCurrentThreadCpuTime() - serial),
                NANO * (System.nanoTime() - wall));
    }

    private static long processCpu() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private void print(long budget) {
        search(WARM_UP, 200, 1);
        Cost plain = search(budget, 200, 1);
        row("feasible designs scored, per second of one core", appraisals(plain.outcome.front()), "20 000");
        row("designs through the search, population 200, per second of one core", 1e6 / plain.each(), "12 000");
        double one = 0;
        double two = 0;
        double serial = 0;
        double all = 0;
        double compiler = compiler();
        double collector = collector();
        for (int k = 0; k < REPEATS; k++) {
            one += search(budget, 200, 1).wall;
            Cost cost = search(budget, 200, 2);
            two += cost.wall;
            serial += cost.serial;
            all += cost.seconds;
        }
        row("two threads against one, wall clock, beside whatever else runs", one / two, "1.7");
        row("share of processor time that merges and measures, on one thread only", serial / all, "");
        row(
                "seconds of the compiler in those " + 2 * REPEATS + " searches (wall clock " + Math.rint(one + two)
                        + " s)",
                compiler() - compiler,
                "");
        row("seconds of the collector in them", collector() - collector, "");
        row("two threads against one, were that share all that is lost", all / (serial + (all - serial) / 2), "");
        Cost few = search(budget / 3, 200, 1);
        Cost many = search(4 * budget, 200, 1);
        row("microseconds each, " + budget / 3 + " designs", few.each(), "");
        row("microseconds each, " + budget + " designs", plain.each(), "");
        row("microseconds each, " + 4 * budget + " designs", many.each(), "the same");
        row(
                "microseconds each, " + budget + " designs, population 1000",
                search(budget, 1000, 1).each(),
                "the same");
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        row("heap in use after them, MB", (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0, "");
        row("heap at most, MB", runtime.maxMemory() / 1048576.0, "256");
    }

    private static double compiler() {
        return 1e-3 * ManagementFactory.getCompilationMXBean().getTotalCompilationTime();
    }

    private static double collector() {
        return 1e-3
                * ManagementFactory.getGarbageCollectorMXBeans().stream()
                        .mapToLong(GarbageCollectorMXBean::getCollectionTime)
                        .sum();
    }

    private double appraisals(List<Member> front) {
        Evaluator evaluator = problem.evaluators().get();
        int rounds = Math.max(1, 20_000 / front.size());
        long start = 0;
        double sum = 0;
        for (int round = -rounds; round < rounds; round++) {
            if (round == 0) {
                start = THREADS.getCurrentThreadCpuTime();
            }
            for (Member member : front) {
                sum += evaluator.evaluate(member.values()).violation();
            }
        }
        if (sum != 0) {
            throw new IllegalStateException("a front holds infeasible designs");
        }
        return rounds * (double) front.size() / (NANO * (THREADS.getCurrentThreadCpuTime() - start));
    }

    private static void row(String what, double value, String must) {
        System.out.println(String.format(
                Locale.ROOT, "| %s | %s | %s |", what, foamfront.model.units.Numbers.significant(value, 4), must));
    }
}
