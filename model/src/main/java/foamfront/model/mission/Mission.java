package foamfront.model.mission;

import foamfront.model.parts.Workshop;
import java.util.List;

/**
 * What is asked of an aeroplane besides what it carries (its loads are part of the design).
 *
 * @param site field and air
 * @param limits every bound that must hold: the standing ones with the study's figures in place
 * @param drawer parts that cost nothing
 * @param car room for transport
 * @param workshop consumables and working rates
 */
public record Mission(Site site, Limits limits, List<Owned> drawer, CarSpace car, Workshop workshop) {
    public Mission {
        drawer = List.copyOf(drawer);
    }

    /** How many of a part are in the drawer. */
    public int owned(String part) {
        for (int i = 0; i < drawer.size(); i++) {
            Owned owned = drawer.get(i);
            if (owned.part().equals(part)) {
                return owned.count();
            }
        }
        return 0;
    }
}
