package foamfront.model.fabrication;

/**
 * The four sort orders a pass is tried in: by area, longer side, both sides together and shorter side, largest first. Equal keys
 * fall back on the sides themselves, so the order of input never matters.
 */
final class PackingOrders {
    static final int COUNT = 4;

    private PackingOrders() {}

    /** Fills {@code order} with the packer's rectangles sorted by key {@code which}. */
    static void fill(int[] order, RectanglePacker packer, int which) {
        int n = packer.size();
        for (int i = 0; i < n; i++) {
            int at = i;
            while (at > 0 && before(packer, i, order[at - 1], which)) {
                order[at] = order[at - 1];
                at--;
            }
            order[at] = i;
        }
    }

    private static boolean before(RectanglePacker packer, int a, int b, int which) {
        double ka = key(packer.width(a), packer.height(a), which);
        double kb = key(packer.width(b), packer.height(b), which);
        if (ka != kb) {
            return ka > kb;
        }
        if (packer.width(a) != packer.width(b)) {
            return packer.width(a) > packer.width(b);
        }
        if (packer.height(a) != packer.height(b)) {
            return packer.height(a) > packer.height(b);
        }
        return !packer.turnable(a) && packer.turnable(b);
    }

    private static double key(double w, double h, int which) {
        return switch (which) {
            case 0 -> w * h;
            case 1 -> Math.max(w, h);
            case 2 -> w + h;
            default -> Math.min(w, h);
        };
    }
}
