package foamfront.optimizer.search;

import foamfront.model.design.Choice;
import foamfront.model.units.Numbers;
import foamfront.optimizer.search.Truth.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.stream.Collectors;

/**
 * Computes every design of the little trainer, stores the true front and writes what the search finds of it with a twentieth of the
 * evaluations. Started by {@code ./test --enumerate}.
 */
final class Enumeration {
    /** The search may try one design in this many. */
    static final int SHARE = 20;

    /** Of the true front's hypervolume. */
    static final double ENOUGH = 0.995;

    private static final String TITLE = "## Against the whole truth\n";

    private Enumeration() {}

    /** [seeds=20] [threads=2] [page=SEARCH.md] */
    public static void main(String[] arguments) throws IOException, InterruptedException, ExecutionException {
        Map<String, String> options = new TreeMap<>();
        for (String argument : arguments) {
            String[] pair = argument.split("=", 2);
            options.put(pair[0], pair.length > 1 ? pair[1] : "");
        }
        int seeds = Integer.parseInt(options.getOrDefault("seeds", "20"));
        int threads = Integer.parseInt(options.getOrDefault("threads", "2"));
        Path page = Path.of(options.getOrDefault("page", "SEARCH.md"));
        Truth truth = new Truth();
        if (!Truth.Stored.isOf(truth)) {
            Files.writeString(Truth.FRONT, truth.enumerate(threads));
        }
        String section = section(truth, new Truth.Stored(truth), seeds, threads);
        System.out.print(section);
        Files.writeString(page, replaced(Files.exists(page) ? Files.readString(page) : "", section));
    }

    /** A page with its section of this title written anew, at its end where there was none. */
    static String replaced(String page, String section) {
        int from = page.indexOf(TITLE);
        if (from < 0) {
            return page.stripTrailing() + "\n\n" + section;
        }
        int to = page.indexOf("\n## ", from);
        return page.substring(0, from) + section + (to < 0 ? "" : page.substring(to));
    }

    static Outcome search(Truth truth, long budget, long seed, int threads) {
        int population = truth.task().study().search().population();
        return Search.run(
                truth.problem(), new Settings(budget, seed, threads, population, 1000), Listener.NONE, () -> false);
    }

    private static String section(Truth truth, Truth.Stored stored, int seeds, int threads) {
        long budget = stored.designs / SHARE;
        double[][] whole = stored.costs();
        Benchmark scale = Benchmark.sampled("truth", truth.problem(), whole);
        double[][] kept = stored.kept(truth);
        StringBuilder rows = new StringBuilder();
        double worst = Double.MAX_VALUE;
        double sum = 0;
        int reached = 0;
        for (int seed = 1; seed <= seeds; seed++) {
            Outcome outcome = search(truth, budget, seed, threads);
            double ratio = ratio(scale, outcome);
            worst = Math.min(worst, ratio);
            sum += ratio;
            reached += ratio >= ENOUGH ? 1 : 0;
            rows.append(row(seed, ratio, stored.front, truth, outcome));
        }
        return TITLE
                + String.format(
                        Locale.ROOT,
                        """

            `little-trainer.yaml` (beside the tests) leaves so little open that `./test --enumerate` computes all its designs with the
            evaluator of every exploration: %,d distinct designs, %,d of them feasible, a true front of %,d. The search may try one
            design in %d (%,d, population %d, archive of 1000).

            Ratio: hypervolume of what it found over that of the true front, the front's box scaled to one, reference 1.1. Found: members
            of the true front that it holds or equals, by tail. Farthest: the member of the true front that it misses by most, and by
            which share of the box the nearest design found falls short of it in its worst objective (payload in kg and endurance in s
            with a minus, build cost in USD).

            The archive tells designs apart by what counts for a builder (payload 5 g, endurance 10 s, cost 0.10). Of the true front
            itself it keeps %d designs, a ratio of %.4f: about the most that a search with it can show, and why most of the members
            not found have a neighbour that was.

            Mean ratio %.4f, worst %.4f; at least %.3f in %d of %d seeds.

            """,
                        stored.designs,
                        stored.feasible,
                        whole.length,
                        SHARE,
                        budget,
                        truth.task().study().search().population(),
                        kept.length,
                        scale.score(kept) / 100,
                        sum / seeds,
                        worst,
                        ENOUGH,
                        reached,
                        seeds)
                + "| seed | ratio | found | farthest |\n| ---: | ---: | --- | --- |\n" + rows;
    }

    static double ratio(Benchmark scale, Outcome outcome) {
        return scale.score(costs(outcome)) / 100;
    }

    private static double[][] costs(Outcome outcome) {
        return outcome.front().stream()
                .map(member -> member.evaluation().objectives())
                .toArray(double[][]::new);
    }

    private static String row(int seed, double ratio, List<Point> front, Truth truth, Outcome outcome) {
        double[][] found = costs(outcome);
        Map<String, int[]> byTail = new TreeMap<>();
        double[] span = span(front);
        Point farthest = front.get(0);
        double most = -1;
        for (Point point : front) {
            int[] counts = byTail.computeIfAbsent(tail(truth, point), key -> new int[2]);
            counts[1]++;
            double miss = Double.MAX_VALUE;
            for (double[] costs : found) {
                double worst = 0;
                for (int i = 0; i < costs.length; i++) {
                    worst = Math.max(worst, (costs[i] - point.costs()[i]) / span[i]);
                }
                miss = Math.min(miss, worst);
            }
            counts[0] += miss == 0 ? 1 : 0;
            if (miss > most) {
                most = miss;
                farthest = point;
            }
        }
        StringBuilder words = new StringBuilder();
        byTail.forEach((tail, counts) -> words.append(words.isEmpty() ? "" : ", ")
                .append(tail)
                .append(' ')
                .append(counts[0])
                .append(" of ")
                .append(counts[1]));
        return String.format(
                Locale.ROOT,
                "| %d | %.4f | %s | %.3f: %s |%n",
                seed,
                ratio,
                words,
                most,
                Arrays.stream(farthest.costs())
                        .mapToObj(cost -> Numbers.significant(cost, 6))
                        .collect(Collectors.joining(", ", "[", "]")));
    }

    private static String tail(Truth truth, Point point) {
        Choice kind = truth.task()
                .genome()
                .decode(truth.values(point.design()))
                .tail()
                .kind();
        return kind.words();
    }

    private static double[] span(List<Point> front) {
        int objectives = front.get(0).costs().length;
        double[] span = new double[objectives];
        for (int i = 0; i < objectives; i++) {
            int objective = i;
            double least = front.stream()
                    .mapToDouble(point -> point.costs()[objective])
                    .min()
                    .orElseThrow();
            double most = front.stream()
                    .mapToDouble(point -> point.costs()[objective])
                    .max()
                    .orElseThrow();
            span[i] = most > least ? most - least : 1;
        }
        return span;
    }
}
