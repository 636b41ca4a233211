package foamfront.optimizer.fleet;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.design.Design;
import foamfront.model.fabrication.Assembly;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.fabrication.PartsList;
import foamfront.model.fabrication.SheetNester;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Owned;
import foamfront.model.parts.Board;
import foamfront.model.parts.Wheel;
import foamfront.optimizer.front.DesignColumns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a club buys for all of its aeroplanes together: sheets nested over the whole line-up, a shared part once, and the drawer
 * emptied once. Stock lengths are sawn aeroplane by aeroplane; servos of a shared wing are counted for each, since they mostly stay
 * with the receiver's leads (judgement).
 *
 * @param lines in the order in which the aeroplanes ask for them, boards first
 * @param apart cost of the same aeroplanes, each bought for by itself, with everything of its own and the whole drawer of its study, in their currency
 */
public record ShoppingList(List<Line> lines, double apart) {
    /**
     * One entry.
     *
     * @param quantity in sheets, pieces, metres of tape or kilograms of glue
     * @param bought how much of it is not in the drawer
     */
    public record Line(String item, double quantity, double bought, double cost) {}

    private static final Set<String> POWER = Set.of("motor", "propeller", "fan", "controller");

    public ShoppingList {
        lines = List.copyOf(lines);
    }

    /** Of everything bought, in the currency of all of them. */
    public double cost() {
        return lines.stream().mapToDouble(Line::cost).sum();
    }

    /** Everything that these aeroplanes ask for; the drawer holds the most of each part that any of their studies says. */
    public static ShoppingList of(List<Member> members) {
        Map<String, Double> prices = new HashMap<>();
        Map<String, Double> wanted = new LinkedHashMap<>();
        sheets(members, prices, wanted);
        double apart = 0;
        for (Member member : members) {
            apart += member.appraisal().bill().cost();
            for (BillOfMaterials.Line line : rest(member).lines()) {
                boolean shared = fitted(member).contains(line.item());
                if (line.quantity() > 0 && !shared) {
                    wanted.merge(line.item(), line.quantity(), Double::sum);
                    prices.put(line.item(), line.cost() / line.bought());
                }
            }
        }
        List<Line> lines = new ArrayList<>();
        wanted.forEach((item, quantity) -> {
            double bought = Math.max(0, quantity - owned(members, item));
            lines.add(new Line(item, quantity, bought, bought * prices.getOrDefault(item, 0.0)));
        });
        return new ShoppingList(lines, apart);
    }

    /** What one more aeroplane costs where the parts that it shares lie ready. */
    public static double besides(Member member) {
        PartsList own = own(member);
        int sheets = new SheetNester().sheets(own, member.design().board());
        BillOfMaterials bill =
                BillOfMaterials.of(member.appraisal().airframe(), own, sheets, member.mission(), Factors.NOMINAL);
        return bill.lines().stream()
                .filter(line -> !fitted(member).contains(line.item()))
                .mapToDouble(BillOfMaterials.Line::cost)
                .sum();
    }

    private static void sheets(List<Member> members, Map<String, Double> prices, Map<String, Double> wanted) {
        Set<Board> boards = new LinkedHashSet<>();
        members.forEach(member -> boards.add(member.design().board()));
        for (Board board : boards) {
            List<PartsList> parts = members.stream()
                    .filter(member -> member.design().board().equals(board))
                    .map(ShoppingList::own)
                    .toList();
            PartsList all = new PartsList(
                    parts.stream().flatMap(list -> list.cut().stream()).toList(), List.of());
            wanted.put(board.name(), (double) new SheetNester().sheets(all, board));
            prices.put(board.name(), board.price());
        }
    }

    /** All but the sheets, with nothing in the drawer. */
    private static BillOfMaterials rest(Member member) {
        Mission mission = member.mission();
        return BillOfMaterials.of(
                member.appraisal().airframe(),
                own(member),
                0,
                new Mission(mission.site(), mission.limits(), List.of(), mission.car(), mission.workshop()),
                Factors.NOMINAL);
    }

    /** Cut and sawn parts without those that another aeroplane lends. */
    private static PartsList own(Member member) {
        Appraisal appraisal = member.appraisal();
        Set<Assembly> lent = lent(member);
        return new PartsList(
                appraisal.parts().cut().stream()
                        .filter(part -> !lent.contains(part.assembly()))
                        .toList(),
                appraisal.parts().stock().stream()
                        .filter(piece -> !lent.contains(piece.assembly()))
                        .toList());
    }

    private static Set<Assembly> lent(Member member) {
        List<String> shared = shared(member);
        return Arrays.stream(Assembly.values())
                .filter(assembly -> shared.contains(key(assembly)))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Assembly.class)));
    }

    /** What a design file calls it. */
    private static String key(Assembly assembly) {
        return assembly == Assembly.POWER ? "power" : assembly.words();
    }

    /** Names of bought parts that another aeroplane lends. */
    private static Set<String> fitted(Member member) {
        Set<String> names = new LinkedHashSet<>();
        Design design = member.design();
        List<String> shared = shared(member);
        if (shared.contains("power")) {
            for (DesignColumns.Text text : DesignColumns.texts()) {
                if (POWER.contains(text.words())) {
                    names.add(text.of().apply(design));
                }
            }
            names.add(design.power().battery().pack()); // the bill counts packs singly
        }
        if (shared.contains("radio")) {
            names.add(design.radio().receiver().name());
            names.add(design.radio().servo().name());
        }
        Wheel wheel = design.undercarriage().wheel();
        if (shared.contains("undercarriage") && wheel != null) {
            names.add(wheel.name());
        }
        return names;
    }

    private static List<String> shared(Member member) {
        Sharing sharing = member.sharing();
        if (sharing == null) {
            return List.of();
        }
        List<String> different = sharing.different(member.design());
        return sharing.parts().stream()
                .filter(part -> !different.contains(part))
                .toList();
    }

    private static int owned(List<Member> members, String item) {
        int most = 0;
        for (Member member : members) {
            for (Owned owned : member.mission().drawer()) {
                most = owned.part().equals(item) ? Math.max(most, owned.count()) : most;
            }
        }
        return most;
    }
}
