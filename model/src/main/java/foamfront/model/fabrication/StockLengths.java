package foamfront.model.fabrication;

import foamfront.model.parts.Spar;
import java.util.Arrays;
import java.util.List;

/**
 * How many stock lengths a list of pieces takes: first fit in decreasing order (at most 11/9 of the best number and 2/3 more;
 * G. Dósa, "The tight bound of first fit decreasing bin-packing algorithm", 2007, from memory). A piece longer than the stock is
 * spliced from whole lengths and a rest.
 */
final class StockLengths {
    private StockLengths() {}

    /** Lengths of the same spar as piece {@code first} taken by it and all later pieces. */
    static int needed(List<StockPiece> pieces, int first) {
        Spar spar = pieces.get(first).spar();
        double[] sorted = new double[total(pieces, first, spar)];
        int n = 0;
        int whole = 0;
        for (int i = first; i < pieces.size(); i++) {
            StockPiece piece = pieces.get(i);
            if (!piece.spar().equals(spar)) {
                continue;
            }
            int full = (int) Math.floor(piece.length() / spar.length());
            whole += full * piece.count();
            for (int j = 0; j < piece.count(); j++) {
                sorted[n++] = piece.length() - full * spar.length();
            }
        }
        Arrays.sort(sorted);
        return whole + firstFit(sorted, spar.length());
    }

    private static int total(List<StockPiece> pieces, int first, Spar spar) {
        int n = 0;
        for (int i = first; i < pieces.size(); i++) {
            n += pieces.get(i).spar().equals(spar) ? pieces.get(i).count() : 0;
        }
        return n;
    }

    private static int firstFit(double[] ascending, double stock) {
        double[] room = new double[ascending.length];
        int open = 0;
        for (int i = ascending.length - 1; i >= 0; i--) {
            double piece = ascending[i];
            if (piece <= 0) {
                continue;
            }
            int at = 0;
            while (at < open && room[at] < piece) {
                at++;
            }
            if (at == open) {
                room[open++] = stock;
            }
            room[at] -= piece;
        }
        return open;
    }
}
