package foamfront.optimizer.search;

import foamfront.model.units.Numbers;
import foamfront.optimizer.explore.StudyProblems;
import foamfront.optimizer.explore.Task;
import foamfront.optimizer.genome.GridSteps;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Every design of a study that leaves little open, numbered: its true front is found by computing them all, with the evaluator of
 * every exploration. Stored as a table whose head says what it was computed from.
 */
final class Truth {
    private static final Path FOLDER = Path.of("src/test/resources/foamfront/optimizer/search");
    static final Path STUDY = FOLDER.resolve("little-trainer.yaml");
    static final Path FRONT = FOLDER.resolve("little-trainer-front.csv");

    /** Designs whose scores together are the fingerprint of the computation. */
    private static final int SAMPLE = 2000;

    private final Task task = StudyProblems.task(STUDY);
    private final Problem problem = StudyProblems.of(task);
    private final int[] steps = GridSteps.of(task.genome());
    private final int total = Arrays.stream(steps).reduce(1, Math::multiplyExact);

    /** One design of the true front. */
    static final class Point {
        private final int design;
        private final double[] costs;

        Point(int design, double[] costs) {
            this.design = design;
            this.costs = costs;
        }

        int design() {
            return design;
        }

        double[] costs() {
            return costs;
        }
    }

    /** What computing a stretch of all designs gave. */
    private record Part(long distinct, long feasible, List<Point> front) {}

    Problem problem() {
        return problem;
    }

    Task task() {
        return task;
    }

    /** The decoded values of a design by its number. */
    double[] values(int design) {
        double[] values = new double[steps.length];
        int rest = design;
        for (int i = steps.length - 1; i >= 0; i--) {
            int step = rest % steps[i];
            rest /= steps[i];
            boolean real = problem.variables().get(i).levels() == 0;
            values[i] = real
                    ? (double) step / Math.max(1, steps[i] - 1)
                    : problem.variables().get(i).lowest() + step;
        }
        return values;
    }

    /** Computes everything; gives the table. */
    String enumerate(int threads) throws InterruptedException, ExecutionException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<Part>> running = new ArrayList<>();
            int parts = 64;
            for (int k = 0; k < parts; k++) {
                int from = (int) ((long) k * total / parts);
                int to = (int) ((k + 1L) * total / parts);
                running.add(pool.submit(() -> part(from, to)));
            }
            long distinct = 0;
            long feasible = 0;
            List<Point> front = new ArrayList<>();
            for (Future<Part> future : running) {
                Part part = future.get();
                distinct += part.distinct;
                feasible += part.feasible;
                part.front.forEach(point -> offer(front, point));
            }
            return table(distinct, feasible, front);
        } finally {
            pool.shutdownNow();
        }
    }

    private Part part(int from, int to) {
        Evaluator evaluator = problem.evaluators().get();
        long distinct = 0;
        long feasible = 0;
        List<Point> front = new ArrayList<>();
        for (int design = from; design < to; design++) {
            double[] values = values(design);
            // What another number stands for too is computed once.
            if (Arrays.equals(values, problem.canonical().apply(values.clone()))) {
                distinct++;
                Evaluation evaluation = evaluator.evaluate(values);
                if (evaluation.isFeasible()) {
                    feasible++;
                    offer(front, new Point(design, evaluation.objectives()));
                }
            }
        }
        return new Part(distinct, feasible, front);
    }

    /** Of equals the first stays. */
    private static void offer(List<Point> front, Point point) {
        for (Point other : front) {
            if (NaiveFront.dominates(other.costs, point.costs) || Arrays.equals(other.costs, point.costs)) {
                return;
            }
        }
        front.removeIf(other -> NaiveFront.dominates(point.costs, other.costs));
        front.add(point);
    }

    private String table(long distinct, long feasible, List<Point> front) {
        StringBuilder text = new StringBuilder("# The true front of " + STUDY.getFileName()
                + ": every design computed. Written by ./test --enumerate; objectives as the search minimises them, SI.\n"
                + "# designs " + distinct + "\n# feasible " + feasible + "\n# study "
                + task.study().digest()
                + "\n# model " + modelDigest() + "\ndesign");
        task.study().aims().forEach(aim -> text.append(',').append(aim.measure().words()));
        text.append('\n');
        for (Point point : front) {
            text.append(point.design);
            for (double cost : point.costs) {
                text.append(',').append(Numbers.significant(cost, Numbers.DIGITS));
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** The scores of designs spread over all, feasible or not, as one fingerprint: a change of the model that matters here shows. */
    String modelDigest() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            Evaluator evaluator = problem.evaluators().get();
            for (int k = 0; k < SAMPLE; k++) {
                // A stride prime to the total reaches all values of all variables.
                int design = BigInteger.valueOf(k)
                        .multiply(BigInteger.valueOf(1_000_003))
                        .mod(BigInteger.valueOf(total))
                        .intValue();
                Evaluation score = evaluator.evaluate(problem.canonical().apply(values(design)));
                digest.update(bytes(score.violation()));
                for (int i = 0; i < problem.objectives() && score.isFeasible(); i++) {
                    digest.update(bytes(score.objective(i)));
                }
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static byte[] bytes(double value) {
        return ByteBuffer.allocate(Double.BYTES).putDouble(value).array();
    }

    /** The stored table, its points computed again. */
    static final class Stored {
        final long designs;
        final long feasible;
        final String study;
        final String model;
        final List<Point> front = new ArrayList<>();
        final List<double[]> written = new ArrayList<>();

        Stored(Truth truth) throws IOException {
            List<String> lines = Files.readAllLines(FRONT);
            designs = Long.parseLong(head(lines, "designs"));
            feasible = Long.parseLong(head(lines, "feasible"));
            study = head(lines, "study");
            model = head(lines, "model");
            Evaluator evaluator = truth.problem.evaluators().get();
            for (String line : lines) {
                if (Character.isDigit(line.charAt(0))) {
                    String[] cells = line.split(",", -1);
                    int design = Integer.parseInt(cells[0]);
                    written.add(Arrays.stream(cells)
                            .skip(1)
                            .mapToDouble(Double::parseDouble)
                            .toArray());
                    front.add(new Point(
                            design, evaluator.evaluate(truth.values(design)).objectives()));
                }
            }
        }

        /** Whether there is a table, of this study and model. */
        static boolean isOf(Truth truth) throws IOException {
            if (!Files.exists(FRONT)) {
                return false;
            }
            List<String> lines = Files.readAllLines(FRONT);
            return head(lines, "study").equals(truth.task.study().digest())
                    && head(lines, "model").equals(truth.modelDigest());
        }

        private static String head(List<String> lines, String key) {
            String start = "# " + key + " ";
            return lines.stream()
                    .filter(line -> line.startsWith(start))
                    .findFirst()
                    .orElseThrow()
                    .substring(start.length());
        }

        /** What an archive of the study's resolution keeps of the true front. */
        double[][] kept(Truth truth) {
            Schema schema = new Schema(truth.problem);
            EpsilonArchive archive = new EpsilonArchive(truth.problem.resolution(), Integer.MAX_VALUE);
            for (Point point : front) {
                double[] genes = truth.task.genome().genes(truth.values(point.design));
                archive.offer(new Fitness(schema.design(genes, Operator.START), Evaluation.feasible(point.costs)));
            }
            return archive.members().stream().map(Fitness::objectives).toArray(double[][]::new);
        }

        double[][] costs() {
            return front.stream().map(Point::costs).toArray(double[][]::new);
        }
    }
}
