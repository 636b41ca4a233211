package foamfront.optimizer.search;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Engineering problems whose exact fronts are unknown.
 *
 * <p>RE and CRE: Tanabe and Ishibuchi, An easy-to-use real-world multi-objective optimization problem suite, Applied Soft Computing
 * 89 (2020) 106078 (from memory); each constraint divided by its limit.
 */
final class Engineering {
    private Engineering() {}

    /** Welded beam: cost and end deflection. */
    static Problem beam() {
        Evaluator evaluator = u -> {
            double x1 = scaled(u[0], 0.125, 5);
            double x2 = scaled(u[1], 0.1, 10);
            double x3 = scaled(u[2], 0.1, 10);
            double x4 = scaled(u[3], 0.125, 5);
            double load = 6000;
            double length = 14;
            double half = 0.25 * (x1 + x3) * (x1 + x3);
            double radius = Math.sqrt(0.25 * x2 * x2 + half);
            double polar = 2 * Math.sqrt(2) * x1 * x2 * (x2 * x2 / 12 + half);
            double bending = load * (length + 0.5 * x2) * radius / polar;
            double shear = load / (Math.sqrt(2) * x1 * x2);
            double tau = Math.sqrt(shear * shear + shear * bending * x2 / radius + bending * bending);
            double sigma = 6 * load * length / (x4 * x3 * x3);
            double buckling = 4.013
                    * 30e6
                    * (x3 * x4 * x4 * x4 / 6)
                    / (length * length)
                    * (1 - x3 / (2 * length) * Math.sqrt(30e6 / (4 * 12e6)));
            double violation = over(tau / 13600) + over(sigma / 30000) + over(x1 / x4) + over(2 - buckling / load);
            double cost = 1.10471 * x1 * x1 * x2 + 0.04811 * x3 * x4 * (14 + x2);
            return Evaluation.of(violation, cost, 4 * load * length * length * length / (30e6 * x4 * x3 * x3 * x3));
        };
        // The front spans 47 in cost and 0.023 in deflection.
        return new Problem(Benchmark.reals(4, 2, evaluator).variables(), List.of(1e-2, 1e-5), () -> evaluator);
    }

    /** Disc brake: mass and stopping time. */
    static Problem brake() {
        return reals(4, 2, 1e-3, u -> {
            double x1 = scaled(u[0], 55, 80);
            double x2 = scaled(u[1], 75, 110);
            double x3 = scaled(u[2], 1000, 3000);
            double x4 = scaled(u[3], 11, 20);
            double squares = x2 * x2 - x1 * x1;
            double cubes = x2 * x2 * x2 - x1 * x1 * x1;
            if (squares <= 0) {
                return Evaluation.infeasible(10 + over((20 + x1 - x2) / 20));
            }
            double violation = over(2 - (x2 - x1) / 20)
                    + over(x3 / (3.14 * squares) / 0.4)
                    + over(2.22e-3 * x3 * cubes / (squares * squares))
                    + over(2 - 2.66e-2 * x3 * x4 * cubes / squares / 900);
            return Evaluation.of(violation, 4.9e-5 * squares * (x4 - 1), 9.82e6 * squares / (x3 * x4 * cubes));
        });
    }

    /** Speed reducer: mass and stress of the first shaft; whole teeth. */
    static Problem reducer() {
        Evaluator evaluator = u -> {
            double x1 = scaled(u[0], 2.6, 3.6);
            double x2 = scaled(u[1], 0.7, 0.8);
            double x3 = u[2];
            double x4 = scaled(u[3], 7.3, 8.3);
            double x5 = scaled(u[4], 7.3, 8.3);
            double x6 = scaled(u[5], 2.9, 3.9);
            double x7 = scaled(u[6], 5, 5.5);
            double f1 = 0.7854 * x1 * x2 * x2 * (10 * x3 * x3 / 3 + 14.933 * x3 - 43.0934)
                    - 1.508 * x1 * (x6 * x6 + x7 * x7)
                    + 7.477 * (x6 * x6 * x6 + x7 * x7 * x7)
                    + 0.7854 * (x4 * x6 * x6 + x5 * x7 * x7);
            double f2 = shaft(x4, x2 * x3, 1.69e7, x6);
            double violation = over(27 / (x1 * x2 * x2 * x3))
                    + over(397.5 / (x1 * x2 * x2 * x3 * x3))
                    + over(1.93 * x4 * x4 * x4 / (x2 * x3 * x6 * x6 * x6 * x6))
                    + over(1.93 * x5 * x5 * x5 / (x2 * x3 * x7 * x7 * x7 * x7))
                    + over(x2 * x3 / 40)
                    + over(x1 / x2 / 12)
                    + over(5 * x2 / x1)
                    + over((1.9 + 1.5 * x6) / x4)
                    + over((1.9 + 1.1 * x7) / x5)
                    + over(f2 / 1300)
                    + over(shaft(x5, x2 * x3, 1.575e8, x7) / 1100);
            return Evaluation.of(violation, f1, f2);
        };
        List<Variable> variables =
                new java.util.ArrayList<>(Benchmark.reals(7, 2, evaluator).variables());
        variables.set(2, new Variable.Integral("teeth", 17, 28));
        return new Problem(variables, List.of(1.0, 0.5), () -> evaluator);
    }

    private static double shaft(double length, double teeth, double square, double diameter) {
        double moment = 745 * length / teeth;
        return Math.sqrt(moment * moment + square) / (0.1 * diameter * diameter * diameter);
    }

    /** Gear train: error of the ratio and largest wheel; whole teeth only. */
    static Problem gears() {
        Evaluator evaluator = x -> {
            double error = Math.abs(6.931 - x[2] * x[3] / (x[0] * x[1]));
            double largest = Math.max(Math.max(x[0], x[1]), Math.max(x[2], x[3]));
            return Evaluation.of(over(error / 6.931 / 0.5), error, largest);
        };
        List<Variable> wheels = IntStream.range(0, 4)
                .<Variable>mapToObj(i -> new Variable.Integral("wheel " + i, 12, 60))
                .toList();
        return new Problem(wheels, List.of(1e-4, 0.5), () -> evaluator);
    }

    /** Vehicle front: mass, acceleration and intrusion in a crash. */
    static Problem vehicle() {
        return reals(5, 3, 1e-2, u -> {
            double x1 = 1 + 2 * u[0];
            double x2 = 1 + 2 * u[1];
            double x3 = 1 + 2 * u[2];
            double x4 = 1 + 2 * u[3];
            double x5 = 1 + 2 * u[4];
            double mass =
                    1640.2823 + 2.3573285 * x1 + 2.3220035 * x2 + 4.5688768 * x3 + 7.7213633 * x4 + 4.4559504 * x5;
            double acceleration = 6.5856
                    + 1.15 * x1
                    - 1.0427 * x2
                    + 0.9738 * x3
                    + 0.8364 * x4
                    - 0.3695 * x1 * x4
                    + 0.0861 * x1 * x5
                    + 0.3628 * x2 * x4
                    - 0.1106 * x1 * x1
                    - 0.3437 * x3 * x3
                    + 0.1764 * x4 * x4;
            double intrusion = -0.0551
                    + 0.0181 * x1
                    + 0.1024 * x2
                    + 0.0421 * x3
                    - 0.0073 * x1 * x2
                    + 0.024 * x2 * x3
                    - 0.0118 * x2 * x4
                    - 0.0204 * x3 * x4
                    - 0.008 * x3 * x5
                    - 0.0241 * x2 * x2
                    + 0.0109 * x4 * x4;
            return Evaluation.feasible(mass / 40, acceleration / 5, 5 * intrusion);
        });
    }

    /**
     * Pressure vessel: cost and volume, plates in sixteenths of an inch. Cost and limits: Kannan and Kramer, Journal of Mechanical
     * Design 116 (1994) 405-411 (from memory); the volume as second objective is our choice.
     */
    static Problem vessel() {
        Evaluator evaluator = x -> {
            double shell = 0.0625 * x[0];
            double head = 0.0625 * x[1];
            double radius = scaled(x[2], 10, 200);
            double length = scaled(x[3], 10, 240);
            double cost = 0.6224 * shell * radius * length
                    + 1.7781 * head * radius * radius
                    + 3.1661 * shell * shell * length
                    + 19.84 * shell * shell * radius;
            double volume = Math.PI * radius * radius * (length + 4.0 / 3 * radius);
            double violation = over(0.0193 * radius / shell) + over(0.00954 * radius / head);
            return Evaluation.of(violation, cost, -volume);
        };
        List<Variable> variables = List.of(
                new Variable.Integral("shell", 1, 99),
                new Variable.Integral("head", 1, 99),
                new Variable.Real("radius"),
                new Variable.Real("length"));
        return new Problem(variables, List.of(100.0, 1e4), () -> evaluator);
    }

    private static Problem reals(int variables, int objectives, double resolution, Evaluator evaluator) {
        return new Problem(
                Benchmark.reals(variables, objectives, evaluator).variables(),
                Collections.nCopies(objectives, resolution),
                () -> evaluator);
    }

    private static double scaled(double fraction, double low, double high) {
        return low + fraction * (high - low);
    }

    /** How far a ratio that may be at most 1 lies above it. */
    private static double over(double ratio) {
        return Math.max(0, ratio - 1);
    }
}
