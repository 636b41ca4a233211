package foamfront.optimizer.explore;

/** A small study for tests, on the program's own catalogue. */
public final class Dropper {
    /** As a file would have it. */
    public static final String YAML = """
            study: seed dropper
            site: {elevation: 2 m, surface: short grass, runway: 40 m}
            payload:
              - {name: seed bags, mass: 50 g to 500 g, density: 400 kg/m3, section: 50 mm x 50 mm, place: at the balance point, release: in flight}
            arrangements:
              wing: [{kind: monoplane, height: high}]
              tail: [conventional, T]
              power: [nose tractor]
              undercarriage: [tail wheel, none]
            vary: {span: 0.9 m to 1.5 m, root chord: 150 mm to 260 mm, body length: 0.7 m to 1.2 m, tail span: 300 mm to 600 mm, tail chord: 90 mm to 180 mm, fin height: 120 mm to 220 mm, body width: 70 mm to 100 mm, wing position: 0.15 to 0.4}
            in the drawer: [receiver 6ch]
            aim: {most: [payload, endurance], least: [build cost]}
            search: {evaluations: 1500, seed: 3, population: 60}
            """;

    private Dropper() {}
}
