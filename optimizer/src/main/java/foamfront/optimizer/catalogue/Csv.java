package foamfront.optimizer.catalogue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import foamfront.optimizer.faults.Faults;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Comma-separated tables (RFC 4180) as rows of text with their lines; lines starting with {@code #} are comments. */
final class Csv {
    private static final int MOST_BYTES = 1 << 20;
    private static final int MOST_ROWS = 5000;
    private static final int MOST_CELLS = 60;
    private static final int LONGEST = 400;

    /** Cells of one row, and its line from 1. */
    record Line(int number, List<String> cells) {}

    private Csv() {}

    static List<Line> read(byte[] bytes, Faults faults) {
        if (bytes.length > MOST_BYTES) {
            faults.add(0, 0, "", "the table is larger than 1 MiB", "Keep to the parts you use.");
            return List.of();
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            faults.add(0, 0, "", "the file is not text in UTF-8", "Save it as CSV in UTF-8.");
            return List.of();
        }
        return rows(text.startsWith("\uFEFF") ? text.substring(1) : text, faults);
    }

    private static List<Line> rows(String text, Faults faults) {
        List<Line> lines = new ArrayList<>();
        CsvMapper mapper = CsvMapper.builder()
                .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
                .enable(CsvParser.Feature.TRIM_SPACES)
                .build();
        int at = 1;
        try (CsvParser parser = mapper.getFactory().createParser(text)) {
            parser.setSchema(CsvSchema.emptySchema().withComments());
            JsonToken token = parser.nextToken();
            while (token != null && faults.count() == 0) {
                if (token == JsonToken.START_ARRAY) {
                    List<String> cells = new ArrayList<>();
                    while (parser.nextToken() == JsonToken.VALUE_STRING) {
                        if (cells.isEmpty()) {
                            at = parser.currentTokenLocation().getLineNr();
                        }
                        cells.add(parser.getText());
                    }
                    if (!cells.isEmpty()) {
                        check(cells, at, lines.size(), faults);
                        lines.add(new Line(at, cells));
                    }
                }
                token = parser.nextToken();
            }
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? at : e.getLocation().getLineNr();
            faults.add(line, 0, "", "this is not readable as CSV", "Check the quotation marks in this row.");
        } catch (IOException e) {
            faults.add(at, 0, "", "this is not readable as CSV", "Check the quotation marks in this row.");
        }
        return lines;
    }

    private static void check(List<String> cells, int line, int rows, Faults faults) {
        if (rows > MOST_ROWS || cells.size() > MOST_CELLS) {
            faults.add(line, 0, "", "the table has too many rows or columns", "Keep to the parts you use.");
        }
        for (String cell : cells) {
            if (cell.length() > LONGEST) {
                faults.add(
                        line, 0, "", "a cell is longer than " + LONGEST + " characters", "Close its quotation mark.");
                return;
            }
        }
    }
}
