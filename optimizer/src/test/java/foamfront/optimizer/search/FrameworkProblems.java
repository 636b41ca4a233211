package foamfront.optimizer.search;

import java.util.Collections;
import java.util.List;
import org.moeaframework.core.Solution;
import org.moeaframework.core.spi.ProblemFactory;
import org.moeaframework.core.variable.RealVariable;

/** Problems as the MOEA Framework computes them, by its names for them, in our terms: reals, objectives to be made small. */
final class FrameworkProblems {
    /**
     * Published problems that no choice in the search was made on. WFG: Huband, Hingston, Barone, While, A review of multiobjective
     * test problems and a scalable test problem toolkit, IEEE TEVC 10(5) (2006) 477-506. LZ: Li, Zhang, Multiobjective optimization
     * problems with complicated Pareto sets, MOEA/D and NSGA-II, IEEE TEVC 13(2) (2009) 284-302. MaF: Cheng, Li, Tian, Zhang, Yang,
     * Jin, Yao, A benchmark test suite for evolutionary many-objective optimization, Complex and Intelligent Systems 3 (2017)
     * 67-81. C2, C3: Jain, Deb, IEEE TEVC 18(4) (2014) 602-622. The others: Van Veldhuizen, Multiobjective evolutionary algorithms:
     * classifications, analyses, and new innovations, dissertation, Air Force Institute of Technology 1999 (from memory).
     */
    static final List<String> UNSEEN = List.of(("WFG1_2,WFG2_2,WFG3_2,WFG4_2,WFG5_2,WFG6_2,WFG7_2,WFG8_2,WFG9_2,"
                    + "WFG1_3,WFG2_3,WFG3_3,WFG4_3,WFG5_3,WFG6_3,WFG7_3,WFG8_3,WFG9_3,"
                    + "LZ1,LZ2,LZ3,LZ4,LZ5,LZ6,LZ7,LZ8,LZ9,"
                    + "DTLZ4_3,DTLZ5_3,DTLZ6_3,C1_DTLZ3_3,C2_DTLZ2_3,C3_DTLZ1_3,C3_DTLZ4_3,"
                    + "MaF1_3,MaF2_3,MaF3_3,MaF4_3,MaF5_3,MaF6_3,MaF7_3,"
                    + "Belegundu,Binh,Binh2,Fonseca,Fonseca2,Kita,Kursawe,Laumanns,Lis,Murata,Obayashi,"
                    + "OKA1,OKA2,Osyczka,Osyczka2,Poloni,Quagliarella,Rendon,Rendon2,Schaffer,Schaffer2,Tamaki,"
                    + "Viennet,Viennet2,Viennet3,Viennet4")
            .split(","));

    /** Fine enough for a front that is a curve in three objectives, whose boxes a hundredth wide would be too few. */
    private static final double RESOLUTION = 1e-3;

    private FrameworkProblems() {}

    /** With our benchmarks' resolutions. */
    static Problem of(String name) {
        org.moeaframework.problem.Problem theirs = ProblemFactory.getInstance().getProblem(name);
        return Benchmark.reals(theirs.getNumberOfVariables(), theirs.getNumberOfObjectives(), evaluator(theirs));
    }

    /** With a resolution of a thousandth in each objective. */
    static Problem fine(String name) {
        Problem problem = of(name);
        return new Problem(
                problem.variables(), Collections.nCopies(problem.objectives(), RESOLUTION), problem.evaluators());
    }

    private static Evaluator evaluator(org.moeaframework.problem.Problem theirs) {
        Solution sample = theirs.newSolution();
        int n = theirs.getNumberOfVariables();
        double[] low = new double[n];
        double[] high = new double[n];
        for (int i = 0; i < n; i++) {
            RealVariable variable = (RealVariable) sample.getVariable(i);
            low[i] = variable.getLowerBound();
            high[i] = variable.getUpperBound();
        }
        return u -> {
            Solution solution = theirs.newSolution();
            for (int i = 0; i < n; i++) {
                double value = low[i] + u[i] * (high[i] - low[i]);
                // The sum may round to beyond the upper bound, which they refuse.
                RealVariable.setReal(solution.getVariable(i), Math.min(high[i], value));
            }
            theirs.evaluate(solution);
            double[] objectives = new double[theirs.getNumberOfObjectives()];
            for (int i = 0; i < objectives.length; i++) {
                objectives[i] = solution.getObjective(i).getCanonicalValue();
            }
            return Evaluation.of(solution.getSumOfConstraintViolations(), objectives);
        };
    }
}
