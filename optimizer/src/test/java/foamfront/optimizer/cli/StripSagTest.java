package foamfront.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StripSagTest {
    @Test
    void aMeasuredSagGivesABoardsRow() {
        Run plain = Run.of("parts", "--strip-sag", "2.6 mm", "--strip-board", "white 5 mm");
        assertThat(plain.err()).isEmpty();
        assertThat(plain.code()).isZero();
        assertThat(plain.out()).contains("The paper's modulus is", "face modulus [GPa]", "white 5 mm");

        // Half the load and half the sag are the same board.
        Run half = Run.of("parts", "--strip-sag", "1.3 mm", "--strip-load", "50 g", "--strip-board", "white 5 mm");
        assertThat(half.out().lines().findFirst().orElseThrow().substring(0, 35))
                .isEqualTo(plain.out().substring(0, 35));
    }

    @Test
    void whatNoPaperExplainsIsSaid() {
        Run run = Run.of("parts", "--strip-sag", "0.01 mm");
        assertThat(run.code()).isEqualTo(Exit.USER_INPUT);
        assertThat(run.err()).contains("no paper explains", "measure again");
        assertThat(Run.of("parts", "--strip-sag", "2,6").code()).isEqualTo(Exit.USER_INPUT);
        assertThat(Run.of("parts", "--strip-sag", "2.6 mm", "--strip-board", "steel")
                        .err())
                .contains("no board called");
    }
}
