package foamfront.model.fabrication;

/**
 * Slant of the ends of a piece of wing, which closes its joints on both skins: half of the angle by which the wing turns up there,
 * rad. The chord line keeps its length, an edge {@code z} over it is z tan of it shorter (derived).
 *
 * @param root where the piece leans outwards from its inner neighbour, negative where it droops
 * @param tip where the outer neighbour leans outwards from it
 */
record Mitre(double root, double tip) {
    static final Mitre SQUARE = new Mitre(0, 0);
}
