package foamfront.optimizer.search;

import java.util.ArrayList;
import java.util.List;

/**
 * Mutually non-dominated boxes, in groups of near ones with a bound on each side, so that most of a group's boxes need not be
 * looked at: the work per offer grows about as the square root of the number of boxes.
 *
 * <p>The idea of bounds over groups: Jaszkiewicz and Lust, ND-Tree-based update, IEEE Transactions on Evolutionary Computation
 * 22(5) (2018) (from memory); one level of groups is enough for a thousand boxes.
 */
final class BoxGroups {
    /** A group over this size is halved; near the square root of the archive's cap. */
    private static final int LARGEST_GROUP = 32;

    private static final class Held {
        final long[] box;
        double fromCorner;
        Fitness fitness;

        Held(long[] box, double fromCorner, Fitness fitness) {
            this.box = box;
            this.fromCorner = fromCorner;
            this.fitness = fitness;
        }
    }

    /** Bounds may be loose after removals: they never cut off a box that is there. */
    private static final class Group {
        final List<Held> held = new ArrayList<>(LARGEST_GROUP + 1);
        final long[] least;
        final long[] most;

        Group(Held first) {
            least = first.box.clone();
            most = first.box.clone();
            held.add(first);
        }

        void add(Held added) {
            held.add(added);
            for (int i = 0; i < least.length; i++) {
                least[i] = Math.min(least[i], added.box[i]);
                most[i] = Math.max(most[i], added.box[i]);
            }
        }

        double distanceTo(long[] box) {
            double sum = 0;
            for (int i = 0; i < box.length; i++) {
                double difference = box[i] - 0.5 * (least[i] + most[i]);
                sum += difference * difference;
            }
            return sum;
        }
    }

    private final List<Group> groups = new ArrayList<>();
    private int size;

    int size() {
        return size;
    }

    List<Fitness> members() {
        List<Fitness> result = new ArrayList<>(size);
        for (Group group : groups) {
            for (Held held : group.held) {
                result.add(held.fitness);
            }
        }
        return result;
    }

    /** True where the design came to hold its box. The box array stays the caller's. */
    boolean offer(long[] box, double fromCorner, Fitness fitness) {
        for (Group group : groups) {
            if (!covers(group.least, box)) {
                continue;
            }
            for (Held held : group.held) {
                if (covers(held.box, box)) {
                    return covers(box, held.box) && replace(held, fromCorner, fitness);
                }
            }
        }
        removeCovered(box);
        insert(new Held(box.clone(), fromCorner, fitness));
        return true;
    }

    private static boolean replace(Held held, double fromCorner, Fitness fitness) {
        boolean better = fromCorner < held.fromCorner
                || (fromCorner == held.fromCorner && EpsilonArchive.ORDER.compare(fitness, held.fitness) < 0);
        if (better) {
            held.fromCorner = fromCorner;
            held.fitness = fitness;
        }
        return better;
    }

    private void removeCovered(long[] box) {
        for (int g = groups.size() - 1; g >= 0; g--) {
            Group group = groups.get(g);
            if (!covers(box, group.most)) {
                continue;
            }
            int before = group.held.size();
            group.held.removeIf(held -> covers(box, held.box));
            size -= before - group.held.size();
            if (group.held.isEmpty()) {
                groups.remove(g);
            }
        }
    }

    private void insert(Held added) {
        size++;
        if (groups.isEmpty()) {
            groups.add(new Group(added));
            return;
        }
        int nearest = 0;
        double distance = Double.POSITIVE_INFINITY;
        for (int g = 0; g < groups.size(); g++) {
            double here = groups.get(g).distanceTo(added.box);
            if (here < distance) {
                distance = here;
                nearest = g;
            }
        }
        groups.get(nearest).add(added);
        if (groups.get(nearest).held.size() > LARGEST_GROUP) {
            halve(nearest);
        }
    }

    /** Across its longest side, at the middle member. */
    private void halve(int index) {
        Group group = groups.get(index);
        int longest = 0;
        for (int i = 1; i < group.least.length; i++) {
            if (group.most[i] - group.least[i] > group.most[longest] - group.least[longest]) {
                longest = i;
            }
        }
        int axis = longest;
        group.held.sort((a, b) -> Long.compare(a.box[axis], b.box[axis]));
        int middle = group.held.size() / 2;
        groups.set(index, groupOf(group.held.subList(0, middle)));
        groups.add(groupOf(group.held.subList(middle, group.held.size())));
    }

    private static Group groupOf(List<Held> members) {
        Group group = new Group(members.get(0));
        members.subList(1, members.size()).forEach(group::add);
        return group;
    }

    private static boolean covers(long[] a, long[] b) {
        for (int i = 0; i < a.length; i++) {
            if (a[i] > b[i]) {
                return false;
            }
        }
        return true;
    }
}
