package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.model.appraisal.Appraiser;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Mission;
import foamfront.optimizer.pictures.AeroPictures;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** {@code appraise --svg}: pages that are well-formed, keep inside their frame, and show what the model says. */
class AppraisePicturesTest {
    private static final List<String> PAGES = List.of(
            "section-wing-lift.svg",
            "section-wing-drag.svg",
            "section-tail-lift.svg",
            "section-tail-drag.svg",
            "aeroplane-drag.svg",
            "aeroplane-trim.svg",
            "span-lift.svg");

    @TempDir
    Path folder;

    private Path design() throws IOException {
        return Files.writeString(folder.resolve("dyke & runner.yaml"), """
                design: "dyke <runner> & co"
                wing: {taper: 0.5}
                power: {motor: 2212-920, propeller: 9x4.5 thin electric, battery: 3S 2200, controller: 30 A}
                """);
    }

    @Test
    void writesEveryPageBesideTheText() throws Exception {
        Path out = folder.resolve("new/pictures");
        Run run = Run.of("appraise", design().toString(), "--svg", out.toString());
        assertThat(run.code()).isEqualTo(Exit.FINE);
        for (String page : PAGES) {
            Document document = parse(Files.readString(out.resolve(page)));
            NodeList lines = document.getElementsByTagName("polyline");
            assertThat(lines.getLength()).as(page).isGreaterThan(10);
            for (int i = 0; i < lines.getLength(); i++) {
                String points =
                        lines.item(i).getAttributes().getNamedItem("points").getNodeValue();
                double[] figures = Pattern.compile("[ ,]")
                        .splitAsStream(points)
                        .mapToDouble(Double::parseDouble)
                        .toArray();
                for (int k = 0; k < figures.length; k += 2) {
                    assertThat(figures[k]).as(page).isBetween(69.0, 681.0);
                    assertThat(figures[k + 1]).as(page).isBetween(49.0, 470.0);
                }
            }
        }
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        Run run = Run.of(
                "appraise", design().toString(), "--svg", file.resolve("in it").toString());
        assertThat(run.code()).isEqualTo(Exit.CANNOT_WRITE);
    }

    /** The same bytes under a decimal comma. */
    @Test
    void picturesDoNotKnowTheLocale() throws IOException {
        Locale before = Locale.getDefault();
        Map<String, String> plain = pages();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(pages()).isEqualTo(plain);
        } finally {
            Locale.setDefault(before);
        }
    }

    private Map<String, String> pages() throws IOException {
        Arguments.Judged judged = Arguments.design(design().toString(), null, folder);
        Mission mission = judged.study().mission(judged.catalogue().workshop());
        return AeroPictures.of(new Appraiser(List.of()).appraise(judged.design(), mission, Factors.NOMINAL));
    }

    private static Document parse(String page) throws ParserConfigurationException, IOException, SAXException {
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        return builder.parse(new InputSource(new StringReader(page)));
    }
}
