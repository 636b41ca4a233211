package foamfront.model.parts;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class BoardTest {
    private static Board board(double thickness, double face, double length, double width) {
        return new Board("b", thickness, 0.3, length, width, face, 3.2e9, 12.5e6, 8e6, 3e6, 1.5, Provenance.INVENTED);
    }

    @Test
    void aBoardWithoutThicknessIsRefused() {
        assertThatThrownBy(() -> board(0, 0.14e-3, 0.762, 0.508)).hasMessageContaining("board thickness");
    }

    @Test
    void facesMustLeaveACore() {
        assertThatThrownBy(() -> board(4e-4, 2e-4, 0.762, 0.508)).hasMessageContaining("no core");
    }

    @Test
    void aSheetTooSmallForAMountIsRefused() {
        assertThatThrownBy(() -> board(4.5e-3, 0.14e-3, 0.762, 0.059)).hasMessageContaining("smallest mount");
        assertThatThrownBy(() -> board(4.5e-3, 0.14e-3, 0.3, 0.4)).hasMessageContaining("shorter than its width");
    }
}
