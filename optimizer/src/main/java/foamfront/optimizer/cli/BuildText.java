package foamfront.optimizer.cli;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.fabrication.SheetPlan;
import foamfront.model.fabrication.ThoroughNesting;
import foamfront.model.mass.Balance;
import foamfront.model.mass.Inertia;
import foamfront.model.mishap.Mishap;
import foamfront.model.parts.Board;
import foamfront.model.structure.ControlThrow;
import foamfront.model.units.Numbers;
import foamfront.model.units.Unit;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.front.Table;
import foamfront.optimizer.front.Table.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the bench and the flight line want to know of one design, in sentences and one table. */
final class BuildText {
    /** Orders tried for the plan of one aeroplane: some tens of milliseconds. */
    private static final int TRIES = 4000;

    private final Appraisal appraisal;
    private final Show show;
    private final StringBuilder out = new StringBuilder();

    private BuildText(Appraisal appraisal, Show show) {
        this.appraisal = appraisal;
        this.show = show;
    }

    static String of(Appraisal appraisal, Show show) {
        BuildText text = new BuildText(appraisal, show);
        text.out.append("\nOn the bench\n");
        text.mass();
        text.balance();
        text.inertia();
        text.sheets();
        text.mishap();
        text.controls();
        text.out.append(CarText.of(appraisal.stowage(), text.propellers(), show));
        return text.out.toString();
    }

    private int propellers() {
        boolean open = appraisal.airframe().stations().shaft().radius() > 0;
        return open ? appraisal.airframe().design().power().motors() : 0;
    }

    private String grams(double mass) {
        Unit unit = show.unit(Unit.GRAM);
        return Numbers.fixed(unit.fromSi(mass), show.metric() ? 0 : 1) + " " + unit.symbol();
    }

    private String length(double metres) {
        Unit unit = show.unit(Unit.MILLIMETRE);
        return show.number(metres, unit) + " " + unit.symbol();
    }

    private void mass() {
        double mass = appraisal.balance().mass();
        double spread = appraisal.massSpread();
        out.append("It will weigh ")
                .append(grams(mass - spread))
                .append(" to ")
                .append(grams(mass + spread))
                .append(" in four builds of five: glue and tape differ from builder to builder.\n");
    }

    private void balance() {
        Balance balance = appraisal.balance();
        if (balance.missingTravel() > 0) {
            boolean nose = balance.noseBallast() > 0;
            out.append("It does not balance: the battery would have to lie ")
                    .append(length(balance.missingTravel()))
                    .append(" outside its bay; ")
                    .append(grams(nose ? balance.noseBallast() : balance.tailBallast()))
                    .append(nose ? " at the nose" : " at the end of the body")
                    .append(" would do it instead.\n");
        }
    }

    private void inertia() {
        Inertia inertia = Inertia.of(appraisal.masses(), appraisal.balance());
        out.append("Moments of inertia about the balance point: roll ")
                .append(Numbers.significant(inertia.xx(), 3))
                .append(", pitch ")
                .append(Numbers.significant(inertia.yy(), 3))
                .append(", yaw ")
                .append(Numbers.significant(inertia.zz(), 3))
                .append(" kg m2.\n");
    }

    private void sheets() {
        Board board = appraisal.airframe().design().board();
        SheetPlan plan = ThoroughNesting.of(appraisal.parts(), board, 1, TRIES);
        out.append("Sheets of ")
                .append(board.name())
                .append(": ")
                .append(plan.sheets())
                .append(
                        plan.sheets() > plan.bound()
                                ? "; no plan can do with fewer than " + plan.bound()
                                : ", the fewest possible")
                .append("; parts cover ")
                .append(Numbers.fixed(100 * plan.usedArea(), 0))
                .append(" % of them.\n");
    }

    private void mishap() {
        Mishap mishap = appraisal.mishap();
        out.append("A landing on the nose at stall speed hits the ")
                .append(
                        mishap.first() == Mishap.Hit.LOAD
                                ? "load"
                                : mishap.first().words())
                .append(" first and crushes ")
                .append(length(mishap.depth()));
        if (mishap.propellers() > 0) {
            out.append(mishap.propellers() == 1 ? "; a propeller breaks" : "; both propellers break");
        }
        out.append(
                mishap.battery()
                        ? "; the battery is reached and must be replaced"
                        : "; the battery is out of its reach");
        if (!Double.isNaN(mishap.room())) {
            out.append(
                    mishap.loads() ? "; the load is reached" : "; the load has " + length(mishap.room()) + " to spare");
        }
        out.append(mishap.shed() ? "; the wing slides off and costs its bands" : "; the wing tears its saddle");
        out.append(mishap.swapped() ? ". The nose is changed for a spare" : ". The nose is built anew")
                .append(": ")
                .append(show.currency().amount(mishap.cost()))
                .append(" and ")
                .append(Numbers.fixed(mishap.time() / 60, 0))
                .append(" min.\n");
    }

    private void controls() {
        double torque = appraisal.airframe().design().radio().servo().torque();
        List<List<String>> rows = new ArrayList<>();
        for (ControlThrow control : appraisal.controls()) {
            rows.add(List.of(
                    control.kind().name().toLowerCase(Locale.ROOT),
                    Numbers.fixed(100 * control.area(), 2),
                    Numbers.fixed(100 * control.share(), 0),
                    Numbers.fixed(Unit.DEGREE.fromSi(control.first()), 0),
                    show.number(control.atTrailingEdge(control.first()), show.unit(Unit.MILLIMETRE)),
                    Numbers.fixed(Unit.DEGREE.fromSi(control.full()), 0),
                    show.number(control.atTrailingEdge(control.full()), show.unit(Unit.MILLIMETRE)),
                    Numbers.fixed(1000 * control.hingeMoment(), 0),
                    Numbers.fixed(torque / control.hingeMoment(), 1)));
        }
        String unit = show.unit(Unit.MILLIMETRE).symbol();
        out.append("\nControls; throws each way, first flight with ")
                .append(ControlThrow.EXPO)
                .append(" % expo\n")
                .append(new Table(
                                List.of(
                                        Column.text("control"),
                                        Column.number("area [dm2]"),
                                        Column.number("of its surface [%]"),
                                        Column.number("first [deg]"),
                                        Column.number("first [" + unit + "]"),
                                        Column.number("full [deg]"),
                                        Column.number("full [" + unit + "]"),
                                        Column.number("hinge moment of a side [mN m]"),
                                        Column.number("servo over it")),
                                rows)
                        .text());
    }
}
