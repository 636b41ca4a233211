package foamfront.model.fabrication;

/** What the parts of one wing are called; put together once, since a search names them in every design. */
record WingNames(
        String wing,
        String bottom,
        String top,
        String step,
        String spar,
        String web,
        String joiner,
        String jointDoubler,
        String spliceDoubler,
        String rootRib,
        String winglet) {
    static final WingNames LOWER = of("wing");
    static final WingNames UPPER = of("upper wing");

    private static WingNames of(String wing) {
        return new WingNames(
                wing,
                wing + " bottom",
                wing + " top",
                wing + " step",
                wing + " spar",
                wing + " web",
                wing + " joiner",
                wing + " joint doubler",
                wing + " splice doubler",
                wing + " root rib",
                wing + " winglet");
    }
}
