package foamfront.model.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The catalogue's spars as beams. */
class StockSparTest {
    /** The table prints three or four digits; its coarsest entry, 0.049 mm⁴, is good to 1 %. */
    private static final double PRINTED = 0.6;

    private static final double MILLI = 1e-3;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "stock-spars.csv")
    void secondMomentStiffnessMassAndStrengthFollowTheTable(
            String name,
            Spar.Shape shape,
            double width,
            double height,
            double bore,
            double modulus,
            double density,
            double second,
            double stiffness,
            double linearMass,
            @Nullable Double stress,
            @Nullable Double moment) {
        Spar spar = new Spar(
                name,
                shape,
                width * MILLI,
                height * MILLI,
                bore * MILLI,
                modulus * 1e9,
                stress == null ? 1e9 : stress * 1e6,
                density,
                1,
                1,
                Provenance.INVENTED);
        assertThat(spar.secondMoment() * 1e12).isCloseTo(second, withinPercentage(PRINTED));
        assertThat(spar.modulus() * spar.secondMoment()).isCloseTo(stiffness, withinPercentage(PRINTED));
        assertThat(spar.linearMass() * 1e3).isCloseTo(linearMass, withinPercentage(PRINTED));
        if (moment != null) {
            assertThat(spar.moment()).isCloseTo(moment, withinPercentage(PRINTED));
        }
    }
}
