package foamfront.model.fabrication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.Arrangements;
import foamfront.model.Records;
import foamfront.model.airframe.Airframe;
import foamfront.model.design.Design;
import foamfront.model.design.FinJoint;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Planform;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingTips;
import foamfront.model.mission.CarSpace;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Boxes of pieces by hand. The trainer: a body 860 by 70 by 70 mm; on its top a wing of 1200 mm, 200 mm at the root and 180 at the
 * tips, 22 mm thick; a tail of 420 mm that ends with the body; a fin of 170 mm. Its motor is 27.5 mm across and 25 mm long before a
 * firewall of 5, its propeller 228.6 mm.
 */
class PackedBoxesTest {
    private static final double ROUNDING = 1e-6; // of the figures below

    private static final Design TRAINER = Arrangements.of("trainer");

    /** 3 degrees at 600 mm. */
    private static final double RISE = 0.031445;

    @Test
    void theMotorStandsAheadOfTheNose() {
        assertBox(body(TRAINER), 0.86 + 0.03, 0.42, 0.07 + 0.17);
        assertBox(wing(TRAINER), 1.2, 0.2, RISE + 0.022);
        // On the wing it goes with it.
        assertThat(body(Arrangements.of("twin")).length()).isCloseTo(0.86, within(ROUNDING));
    }

    /** 450 and 350 mm hold the body only as it stands, the wing over it: (350 − 240 − 53.4) / 2. */
    @Test
    void bodyAndWingShareWhatTheirStackLeaves() {
        Stowage stowage = Stowage.of(Airframe.of(TRAINER), new CarSpace(1.6, 0.45, 0.35, false));
        assertThat(stowage.pieces()).hasSize(2);
        assertThat(stowage.margin()).isCloseTo(0.0282775, within(ROUNDING));
    }

    /** Boards of 1.2 diameters, 33 mm, half of them below the wing's underside; the motor and its firewall ahead of the wing. */
    @Test
    void enginesGoWithTheWing() {
        Design twin = Arrangements.of("twin");
        assertBox(wing(twin), 1.2, 0.2 + 0.03, RISE + 0.022 + 0.0165);
        // Where a low wing stays on they hang below the body, which stands 35 + 170 mm over its axis.
        Design low = Records.with(twin, "wing.z", -0.035);
        assertThat(BodyBox.height(Airframe.of(low), true)).isCloseTo(0.035 + 0.0165 + 0.205, within(ROUNDING));
    }

    /**
     * The disc clears the body by 10 mm and the trailing edge by 10 mm and a twentieth of 228.6; the motor's upper edge stands 114.3 +
     * 10 + 13.75 mm over the body.
     */
    @Test
    void aPylonGoesWithAWingInOnePieceAndStaysBetweenHalves() {
        Design pusher = Records.with(Arrangements.of("pusher"), "tail.fin.height", 0.01);
        assertBox(wing(pusher), 1.2, 0.2 + 0.01 + 0.01143, 0.13805);
        assertThat(body(pusher).height()).isCloseTo(0.07 + 0.01, within(ROUNDING));
        Design halves = Records.with(pusher, "wing.build.joint", WingJoint.PLUG_IN);
        assertThat(wing(halves).height()).isCloseTo(0.022, within(ROUNDING));
        assertThat(body(halves).height()).isCloseTo(0.07 + 0.13805, within(ROUNDING));
    }

    /** A wing of 1080 mm, 265 and 238.5 mm deep, swept 21 degrees, 8 % thick and bent by 3 degrees, with fins of 230 mm. */
    @Test
    void finsOnAWingStandOnItOrLieDown() {
        Design standing = Records.with(Arrangements.of("flying wing"), "wing.build.holdDown", HoldDown.RUBBER_BANDS);
        // Quarter chords 540 tan 21° apart, a quarter of 265 before them, three of 238.5 behind.
        double breadth = 0.06625 + 0.207287 + 0.178875;
        assertBox(wing(standing), 1.08, breadth, 0.028300 + 0.0212 + 0.23);
        Design folded = Records.with(standing, "tail.fin.joint", FinJoint.FOLDING);
        assertBox(wing(folded), 1.08, breadth, 0.028300 + 0.0212 + 0.0045);
    }

    /** 3 back on 4 out, 600 mm out and 200 mm deep: 750 mm along, and of the chord three fifths along and four across. */
    @Test
    void aSweptHalfLiesAlongItsQuarterChords() {
        Planform swept = new Planform(1.2, 0.2, 1, StrictMath.atan(0.75), 0, 0, 0, List.of());
        Design halves = Records.with(TRAINER, "wing.build.joint", WingJoint.PLUG_IN);
        List<Piece> pieces = pieces(Records.with(halves, "wing.planform", swept));
        assertThat(pieces).hasSize(3);
        assertBox(pieces.get(1), 0.75 + 0.12, 0.16, 0.022);
        assertThat(pieces.get(2)).isEqualTo(pieces.get(1));
    }

    /** 0.7 of 180 mm. */
    @Test
    void wingletsGoWithTheWing() {
        Design design = Records.with(level(TRAINER), "wing.build.tips", WingTips.WINGLETS);
        assertBox(wing(design), 1.2, 0.2, 0.022 + 0.126);
        assertBox(body(design), 0.89, 0.42, 0.24);
        Design low = Records.with(design, "tail.fin.height", 0.01);
        assertThat(BodyBox.height(Airframe.of(low), true)).isCloseTo(0.07 + 0.126, within(ROUNDING));
    }

    /** Halves along their slopes, 600 / cos 3°, upper sides together. */
    @Test
    void aFoldedWingIsTwoHalvesThick() {
        assertBox(wing(Arrangements.of("folding wing")), 0.600823, 0.2, 2 * 0.022);
    }

    /** 210 tan 35° below the body's upper edge, which nothing stands over. */
    @Test
    void aTailThatHangsDownCountsToItsTips() {
        Design hanging = Records.with(Arrangements.of("V-tail"), "tail.plane.dihedral", -Math.toRadians(35));
        assertThat(body(hanging).height()).isCloseTo(0.147044, within(ROUNDING));
    }

    @Test
    void aGluedWingStaysOnWithItsThickness() {
        Design glued = Records.with(level(TRAINER), "wing.build.holdDown", HoldDown.GLUED);
        List<Piece> pieces = pieces(Records.with(glued, "tail.fin.height", 0.01));
        assertThat(pieces).hasSize(1);
        assertBox(pieces.get(0), 0.89, 1.2, 0.07 + 0.022);
    }

    /** A fifth of 1200 mm apart from middle to middle, 18 mm wide. */
    @Test
    void anAmphibiansWheelsStandApart() {
        Design narrow = Records.with(Arrangements.of("hull"), "tail.plane.span", 0.1);
        assertThat(body(narrow).breadth()).isCloseTo(0.24 + 0.018, within(ROUNDING));
    }

    private static Design level(Design design) {
        return Records.with(design, "wing.planform.dihedral", 0.0);
    }

    private static Piece body(Design design) {
        return pieces(design).get(0);
    }

    private static Piece wing(Design design) {
        return pieces(design).get(1);
    }

    private static List<Piece> pieces(Design design) {
        PackedPieces pieces = new PackedPieces();
        pieces.take(Airframe.of(design), false);
        return pieces.list();
    }

    private static void assertBox(Piece piece, double length, double breadth, double height) {
        assertThat(piece.length()).isCloseTo(length, within(ROUNDING));
        assertThat(piece.breadth()).isCloseTo(breadth, within(ROUNDING));
        assertThat(piece.height()).isCloseTo(height, within(ROUNDING));
    }
}
