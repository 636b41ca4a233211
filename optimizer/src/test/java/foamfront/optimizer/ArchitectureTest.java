package foamfront.optimizer;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The optimizer's small arrows. */
@AnalyzeClasses(packages = "foamfront.optimizer", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule noCycles =
            slices().matching("foamfront.optimizer.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule searchKnowsNoAeroplane = noClasses()
            .that()
            .resideInAPackage("..optimizer.search..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "..model.parts..",
                    "..model.design..",
                    "..model.mission..",
                    "..model.airframe..",
                    "..model.appraisal..",
                    "..optimizer.genome..",
                    "..optimizer.study..");

    @ArchTest
    static final ArchRule onlyCommandsTouchTheConsole = noClasses()
            .that()
            .resideOutsideOfPackage("..optimizer.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");

    /** Time is read by commands and passed in, so that a clock set back can change no result. */
    @ArchTest
    static final ArchRule onlyCommandsReadAClock = noClasses()
            .that()
            .resideOutsideOfPackage("..optimizer.cli..")
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage("java.time..", "java.nio.file.attribute..");
}
