package foamfront.optimizer.search;

import io.jenetics.Chromosome;
import io.jenetics.DoubleGene;
import io.jenetics.util.DoubleRange;
import io.jenetics.util.ISeq;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * All choices of one design on the unit box, with what they decode to.
 *
 * <p>The library takes a gene's upper bound as excluded and replaces a design that touches it by a random one; the genes
 * shown to it therefore live on [0, nextUp(1)]. Kept as plain numbers: gene objects are made only when the library asks.
 */
final class UnitChromosome implements Chromosome<DoubleGene> {
    private static final DoubleRange UNIT = DoubleRange.of(0, Math.nextUp(1.0));

    private final double[] genes;
    private final double[] values;
    private final int niche;
    private final Operator origin;
    private final int hash;

    /** Takes the arrays over; they are never written again. */
    UnitChromosome(double[] genes, double[] values, int niche, Operator origin) {
        this.genes = genes;
        this.values = values;
        this.niche = niche;
        this.origin = origin;
        this.hash = hash(values);
    }

    /** All bits mixed, because whole numbers as doubles differ in a few high bits only. */
    static int hash(double[] values) {
        long mixed = 0;
        for (double value : values) {
            mixed = (mixed ^ Double.doubleToLongBits(value)) * 0x9E3779B97F4A7C15L;
            mixed ^= mixed >>> 32;
        }
        return (int) (mixed >>> 16);
    }

    /** Shared with the kernels of this package, which only read it. */
    double[] genes() {
        return genes;
    }

    /** The decoded design, shared likewise. */
    double[] values() {
        return values;
    }

    int niche() {
        return niche;
    }

    Operator origin() {
        return origin;
    }

    /** Two are equal where both decode to the same design, whatever the genes. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof UnitChromosome that && hash == that.hash && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public DoubleGene get(int index) {
        return DoubleGene.of(genes[index], UNIT);
    }

    @Override
    public int length() {
        return genes.length;
    }

    /** Decoding clips, so there is no invalid one. */
    @Override
    public boolean isValid() {
        return true;
    }

    /** Not needed: this package's variation makes designs through the {@link Schema}. */
    @Override
    public Chromosome<DoubleGene> newInstance(ISeq<DoubleGene> replaced) {
        throw new UnsupportedOperationException("a design is made by the schema, which decodes it");
    }

    @Override
    public Chromosome<DoubleGene> newInstance() {
        throw new UnsupportedOperationException("a design is made by the schema, which decodes it");
    }
}
