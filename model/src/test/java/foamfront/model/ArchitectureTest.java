package foamfront.model;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;

/** The small arrows: packages one way, physics alone, the same bytes everywhere. */
@AnalyzeClasses(packages = "foamfront.model", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** Exactly rounded or exact on every Java: the rest of java.lang.Math may differ between machines and releases. */
    private static final Set<String> EXACT =
            Set.of("sqrt", "abs", "min", "max", "floor", "ceil", "rint", "fma", "signum", "ulp");

    @ArchTest
    static final ArchRule noCycles =
            slices().matching("foamfront.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule physicsStandsAlone = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "foamfront.optimizer..",
                    "io.jenetics..",
                    "picocli..",
                    "tech.tablesaw..",
                    "java.util.concurrent..",
                    "java.time..",
                    "java.util.random..",
                    "java.nio.file..");

    @ArchTest
    static final ArchRule onlyExactMathematics = noClasses().should().callMethodWhere(inexact());

    @ArchTest
    static final ArchRule noConsole = noClasses().should().accessField(System.class, "out");

    @ArchTest
    static final ArchRule formatsSayTheirLocale = noClasses()
            .should()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase");

    /** units ← atmosphere ← parts ← design ← … ← appraisal: nobody may use what stands to the right of it. */
    @ArchTest
    static final ArchRule appraisalIsLast = noClasses()
            .that()
            .resideOutsideOfPackage("..appraisal..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("..appraisal..");

    @ArchTest
    static final ArchRule unitsAreFirst = noClasses()
            .that()
            .resideInAPackage("..units..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..parts..", "..design..", "..mission..", "..airframe..");

    private static DescribedPredicate<JavaCall<?>> inexact() {
        return DescribedPredicate.describe(
                "java.lang.Math beyond " + EXACT,
                call -> call.getTargetOwner().isEquivalentTo(Math.class) && !EXACT.contains(call.getName()));
    }
}
