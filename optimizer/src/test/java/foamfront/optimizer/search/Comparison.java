package foamfront.optimizer.search;

import foamfront.optimizer.explore.StudyProblems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Our search beside the MOEA Framework's algorithms on published problems and on the shipped studies: the same evaluator, budget
 * and seeds. Started by {@code ./test --compare}; writes a table in Markdown.
 */
final class Comparison {
    private static final int MEMBERS = 100;

    private final int seeds;
    private final int first;
    private final int population;
    private final long budget;
    private final List<String> algorithms;
    private final Map<String, Long> nanos = new LinkedHashMap<>();

    private Comparison(Map<String, String> options, List<String> algorithms) {
        seeds = number(options, "seeds", 5);
        first = number(options, "first", 1);
        population = number(options, "population", MEMBERS);
        budget = number(options, "evaluations", 25_000);
        this.algorithms = algorithms;
    }

    /**
     * seeds=5 first=1 population=100 evaluations=25000 problems=ZDT1,UF5 algorithms=ours,NSGAII out=FILE, each with a default;
     * first is the first seed and population that of our search alone; {@code problems=unseen} takes {@link FrameworkProblems#UNSEEN}.
     */
    public static void main(String[] arguments) throws IOException {
        Map<String, String> options = new LinkedHashMap<>();
        for (String argument : arguments) {
            String[] pair = argument.split("=", 2);
            options.put(pair[0], pair.length > 1 ? pair[1] : "");
        }
        List<String> all = new ArrayList<>(List.of("ours"));
        all.addAll(Framework.ALGORITHMS);
        List<String> algorithms = list(options, "algorithms", all);
        List<String> problems = "unseen".equals(options.get("problems"))
                ? FrameworkProblems.UNSEEN
                : list(options, "problems", new ArrayList<>(problems().keySet()));
        Path out = Path.of(options.getOrDefault("out", "target/search.md"));
        Files.writeString(out, new Comparison(options, algorithms).table(problems));
    }

    private static int number(Map<String, String> options, String key, int otherwise) {
        String stated = options.get(key);
        return stated == null ? otherwise : Integer.parseInt(stated);
    }

    private static List<String> list(Map<String, String> options, String key, List<String> all) {
        return options.containsKey(key) ? List.of(options.get(key).split(",")) : all;
    }

    /** By name; a problem of an unknown front is a plain {@link Problem}. */
    private static Map<String, Supplier<Object>> problems() {
        Map<String, Supplier<Object>> result = new LinkedHashMap<>();
        for (Benchmark known : List.of(
                Benchmark.zdt1(),
                Benchmark.zdt2(),
                Benchmark.zdt3(),
                Benchmark.zdt4(),
                Benchmark.zdt6(),
                Benchmark.dtlz1(),
                Benchmark.dtlz2(),
                Benchmark.dtlz3(),
                Benchmark.dtlz7(),
                Benchmark.srn(),
                Benchmark.tnk(),
                Benchmark.c1dtlz1())) {
            result.put(known.name(), () -> known);
        }
        result.put("CRE22-beam", Engineering::beam);
        result.put("CRE23-brake", Engineering::brake);
        result.put("CRE24-reducer", Engineering::reducer);
        result.put("RE34-vehicle", Engineering::vehicle);
        result.put("CRE25-gears", Engineering::gears);
        result.put("VESSEL-mixed", Engineering::vessel);
        result.put("8-categories", Benchmark::eightCategories);
        for (int k = 1; k <= 10; k++) {
            String name = "UF" + k;
            result.put(name, () -> Cec2009.of(name));
        }
        for (int k = 1; k <= 10; k++) {
            String name = "CF" + k;
            result.put(name, () -> Cec2009.of(name));
        }
        FrameworkProblems.UNSEEN.forEach(name -> result.put(name, () -> FrameworkProblems.fine(name)));
        StudyProblems.names().forEach(study -> result.put(study, () -> StudyProblems.of(study)));
        return result;
    }

    private String table(List<String> names) {
        StringBuilder text = new StringBuilder("| problem | " + String.join(" | ", algorithms) + " |\n| ---"
                + " | ---:".repeat(algorithms.size()) + " |\n");
        for (String name : names) {
            Supplier<Object> problem = problems().get(name);
            if (problem == null) {
                throw new IllegalArgumentException(
                        "no problem " + name + "; there are " + problems().keySet());
            }
            String row = row(name, problem.get());
            System.out.print(row);
            text.append(row);
        }
        text.append("| microseconds per evaluation |");
        for (String algorithm : algorithms) {
            double total = names.size() * (double) seeds * budget;
            text.append(format(" %.1f |", nanos.getOrDefault(algorithm, 0L) / 1e3 / total));
        }
        return text.append('\n').toString();
    }

    /** Mean score of each algorithm over the seeds, and after a stroke its worst. */
    private String row(String name, Object subject) {
        Problem problem = subject instanceof Benchmark known ? known.problem() : (Problem) subject;
        double[][][][] fronts = new double[algorithms.size()][seeds][][];
        for (int seed = 0; seed < seeds; seed++) {
            for (int a = 0; a < algorithms.size(); a++) {
                fronts[a][seed] = front(algorithms.get(a), problem, first + seed);
            }
        }
        double[][] union = Arrays.stream(fronts)
                .flatMap(Arrays::stream)
                .flatMap(Arrays::stream)
                .toArray(double[][]::new);
        StringBuilder text = new StringBuilder("| " + name + " |");
        if (union.length == 0) {
            return text.append(" none feasible |").append('\n').toString();
        }
        Benchmark scale = subject instanceof Benchmark known ? known : Benchmark.sampled(name, problem, union);
        for (double[][][] ofSeed : fronts) {
            double[] scores = Arrays.stream(ofSeed).mapToDouble(scale::score).toArray();
            text.append(format(
                    " %.2f / %.2f |",
                    Arrays.stream(scores).average().orElseThrow(),
                    Arrays.stream(scores).min().orElseThrow()));
        }
        return text.append('\n').toString();
    }

    private double[][] front(String algorithm, Problem problem, long seed) {
        long start = System.nanoTime();
        double[][] front =
                algorithm.equals("ours") ? ours(problem, seed) : Framework.run(algorithm, problem, budget, seed);
        nanos.merge(algorithm, System.nanoTime() - start, Long::sum);
        return Benchmark.thinned(front, MEMBERS);
    }

    private double[][] ours(Problem problem, long seed) {
        Settings settings = new Settings(budget, seed, 1, population, 1000);
        return Search.run(problem, settings, Listener.NONE, () -> false).front().stream()
                .map(member -> member.evaluation().objectives())
                .toArray(double[][]::new);
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
