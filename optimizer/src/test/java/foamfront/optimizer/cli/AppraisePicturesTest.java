package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.appraisal.Appraisal;
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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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
    private static final List<String> PAGES = List.of("aeroplane-drag.svg", "aeroplane-trim.svg", "span-lift.svg");

    private static final List<String> POLARS = List.of(
            "section-wing-lift-slow.svg",
            "section-wing-drag-slow.svg",
            "section-wing-lift-fast.svg",
            "section-wing-drag-fast.svg",
            "section-tail-lift-slow.svg",
            "section-tail-drag-slow.svg",
            "section-tail-lift-fast.svg",
            "section-tail-drag-fast.svg");

    private static final Pattern REYNOLDS = Pattern.compile("Re (\\d+) 000");

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
        for (String page : Stream.concat(PAGES.stream(), POLARS.stream()).toList()) {
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

    /** So that its axes fit it: a grid line has two points. */
    @Test
    void eachPolarHasAPictureOfItsOwn() throws Exception {
        Map<String, String> pages = pages();
        assertThat(pages)
                .containsOnlyKeys(Stream.concat(PAGES.stream(), POLARS.stream()).toList());
        for (String page : POLARS) {
            NodeList lines = parse(pages.getOrDefault(page, "")).getElementsByTagName("polyline");
            int curves = 0;
            for (int i = 0; i < lines.getLength(); i++) {
                String points =
                        lines.item(i).getAttributes().getNamedItem("points").getNodeValue();
                curves += points.split(" ", -1).length > 2 ? 1 : 0;
            }
            assertThat(curves).as(page).isOne();
        }
    }

    /** Twice the speed, twice the number; the stall's is that of the table of trimmed flight. */
    @Test
    void polarsAreThoseOfTheSpeedsThatItFlies() throws IOException {
        Map<String, String> pages = pages();
        Matcher slow = REYNOLDS.matcher(pages.getOrDefault("section-wing-lift-slow.svg", ""));
        Matcher fast = REYNOLDS.matcher(pages.getOrDefault("section-wing-lift-fast.svg", ""));
        assertThat(slow.find() && fast.find()).isTrue();
        double atStall = appraisal().polar().get(0).reynolds() / 1000;
        assertThat(Double.parseDouble(slow.group(1))).isCloseTo(atStall, within(0.5));
        assertThat(Double.parseDouble(fast.group(1))).isCloseTo(2 * atStall, within(0.5));
    }

    @Test
    void aSecondWingLikeTheFirstRepeatsNoPicture() throws IOException {
        String biplane = """
                design: two
                wing: {kind: biplane, span: 900 mm}
                power: {motor: 2212-920, propeller: 9x4.5 thin electric, battery: 3S 2200, controller: 30 A}
                """;
        Path file = Files.writeString(folder.resolve("two.yaml"), biplane);
        Path out = folder.resolve("two");
        assertThat(Run.of("appraise", file.toString(), "--svg", out.toString()).code())
                .isEqualTo(Exit.FINE);
        assertThat(out.resolve("section-wing-lift-slow.svg")).exists();
        assertThat(out.resolve("section-second-wing-lift-slow.svg")).doesNotExist();
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
        return AeroPictures.of(appraisal());
    }

    private Appraisal appraisal() throws IOException {
        Arguments.Judged judged = Arguments.design(design().toString(), null, folder, null);
        Mission mission = judged.study().mission(judged.catalogue().workshop());
        return new Appraiser(List.of()).appraise(judged.design(), mission, Factors.NOMINAL);
    }

    private static Document parse(String page) throws ParserConfigurationException, IOException, SAXException {
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        return builder.parse(new InputSource(new StringReader(page)));
    }
}
