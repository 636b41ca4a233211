package foamfront.optimizer.search;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** A published problem with its exact front's box and dominated volume. */
final class Benchmark {
    private final String name;
    private final Problem problem;
    private final double[] ideal;
    private final double[] nadir;
    private final double volume;

    /** @param volume dominated by the exact front up to 1.1 in each objective, with the box scaled to the unit box */
    private Benchmark(String name, Problem problem, double[] ideal, double[] nadir, double volume) {
        this.name = name;
        this.problem = problem;
        this.ideal = ideal;
        this.nadir = nadir;
        this.volume = volume;
    }

    String name() {
        return name;
    }

    Problem problem() {
        return problem;
    }

    @Override
    public String toString() {
        return name;
    }

    /**
     * ZDT: Zitzler, Deb, Thiele, Comparison of multiobjective evolutionary algorithms: empirical results, Evolutionary
     * Computation 8(2) (2000) 173-195.
     */
    static Benchmark zdt1() {
        return zdt("ZDT1", 30, 1.21 - 1.0 / 3, x -> {
            double g = 1 + 9 * mean(x);
            return Evaluation.feasible(x[0], g * (1 - Math.sqrt(x[0] / g)));
        });
    }

    static Benchmark zdt2() {
        return zdt("ZDT2", 30, 1.21 - 2.0 / 3, x -> {
            double g = 1 + 9 * mean(x);
            return Evaluation.feasible(x[0], g * (1 - x[0] / g * (x[0] / g)));
        });
    }

    static Benchmark zdt3() {
        Evaluator evaluator = x -> {
            double g = 1 + 9 * mean(x);
            double r = x[0] / g;
            return Evaluation.feasible(x[0], g * (1 - Math.sqrt(r) - r * StrictMath.sin(10 * Math.PI * x[0])));
        };
        return new Benchmark(
                "ZDT3", reals(30, 2, evaluator), new double[] {0, -0.773369}, new double[] {0.851833, 1}, 0.727452);
    }

    /** Its other variables run from -5 to 5, with the optimum at 0, inside. */
    static Benchmark zdt4() {
        return zdt("ZDT4", 10, 1.21 - 1.0 / 3, x -> {
            double g = 1 + 10 * (x.length - 1);
            for (int i = 1; i < x.length; i++) {
                double y = 10 * x[i] - 5;
                g += y * y - 10 * StrictMath.cos(4 * Math.PI * y);
            }
            return Evaluation.feasible(x[0], g * (1 - Math.sqrt(x[0] / g)));
        });
    }

    static Benchmark zdt6() {
        Evaluator evaluator = x -> {
            double sine = StrictMath.sin(6 * Math.PI * x[0]);
            double f = 1 - StrictMath.exp(-4 * x[0]) * sine * sine * sine * sine * sine * sine;
            double g = 1 + 9 * Math.sqrt(Math.sqrt(mean(x)));
            return Evaluation.feasible(f, g * (1 - f / g * (f / g)));
        };
        double a = 0.2807753191;
        double height = 1 - a * a;
        // Below f2 = 1 - f1², f1 from a to 1, plus the margins of a tenth of the box on either side.
        double under = (1 - a) - (1 - a * a * a) / 3;
        double volume = (1.1 * (1 - a) * 1.1 * height - under) / ((1 - a) * height);
        return new Benchmark("ZDT6", reals(10, 2, evaluator), new double[] {a, 0}, new double[] {1, height}, volume);
    }

    /**
     * DTLZ: Deb, Thiele, Laumanns, Zitzler, Scalable multi-objective optimization test problems, IEEE CEC 2002; three objectives.
     */
    static Benchmark dtlz1() {
        return new Benchmark(
                "DTLZ1",
                reals(7, 3, x -> Evaluation.feasible(linear(x))),
                new double[3],
                new double[] {0.5, 0.5, 0.5},
                1.331 - 1.0 / 6);
    }

    static Benchmark dtlz2() {
        return sphere("DTLZ2", 12, x -> {
            double g = 0;
            for (int i = 2; i < x.length; i++) {
                g += (x[i] - 0.5) * (x[i] - 0.5);
            }
            return round(x, g);
        });
    }

    static Benchmark dtlz3() {
        return sphere("DTLZ3", 12, x -> round(x, rastrigin(x)));
    }

    static Benchmark dtlz7() {
        Evaluator evaluator = x -> {
            double sum = 0;
            for (int i = 2; i < x.length; i++) {
                sum += x[i];
            }
            double g = 1 + 9 * sum / (x.length - 2);
            double h = 3;
            for (int i = 0; i < 2; i++) {
                h -= x[i] / (1 + g) * (1 + StrictMath.sin(3 * Math.PI * x[i]));
            }
            return Evaluation.feasible(x[0], x[1], (1 + g) * h);
        };
        double[] nadir = {0.8594008516, 0.8594008516, 6};
        double[] ideal = {0, 0, 2.6140136};
        return new Benchmark("DTLZ7", reals(22, 3, evaluator), ideal, nadir, dtlz7Volume(ideal, nadir));
    }

    /** Numerically, on a fine grid of the first two objectives; the front has g = 1. */
    private static double dtlz7Volume(double[] ideal, double[] nadir) {
        int n = 1100;
        double step = 1.1 / n;
        double[][] lowest = new double[n + 1][n + 1];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double a = (i + 0.5) * step * nadir[0];
                double b = (j + 0.5) * step * nadir[1];
                double f = 6;
                f -= a * (1 + StrictMath.sin(3 * Math.PI * a)) + b * (1 + StrictMath.sin(3 * Math.PI * b));
                double scaled = (f - ideal[2]) / (nadir[2] - ideal[2]);
                double here = a <= 1 && b <= 1 ? scaled : 9;
                double before = Math.min(i > 0 ? lowest[i - 1][j] : 9, j > 0 ? lowest[i][j - 1] : 9);
                lowest[i][j] = Math.min(here, before);
                sum += Math.max(0, 1.1 - lowest[i][j]) * step * step;
            }
        }
        return sum;
    }

    /** SRN: Srinivas and Deb 1994, as given by Deb, Multi-objective optimization using evolutionary algorithms, 2001. */
    static Benchmark srn() {
        Evaluator evaluator = v -> {
            double x = 40 * v[0] - 20;
            double y = 40 * v[1] - 20;
            double violation = Math.max(0, (x * x + y * y - 225) / 225) + Math.max(0, (x - 3 * y + 10) / 10);
            return Evaluation.of(violation, 2 + (x - 2) * (x - 2) + (y - 1) * (y - 1), 9 * x - (y - 1) * (y - 1));
        };
        // Candidates (derived): along the line constraint, along x = -2.5 where the gradients are opposed, along the
        // circle.
        int n = 20_000;
        double[][] front = IntStream.range(0, 3 * n)
                .mapToObj(k -> candidate(k / n, (k % n + 0.5) / n))
                .filter(p -> p[0] * p[0] + p[1] * p[1] <= 225 + 1e-9 && p[0] - 3 * p[1] + 10 <= 1e-9)
                .map(p -> new double[] {
                    2 + (p[0] - 2) * (p[0] - 2) + (p[1] - 1) * (p[1] - 1), 9 * p[0] - (p[1] - 1) * (p[1] - 1)
                })
                .toArray(double[][]::new);
        return sampled("SRN", reals(2, 2, evaluator), front);
    }

    private static double[] candidate(int curve, double t) {
        return switch (curve) {
            case 0 -> new double[] {3 * (20 * t - 10) - 10, 20 * t - 10};
            case 1 -> new double[] {-2.5, 20 * t};
            default -> new double[] {15 * StrictMath.cos(2 * Math.PI * t), 15 * StrictMath.sin(2 * Math.PI * t)};
        };
    }

    /** TNK: Tanaka and others 1995, as given by Deb 2001. */
    static Benchmark tnk() {
        Evaluator evaluator = v -> {
            double x = Math.PI * v[0];
            double y = Math.PI * v[1];
            double wave = 1 + 0.1 * StrictMath.cos(16 * StrictMath.atan2(x, y));
            double ring = Math.max(0, wave - x * x - y * y);
            double disc = Math.max(0, (x - 0.5) * (x - 0.5) + (y - 0.5) * (y - 0.5) - 0.5) / 0.5;
            return Evaluation.of(ring + disc, x, y);
        };
        int n = 200_000;
        double[][] rim = IntStream.rangeClosed(0, n)
                .mapToObj(k -> k * (Math.PI / 2) / n)
                .map(angle -> {
                    double r = Math.sqrt(1 + 0.1 * StrictMath.cos(16 * angle));
                    return new double[] {r * StrictMath.sin(angle), r * StrictMath.cos(angle)};
                })
                .filter(p -> (p[0] - 0.5) * (p[0] - 0.5) + (p[1] - 0.5) * (p[1] - 0.5) <= 0.5 + 1e-12)
                .toArray(double[][]::new);
        return sampled("TNK", reals(2, 2, evaluator), rim);
    }

    /** C1-DTLZ1: Jain and Deb, IEEE Transactions on Evolutionary Computation 18(4) (2014) 602-622. */
    static Benchmark c1dtlz1() {
        Evaluator evaluator = x -> {
            double[] f = linear(x);
            return Evaluation.of(Math.max(0, f[2] / 0.6 + f[0] / 0.5 + f[1] / 0.5 - 1), f);
        };
        return new Benchmark(
                "C1-DTLZ1", reals(7, 3, evaluator), new double[3], new double[] {0.5, 0.5, 0.5}, 1.331 - 1.0 / 6);
    }

    /**
     * Of our own making: eight categories, each with its own optimum of 10 inner variables and its own eighth of the front f2 = 1
     * - sqrt(f1); elsewhere a category lies a quarter above it.
     */
    static Benchmark eightCategories() {
        Evaluator evaluator = x -> {
            int category = (int) x[0];
            double f = x[1];
            double g = 0;
            for (int i = 2; i < x.length; i++) {
                double off = x[i] - (0.1 + 0.1 * ((category * 3 + i) % 9));
                g += off * off;
            }
            double outside = Math.max(0, Math.max(category / 8.0 - f, f - (category + 1) / 8.0));
            return Evaluation.feasible(f + g, 1 - Math.sqrt(f) + g + Math.min(0.25, 2 * outside));
        };
        List<Variable> variables =
                new java.util.ArrayList<>(reals(12, 2, evaluator).variables());
        variables.set(0, new Variable.Category("kind", 8));
        Problem problem = new Problem(
                variables,
                List.of(1e-3, 1e-3),
                () -> evaluator,
                new Problem.Niches(8, values -> (int) values[0]),
                values -> values,
                List.of());
        return new Benchmark("8 categories", problem, new double[] {0, 0}, new double[] {1, 1}, 1.21 - 1.0 / 3);
    }

    private static double[] linear(double[] x) {
        double g = rastrigin(x);
        return new double[] {0.5 * x[0] * x[1] * (1 + g), 0.5 * x[0] * (1 - x[1]) * (1 + g), 0.5 * (1 - x[0]) * (1 + g)
        };
    }

    private static double rastrigin(double[] x) {
        double sum = x.length - 2;
        for (int i = 2; i < x.length; i++) {
            double y = x[i] - 0.5;
            sum += y * y - StrictMath.cos(20 * Math.PI * y);
        }
        return 100 * sum;
    }

    private static Evaluation round(double[] x, double g) {
        double a = 0.5 * Math.PI * x[0];
        double b = 0.5 * Math.PI * x[1];
        return Evaluation.feasible(
                (1 + g) * StrictMath.cos(a) * StrictMath.cos(b),
                (1 + g) * StrictMath.cos(a) * StrictMath.sin(b),
                (1 + g) * StrictMath.sin(a));
    }

    private static double mean(double[] x) {
        double sum = 0;
        for (int i = 1; i < x.length; i++) {
            sum += x[i];
        }
        return sum / (x.length - 1);
    }

    private static Benchmark zdt(String name, int variables, double volume, Evaluator evaluator) {
        return new Benchmark(name, reals(variables, 2, evaluator), new double[2], new double[] {1, 1}, volume);
    }

    private static Benchmark sphere(String name, int variables, Evaluator evaluator) {
        return new Benchmark(
                name, reals(variables, 3, evaluator), new double[3], new double[] {1, 1, 1}, 1.331 - Math.PI / 6);
    }

    /** With the front and its box known from points on it, or from the best that anybody found. */
    static Benchmark sampled(String name, Problem problem, double[][] points) {
        double[][] front = points[0].length == 2 ? NaiveFront.of(points) : nondominated(points);
        double[] ideal = front[0].clone();
        double[] nadir = front[0].clone();
        for (double[] point : front) {
            for (int i = 0; i < ideal.length; i++) {
                ideal[i] = Math.min(ideal[i], point[i]);
                nadir[i] = Math.max(nadir[i], point[i]);
            }
        }
        Benchmark box = new Benchmark(name, problem, ideal, nadir, 1);
        return new Benchmark(name, problem, ideal, nadir, box.scaledVolume(front));
    }

    private static double[][] nondominated(double[][] points) {
        int[] members = IntStream.range(0, points.length).toArray();
        int[] ranks = new int[points.length];
        new FastSort().rank(members, members.length, points, ranks);
        return IntStream.range(0, points.length)
                .filter(k -> ranks[k] == 0)
                .mapToObj(k -> points[k])
                .toArray(double[][]::new);
    }

    static Problem reals(int variables, int objectives, Evaluator evaluator) {
        List<Variable> named = IntStream.range(0, variables)
                .<Variable>mapToObj(i -> new Variable.Real("x" + i))
                .toList();
        return new Problem(named, Collections.nCopies(objectives, objectives == 2 ? 1e-3 : 1e-2), () -> evaluator);
    }

    /** Per cent of the exact volume that a front dominates. */
    double score(double[][] front) {
        return 100 * scaledVolume(front) / volume;
    }

    /** The same after thinning the front to this many members. */
    double score(List<Member> front, int thinnedTo) {
        return score(thinned(
                front.stream().map(member -> member.evaluation().objectives()).toArray(double[][]::new), thinnedTo));
    }

    static double[][] thinned(double[][] points, int keep) {
        int[] members = IntStream.range(0, points.length).toArray();
        new Thinning().thin(members, members.length, points, keep);
        return IntStream.range(0, Math.min(points.length, keep))
                .mapToObj(k -> points[members[k]])
                .toArray(double[][]::new);
    }

    private double scaledVolume(double[][] front) {
        double[][] scaled = new double[front.length][ideal.length];
        double[] reference = new double[ideal.length];
        java.util.Arrays.fill(reference, 1.1);
        for (int k = 0; k < front.length; k++) {
            for (int i = 0; i < ideal.length; i++) {
                scaled[k][i] = (front[k][i] - ideal[i]) / (nadir[i] - ideal[i]);
            }
        }
        return Hypervolume.of(scaled, reference);
    }
}
