package foamfront.optimizer.front;

import java.util.ArrayList;
import java.util.List;

/** Names that try to be something else. */
public final class HostileNames {
    private static final List<String> SEEDS = List.of(
            "=1+1",
            "+cmd|' /C calc'!A0",
            "-2+3",
            "@SUM(A1)",
            "\t=1",
            "\r=1",
            "\u0000=1",
            "'=1",
            "\"",
            "\"\"",
            ",",
            "a,b",
            "a\nb",
            "a\r\nb",
            "<script>alert(1)</script>",
            "<img src=x onerror=alert(1)>",
            "[x](javascript:alert(1))",
            "](x)",
            "`code`",
            "| a | b |",
            "# title",
            "../../etc/passwd",
            "..\\..\\x",
            "/etc/passwd",
            "C:\\con",
            "con",
            "NUL",
            "aux.txt",
            "lpt1",
            ".",
            "..",
            "...",
            "-rf",
            "--out",
            "$(id)",
            "`id`",
            "; rm x",
            "%00",
            "%2e%2e%2f",
            "\u202Etxt.exe",
            "\u200B",
            "\uFEFF",
            "caf\u00e9",
            "\u0130stanbul",
            "\u00df",
            "\u65e5\u672c",
            "\uD83D\uDEE9",
            " ",
            "",
            "a\\",
            "\\",
            "&amp;",
            "&#0;",
            "\u001b[31mred",
            "\u0007",
            "{{7*7}}",
            "${x}");

    private HostileNames() {}

    /** About five hundred. */
    public static List<String> all() {
        List<String> names = new ArrayList<>(SEEDS);
        for (String seed : SEEDS) {
            names.add(seed + " plane");
            names.add("plane " + seed);
            names.add(seed + seed);
            names.add(seed.repeat(40));
            names.add(" " + seed);
            names.add(seed + "\n");
            names.add(seed + "/" + seed);
            names.add("x" + seed + "y");
        }
        return names;
    }
}
