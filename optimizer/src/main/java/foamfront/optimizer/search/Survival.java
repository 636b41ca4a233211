package foamfront.optimizer.search;

import io.jenetics.DoubleGene;
import io.jenetics.Optimize;
import io.jenetics.Phenotype;
import io.jenetics.Selector;
import io.jenetics.util.ISeq;
import io.jenetics.util.MSeq;
import io.jenetics.util.RandomRegistry;
import io.jenetics.util.Seq;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Who survives and who becomes a parent. One object stands behind both selectors of the engine, which hands both the same
 * population: it is ranked once, and tournaments are held among the survivors only.
 *
 * <p>Feasible designs come first, by front and then by room (Deb, An efficient constraint handling method for genetic
 * algorithms, Computer Methods in Applied Mechanics and Engineering 186 (2000) 311-338). Infeasible ones follow, sorted without
 * dominance in their excesses by group of limits, so that different ways towards feasibility go on side by side (the idea: Ray,
 * Tai, Seow, Multiobjective design optimization by an evolutionary algorithm, Engineering Optimization 33(4) (2001) 399-424,
 * from memory), and by their sum where that leaves a choice; a few that would beat the feasible ones stand beside these ({@link Promising}).
 * Copies of a vector of objectives or excesses come last. Some
 * places may be reserved for niches.
 */
final class Survival {
    /**
     * Candidates in a tournament while the best of them is infeasible: with violation as the only aim a stronger choice than
     * between two is quicker to the first feasible one, that among twenty loses its variety (six seeds of one study, measured).
     */
    private static final int INFEASIBLE_TOURNAMENT = 4;

    /** One place in so many is for infeasible designs that would beat the feasible ones (measured). */
    private static final int PROMISING_SHARE = 10;

    private final int survivors;
    private final LexicographicOrder order = new LexicographicOrder();
    private final FastSort sort = new FastSort();
    private final Thinning thinning = new Thinning();
    private final Promising promising = new Promising();
    private final NichePlaces places;
    private final Interest interest;
    private final List<Double> resolution;

    private @Nullable Seq<Phenotype<DoubleGene, Fitness>> ranked;
    private double[][] objectives = new double[0][];
    private double[] violation = new double[0];
    private double[][] excesses = new double[0][];
    private double[] burden = new double[0];
    private int[] ranks = new int[0];
    private int[] niche = new int[0];
    private double[] room = new double[0];
    private int[] chosen = new int[0];
    private int[] kin = new int[0];
    private int chosenCount;

    Survival(int survivors, NichePlaces places, Interest interest, List<Double> resolution) {
        this.survivors = survivors;
        this.places = places;
        this.interest = interest;
        this.resolution = resolution;
    }

    /** The engine's survivor selector. */
    Selector<DoubleGene, Fitness> survivorSelector() {
        return this::survive;
    }

    /** The engine's offspring selector. */
    Selector<DoubleGene, Fitness> parentSelector() {
        return this::parents;
    }

    private ISeq<Phenotype<DoubleGene, Fitness>> survive(
            Seq<Phenotype<DoubleGene, Fitness>> population, int count, Optimize direction) {
        rank(population);
        MSeq<Phenotype<DoubleGene, Fitness>> result = MSeq.ofLength(Math.min(count, chosenCount));
        for (int k = 0; k < result.length(); k++) {
            result.set(k, population.get(chosen[k]));
        }
        return result.toISeq();
    }

    private ISeq<Phenotype<DoubleGene, Fitness>> parents(
            Seq<Phenotype<DoubleGene, Fitness>> population, int count, Optimize direction) {
        rank(population);
        RandomGenerator random = RandomRegistry.random();
        MSeq<Phenotype<DoubleGene, Fitness>> result = MSeq.ofLength(count);
        int first = 0;
        for (int k = 0; k < count; k++) {
            int parent = k % 2 == 0 ? winner(chosen, chosenCount, random) : mate(first, random);
            result.set(k, population.get(parent));
            first = parent;
        }
        return result.toISeq();
    }

    private int winner(int[] candidates, int count, RandomGenerator random) {
        int a = candidates[random.nextInt(count)];
        int b = candidates[random.nextInt(count)];
        int best = isBetter(b, a) ? b : a;
        for (int k = 2; k < INFEASIBLE_TOURNAMENT && burden[best] > 0; k++) {
            int c = candidates[random.nextInt(count)];
            best = isBetter(c, best) ? c : best;
        }
        return best;
    }

    /** Half of the mates come from the parent's own niche, where its good values mean the same. */
    private int mate(int parent, RandomGenerator random) {
        if (!places.areMany() || random.nextBoolean()) {
            return winner(chosen, chosenCount, random);
        }
        int count = 0;
        for (int k = 0; k < chosenCount; k++) {
            if (niche[chosen[k]] == niche[parent]) {
                kin[count++] = chosen[k];
            }
        }
        return winner(kin, count, random);
    }

    private boolean isBetter(int a, int b) {
        if (ranks[a] != ranks[b]) {
            return ranks[a] < ranks[b];
        }
        return burden[a] != burden[b] ? burden[a] < burden[b] : room[a] > room[b];
    }

    /** Ranks a population and chooses its survivors, unless it is the one ranked last. */
    private void rank(Seq<Phenotype<DoubleGene, Fitness>> population) {
        if (population == ranked) {
            return;
        }
        ranked = population;
        int n = population.size();
        read(population, n);
        int[] feasible = IntStream.range(0, n).filter(i -> violation[i] == 0).toArray();
        int[] infeasible = IntStream.range(0, n).filter(i -> violation[i] > 0).toArray();
        chosen = new int[Math.min(survivors, n)];
        kin = new int[chosen.length];
        chosenCount = 0;
        int fronts = sort.rank(feasible, feasible.length, objectives, ranks);
        rankTiers(infeasible, fronts);
        boolean[] reserved = reserve(n);
        if (!interest.isAll()) {
            admitInteresting(feasible, reserved);
        }
        admitPromising(feasible, infeasible, reserved);
        admitFronts(feasible, fronts, chosen.length, reserved);
        admitTiers(infeasible, reserved);
        admitCopies(feasible, reserved);
    }

    /** Ranks by excesses, from a rank on. */
    private void rankTiers(int[] members, int from) {
        sort.rank(members, members.length, excesses, ranks);
        for (int member : members) {
            ranks[member] = ranks[member] == FastSort.COPY ? FastSort.COPY : from + ranks[member];
        }
    }

    /**
     * Half of the places are kept for the region of interest, by the fronts inside it, or for what lies nearest while it is
     * empty. The other half stays open to all: a search in the region alone would be too narrow to get on (judgement).
     */
    private void admitInteresting(int[] feasible, boolean[] reserved) {
        double[][] misses = new double[violation.length][];
        for (int member : feasible) {
            double[] each = interest.misses(objectives[member], resolution);
            misses[member] = new double[] {Arrays.stream(each).sum()};
        }
        int[] nearest = Arrays.stream(feasible)
                .filter(i -> ranks[i] != FastSort.COPY && !reserved[i])
                .toArray();
        order.sort(nearest, nearest.length, misses);
        int[] inside = Arrays.stream(nearest).filter(i -> misses[i][0] == 0).toArray();
        int end = Math.min(chosen.length, chosenCount + survivors / 2);
        int before = chosenCount;
        if (inside.length > 0) {
            int[] amongAll = ranks.clone();
            admitFronts(inside, sort.rank(inside, inside.length, objectives, ranks), end, reserved);
            Arrays.stream(chosen, before, chosenCount).forEach(i -> amongAll[i] = ranks[i]);
            ranks = amongAll;
        } else {
            for (int k = 0; k < nearest.length && chosenCount < end; k++) {
                favour(nearest[k]);
            }
        }
        for (int k = before; k < chosenCount; k++) {
            reserved[chosen[k]] = true;
        }
    }

    /** Only beside feasible ones: where there are none, the way to the first of them is all that counts. */
    private void admitPromising(int[] feasible, int[] infeasible, boolean[] reserved) {
        if (feasible.length == 0) {
            return;
        }
        int most = Math.min(chosen.length - chosenCount, survivors / PROMISING_SHARE);
        int[] candidates = Arrays.stream(infeasible).filter(i -> !reserved[i]).toArray();
        int[] front = Arrays.stream(feasible).filter(i -> ranks[i] == 0).toArray();
        for (int member : promising.choose(candidates, front, objectives, violation, most)) {
            reserved[member] = true;
            ranks[member] = promising.tier(member);
            burden[member] = 0;
            chosen[chosenCount++] = member;
        }
    }

    /** Chooses a member and lets it stand beside the best of all in tournaments, or it would never be a parent. */
    private void favour(int member) {
        ranks[member] = 0;
        burden[member] = 0;
        room[member] = Double.POSITIVE_INFINITY;
        chosen[chosenCount++] = member;
    }

    private void read(Seq<Phenotype<DoubleGene, Fitness>> population, int n) {
        objectives = new double[n][];
        violation = new double[n];
        excesses = new double[n][];
        ranks = new int[n];
        niche = new int[n];
        room = new double[n];
        int groups = 0;
        for (int i = 0; i < n; i++) {
            Fitness fitness = population.get(i).fitness();
            objectives[i] = fitness.objectives();
            violation[i] = fitness.violation();
            niche[i] = fitness.design().niche();
            excesses[i] = fitness.evaluation().sharedExcesses();
            groups = Math.max(groups, excesses[i].length);
        }
        burden = violation.clone();
        for (int i = 0; i < n; i++) {
            if (violation[i] > 0 && excesses[i].length < groups) { // the evaluator broke down
                excesses[i] = new double[groups];
                Arrays.fill(excesses[i], violation[i]);
            }
        }
    }

    private boolean[] reserve(int n) {
        boolean[] reserved = new boolean[n];
        if (places.areOpen()) {
            int[] entitled = niche.clone();
            for (int i = 0; i < n; i++) {
                if (ranks[i] == FastSort.COPY) {
                    entitled[i] = -1;
                }
            }
            for (int member : places.choose(entitled, ranks, objectives, violation)) {
                reserved[member] = true;
                favour(member);
            }
        }
        return reserved;
    }

    /** @param places until so many are chosen */
    private void admitFronts(int[] feasible, int fronts, int places, boolean[] reserved) {
        for (int front = 0; front < fronts && chosenCount < places; front++) {
            int level = front;
            int[] members = Arrays.stream(feasible)
                    .filter(i -> ranks[i] == level && !reserved[i])
                    .toArray();
            int keep = Math.min(members.length, places - chosenCount);
            double[] measured = thinning.thin(members, members.length, objectives, keep);
            for (int k = 0; k < keep; k++) {
                room[members[k]] = measured[members[k]];
                chosen[chosenCount++] = members[k];
            }
        }
    }

    /** By tiers, within a tier by the sum of the excesses; what repeats another's comes last. */
    private void admitTiers(int[] members, boolean[] reserved) {
        double[][] keys = new double[burden.length][];
        for (int member : members) {
            keys[member] = new double[] {ranks[member], burden[member]};
        }
        order.sort(members, members.length, keys);
        for (int k = 0; k < members.length && chosenCount < chosen.length; k++) {
            if (!reserved[members[k]]) {
                chosen[chosenCount++] = members[k];
            }
        }
    }

    private void admitCopies(int[] feasible, boolean[] reserved) {
        for (int k = 0; k < feasible.length && chosenCount < chosen.length; k++) {
            if (ranks[feasible[k]] == FastSort.COPY && !reserved[feasible[k]]) {
                chosen[chosenCount++] = feasible[k];
            }
        }
    }
}
