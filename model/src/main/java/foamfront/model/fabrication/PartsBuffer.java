package foamfront.model.fabrication;

import foamfront.model.design.Covering;
import foamfront.model.design.Design;
import foamfront.model.parts.Board;
import foamfront.model.parts.Spar;
import java.util.ArrayList;
import java.util.List;

/** Parts of one aeroplane while they are collected; what they are collected in serves one aeroplane after the other. */
@SuppressWarnings("NullAway.Init") // begin() comes first
final class PartsBuffer {
    /** Width of packing tape, m (a pharmaceutical packaging specification for oriented-polypropylene tape: 48 ± 1 mm). */
    static final double TAPE_WIDTH = 0.048;

    Board board;
    double thickness;
    /** Usable sheet, along and across the grain, m. */
    double along;

    double across;
    private Covering covering;
    private Assembly assembly = Assembly.WING;
    private boolean fromBalancePoint;
    private final List<CutPart> cut = new ArrayList<>(24);
    private final List<StockPiece> stock = new ArrayList<>(4);

    /** Turns to another design, with no parts yet. */
    void begin(Design design) {
        board = design.board();
        thickness = board.thickness();
        along = SheetMargins.usable(board.length());
        across = SheetMargins.usable(board.width());
        covering = design.covering();
        assembly = Assembly.WING;
        fromBalancePoint = false;
        cut.clear();
        stock.clear();
    }

    /** What the parts added from now on belong to. */
    void turnTo(Assembly next) {
        assembly = next;
    }

    /** Whether the places of the parts added from now on count from the balance point instead of the nose. */
    void placeFromBalancePoint(boolean so) {
        fromBalancePoint = so;
    }

    /** Adds a skin, which carries the covering; {@code edges} are its edges worth taping, m. */
    void skin(
            String name,
            int count,
            Pattern pattern,
            double glue,
            double tape,
            double edges,
            double x,
            double y,
            double z) {
        cut.add(new CutPart(
                name,
                assembly,
                count,
                paired(count),
                true,
                pattern,
                glue,
                tape,
                covering(pattern, edges),
                x,
                y,
                z,
                fromBalancePoint));
    }

    /** Adds a bottom, its wet face laminated whatever else the covering asks. */
    void wet(String name, int count, Pattern pattern, double glue, double tape, double x, double y, double z) {
        double faces = Math.max(covering(pattern, 0), pattern.area() / TAPE_WIDTH);
        cut.add(new CutPart(name, assembly, count, false, true, pattern, glue, tape, faces, x, y, z, fromBalancePoint));
    }

    /** Wings and tails have handed halves; shells and floats are alike. */
    private boolean paired(int count) {
        return count == 2 && (assembly == Assembly.WING || assembly == Assembly.TAIL);
    }

    private double covering(Pattern pattern, double edges) {
        return switch (covering) {
            case BARE -> 0;
            case TAPED_EDGES -> edges;
            case ONE_FACE -> pattern.area() / TAPE_WIDTH;
            case BOTH_FACES -> 2 * pattern.area() / TAPE_WIDTH;
        };
    }

    /** Adds an inner part. */
    void part(
            String name,
            int count,
            boolean mirrored,
            boolean grained,
            Pattern pattern,
            double glue,
            double x,
            double y,
            double z) {
        cut.add(new CutPart(name, assembly, count, mirrored, grained, pattern, glue, 0, 0, x, y, z, fromBalancePoint));
    }

    /** Adds an inner part with tape on its joint, m on each. */
    void taped(
            String name,
            int count,
            boolean mirrored,
            Pattern pattern,
            double glue,
            double tape,
            double x,
            double y,
            double z) {
        cut.add(new CutPart(name, assembly, count, mirrored, false, pattern, glue, tape, 0, x, y, z, fromBalancePoint));
    }

    void stock(String name, Spar spar, double length, int count, double x, double y, double z) {
        stock.add(new StockPiece(name, assembly, spar, length, count, x, y, z));
    }

    /** How many pieces a length must be cut into to come out of the sheet. */
    int pieces(double length) {
        return Math.max(1, (int) Math.ceil(length / along - 1e-9));
    }

    /**
     * Length of piece {@code i} of {@code pieces}: whole sheets first, which nests best, and a rest no shorter than a
     * tenth of one.
     */
    double pieceLength(double length, int pieces, int i) {
        double rest = Math.max(length - (pieces - 1) * along, Math.min(0.1 * along, length / pieces));
        return i == pieces - 1 ? rest : (length - rest) / (pieces - 1);
    }

    PartsList list() {
        return new PartsList(cut, stock);
    }
}
