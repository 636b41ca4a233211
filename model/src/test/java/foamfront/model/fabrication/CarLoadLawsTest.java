package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.airframe.Airframe;
import foamfront.model.mission.CarSpace;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CarLoadLawsTest {
    private static final double ROUNDING = 1e-9;

    /** What the grade of an aslant piece may be off by, m. */
    private static final double FINE = 3e-4;

    /**
     * The trainer assembled is 0.89 by 1.2 by 0.24 m ({@link PackedBoxesTest}). Straight in 0.4 of height it leaves 0.16. 1.2 by 0.24
     * turns in 1.15 by (2 · 1.2 · 0.24 · 1.15 + (1.2² − 0.24²) √(1.2² + 0.24² − 1.15²)) / (1.2² + 0.24²) = 0.829, which leaves 0. In
     * 0.2 nothing 0.24 thick goes in, however turned.
     */
    @ParameterizedTest(name = "{0} by {1} by {2} leaves {3}")
    @CsvSource({"1.5, 1.3, 0.4, 0.16", "1.15, 0.9, 0.83, 0", "3, 1.3, 0.2, -0.04"})
    void onePieceIsAskedAlone(double length, double width, double height, double left) {
        CarSpace car = new CarSpace(length, width, height, true);
        Stowage stowage = Stowage.of(Airframe.of(Arrangements.of("trainer")), car);
        assertThat(stowage.pieces()).hasSize(1);
        assertThat(stowage.margin()).isCloseTo(left, within(ROUNDING));
    }

    /** Layers across every axis, each piece straight or on any of its sides: 4ⁿ · 3 choices, the straight one among them. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {5, 6})
    void noOtherChoiceOfLayersLeavesMore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int gained = 0;
        for (int n = 0; n < 1500; n++) {
            CarLoad load = new CarLoad();
            CarSpace car = car(random);
            fill(load, random);
            load.pack(car);
            double straight = layered(car, load.pieces.list(), 0, 0);
            double best = straight;
            int choices = 1 << (2 * load.pieces.count());
            for (int axis = 0; axis < 3 && straight < 0; axis++) {
                for (int choice = 1; choice < choices; choice++) {
                    best = Math.max(best, layered(car, load.pieces.list(), axis, choice));
                }
            }
            assertThat(load.margin()).isCloseTo(best, within(FINE));
            gained += best > straight + FINE ? 1 : 0;
        }
        assertThat(gained).isGreaterThan(100);
    }

    /** What a choice leaves: of each piece two bits, 0 straight, otherwise one more than the side across its layer. */
    private static double layered(CarSpace car, List<Piece> pieces, int axis, int choice) {
        double[] space = {car.length(), car.width(), car.height()};
        BoxArrangement boxes = new BoxArrangement();
        boxes.begin(space[0], space[1], space[2]);
        double cap = choice == 0 ? Double.POSITIVE_INFINITY : 0;
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            double[] sides = {piece.length(), piece.breadth(), piece.height()};
            boxes.add(sides[0], sides[1], sides[2]);
            int side = ((choice >> (2 * i)) & 3) - 1;
            if (side >= 0) {
                boxes.lay(i, axis, side);
                cap = Math.min(
                        cap,
                        turned(
                                space[(axis + 1) % 3],
                                space[(axis + 2) % 3],
                                sides[(side + 1) % 3],
                                sides[(side + 2) % 3]));
            }
        }
        return Math.min(cap, boxes.margin());
    }

    /** By how much, 0 at most, p by q must change to turn in u by v. */
    private static double turned(double u, double v, double p, double q) {
        double fits = -Math.max(p, q);
        double large = 0;
        for (int i = 0; i < 40; i++) {
            double middle = 0.5 * (fits + large);
            if (Room.flat(u, v, Math.max(0, p + middle), Math.max(0, q + middle))) {
                fits = middle;
            } else {
                large = middle;
            }
        }
        return fits;
    }

    /**
     * A wing 1.15 m by 0.2 m turns in 1.0 m by (2 · 1.15 · 0.2 · 1 + (1.15² − 0.2²) √(1.15² + 0.2² − 1)) / (1.15² + 0.2²) = 0.905 m, and 50 mm thick
     * leaves the body the rest of the height.
     */
    @Test
    void aWingThatOnlyGoesInAslantLeavesABodyTheRestOfTheHeight() {
        assertThat(margin(new CarSpace(1.0, 0.92, 0.301, false), 0.9, 0.4, 0.25, 1.15, 0.2, 0.05))
                .isZero();
        assertThat(margin(new CarSpace(1.0, 0.92, 0.295, false), 0.9, 0.4, 0.25, 1.15, 0.2, 0.05))
                .isCloseTo(-0.0025, within(FINE));
        // Two halves as long lie aslant on each other.
        assertThat(margin(new CarSpace(1.0, 0.92, 0.351, false), 0.9, 0.4, 0.25, 1.15, 0.2, 0.05, 1.15, 0.2, 0.05))
                .isZero();
        assertThat(margin(new CarSpace(1.0, 0.92, 0.34, false), 0.9, 0.4, 0.25, 1.15, 0.2, 0.05, 1.15, 0.2, 0.05))
                .isCloseTo(-0.01 / 3, within(FINE));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2})
    void whatIsStowedIsInsideAndApart(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] kinds = new int[4];
        for (int n = 0; n < 4000; n++) {
            CarLoad load = new CarLoad();
            CarSpace car = car(random);
            fill(load, random);
            load.pack(car);
            Stowage stowage = load.stowage(car);
            assertThat(stowage.margin()).isEqualTo(load.margin());
            assertThat(stowage.longest()).isEqualTo(load.longest());
            double change = Math.min(0, load.margin());
            boolean aslant = false;
            for (int i = 0; i < stowage.pieces().size(); i++) {
                Stowed one = stowage.pieces().get(i);
                aslant |= one.aslant();
                inside(one, car, change);
                for (int j = 0; j < i; j++) {
                    assertThat(apart(one, stowage.pieces().get(j))).isTrue();
                }
            }
            kinds[(aslant ? 2 : 0) + (load.margin() >= 0 ? 1 : 0)]++;
        }
        assertThat(Arrays.stream(kinds).min().orElseThrow()).isGreaterThan(20);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {3, 4})
    void piecesTogetherNeverLeaveMoreThanOneAloneAndALargerCarNeverLess(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int n = 0; n < 3000; n++) {
            CarLoad load = new CarLoad();
            CarSpace car = car(random);
            fill(load, random);
            load.pack(car);
            double margin = load.margin();
            for (Piece piece : load.pieces.list()) {
                assertThat(Room.beside(car, piece.length(), piece.breadth(), piece.height()))
                        .isGreaterThanOrEqualTo(margin - FINE);
            }
            load.pack(new CarSpace(car.width(), car.height(), car.length(), false));
            assertThat(load.margin()).isCloseTo(margin, within(FINE));
            double more = random.nextDouble(0.2);
            load.pack(new CarSpace(car.length() + more, car.width(), car.height(), false));
            assertThat(load.margin()).isGreaterThanOrEqualTo(margin - FINE);
        }
    }

    private static void fill(CarLoad load, SplittableRandom random) {
        load.pieces.clear();
        load.pieces.add("body", random.nextDouble(0.6, 1.2), random.nextDouble(0.2, 0.5), random.nextDouble(0.1, 0.3));
        double length = random.nextDouble(0.5, 1.5);
        double chord = random.nextDouble(0.12, 0.3);
        double height = random.nextDouble(0.02, 0.1);
        load.pieces.add("wing half", length, chord, height);
        if (random.nextBoolean()) {
            load.pieces.add("wing half", length, chord, height);
        }
    }

    private static CarSpace car(SplittableRandom random) {
        return new CarSpace(random.nextDouble(0.9, 1.4), random.nextDouble(0.5, 1), random.nextDouble(0.3, 0.6), false);
    }

    /** A straight piece takes its own sides; one aslant has one of them across its layer, and the others turn within that. */
    private static void inside(Stowed lies, CarSpace car, double change) {
        double[] space = {car.length(), car.width(), car.height()};
        double[] sides = {
            lies.piece().length() + change,
            lies.piece().breadth() + change,
            lies.piece().height() + change
        };
        for (int a = 0; a < 3; a++) {
            assertThat(lies.from(a)).isNotNegative();
            assertThat(lies.from(a) + lies.takes(a)).isLessThanOrEqualTo(space[a] + ROUNDING);
            sides[a] = Math.max(0, sides[a]);
        }
        if (lies.aslant()) {
            int across = lies.layer();
            boolean turns = false;
            for (int k = 0; k < 3; k++) {
                turns |= Math.abs(sides[k] - lies.takes(across)) < ROUNDING
                        && Room.flat(
                                lies.takes((across + 1) % 3) + ROUNDING,
                                lies.takes((across + 2) % 3) + ROUNDING,
                                sides[(k + 1) % 3],
                                sides[(k + 2) % 3]);
            }
            assertThat(turns).isTrue();
        } else {
            double[] takes = {lies.takes(0), lies.takes(1), lies.takes(2)};
            assertThat(takes[2]).isCloseTo(sides[lies.up()], within(ROUNDING));
            Arrays.sort(takes);
            Arrays.sort(sides);
            assertThat(takes).containsExactly(sides, within(ROUNDING));
        }
    }

    private static boolean apart(Stowed one, Stowed two) {
        for (int a = 0; a < 3; a++) {
            if (one.before(two, a) || two.before(one, a)) {
                return true;
            }
        }
        return false;
    }

    private static double margin(CarSpace car, double... sides) {
        CarLoad load = new CarLoad();
        load.pieces.clear();
        for (int i = 0; i < sides.length; i += 3) {
            load.pieces.add("piece", sides[i], sides[i + 1], sides[i + 2]);
        }
        load.pack(car);
        return load.margin();
    }
}
