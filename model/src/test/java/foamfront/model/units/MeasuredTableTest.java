package foamfront.model.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class MeasuredTableTest {
    @Test
    void readsRowsBesideAClassAndSkipsTheHeader() {
        MeasuredTable table = MeasuredTable.read(MeasuredTableTest.class, "two-rows.csv");

        assertThat(table.rows()).isEqualTo(2);
        assertThat(table.at(1, 0)).isEqualTo(3e4);
        assertThat(table.column(1)).containsExactly(2.5, -4);
    }

    @Test
    void namesAResourceThatIsNotThere() {
        assertThatThrownBy(() -> MeasuredTable.read(MeasuredTableTest.class, "nothing.csv"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nothing.csv");
    }
}
