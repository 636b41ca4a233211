package foamfront.model.fabrication;

import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;

/**
 * Tools beyond the knife, rule, glue gun and screwdriver of every build (judgement): each adds to the difficulty index once,
 * however often it is picked up.
 */
public enum Tool {
    SAW("fine saw and dust mask for spars and tubes") {
        @Override
        boolean needed(Airframe airframe, PartsList parts) {
            return !parts.stock().isEmpty();
        }
    },
    SOLDERING_IRON("soldering iron for leads that no shop sells ready") {
        @Override
        boolean needed(Airframe airframe, PartsList parts) {
            Design design = airframe.design();
            return design.power().motors() > 1 || design.power().battery().packs() > 1;
        }
    },
    WIRE_BENDER("pliers that bend steel wire for wheels") {
        @Override
        boolean needed(Airframe airframe, PartsList parts) {
            return airframe.design().undercarriage().wheel() != null;
        }
    },
    SEALING_BRUSH("brush and sealer for seams that lie in water") {
        @Override
        boolean needed(Airframe airframe, PartsList parts) {
            return airframe.design().floats();
        }
    };

    private final String words;

    Tool(String words) {
        this.words = words;
    }

    abstract boolean needed(Airframe airframe, PartsList parts);

    /** What it is, and what for. */
    public String words() {
        return words;
    }

    private static final Tool[] ALL = values();

    /** How many of them one aeroplane asks for. */
    public static int count(Airframe airframe, PartsList parts) {
        int sum = 0;
        for (Tool tool : ALL) {
            sum += tool.needed(airframe, parts) ? 1 : 0;
        }
        return sum;
    }
}
