package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoxArrangementLawsTest {
    private static final int[][] TURNS = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};
    private static final double ROUNDING = 1e-12;

    /** Space 1.0 by 0.5 by 0.4: lengths leave 0.1, breadths 0.1, one on the other (0.4 − 0.25) / 2. */
    @Test
    void twoBoxesShareWhatTheirStackLeaves() {
        double[] space = {1.0, 0.5, 0.4};
        assertThat(margin(space, 0.9, 0.4, 0.1, 0.8, 0.4, 0.15)).isCloseTo(0.075, within(ROUNDING));
        // A third on them: (0.4 − 0.35) / 3
        assertThat(margin(space, 0.9, 0.4, 0.1, 0.8, 0.4, 0.15, 0.9, 0.4, 0.1)).isCloseTo(0.05 / 3, within(ROUNDING));
    }

    /**
     * Three boxes 1 by 1 by 2 round a corner of a cube of 2, each along another axis, keep apart along another axis each pair; laid side by
     * side two and two they go in as well, and either way nothing is left. A body 2 by 2 by 1 leaves a layer for two halves 2 by 1 by 1.
     */
    @Test
    void textbookCubesLeaveNothing() {
        double[] cube = {2, 2, 2};
        assertThat(margin(cube, 1, 1, 2, 1, 1, 2, 1, 1, 2)).isZero();
        assertThat(margin(cube, 2, 2, 1, 2, 1, 1, 2, 1, 1)).isZero();
        assertThat(margin(cube, 2, 2, 1, 2, 1, 1, 2, 1, 1.1)).isCloseTo(-0.05, within(ROUNDING));
    }

    /**
     * In 7 by 4 by 5 a cube of 4 leaves a wall of 3 beside it and a shelf of 1 over it: a box 3 by 2 by 5 stands at the wall, a rod 6 long lies on
     * the cube past the box. A cut at 3, 2 or 4 would hit the third of them.
     */
    @Test
    void threeBoxesNeedNotComeApartByCuts() {
        double[] boxes = {3, 5, 2, 4, 4, 4, 6, 1, 1};
        BoxArrangement found = begun(new double[] {7, 4, 5}, boxes);
        assertThat(found.margin()).isZero();
        assertThat(List.of(found.apart(0, 1), found.apart(0, 2), found.apart(1, 2)))
                .containsExactlyInAnyOrder(0, 1, 2);
        assertThat(margin(new double[] {7, 4, 4.9}, boxes)).isNegative();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void wholeBoxesGoInWhereSomeWholePlacesDo(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] verdicts = new int[2];
        while (Math.min(verdicts[0], verdicts[1]) < 250) {
            int count = random.nextInt(2, 4);
            int[] space = {random.nextInt(2, 11), random.nextInt(2, 11), random.nextInt(2, 11)};
            int[] boxes = new int[3 * count];
            int volume = 0;
            for (int i = 0; i < count; i++) {
                for (int k = 0; k < 3; k++) {
                    boxes[3 * i + k] = random.nextInt(1, 7);
                }
                volume += boxes[3 * i] * boxes[3 * i + 1] * boxes[3 * i + 2];
            }
            // Where volume decides by far nobody learns anything.
            if (volume > space[0] * space[1] * space[2] || 4 * volume < space[0] * space[1] * space[2]) {
                continue;
            }
            boolean goes = placed(space, boxes, new int[3 * count], new int[3 * count], 0);
            verdicts[goes ? 1 : 0]++;
            BoxArrangement arrangement = begun(real(space), real(boxes));
            assertThat(arrangement.margin() >= 0).isEqualTo(goes);
            assertThat(begun(real(space), real(boxes)).margin(-1e-9, 0) >= 0).isEqualTo(goes);
            // The grade of a whole case is a whole number of halves and thirds; larger by a sixth is the same question
            // in a finer grid.
            double sixths = 6 * arrangement.margin();
            assertThat(sixths).isCloseTo(Math.rint(sixths), within(1e-9));
        }
    }

    /** Each box pushed to the corner begins at 0 or where others end: the grown boxes go in by trying all such places, and grown by a hair more do not. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {4, 5})
    void theMarginIsTheMostThatAllSidesCanGrow(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int n = 0; n < 60; n++) {
            int count = random.nextInt(2, 4);
            double[] space = {random.nextDouble(0.9, 1.4), random.nextDouble(0.5, 1), random.nextDouble(0.3, 0.6)};
            double[] boxes = boxes(random, count);
            double margin = margin(space, boxes);
            if (margin > -0.02) {
                assertThat(pushed(space, grown(boxes, margin - 1e-9))).isTrue();
                assertThat(pushed(space, grown(boxes, margin + 1e-9))).isFalse();
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {6, 7})
    void neitherTurningTheSpaceNorTheOrderOfBoxesMatters(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int n = 0; n < 1000; n++) {
            double[] space = {random.nextDouble(0.4, 1.4), random.nextDouble(0.4, 1.4), random.nextDouble(0.3, 0.6)};
            double[] b = boxes(random, 3);
            double margin = margin(space, b);
            for (int[] t : TURNS) {
                assertThat(margin(new double[] {space[t[0]], space[t[1]], space[t[2]]}, b))
                        .isEqualTo(margin);
                double[] other = new double[9];
                for (int i = 0; i < 3; i++) {
                    System.arraycopy(b, 3 * t[i], other, 3 * i, 3);
                }
                assertThat(margin(space, other)).isCloseTo(margin, within(ROUNDING));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {8, 9})
    void moreRoomNeverLeavesLessAndMoreBoxesNeverMore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int n = 0; n < 2000; n++) {
            double[] space = {random.nextDouble(0.4, 1.4), random.nextDouble(0.4, 1.4), random.nextDouble(0.3, 0.6)};
            double[] b = boxes(random, 3);
            double margin = margin(space, b);
            double[] larger = space.clone();
            larger[random.nextInt(3)] += random.nextDouble(0.3);
            assertThat(margin(larger, b)).isGreaterThanOrEqualTo(margin - ROUNDING);
            for (int i = 0; i < 3; i++) {
                assertThat(margin(space, b[3 * i], b[3 * i + 1], b[3 * i + 2]))
                        .isGreaterThanOrEqualTo(margin - ROUNDING);
                int j = 3 * ((i + 1) % 3);
                assertThat(margin(space, b[3 * i], b[3 * i + 1], b[3 * i + 2], b[j], b[j + 1], b[j + 2]))
                        .isGreaterThanOrEqualTo(margin - ROUNDING);
            }
        }
    }

    private static double[] boxes(SplittableRandom random, int count) {
        double[] boxes = new double[3 * count];
        for (int i = 0; i < count; i++) {
            boxes[3 * i] = random.nextDouble(0.3, 1.2);
            boxes[3 * i + 1] = random.nextDouble(0.1, 0.5);
            boxes[3 * i + 2] = random.nextDouble(0.03, 0.3);
        }
        return boxes;
    }

    private static double[] grown(double[] boxes, double by) {
        double[] grown = new double[boxes.length];
        for (int i = 0; i < boxes.length; i++) {
            grown[i] = boxes[i] + by;
        }
        return grown;
    }

    private static double margin(double[] space, double... boxes) {
        return begun(space, boxes).margin();
    }

    private static BoxArrangement begun(double[] space, double[] boxes) {
        BoxArrangement arrangement = new BoxArrangement();
        arrangement.begin(space[0], space[1], space[2]);
        for (int i = 0; i < boxes.length; i += 3) {
            arrangement.add(boxes[i], boxes[i + 1], boxes[i + 2]);
        }
        return arrangement;
    }

    private static double[] real(int[] whole) {
        double[] real = new double[whole.length];
        for (int i = 0; i < whole.length; i++) {
            real[i] = whole[i];
        }
        return real;
    }

    /** Every whole place of every turned box, one after another. */
    private static boolean placed(int[] space, int[] boxes, int[] at, int[] size, int box) {
        if (3 * box == boxes.length) {
            return true;
        }
        int o = 3 * box;
        for (int[] t : TURNS) {
            for (int a = 0; a < 3; a++) {
                size[o + a] = boxes[o + t[a]];
            }
            // The first box may be taken to lie on the near side of the middle: mirroring changes nothing.
            int part = box == 0 ? 2 : 1;
            for (at[o] = 0; part * at[o] <= space[0] - size[o]; at[o]++) {
                for (at[o + 1] = 0; part * at[o + 1] <= space[1] - size[o + 1]; at[o + 1]++) {
                    for (at[o + 2] = 0; part * at[o + 2] <= space[2] - size[o + 2]; at[o + 2]++) {
                        if (free(at, size, box) && placed(space, boxes, at, size, box + 1)) {
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }

    private static boolean free(int[] at, int[] size, int box) {
        for (int i = 0; i < box; i++) {
            boolean apart = false;
            for (int a = 0; a < 3; a++) {
                apart |= at[3 * i + a] + size[3 * i + a] <= at[3 * box + a]
                        || at[3 * box + a] + size[3 * box + a] <= at[3 * i + a];
            }
            if (!apart) {
                return false;
            }
        }
        return true;
    }

    /** Like that, from places where a sum of others' sides ends. */
    private static boolean pushed(double[] space, double[] boxes) {
        int count = boxes.length / 3;
        int turns = (int) Math.pow(6, count);
        for (int n = 0; n < turns; n++) {
            double[] size = new double[boxes.length];
            int rest = n;
            boolean within = true;
            for (int i = 0; i < count; i++) {
                for (int a = 0; a < 3; a++) {
                    size[3 * i + a] = boxes[3 * i + TURNS[rest % 6][a]];
                    within &= size[3 * i + a] <= space[a];
                }
                rest /= 6;
            }
            if (within && pushed(space, size, new double[boxes.length], 0)) {
                return true;
            }
        }
        return false;
    }

    private static boolean pushed(double[] space, double[] size, double[] at, int box) {
        int count = size.length / 3;
        if (box == count) {
            return true;
        }
        int places = 1 << count;
        for (int p = 0; p < places * places * places; p++) {
            int rest = p;
            boolean within = true;
            for (int a = 0; a < 3; a++) {
                int subset = rest % places;
                rest /= places;
                within &= (subset >> box & 1) == 0;
                double sum = 0;
                for (int i = 0; i < count; i++) {
                    sum += (subset >> i & 1) == 1 ? size[3 * i + a] : 0;
                }
                at[3 * box + a] = sum;
                within &= sum + size[3 * box + a] <= space[a];
            }
            if (within && apart(at, size, box) && pushed(space, size, at, box + 1)) {
                return true;
            }
        }
        return false;
    }

    private static boolean apart(double[] at, double[] size, int box) {
        for (int i = 0; i < box; i++) {
            boolean apart = false;
            for (int a = 0; a < 3; a++) {
                apart |= at[3 * i + a] + size[3 * i + a] <= at[3 * box + a]
                        || at[3 * box + a] + size[3 * box + a] <= at[3 * i + a];
            }
            if (!apart) {
                return false;
            }
        }
        return true;
    }
}
