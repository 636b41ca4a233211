package foamfront.model.mass;

import static foamfront.model.units.Require.notNegative;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Masses of one aeroplane in columns, refilled for the next: a search weighs dozens of things in each of its designs and reads no
 * more of them than a few sums.
 */
final class MassTable {
    private static final int NUMBERS = 7;

    private int size;
    private String[] names = new String[48];
    private MassGroup[] groups = new MassGroup[48];
    private boolean[] relative = new boolean[48];
    /** Mass, x, y, z, length, breadth, height of each in turn. */
    private double[] numbers = new double[48 * NUMBERS];

    void clear() {
        size = 0;
    }

    int size() {
        return size;
    }

    /** A point mass at a fixed place. */
    void point(String name, double mass, double x, double y, double z, MassGroup group) {
        add(name, mass, x, y, z, 0, 0, 0, group, false);
    }

    /** A point mass that keeps its distance to the balance point. */
    void relative(String name, double mass, double x, double y, double z, MassGroup group) {
        add(name, mass, x, y, z, 0, 0, 0, group, true);
    }

    /** As the fields of a {@link MassItem}. */
    void add(
            String name,
            double mass,
            double x,
            double y,
            double z,
            double length,
            double breadth,
            double height,
            MassGroup group,
            boolean fromBalancePoint) {
        notNegative("mass of an item", mass, "kg");
        if (size == names.length) {
            grow();
        }
        names[size] = name;
        groups[size] = group;
        relative[size] = fromBalancePoint;
        int at = size * NUMBERS;
        numbers[at] = mass;
        numbers[at + 1] = x;
        numbers[at + 2] = y;
        numbers[at + 3] = z;
        numbers[at + 4] = length;
        numbers[at + 5] = breadth;
        numbers[at + 6] = height;
        size++;
    }

    void add(MassItem item) {
        add(
                item.name(),
                item.mass(),
                item.x(),
                item.y(),
                item.z(),
                item.length(),
                item.breadth(),
                item.height(),
                item.group(),
                item.fromBalancePoint());
    }

    private void grow() {
        int room = 2 * size;
        names = Arrays.copyOf(names, room);
        groups = Arrays.copyOf(groups, room);
        relative = Arrays.copyOf(relative, room);
        numbers = Arrays.copyOf(numbers, room * NUMBERS);
    }

    double mass(int i) {
        return numbers[i * NUMBERS];
    }

    double x(int i) {
        return numbers[i * NUMBERS + 1];
    }

    double y(int i) {
        return numbers[i * NUMBERS + 2];
    }

    double z(int i) {
        return numbers[i * NUMBERS + 3];
    }

    double length(int i) {
        return numbers[i * NUMBERS + 4];
    }

    MassGroup group(int i) {
        return groups[i];
    }

    boolean fromBalancePoint(int i) {
        return relative[i];
    }

    List<MassItem> items() {
        List<MassItem> items = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            double breadth = numbers[i * NUMBERS + 5];
            double height = numbers[i * NUMBERS + 6];
            items.add(new MassItem(
                    names[i], mass(i), x(i), y(i), z(i), length(i), breadth, height, groups[i], relative[i]));
        }
        return List.copyOf(items);
    }
}
