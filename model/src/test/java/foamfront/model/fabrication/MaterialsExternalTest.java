package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The catalogue's boards, spars, tape, glue and rates against what was weighed, sold and measured elsewhere. */
class MaterialsExternalTest {
    private static final Set<String> SOLD =
            Set.of("762x508", "711x559", "1016x762", "841x594", "594x420", "700x500", "1000x700", "1200x900");

    /** Rows of a catalogue table by name, or the only row by an empty one; cells by the column's name without its unit. */
    private static Map<String, Map<String, String>> table(String file) {
        Map<String, Map<String, String>> rows = new LinkedHashMap<>();
        try (BufferedReader reader = Files.newBufferedReader(Path.of("..", "studies", "catalogue", file))) {
            List<String> columns = List.of();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (line.startsWith("#") || line.isBlank()) {
                    continue;
                }
                List<String> cells = List.of(line.split(",", -1));
                if (columns.isEmpty()) {
                    columns = cells.stream()
                            .map(cell -> cell.replaceAll(" \\[.*", ""))
                            .toList();
                    continue;
                }
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < columns.size(); i++) {
                    row.put(columns.get(i), cells.get(i));
                }
                rows.put(row.getOrDefault("name", ""), row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    private static double number(String file, String name, String column) {
        return Double.parseDouble(Objects.requireNonNull(
                Objects.requireNonNull(table(file).get(name)).get(column), column));
    }

    private static double board(String name, String column) {
        return number("boards.csv", name, column);
    }

    private static double workshop(String column) {
        return number("workshop.csv", "", column);
    }

    @Test
    void boardsWeighWhatWasWeighed() {
        Validation check = Validation.of(
                Subject.STRUCTURE,
                "Boards of the catalogue, weighed",
                "Hobby articles and threads of 2013 and 2015 on kitchen scales (rcspaceflight; two on heavy and framing-shop"
                        + " boards); the brown board from memory.");
        check.band("white 5 mm, two sheets", 297, 322, board("white 5 mm", "areal density"), "g/m2")
                .relative("art A1 5 mm, in steps of 25 g", 450, board("art A1 5 mm", "areal density"), 0.06, "g/m2")
                .relative(
                        "large 5 mm, 30 % over the light one", 385, board("large 5 mm", "areal density"), 0.05, "g/m2")
                .relative("heavy 5 mm", 604, board("heavy 5 mm", "areal density"), 0.01, "g/m2")
                .band("brown 5 mm", 300, 400, board("brown 5 mm", "areal density"), "g/m2")
                .band("real thickness of white 5 mm", 4.3, 5.0, board("white 5 mm", "thickness"), "mm");
        double faces = 2e-3 * board("white 5 mm", "face thickness");
        double core = board("white 5 mm", "thickness") * 1e-3 - faces;
        double paper = board("white 5 mm", "areal density") * 1e-3 - 27.5 * core;
        check.band("density of paper that a core of 27.5 kg/m3 (25 to 30) leaves", 650, 800, paper / faces, "kg/m3");
    }

    @Test
    void boardsAreSoldInTheseSizesAndPrices() {
        Map<String, Map<String, String>> boards = table("boards.csv");
        List<String> odd = new ArrayList<>();
        for (Map<String, String> row : boards.values()) {
            String size = row.get("length") + "x" + row.get("width");
            if (!SOLD.contains(size)) {
                odd.add(row.get("name") + " " + size);
            }
        }
        assertThat(odd).as("sizes that no shop has").isEmpty();
        Validation.of(Subject.STRUCTURE, "Prices of board, tape, glue and spars", "Shop prices from memory.")
                .band("white 5 mm", 1.00, 1.50, board("white 5 mm", "price"), "USD")
                .band("art A1 5 mm", 4, 10, board("art A1 5 mm", "price"), "USD")
                .band("tape of 48 mm", 0.04, 0.10, workshop("tape price per m"), "USD/m")
                .band("hot-melt glue", 6, 15, workshop("glue price per kg"), "USD/kg")
                .band("carbon rod of 3 mm", 1.5, 3, number("spars.csv", "rod 3", "price"), "USD/m")
                .band("carbon tube of 6/4 mm", 4, 8, number("spars.csv", "tube 6/4", "price"), "USD/m")
                .band("carbon tube of 8/6 mm", 6, 12, number("spars.csv", "tube 8/6", "price"), "USD/m")
                .band("carbon strip", 2, 4, number("spars.csv", "carbon strip 1x6", "price"), "USD/m")
                .band("basswood stick", 0.5, 2, number("spars.csv", "basswood 3x6", "price"), "USD");
    }

    @Test
    void papersAndCores() {
        Validation paper = Validation.of(
                Subject.STRUCTURE,
                "Paper of the catalogue's boards",
                "Paper physics from memory: board-grade paper 2 to 3.5 GPa across the machine, 4 to 7 along it; crushed at 8 to 20"
                        + " MPa, which two chairs and three bottles agree with.");
        Validation core = Validation.of(
                Subject.STRUCTURE,
                "Core of the catalogue's light boards",
                "ASTM D6817 as printed by a geofoam supplier: stress at 1 % of 28 kg/m3 on the line 0.324 rho - 2.1; L. J. Gibson"
                        + " and M. F. Ashby, Cellular Solids (from memory), closed cells of phi 0.9 at 30 kg/m3.");
        for (String name : List.of("white 5 mm", "white 3 mm", "brown 5 mm", "art A1 5 mm", "large 5 mm")) {
            paper.band(name + ", modulus", 2, 7, board(name, "face modulus"), "GPa")
                    .band(name + ", crushing", 8, 20, board(name, "face strength"), "MPa");
            core.band(name + ", modulus", 0.324 * 28 - 2.1, gibsonAshby(0.9, 30), board(name, "core modulus"), "MPa")
                    .band(name + ", shear over Young's modulus", 0.3, 0.5, shearShare(name), "");
        }
    }

    private static double shearShare(String name) {
        return board(name, "core shear modulus") / board(name, "core modulus");
    }

    /** E = E_s (φ² R² + (1 − φ) R), E_s 3 GPa, R = ρ / 1050, in MPa. */
    private static double gibsonAshby(double phi, double density) {
        double r = density / 1050;
        return 3000 * (phi * phi * r * r + (1 - phi) * r);
    }

    @Test
    void tapeAndGlue() {
        Validation.of(
                        Subject.STRUCTURE,
                        "Tape and hot-melt glue",
                        "A pharmaceutical packaging specification (width); 40 to 50 micrometres at 920 kg/m3 and fillets of 0.95 g/cm3"
                                + " (derived); a tape maker's strength, 47 N/cm.")
                .band("width of tape", 47, 49, 1000 * PartsBuffer.TAPE_WIDTH, "mm")
                .value("48 mm tape of 45 micrometres", 2.0, workshop("tape linear mass"), 0.05, "g/m")
                .value("fillet of 3 mm", 4.3, workshop("glue linear mass"), 0.05, "g/m");
        Validation.of(Subject.STRUCTURE, "Rates at the bench", "Common practice.")
                .value("cutting, 1 min for 0.1 m", 10, workshop("cut rate"), 1e-9, "min/m")
                .value("gluing, 1.5 min for 0.1 m", 15, workshop("glue rate"), 1e-9, "min/m");
    }
}
