package foamfront.optimizer.search;

import java.util.random.RandomGenerator;

/**
 * Small changes by kind of variable: polynomial for reals, short steps to either side for whole numbers, a fresh draw for
 * categories and now and then for any. Each active variable changes with probability 1 / (number of active ones); active categories
 * share a floor of 0.1.
 *
 * <p>Polynomial mutation: Deb and Goyal, A combined genetic adaptive search (GeneAS) for engineering design, Computer Science
 * and Informatics 26(4) (1996) 30-45, in the bounded form of Deb's own program (from memory).
 */
final class Mutation {
    /** Index eta of the spread; with it the mean change is about 1/(eta + 2) of the range. Common practice. */
    private static final int SPREAD = 20;

    /**
     * A kind that nobody redraws dies out for good, so that at least one child in ten has a category redrawn. Shared among the
     * active categories: 0.1 for each of eight leaves the kinds alone in 43 % of the children only, and searches worse (measured).
     */
    private static final double CATEGORY_FLOOR = 0.1;

    /** Chance that a whole-number step goes on by one more: mean step 4/3 (judgement). */
    private static final double STEP_ON = 0.25;

    /**
     * Share of the changes that are fresh draws for every kind of variable: small steps alone never come back to a part of a
     * broken front that has died out (measured).
     */
    static final double FRESH = 0.03;

    private final Schema schema;

    Mutation(Schema schema) {
        this.schema = schema;
    }

    /** Mutates genes in place. */
    void mutate(double[] genes, RandomGenerator random) {
        double chance = 1.0 / schema.activeCount(genes);
        double ofCategory = Math.max(CATEGORY_FLOOR / schema.activeCategories(genes), chance);
        for (int i = 0; i < genes.length; i++) {
            double own = schema.isCategory(i) ? ofCategory : chance;
            if (random.nextDouble() < own && schema.isActive(i, genes)) {
                genes[i] = mutated(i, genes[i], random);
            }
        }
    }

    /** Changes one active variable for certain. */
    void mutateOne(double[] genes, RandomGenerator random) {
        int first = random.nextInt(genes.length);
        for (int k = 0; k < genes.length; k++) {
            int i = (first + k) % genes.length;
            if (schema.isActive(i, genes) && schema.levels(i) != 1) {
                genes[i] = mutated(i, genes[i], random);
                return;
            }
        }
    }

    private double mutated(int variable, double gene, RandomGenerator random) {
        boolean fresh = random.nextDouble() < FRESH;
        if (schema.isReal(variable)) {
            return fresh ? random.nextDouble() : polynomial(gene, random.nextDouble());
        }
        int levels = schema.levels(variable);
        if (levels == 1) {
            return gene;
        }
        int level = schema.level(variable, gene);
        boolean any = fresh || schema.isCategory(variable);
        return schema.gene(variable, any ? other(level, levels, random) : stepped(level, levels, random));
    }

    /** One of the other levels, all alike. */
    private static int other(int level, int levels, RandomGenerator random) {
        int drawn = random.nextInt(levels - 1);
        return drawn < level ? drawn : drawn + 1;
    }

    /** A geometric step up or down; one that would leave the range turns round, or stops at the bound. */
    private static int stepped(int level, int levels, RandomGenerator random) {
        int step = 1;
        while (step < levels && random.nextDouble() < STEP_ON) {
            step++;
        }
        int signed = random.nextBoolean() ? step : -step;
        int up = level + signed;
        int target = up >= 0 && up < levels ? up : level - signed;
        return Math.min(levels - 1, Math.max(0, target));
    }

    static double polynomial(double gene, double u) {
        double root = 1.0 / (SPREAD + 1);
        double step;
        if (u < 0.5) {
            step = StrictMath.pow(2 * u + (1 - 2 * u) * power(1 - gene), root) - 1;
        } else {
            step = 1 - StrictMath.pow(2 * (1 - u) + (2 * u - 1) * power(gene), root);
        }
        return Math.min(1, Math.max(0, gene + step));
    }

    /** x^(eta + 1) = x^21. */
    private static double power(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x16 = x4 * x4 * x4 * x4;
        return x16 * x4 * x;
    }
}
