package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.Arrangements;
import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Surface;
import foamfront.model.factors.Factors;
import foamfront.model.mass.Examples;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold between the reserves of one airframe under two loads, over two hundred designs of every arrangement. */
class LoadRelationsLawsTest {
    private static final int CASES = 200;

    /** Linear in the load but for rounding, per cent. */
    private static final double ROUNDING = 1e-9;

    /** k times the load leaves a k-th of the reserve and bends k times as far; the load factor and the torsion stay. */
    @Test
    void kTimesTheLoadLeavesAKthOfTheReserve() {
        for (int seed = 0; seed < CASES; seed++) {
            Airframe airframe = Airframe.of(Arrangements.near(seed));
            SplittableRandom random = new SplittableRandom(seed);
            double k = random.nextDouble(0.3, 4);
            double mass = random.nextDouble(1, 3);
            double relief = random.nextDouble(0, 0.4);
            StructureMargins one = margins(airframe, mass, relief * mass);
            StructureMargins more = margins(airframe, k * mass, k * relief * mass);
            assertThat(more.limitLoad()).isEqualTo(one.limitLoad());
            assertThat(more.wingBending()).isCloseTo(share(one.wingBending(), k), withinPercentage(ROUNDING));
            assertThat(more.sparShear()).isCloseTo(share(one.sparShear(), k), withinPercentage(ROUNDING));
            if (one.webGlue() < StructureMargins.UNLOADED) {
                assertThat(more.webGlue()).isCloseTo(share(one.webGlue(), k), withinPercentage(ROUNDING));
            }
            assertThat(more.tipDeflection()).isCloseTo(k * one.tipDeflection(), withinPercentage(ROUNDING));
            assertThat(more.divergenceSpeed()).isEqualTo(one.divergenceSpeed());
        }
    }

    /** A reserve is told up to what counts as unloaded. */
    private static double share(double reserve, double k) {
        return Math.min(StructureMargins.UNLOADED, reserve / k);
    }

    /** Fast enough for the pull-up and no gust, so that the load factor is the same whatever the mass. */
    private static StructureMargins margins(Airframe airframe, double mass, double wingMass) {
        FlightLoads loads = new FlightLoads(mass, wingMass, 0.03, 1.225, 7, 12, 20, 0, 4.5, 0, 0);
        int wings = (int) airframe.surfaces().stream().filter(Surface::isWing).count();
        List<SpanLoad> spans = Collections.nCopies(wings, SpanLoad.elliptic(0.5 * airframe.span(), 0.5 / wings));
        return Structure.margins(airframe, spans, loads, Examples.GLUE, Factors.NOMINAL);
    }

    /** An elliptic half load acts at 4/3π = 0.42441 of the semispan: M = 0.42441 (L/2)(b/2), derived from the ellipse. */
    @Test
    void anEllipticLoadActsAtFortyTwoPerCentOfTheSemispan() {
        for (int seed = 0; seed < CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double semispan = random.nextDouble(0.2, 2);
            double share = random.nextDouble(0.1, 0.6);
            SpanLoad load = SpanLoad.elliptic(semispan, share);
            double force = 0;
            double moment = 0;
            for (int i = 0; i < load.strips(); i++) {
                force += load.share(i);
                moment += load.share(i) * load.y(i);
            }
            assertThat(force).isCloseTo(share, within(1e-12));
            assertThat(moment / (share * semispan)).isCloseTo(4 / (3 * Math.PI), within(1e-12));
            assertThat(moment / (share * semispan)).isCloseTo(0.42441, within(5e-6));
        }
    }
}
