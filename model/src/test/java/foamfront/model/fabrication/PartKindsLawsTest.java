package foamfront.model.fabrication;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.Samples;
import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.FinJoint;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Nose;
import foamfront.model.design.Power;
import foamfront.model.design.Tail;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.design.WingTips;
import foamfront.model.factors.Factors;
import foamfront.model.mass.MassBreakdown;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of part of every arrangement, folded or put together again, has the outside that the airframe gives it, to within
 * half a millimetre; and mass counts the board of exactly these patterns. A part without such a check is a failure.
 */
class PartKindsLawsTest {
    private static final int NEAR = 6;

    private static final Map<String, BiConsumer<CutPart, Built>> KINDS = Map.ofEntries(
            entry("wing", WingRefolds::skin),
            entry("wing bottom", WingRefolds::skin),
            entry("wing top", WingRefolds::skin),
            entry("wing step", WingRefolds::step),
            entry("wing spar", WingRefolds::strip),
            entry("wing web", WingRefolds::strip),
            entry("wing joint doubler", WingRefolds::doubler),
            entry("wing splice doubler", WingRefolds::doubler),
            entry("wing root rib", WingRefolds::rootRib),
            entry("wing winglet", WingRefolds::winglet),
            entry("delta", WingRefolds::delta),
            entry("stabiliser", WingRefolds::stabiliser),
            entry("fin", WingRefolds::fin),
            entry("body", BodyRefolds::shell),
            entry("body angle", BodyRefolds::shell),
            entry("nose", BodyRefolds::shell),
            entry("nose tongue", BodyRefolds::tongue),
            entry("body sleeve board", BodyRefolds::sleeveBoard),
            entry("body sleeve side", BodyRefolds::sleeveSide),
            entry("firewall", BodyRefolds::former),
            entry("nose plate", BodyRefolds::former),
            entry("tail former", BodyRefolds::former),
            entry("firewall gusset", BodyRefolds::gusset),
            entry("floor", BodyRefolds::floor),
            entry("wing saddle doubler", BodyRefolds::saddle),
            entry("boom seat", BodyRefolds::seat),
            entry("tail cheek", BodyRefolds::cheek),
            entry("body board", BodyRefolds::profile),
            entry("nose doubler", BodyRefolds::noseDoubler),
            entry("body splice", BodyRefolds::splice),
            entry("wing strip", BodyRefolds::wingStrip),
            entry("motor mount", MountRefolds::motorMount),
            entry("nacelle side", MountRefolds::nacelle),
            entry("pylon", MountRefolds::pylon),
            entry("duct", MountRefolds::duct),
            entry("wheel pad", MountRefolds::pad),
            entry("nose leg mount", MountRefolds::pad),
            entry("tip float", MountRefolds::tipFloat),
            entry("tip float end", MountRefolds::tipFloatEnd),
            entry("tip float strut", MountRefolds::tipFloatStrut),
            entry("float strut", MountRefolds::floatStrut),
            entry("strut", MountRefolds::strut),
            entry("cabane", MountRefolds::strut),
            entry("planing side", PlaningRefolds::side),
            entry("planing deck", PlaningRefolds::deck),
            entry("planing bow plate", PlaningRefolds::bowPlate),
            entry("planing stem", PlaningRefolds::stem),
            entry("planing forebody", PlaningRefolds::forebody),
            entry("planing afterbody", PlaningRefolds::afterbody),
            entry("planing tail bottom", PlaningRefolds::tailBottom),
            entry("planing bulkhead", PlaningRefolds::bulkhead),
            entry("planing transom", PlaningRefolds::transom),
            entry("planing spray strip", PlaningRefolds::sprayStrip));

    /** A biplane's upper wing is a wing; hulls and floats have the same panels. */
    private static String kind(CutPart part) {
        String name = part.name().replaceFirst("^upper wing", "wing");
        return name.equals("float strut") ? name : name.replaceFirst("^(hull|float) ", "planing ");
    }

    private static Stream<Design> samples() {
        Design trainer = Samples.trainer();
        Design longProfile = Records.with(trainer, "body", new Body.ProfileBoard(0.95, 0.0045, 0.07, Nose.FIXED));
        Design thickDuct = Records.with(Arrangements.of("fan"), "board.thickness", 0.006);
        return Stream.concat(
                Stream.concat(TestAeroplanes.all(), Arrangements.all().values().stream()),
                Stream.of(longProfile, thickDuct));
    }

    static Stream<Design> all() {
        return samples()
                .flatMap(design -> Stream.concat(
                        Stream.of(design),
                        Stream.iterate(1L, seed -> seed <= NEAR, seed -> seed + 1)
                                .map(seed -> Arrangements.near(design, seed))));
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyPartRefoldsToItsOutside(Design design) {
        Built built = Built.of(design);
        for (CutPart part : built.parts().cut()) {
            assertThat(KINDS).as("checks of parts").containsKey(kind(part));
            Objects.requireNonNull(KINDS.get(kind(part))).accept(part, built);
        }
    }

    @Test
    void everyCheckedKindOccurs() {
        Set<String> met = new TreeSet<>();
        samples().forEach(design -> Built.of(design).parts().cut().forEach(part -> met.add(kind(part))));
        assertThat(met).isEqualTo(new TreeSet<>(KINDS.keySet()));
    }

    /** A new kind of wing, tail, body, power, undercarriage, section or joint fails here until a sample has it. */
    @Test
    void everyKindOfArrangementOccurs() {
        List<Design> designs = samples().toList();
        for (Class<?> sealed : List.of(
                Wing.class,
                Tail.class,
                Body.class,
                Power.class,
                Undercarriage.class,
                WingSection.class,
                WingSpar.class)) {
            Set<Class<?>> met = designs.stream()
                    .flatMap(design -> Stream.<Object>of(
                            design.wing(),
                            design.tail(),
                            design.body(),
                            design.power(),
                            design.undercarriage(),
                            design.wing().build().section(),
                            design.wing().build().spar()))
                    .filter(sealed::isInstance)
                    .map(Object::getClass)
                    .collect(Collectors.toSet());
            assertThat(met).as(sealed.getSimpleName()).containsAll(Arrays.asList(sealed.getPermittedSubclasses()));
        }
        assertThat(designs).extracting(design -> design.wing().build().joint()).contains(WingJoint.values());
        assertThat(designs).extracting(design -> design.wing().build().tips()).contains(WingTips.values());
        assertThat(designs).extracting(design -> design.tail().finJoint()).contains(FinJoint.values());
        assertThat(designs).extracting(design -> design.body().nose()).contains(Nose.values());
        assertThat(designs).extracting(design -> design.controls().flaps()).contains(FlapKind.values());
    }

    /** The board of the patterns, drawn as outlines, is the board that mass carries: allowance and stock aside, nothing else. */
    @ParameterizedTest
    @MethodSource("all")
    void massCountsTheseOutlines(Design design) {
        Built built = Built.of(design);
        MassBreakdown mass =
                MassBreakdown.of(built.airframe(), built.parts(), TestAeroplanes.WORKSHOP, Factors.NOMINAL);
        Set<String> names = built.parts().cut().stream().map(CutPart::name).collect(Collectors.toSet());
        double carried = mass.items().stream()
                .filter(item -> names.contains(item.name()))
                .mapToDouble(item -> item.mass())
                .sum();
        double drawn = 0;
        for (CutPart part : built.parts().cut()) {
            drawn += part.count()
                            * part.pattern().outline().area()
                            * design.board().arealDensity()
                    + part.glueLength() * TestAeroplanes.WORKSHOP.glueLinearMass()
                    + (part.tapeLength() + part.coveringLength()) * TestAeroplanes.WORKSHOP.tapeLinearMass();
        }
        assertThat(carried).isCloseTo(drawn, within(1e-9));
    }
}
