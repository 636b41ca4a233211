package foamfront.model.units;

/**
 * A quantity as somebody wrote it: its SI value, and the unit to answer in.
 *
 * @param si value in SI
 * @param unit the (last) unit of the text
 */
public record Reading(double si, Unit unit) {
    /** Any SI value in this reading's unit, for messages. */
    public String inOwnUnit(double value) {
        return Quantities.print(value, unit);
    }

    @Override
    public String toString() {
        return inOwnUnit(si);
    }
}
