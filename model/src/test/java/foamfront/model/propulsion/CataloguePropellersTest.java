package foamfront.model.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

class CataloguePropellersTest {
    @Test
    void fittingAgainFindsTheShippedCoefficients() throws IOException {
        assertThat(PropellerRows.lines(MeasuredPropeller.all().values()))
                .isEqualTo(Files.readAllLines(PropellerRows.FILE, StandardCharsets.UTF_8));
    }
}
