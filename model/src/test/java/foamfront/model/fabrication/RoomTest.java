package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.mission.CarSpace;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoomTest {
    private static final CarSpace CAR = new CarSpace(1.0, 0.5, 0.4, false);

    @Test
    void alongTheSidesTheTightestDifferenceIsLeft() {
        assertThat(Room.beside(CAR, 0.3, 0.9, 0.45)).isCloseTo(0.05, within(1e-12));
        assertThat(Room.beside(CAR, 0.45, 0.3, 0.9)).isCloseTo(0.05, within(1e-12));
        assertThat(Room.beside(CAR, 0.6, 0.6, 0.6)).isCloseTo(-0.2, within(1e-4));
    }

    /**
     * Known answers: a line fits a diagonal, √(1 + 0.25) = 1.1180; a square's greatest strip at 45° is √2 a − q long, as
     * extents (p + q) / √2 = a show.
     */
    @ParameterizedTest(name = "{2} by {3} in {0} by {1}")
    @CsvSource({
        "1.0, 0.5, 1.1180, 0.00001, true",
        "1.0, 0.5, 1.1181, 0.00001, false",
        "1.0, 1.0, 1.2142, 0.2, true",
        "1.0, 1.0, 1.2143, 0.2, false",
        "0.5, 1.0, 0.5, 1.0, true",
        "0.5, 1.0, 0.501, 1.0, false"
    })
    void aRectangleGoesIntoAnotherAslant(double u, double v, double p, double q, boolean fits) {
        assertThat(Room.flat(u, v, p, q)).isEqualTo(fits);
    }

    /** A rectangle at angle t spans p cos t + q sin t by p sin t + q cos t: tried at 20 000 angles. */
    @ParameterizedTest(name = "seed {0}")
    @CsvSource({"1", "2", "3"})
    void agreesWithTurningInSmallSteps(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 60; i++) {
            double a = random.nextDouble(0.4, 1.2);
            double b = random.nextDouble(0.3, a);
            double p = random.nextDouble(0.2, 1.5);
            double q = random.nextDouble(0.02, p);
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k <= 20_000; k++) {
                double t = 0.5 * Math.PI * k / 20_000;
                double wide = p * StrictMath.cos(t) + q * StrictMath.sin(t);
                double deep = p * StrictMath.sin(t) + q * StrictMath.cos(t);
                least = Math.min(least, Math.max(wide - a, deep - b));
            }
            if (Math.abs(least) > 1e-4) {
                assertThat(Room.flat(a, b, p, q))
                        .as(a + " " + b + " " + p + " " + q)
                        .isEqualTo(least < 0);
            }
        }
    }

    @Test
    void whatOnlyGoesInAslantLeavesNothingAndGradesOnFromThere() {
        // 1.05 m by 50 mm in the face of 1.0 by 0.5 m
        assertThat(Room.beside(CAR, 1.05, 0.05, 0.05)).isZero();
        double before = 0;
        for (double length = 1.06; length < 1.5; length += 0.02) {
            double room = Room.beside(CAR, length, 0.1, 0.1);
            assertThat(room).isLessThanOrEqualTo(before + 1e-4);
            before = room;
        }
        assertThat(before).isBetween(-0.5, -0.3);
    }

    /** A rod goes along the space's diagonal, √(1 + 0.25 + 0.16) = 1.18743, and along no face's, 1.1180. */
    @ParameterizedTest(name = "{0} m")
    @CsvSource({"1.186, true", "1.1875, false"})
    void aRodLiesAlongTheDiagonalOfTheSpace(double length, boolean fits) {
        assertThat(Room.beside(CAR, length, 1e-5, 1e-5) >= 0).isEqualTo(fits);
        assertThat(Room.beside(CAR, 1e-5, length, 1e-5) >= 0).isEqualTo(fits);
    }

    /**
     * A square rod along a cube's diagonal: its long side takes p / √3 of each axis, its section the rest, least at the best of
     * 100 000 turns about the diagonal.
     */
    @Test
    void aThickRodAlongTheDiagonalIsAsLongAsTurningItInSmallStepsShows() {
        double c = 0.1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 100_000; k++) {
            double t = Math.PI * k / 100_000;
            double worst = 0;
            for (int axis = 0; axis < 3; axis++) {
                // The axis seen along the diagonal lies √(2/3) long at 120 degrees from the others.
                double s = t + 2 * Math.PI * axis / 3;
                worst = Math.max(worst, Math.abs(StrictMath.cos(s)) + Math.abs(StrictMath.sin(s)));
            }
            least = Math.min(least, c * Math.sqrt(2.0 / 3) * worst);
        }
        double longest = Math.sqrt(3) * (1 - least);
        CarSpace cube = new CarSpace(1, 1, 1, false);
        assertThat(Room.beside(cube, longest - 0.003, c, c)).isZero();
        assertThat(longest).isGreaterThan(1.1 * (Math.sqrt(2) - c));
    }

    /**
     * Boxes like wings and bodies in cars, turned every way: attitudes at random and a climb by small random turns from the best of
     * them. Whatever goes in so with {@link AnyAttitude#TOLERANCE} to spare is let in, and what is let in only so is found by a longer climb.
     */
    @ParameterizedTest(name = "seed {0}")
    @CsvSource({"1", "2", "3"})
    void whatGoesInAnyhowIsLetIn(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int fits = 0;
        for (int i = 0; i < 150; i++) {
            double[] space = {random.nextDouble(0.9, 1.4), random.nextDouble(0.6, 1), random.nextDouble(0.4, 0.6)};
            double[] box = {random.nextDouble(0.5, 2), random.nextDouble(0.12, 0.5), random.nextDouble(0.03, 0.25)};
            CarSpace car = new CarSpace(space[0], space[1], space[2], false);
            if (best(space, box, random, AnyAttitude.TOLERANCE) > AnyAttitude.TOLERANCE) {
                fits++;
                assertThat(Room.beside(car, box[0], box[1], box[2])).isNotNegative();
            }
        }
        assertThat(fits).isGreaterThan(50);
    }

    /** Boxes that fit turned about all three axes and not about one: made by shrinking what hardly does not. */
    @Test
    void whatIsLetInOnlyTurnedAllWaysReallyGoesIn() {
        SplittableRandom random = new SplittableRandom(1);
        AnyAttitude attitude = new AnyAttitude();
        int only = 0;
        for (int i = 0; i < 6000; i++) {
            double[] space = {random.nextDouble(0.9, 1.4), random.nextDouble(0.6, 1), random.nextDouble(0.4, 0.6)};
            double[] box = {random.nextDouble(0.5, 2), random.nextDouble(0.12, 0.5), random.nextDouble(0.03, 0.25)};
            CarSpace car = new CarSpace(space[0], space[1], space[2], false);
            boolean any = attitude.fits(car, box[0], box[1], box[2]);
            double room = Room.beside(car, box[0], box[1], box[2]);
            if (any && !Room.aslant(car, box[0], box[1], box[2])) {
                only++;
                assertThat(room).isZero();
                double most = Double.NEGATIVE_INFINITY;
                for (int climb = 0; climb < 8; climb++) {
                    most = Math.max(most, best(space, box, random, 0));
                }
                assertThat(most).isNotNegative();
            }
        }
        assertThat(only).isGreaterThan(4);
    }

    /** What is missing is exact to 2 mm: a box smaller by it all round goes in, one smaller by 4 mm less does not. */
    @ParameterizedTest(name = "seed {0}")
    @CsvSource({"4", "5"})
    void theGradeIsWhatAllSidesAreTooLong(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        AnyAttitude attitude = new AnyAttitude();
        int graded = 0;
        for (int i = 0; i < 2000; i++) {
            CarSpace car = new CarSpace(
                    random.nextDouble(0.9, 1.4), random.nextDouble(0.6, 1), random.nextDouble(0.4, 0.6), false);
            double a = random.nextDouble(0.5, 2);
            double b = random.nextDouble(0.15, 0.5);
            double c = random.nextDouble(0.1, 0.25);
            double room = Room.beside(car, a, b, c);
            if (room < 0 && room > -0.09) {
                graded++;
                double in = room - AnyAttitude.TOLERANCE;
                double out = room + 4 * AnyAttitude.TOLERANCE;
                assertThat(attitude.fits(car, a + in, b + in, c + in)).isTrue();
                assertThat(out < 0 && attitude.fits(car, a + out, b + out, c + out))
                        .isFalse();
            }
        }
        assertThat(graded).isGreaterThan(50);
    }

    private static double best(double[] space, double[] box, SplittableRandom random, double enough) {
        double[] best = {1, 0, 0, 0};
        double most = room(space, box, best);
        for (int k = 0; k < 3000 && most <= enough; k++) {
            double[] q = turn(random, new double[4], 1);
            double room = room(space, box, q);
            if (room > most) {
                most = room;
                best = q;
            }
        }
        for (double step = 0.1; step > 1e-4 && most <= enough; step *= 0.7) {
            for (int k = 0; k < 100; k++) {
                double[] q = turn(random, best, step);
                double room = room(space, box, q);
                if (room > most) {
                    most = room;
                    best = q;
                }
            }
        }
        return most;
    }

    private static double[] turn(SplittableRandom random, double[] from, double step) {
        double[] q = from.clone();
        for (int i = 0; i < 4; i++) {
            q[i] += step * gaussian(random);
        }
        double size = Math.sqrt(q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3]);
        for (int i = 0; i < 4; i++) {
            q[i] /= size;
        }
        return q;
    }

    /** Corners of the box turned by q v q*, Rodrigues' way, and the space they take. */
    private static double room(double[] space, double[] box, double[] q) {
        double least = Double.POSITIVE_INFINITY;
        for (int axis = 0; axis < 3; axis++) {
            double reach = 0;
            for (int corner = 0; corner < 4; corner++) {
                double[] v = {box[0], (corner & 1) == 0 ? box[1] : -box[1], (corner & 2) == 0 ? box[2] : -box[2]};
                double[] t = cross(q, v);
                double[] u = cross(q, t);
                reach = Math.max(reach, Math.abs(v[axis] + 2 * q[0] * t[axis] + 2 * u[axis]));
            }
            least = Math.min(least, space[axis] - reach);
        }
        return least;
    }

    /** Sum of twelve even draws: near enough (SplittableRandom has no other). */
    private static double gaussian(SplittableRandom random) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }

    private static double[] cross(double[] q, double[] v) {
        return new double[] {q[2] * v[2] - q[3] * v[1], q[3] * v[0] - q[1] * v[2], q[1] * v[1] - q[2] * v[0]};
    }
}
