package foamfront.optimizer;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The validation page says what the model's tests found in this very run. The tests of the model leave one line for each check
 * under its {@code target/validation}; this one, which runs after them, puts the lines together.
 */
class ValidationPageTest {
    private static final Path MODEL = Path.of("..", "model");
    private static final Path LINES = MODEL.resolve(Path.of("target", "validation"));
    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    private static final String HEAD = """
            # Validation

            Every external check of the model: a published or independently derived figure, what this program computes, and the
            error. "From memory" marks a figure that was recalled and not read; "derived" one that follows from a stated
            formula. The tests write this page: it fails them when it is stale (`./test --accept-validation` rewrites it).

            Aeroplanes that flew stand [at the end](#aeroplanes-that-flew): published power, current, take-off roll and hand launch
            beside predicted, inside or not, what was assumed, and what the misses say.
            """;

    @Test
    void pageShowsWhatTheTestsFound() throws IOException {
        assumeTrue(Files.isDirectory(LINES), "the model's tests have not run");
        ValidationPage.holdsChecks(page(lines()));
    }

    private static List<Line> lines() throws IOException {
        List<Line> lines = new ArrayList<>();
        try (Stream<Path> files = Files.list(LINES)) {
            for (Path file : files.toList()) {
                lines.add(Line.of(Files.readString(file).strip().split("\t", -1)));
            }
        }
        lines.sort(Comparator.comparingInt(Line::order)
                .thenComparing(line -> padded(line.check))
                .thenComparing(line -> line.source)
                .thenComparing(line -> line.kind)
                .thenComparing(line -> padded(line.name())));
        return lines;
    }

    /** Names in the order of the numbers in them. */
    private static String padded(String name) {
        Matcher matcher = NUMBER.matcher(name);
        return matcher.replaceAll(found -> "0".repeat(Math.max(0, 12 - whole(found.group()))) + found.group());
    }

    private static int whole(String number) {
        int point = number.indexOf('.');
        return point < 0 ? number.length() : point;
    }

    private static String page(List<Line> lines) {
        StringBuilder page = new StringBuilder(HEAD);
        String subject = "";
        String table = "";
        for (Line line : lines) {
            if (!line.subject.equals(subject)) {
                page.append("\n## ").append(line.subject).append("\n\n");
                page.append("Weakest: ").append(line.weakest).append('\n');
                subject = line.subject;
            }
            String head = line.check + "\n\n" + line.source;
            if (!table.equals(head + line.kind)) {
                if (!table.startsWith(head)) {
                    page.append("\n### ").append(head).append('\n');
                }
                page.append('\n').append(line.kind.equals("set") ? SET : VALUE);
                table = head + line.kind;
            }
            page.append("| ").append(String.join(" | ", line.row)).append(" |\n");
        }
        return page.toString();
    }

    private static final String VALUE =
            "| what | unit | published | ours | error | allowed |\n| --- | --- | ---: | ---: | ---: | ---: |\n";

    private static final String SET =
            "| set of data | unit | points | largest error | RMS error | allowed |\n| --- | --- | ---: | ---: | ---: | ---: |\n";

    /** A line as the model's tests wrote it. */
    private record Line(
            int order, String subject, String weakest, String check, String source, String kind, List<String> row) {
        static Line of(String[] f) {
            return new Line(
                    Integer.parseInt(f[0]),
                    f[1],
                    f[2],
                    f[3],
                    f[4],
                    f[5],
                    List.of(f).subList(6, f.length));
        }

        String name() {
            return row.get(0);
        }
    }
}
