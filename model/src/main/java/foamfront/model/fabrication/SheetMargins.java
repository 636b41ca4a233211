package foamfront.model.fabrication;

/** Room lost on a sheet: 3 to 5 mm of dented rim, 1 to 2 mm between parts cut by hand (common practice). */
public final class SheetMargins {
    /** Rim left unused all round, m. */
    public static final double RIM = 0.004;

    /** Between neighbouring parts, m. */
    public static final double GAP = 0.0015;

    private SheetMargins() {}

    /** Usable side of a sheet, m. */
    public static double usable(double side) {
        return side - 2 * RIM;
    }
}
