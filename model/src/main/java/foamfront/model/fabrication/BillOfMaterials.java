package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Mission;
import foamfront.model.parts.Battery;
import foamfront.model.parts.Part;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Workshop;
import java.util.ArrayList;
import java.util.List;

/**
 * What must be at hand and what of it must be bought: whole sheets, whole stock lengths, tape by the metre, glue by weight,
 * fitted parts and the small things that fit them. What lies in the drawer costs nothing.
 *
 * @param lines in a fixed order: board, stock, tape, glue, fitted parts, small fittings
 */
public record BillOfMaterials(List<Line> lines) {
    /**
     * One entry.
     *
     * @param item catalogue name, or tape or glue
     * @param quantity sheets, stock lengths, pieces, metres of tape or kilograms of glue
     * @param bought how much of it is not in the drawer
     * @param cost of what is bought
     * @param provenance of the price
     */
    public record Line(String item, double quantity, double bought, double cost, Provenance provenance) {}

    /** Receives each entry. */
    private interface Sink {
        void take(String item, double quantity, double bought, double cost, Provenance provenance);
    }

    public BillOfMaterials {
        lines = List.copyOf(lines);
    }

    /** The bill when {@code sheets} whole sheets are cut. */
    public static BillOfMaterials of(Airframe airframe, PartsList parts, int sheets, Mission mission, Factors factors) {
        List<Line> lines = new ArrayList<>(12);
        each(
                airframe,
                parts,
                sheets,
                mission,
                factors,
                (item, quantity, bought, cost, provenance) ->
                        lines.add(new Line(item, quantity, bought, cost, provenance)));
        return new BillOfMaterials(lines);
    }

    /** Cost alone, the same to the last bit. */
    public static double cost(Airframe airframe, PartsList parts, int sheets, Mission mission, Factors factors) {
        double[] sum = {0};
        each(airframe, parts, sheets, mission, factors, (item, quantity, bought, cost, provenance) -> sum[0] += cost);
        return sum[0];
    }

    private static void each(
            Airframe airframe, PartsList parts, int sheets, Mission mission, Factors factors, Sink sink) {
        double k = factors.price();
        add(sink, airframe.design().board(), sheets, mission, k);
        stock(sink, parts.stock(), mission, k);
        Workshop workshop = mission.workshop();
        double tape = parts.tape();
        sink.take("tape", tape, tape, k * tape * workshop.tapePrice(), Provenance.INVENTED);
        double glue = parts.glue() * workshop.glueLinearMass();
        sink.take("glue", glue, glue, k * glue * workshop.gluePrice(), Provenance.INVENTED);
        FittedParts.each(airframe, (part, count) -> add(sink, part, count, mission, k));
        SmallFittings small = SmallFittings.of(airframe);
        small(sink, SmallFittings.LINKAGE, small.linkages(), workshop.linkagePrice(), mission, k);
        small(sink, SmallFittings.POWER_SET, small.powerSets(), workshop.powerFittingsPrice(), mission, k);
        double radio = workshop.switchPrice() + workshop.regulatorPrice();
        small(sink, SmallFittings.SWITCH, small.switches(), radio, mission, k);
        small(sink, SmallFittings.STRAP, small.straps(), workshop.strapPrice(), mission, k);
        small(sink, SmallFittings.HARNESS, small.harnesses(), workshop.harnessPrice(), mission, k);
        small(sink, SmallFittings.BAND_SET, small.bandSets(), workshop.bandPrice(), mission, k);
    }

    private static void small(Sink sink, String item, int count, double price, Mission mission, double k) {
        if (count > 0) {
            take(sink, item, price, Provenance.INVENTED, count, mission, k);
        }
    }

    /** Of everything bought. */
    public double cost() {
        double sum = 0;
        for (Line line : lines) {
            sum += line.cost();
        }
        return sum;
    }

    private static void add(Sink sink, Part part, int count, Mission mission, double k) {
        if (part instanceof Battery battery) {
            take(sink, battery.pack(), battery.price() / battery.packs(), part.provenance(), count, mission, k);
        } else {
            take(sink, part.name(), part.price(), part.provenance(), count, mission, k);
        }
    }

    private static void take(
            Sink sink, String item, double price, Provenance provenance, int count, Mission mission, double k) {
        int bought = Math.max(0, count - mission.owned(item));
        sink.take(item, count, bought, k * bought * price, provenance);
    }

    /** Stock lengths of each kind, pieces sawn in the order of the list from the first length with room. */
    private static void stock(Sink sink, List<StockPiece> pieces, Mission mission, double k) {
        for (int i = 0; i < pieces.size(); i++) {
            boolean seen = false;
            for (int j = 0; j < i; j++) {
                seen |= pieces.get(j).spar().equals(pieces.get(i).spar());
            }
            if (!seen) {
                add(sink, pieces.get(i).spar(), StockLengths.needed(pieces, i), mission, k);
            }
        }
    }
}
