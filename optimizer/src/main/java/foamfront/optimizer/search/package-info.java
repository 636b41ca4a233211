/**
 * A multi-objective search over real, integer, ordinal and category variables; it knows no aeroplane.
 *
 * <p>What it computes: the designs of a {@link foamfront.optimizer.search.Problem} that no other evaluated design beats in
 * every objective, by an evolutionary search in islands on the Jenetics engine. The engine, its population and its random
 * registry are the library's; variation, survival, feasibility rules and the archive are this package's, because the stock
 * ones centre crossover wrongly, cannot reach an upper bound, replace old designs by random ones and know no constraints.
 *
 * <p>Assumptions: the evaluator is a pure function of the decoded values; objectives are minimised; a violation is 0 for a
 * feasible design and otherwise a sum of excesses over limits, each divided by its limit.
 *
 * <p>Validity: two to about six objectives (the dominated volume is exact and its cost grows fast with their number), up to
 * a few hundred variables, any number of evaluations at constant memory. The same problem and settings give the same
 * front, bit for bit, on any number of threads.
 *
 * <p>Weak where many linked variables meet many local fronts and the budget is short: on six of seventeen UF and CF problems
 * at 25 000 evaluations and a population of 100 a plain NSGA-II was ahead, a larger population helping on four of them.
 *
 * <p>Depends on Jenetics, {@code foamfront.model.units} and nothing else. Start at {@link
 * foamfront.optimizer.search.Search}, then {@code Archipelago}, {@code Island}, {@code Survival}, {@code Variation}.
 */
@NullMarked
package foamfront.optimizer.search;

import org.jspecify.annotations.NullMarked;
