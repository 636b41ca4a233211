package foamfront.model.fabrication;

import foamfront.model.design.WingSpar;
import java.util.List;

/**
 * A piece of wing with the seat of its bought spar: two half-depth cuts the spar's width apart on the inner face, the foam between
 * picked out (common practice). Its area is the piece's: what is picked out is not taken off.
 *
 * @param piece without it
 * @param spar its width, m
 */
public record SparSeat(Spanned piece, double spar) implements Pattern {
    /** The piece, with a seat where a bought spar runs along it. */
    static Pattern in(Spanned piece, WingSpar spar) {
        return spar instanceof WingSpar.Stock stock && piece.sparLine() > 0
                ? new SparSeat(piece, stock.spar().width())
                : piece;
    }

    @Override
    public double grooved() {
        return 2 * piece.sparLine();
    }

    @Override
    public List<PatternLine> lines() {
        List<PatternLine> lines = piece.lines();
        double ahead = piece.seatAhead(spar);
        for (PatternLine line : piece.sparLines()) {
            HingeGroove.add(lines, line, ahead + 0.5 * spar, ahead - 0.5 * spar, PatternLine.Kind.GROOVE);
        }
        return lines;
    }

    @Override
    public double length() {
        return piece.length();
    }

    @Override
    public double width() {
        return piece.width();
    }

    @Override
    public double pairWidth() {
        return piece.pairWidth();
    }

    @Override
    public double area() {
        return piece.area();
    }

    @Override
    public double cut() {
        return piece.cut();
    }

    @Override
    public double scored() {
        return piece.scored();
    }

    @Override
    public double bevelled() {
        return piece.bevelled();
    }

    @Override
    public double folded() {
        return piece.folded();
    }

    @Override
    public double taped() {
        return piece.taped();
    }

    @Override
    public int folds() {
        return piece.folds();
    }

    @Override
    public int bevels() {
        return piece.bevels();
    }

    @Override
    public Outline outline() {
        return piece.outline();
    }
}
