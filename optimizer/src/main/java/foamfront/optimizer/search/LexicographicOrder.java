package foamfront.optimizer.search;

/** Sorts indices by the vectors they point at, first number first; equal vectors stay in index order. */
final class LexicographicOrder {
    private int[] spare = new int[0];

    /** Sorts the first {@code n} of {@code indices} by merging, without boxing. */
    void sort(int[] indices, int n, double[][] vectors) {
        if (spare.length < n) {
            spare = new int[indices.length];
        }
        split(indices, 0, n, vectors);
    }

    private void split(int[] indices, int from, int to, double[][] vectors) {
        if (to - from < 8) {
            insert(indices, from, to, vectors);
            return;
        }
        int middle = (from + to) >>> 1;
        split(indices, from, middle, vectors);
        split(indices, middle, to, vectors);
        System.arraycopy(indices, from, spare, from, middle - from);
        int left = from;
        int right = middle;
        for (int k = from; left < middle; k++) {
            boolean takeRight = right < to && compare(vectors[indices[right]], vectors[spare[left]]) < 0;
            indices[k] = takeRight ? indices[right++] : spare[left++];
        }
    }

    private static void insert(int[] indices, int from, int to, double[][] vectors) {
        for (int i = from + 1; i < to; i++) {
            int moved = indices[i];
            int k = i;
            while (k > from && compare(vectors[moved], vectors[indices[k - 1]]) < 0) {
                indices[k] = indices[k - 1];
                k--;
            }
            indices[k] = moved;
        }
    }

    static int compare(double[] a, double[] b) {
        for (int i = 0; i < a.length; i++) {
            if (a[i] != b[i]) {
                return a[i] < b[i] ? -1 : 1;
            }
        }
        return 0;
    }
}
