package foamfront.optimizer.cli;

import foamfront.model.fabrication.Piece;
import foamfront.model.fabrication.Stowage;
import foamfront.model.fabrication.Stowed;
import foamfront.model.mission.CarSpace;
import foamfront.model.units.Unit;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.front.Table.Column;
import java.util.ArrayList;
import java.util.List;

/** What goes into the car, how large each piece is and how all lie there together. */
final class CarText {
    private CarText() {}

    /** Of an aeroplane with so many propellers. */
    static String of(Stowage stowage, int propellers, Show show) {
        Unit unit = show.unit(Unit.MILLIMETRE);
        CarSpace car = stowage.car();
        List<List<String>> rows = new ArrayList<>();
        for (Stowed lies : stowage.pieces()) {
            Piece piece = lies.piece();
            rows.add(List.of(
                    piece.name(),
                    show.number(piece.length(), unit),
                    show.number(piece.breadth(), unit),
                    show.number(piece.height(), unit)));
        }
        String in = " [" + unit.symbol() + "]";
        return "\nIn the car, " + show.number(car.length(), unit) + " x " + show.number(car.width(), unit) + " x "
                + show.number(car.height(), unit) + " " + unit.symbol() + " ("
                + (car.assembled() ? "assembled" : "taken apart as far as it comes; " + apart(propellers)) + ")\n"
                + new Table(
                                List.of(
                                        Column.text("piece"),
                                        Column.number("length" + in),
                                        Column.number("breadth" + in),
                                        Column.number("height" + in)),
                                rows)
                        .text()
                + verdict(stowage, show.number(Math.abs(stowage.margin()), unit) + " " + unit.symbol());
    }

    private static String apart(int propellers) {
        String off = propellers == 0 ? "" : propellers == 1 ? "propeller, " : "propellers, ";
        return off + "battery and payload travel apart";
    }

    private static String verdict(Stowage stowage, String margin) {
        boolean one = stowage.pieces().size() == 1;
        String sides = one ? "every side of it" : "every side of every piece";
        if (stowage.margin() < 0) {
            return (one ? "It does" : "They do") + " not go in" + (one ? "" : " together") + ": " + sides
                    + " would have to be " + margin + " shorter, then: " + stowage.words() + ".\n";
        }
        return (one ? "It goes" : "They go") + " in so: " + stowage.words() + left(stowage, sides, margin) + ".\n";
    }

    /** What is left, of which one that lies aslant says nothing. */
    private static String left(Stowage stowage, String sides, String margin) {
        if (stowage.margin() > 0) {
            return "; " + sides + " could be " + margin + " longer";
        }
        return stowage.pieces().stream().anyMatch(Stowed::aslant) ? "" : "; with nothing to spare";
    }
}
