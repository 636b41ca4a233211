package foamfront.optimizer.cli;

import foamfront.model.appraisal.Appraisal;
import foamfront.model.appraisal.Appraiser;
import foamfront.model.design.Design;
import foamfront.model.factors.Factors;
import foamfront.model.mission.Mission;
import foamfront.model.units.Currency;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.fleet.LineUp;
import foamfront.optimizer.fleet.Member;
import foamfront.optimizer.fleet.Sharing;
import foamfront.optimizer.front.Show;
import foamfront.optimizer.study.ClubEntry;
import foamfront.optimizer.study.DesignReader;
import foamfront.optimizer.study.KeepFrom;
import foamfront.optimizer.study.State;
import foamfront.optimizer.study.Study;
import foamfront.optimizer.study.StudyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code line-up DESIGN...}: the club's aeroplanes side by side. */
@Command(
        name = "line-up",
        description =
                "Sets designs side by side: role, promise, what they share and what that costs, roles not covered, and"
                        + " one shopping list for all.",
        mixinStandardHelpOptions = true,
        version = "foamfront " + Main.VERSION)
final class LineUpCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            paramLabel = "DESIGN",
            arity = "1..*",
            description = "design files, which may say under 'club' what they are for; or RUN#ROW")
    private List<String> designs = List.of();

    @Option(
            names = "--studies",
            paramLabel = "FOLDER",
            description = "studies whose roles are to be covered (default: where those lie that the designs name)")
    private @Nullable Path studies;

    @Option(
            names = {"--results", "--out"},
            paramLabel = "FOLDER",
            description = "where runs are kept (default: results)")
    private Path results = Path.of("results");

    @Mixin
    private OwnTables tables = new OwnTables();

    @Option(names = "--json", description = "for programs: stable keys, SI units")
    private boolean json;

    LineUpCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Catalogue own = tables.read();
        List<Arguments.Judged> all = designs.stream()
                .map(each -> Arguments.design(each, null, results, own))
                .toList();
        oneCurrency(all);
        Set<Path> compared = all.stream()
                .filter(judged -> judged.club().alone() != null)
                .map(judged -> plain(judged.file().resolveSibling(judged.club().alone())))
                .collect(Collectors.toSet());
        List<Member> members = new ArrayList<>();
        for (Arguments.Judged judged : all) {
            if (compared.contains(plain(judged.file()))) {
                console.err()
                        .println(Text.plain(judged.design().name())
                                + " is left out: it is only what another is compared with, nobody builds it.");
            } else {
                members.add(member(judged));
            }
        }
        LineUp lineUp = LineUp.of(members, roles());
        Show show = Show.of(all.get(0).study());
        console.out().print(json ? LineUpJson.of(lineUp, show.currency()) : LineUpText.of(lineUp, show));
        return Exit.FINE;
    }

    private static void oneCurrency(List<Arguments.Judged> all) {
        Arguments.Judged first = all.get(0);
        for (Arguments.Judged other : all) {
            Currency currency = other.catalogue().currency();
            if (!currency.equals(first.catalogue().currency())) {
                throw new InputException(
                        "foamfront: " + first.file() + " is priced in "
                                + first.catalogue().currency() + " and " + other.file() + " in " + currency + ".",
                        "There are no exchange rates here: name one catalogue for all, --catalogue FOLDER.");
            }
        }
    }

    private static Path plain(Path file) {
        return file.toAbsolutePath().normalize();
    }

    private Member member(Arguments.Judged judged) {
        ClubEntry club = judged.club();
        Path file = judged.file();
        Study study = judged.study();
        if (club.study() != null && studies == null) {
            studies = plain(file.resolveSibling(club.study())).getParent();
        }
        Mission mission = study.mission(judged.catalogue().workshop());
        KeepFrom keep = club.keepFrom();
        return new Member(
                judged.design(),
                club.role(),
                judged.ofRun() || club.study() != null ? study.name() : "",
                judged.ofRun() && club.state() == State.IDEA ? State.EXPLORED : club.state(),
                mission,
                appraise(judged.design(), mission),
                keep == null ? null : sharing(file, club, keep, mission, judged.catalogue()));
    }

    private static Sharing sharing(Path file, ClubEntry club, KeepFrom keep, Mission mission, Catalogue catalogue) {
        List<String> parts =
                keep.parts().stream().filter(Sharing.PARTS::contains).toList();
        if (parts.size() < keep.parts().size()) {
            throw new InputException(
                    "foamfront: " + file.getFileName() + " shares " + String.join(", ", keep.parts())
                            + ", not all of which are parts.",
                    "Parts are " + String.join(", ", new TreeSet<>(Sharing.PARTS)) + ".");
        }
        Design from =
                DesignReader.read(file.resolveSibling(keep.design()), catalogue).design();
        String alone = club.alone();
        return new Sharing(
                from,
                parts,
                alone == null
                        ? null
                        : appraise(
                                DesignReader.read(file.resolveSibling(alone), catalogue)
                                        .design(),
                                mission));
    }

    private static Appraisal appraise(Design design, Mission mission) {
        return new Appraiser(List.of()).appraise(design, mission, Factors.NOMINAL);
    }

    /** Names of the studies in the folder, which may be priced otherwise than the designs. */
    private List<String> roles() {
        Path folder = studies;
        if (folder == null) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .filter(file -> Arguments.firstBytes(file).lines().anyMatch(line -> line.startsWith("study:")))
                    .map(StudyReader::name)
                    .toList();
        } catch (IOException e) {
            throw new InputException(
                    "foamfront: " + folder + " is no folder that can be read.", "Name a folder of studies.");
        }
    }
}
