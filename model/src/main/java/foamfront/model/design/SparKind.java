package foamfront.model.design;

/** What a wing's spar is made of. */
public enum SparKind implements Choice {
    BOARD_STRIP("board strip"),
    STOCK("stock");

    private final String words;

    SparKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
