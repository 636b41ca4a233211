package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foamfront.optimizer.explore.Dropper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Somebody whose shop does not take dollars: the shipped figures under another currency's code. */
class OwnPricesTest {
    private static final Path CLUB = Path.of("..", "studies", "club");

    @TempDir
    private Path folder = Path.of("");

    private Path study = Path.of("");

    @BeforeEach
    void writeTheStudy() throws IOException {
        study = Files.writeString(folder.resolve("s.yaml"), Dropper.YAML);
    }

    /** In small letters, so that no path that is printed holds the code. */
    private Path shop(String code) {
        return folder.resolve("shop-" + code.toLowerCase(Locale.ROOT));
    }

    private Path tables(String code) throws IOException {
        Path own = Files.createDirectories(shop(code).resolve("catalogue"));
        try (Stream<Path> files = Files.list(Path.of("..", "studies", "catalogue"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                Files.writeString(
                        own.resolve(String.valueOf(file.getFileName())),
                        Files.readString(file).replace("USD]", code + "]"));
            }
        }
        return own;
    }

    /** A study of its own folder, where the tables lie beside it. */
    private Path beside(String code, String text) throws IOException {
        return Files.writeString(tables(code).resolveSibling("s.yaml"), text);
    }

    private Path explored(Path study, String code) {
        Path results = shop(code).resolve("results");
        Run run = Run.of("explore", study.toString(), "--out", results.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).doesNotContain(code.equals("USD") ? "EUR" : "USD").contains("[" + code + "]");
        return results.resolve("seed-dropper").resolve("001");
    }

    private static Run fine(String... args) {
        Run run = Run.of(args);
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    private static String refusal(String... args) {
        Run run = Run.of(args);
        assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
        return run.err();
    }

    @ParameterizedTest
    @ValueSource(strings = {"EUR", "JPY"})
    void everyPageOfARunNamesTheCurrencyOfItsTables(String code) throws IOException {
        String yaml = Dropper.YAML.replace("population: 60}", "population: 60, cost step: 0.1 " + code + "}");
        Path run = explored(beside(code, yaml), code);
        for (var file : RunFiles.of(run).entrySet()) {
            assertThat(file.getValue()).as(file.getKey()).doesNotContain("USD");
        }
        assertThat(Files.readString(run.resolve("front.json"))).contains("\"currency\" : \"" + code + "\"");

        // figures are those of the dollars
        Path dollars = explored(study, "USD");
        assertThat(Files.readString(run.resolve("front.csv")).replace(code, "USD"))
                .isEqualTo(Files.readString(dollars.resolve("front.csv")));

        // later commands find the run's own tables, though those that it was explored with are gone
        try (Stream<Path> files = Files.list(shop(code).resolve("catalogue"))) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        String before = Files.readString(run.resolve("front.md"));
        fine("explore", "--resume", run.toString());
        assertThat(run.resolve("front.md")).hasContent(before);
        String row = run + "#1";
        String text = fine("appraise", row).out();
        assertThat(text).doesNotContain("USD").contains("cost [" + code + "]", " " + code + " and ");
        assertThat(fine("appraise", row, "--json").out()).contains("\"currency\" : \"" + code + "\"");
        assertThat(fine("line-up", row).out()).doesNotContain("USD").contains("cost [" + code + "]");
        assertThat(fine("line-up", row, "--json").out()).contains("\"currency\" : \"" + code + "\"");
        if (code.equals("EUR")) { // yen are shown without decimals
            assertThat(text.replace(code, "USD"))
                    .isEqualTo(fine("appraise", dollars + "#1").out());
        }
    }

    @Test
    void yenHaveNoDecimals() throws IOException {
        Path run = explored(beside("JPY", Dropper.YAML), "JPY");
        assertThat(Files.readString(run.resolve("front.md")))
                .containsPattern("build cost \\d+ to \\d+ JPY|build cost \\d+ JPY");
    }

    @Test
    void aClubsDesignsArePricedWithTheTablesThatAreNamed() throws IOException {
        String own = tables("EUR").toString();
        String lamp = CLUB.resolve("hall-lamp.yaml").toString();
        String courier = CLUB.resolve("post-courier.yaml").toString();
        assertThat(fine("appraise", lamp, "--catalogue", own).out().replace("EUR", "USD"))
                .isEqualTo(fine("appraise", lamp).out());
        assertThat(fine("line-up", lamp, courier, "--catalogue", own).out().replace("EUR", "USD"))
                .isEqualTo(fine("line-up", lamp, courier).out());
        assertThat(fine("check", lamp, "--catalogue", own).out()).startsWith("hall-lamp.yaml can be read");
        assertThat(fine("check", study.toString(), "--catalogue", own).out()).startsWith("s.yaml can be read");
        assertThat(fine("parts", "--catalogue", own).out())
                .contains("price [EUR]")
                .doesNotContain("USD");
    }

    /** As {@code studies/club} has them: below the studies, whose tables are theirs too. */
    @Test
    void aDesignBelowTheStudiesTakesTheirTables() throws IOException {
        Path club = Files.createDirectories(tables("EUR").resolveSibling("club"));
        Files.copy(Path.of("..", "studies", "hall-moth.yaml"), club.resolveSibling("hall-moth.yaml"));
        Path lamp = Files.copy(CLUB.resolve("hall-lamp.yaml"), club.resolve("hall-lamp.yaml"));
        assertThat(fine("appraise", lamp.toString()).out())
                .contains("cost [EUR]")
                .doesNotContain("USD");
        assertThat(refusal(
                        "line-up",
                        lamp.toString(),
                        CLUB.resolve("hall-lamp.yaml").toString()))
                .contains("hall-lamp.yaml is priced in EUR and", "in USD.", "no exchange rates", "--catalogue FOLDER");
    }

    /** Of the studies that nobody named only the names are wanted, whatever they are priced in. */
    @Test
    void aStudyThatOnlyLiesThereMayBePricedOtherwise() throws IOException {
        Path studies = Files.createDirectories(folder.resolve("studies"));
        Files.writeString(studies.resolve("s.yaml"), Dropper.YAML + "must: {build cost: at most 80 USD}\n");
        assertThat(fine(
                                "line-up",
                                CLUB.resolve("hall-lamp.yaml").toString(),
                                "--catalogue",
                                tables("EUR").toString(),
                                "--studies",
                                studies.toString())
                        .out())
                .contains("Roles that none of these covers: seed dropper");
    }

    @Test
    void aDesignAndAStudyOfTwoCurrenciesAreNotMixed() throws IOException {
        Path euros = beside("EUR", Dropper.YAML);
        assertThat(refusal("appraise", CLUB.resolve("hall-lamp.yaml").toString(), "--study", euros.toString()))
                .contains("hall-lamp.yaml is priced in USD and", "s.yaml in EUR.", "name one catalogue for both");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "must: {build cost: at most 80 USD}",
                "must: {repair cost: at most 5 USD}",
                "prefer: {build cost: at most 80 USD}"
            })
    void aLimitInAnotherCurrencyIsAFaultOfTheStudy(String limit) throws IOException {
        Path euros = beside("EUR", Dropper.YAML + limit + "\n");
        assertThat(refusal("check", euros.toString()))
                .contains("s.yaml:14", "is in USD where prices are in EUR", "there are no exchange rates here");
        Files.writeString(euros, Files.readString(euros).replace("USD", "EUR"));
        fine("check", euros.toString());
    }

    @Test
    void aDollarSignAndABareFigureSayNoCurrency() throws IOException {
        Files.writeString(study, Dropper.YAML + "must: {build cost: at most $80}\n");
        assertThat(refusal("check", study.toString())).contains("write the code of yours, USD, AUD, CAD");
        Files.writeString(study, Dropper.YAML + "must: {build cost: at most 80}\n");
        assertThat(refusal("check", study.toString())).contains("has no unit", "USD");
        Files.writeString(study, Dropper.YAML + "must: {build cost: 80 USD}\n");
        assertThat(refusal("check", study.toString())).contains("Write 'at most 80 USD' or 'at least 80 USD'");
    }

    @Test
    void theRegionOfACommandIsInTheTablesCurrency() throws IOException {
        Path euros = beside("EUR", Dropper.YAML);
        String out = folder.resolve("o").toString();
        assertThat(refusal("explore", euros.toString(), "--out", out, "--prefer", "build cost: at most 80 USD"))
                .contains("--prefer:1", "is in USD where prices are in EUR");
        fine("explore", euros.toString(), "--out", out, "--prefer", "build cost: at most 80 EUR");
    }

    @Test
    void aResumedRunKeepsItsTables() throws IOException {
        Path run = explored(beside("EUR", Dropper.YAML), "EUR");
        assertThat(refusal(
                        "explore",
                        "--resume",
                        run.toString(),
                        "--catalogue",
                        tables("JPY").toString()))
                .contains("goes on with its own tables");
        assertThat(refusal("appraise", CLUB.resolve("hall-lamp.yaml").toString(), "--catalogue", "nowhere"))
                .contains("nowhere is no folder");
    }
}
