package foamfront.model.propulsion;

import static foamfront.model.units.Unit.GRAM;
import static foamfront.model.units.Unit.INCH;

import foamfront.model.parts.BladeFamily;
import foamfront.model.parts.Controller;
import foamfront.model.parts.Fan;
import foamfront.model.parts.Propeller;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Masses and prices of controllers, servos, receivers, propellers and fans beside the trade's usual ranges. */
public class PartTradeExternalTest {
    /** Of every range on this part of the page. */
    public static final Validation TRADE = Validation.of(
            Subject.PROPULSION,
            "Small parts for sale",
            "The trade's usual ranges (from memory); one servo's torque and price from a small public list (read). Masses and prices of"
                    + " the catalogue are configuration.");

    /** In g and USD; mass goes as 5 g + 0.8 g/A. */
    @ParameterizedTest(name = "{0} A")
    @CsvSource({"20, 20, 25, 8, 14", "30, 25, 35, 10, 18", "40, 35, 45, 14, 25"})
    void controllers(int amperes, double light, double heavy, double cheap, double dear) {
        Controller controller = controller(amperes);
        TRADE.band(amperes + " A controller, mass", light, heavy, GRAM.fromSi(controller.mass()), "g")
                .band(amperes + " A controller, price", cheap, dear, controller.price(), "USD");
    }

    @Test
    void theLargestController() {
        TRADE.band("60 A controller, mass", 50, 65, GRAM.fromSi(controller(60).mass()), "g");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "servo 3.7 g, 0.04, 0.05",
        "servo 5 g, 0.06, 0.09",
        "servo 9 g, 0.16, 0.18",
        "servo 17 g, 0.25, 0.35",
    })
    void servos(String name, double weak, double strong) {
        TRADE.band(name + ", torque", weak, strong, figure("servos.csv", name, "torque [N m]"), "N m");
    }

    @Test
    void aServosPrice() {
        TRADE.value("servo of 0.177 N m, price", 7.5, figure("servos.csv", "servo 9 g", "price [USD]"), 0.51, "USD");
    }

    /** The micro receiver is heavier than those sold bare: the workshop's rule takes 5 g with leads as the least. */
    @Test
    void receivers() {
        TRADE.band("6 channels, mass", 5, 10, figure("receivers.csv", "receiver 6ch", "mass [g]"), "g")
                .band("6 channels, price", 10, 25, figure("receivers.csv", "receiver 6ch", "price [USD]"), "USD")
                .outside(
                        "micro receiver without leads, mass",
                        2,
                        4,
                        figure("receivers.csv", "receiver 4ch micro", "mass [g]"),
                        "g");
    }

    @Test
    void propellers() {
        List<Propeller> middle = Plants.PROPELLERS.stream()
                .filter(p -> p.blades() == 2 && INCH.fromSi(p.diameter()) >= 8 && INCH.fromSi(p.diameter()) <= 10)
                .filter(p -> p.family() != BladeFamily.FOLDING)
                .toList();
        double light = middle.stream().mapToDouble(Propeller::mass).min().orElseThrow();
        double heavy = middle.stream().mapToDouble(Propeller::mass).max().orElseThrow();
        double cheap = middle.stream().mapToDouble(Propeller::price).min().orElseThrow();
        double dear = middle.stream().mapToDouble(Propeller::price).max().orElseThrow();
        TRADE.band("lightest of 8 to 10 in, mass", 8, 20, GRAM.fromSi(light), "g")
                .band("heaviest of 8 to 10 in, mass", 8, 20, GRAM.fromSi(heavy), "g")
                .band("cheapest of 8 to 10 in, price", 1.5, 4, cheap, "USD")
                .band("dearest of 8 to 10 in, price", 1.5, 4, dear, "USD")
                .value(
                        "10x4.7 slow flyer, mass",
                        13,
                        GRAM.fromSi(Plants.propeller("10x4.7 slow flyer").mass()),
                        0.5,
                        "g");
    }

    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"50, 35, 65, 12, 20", "64, 85, 120, 18, 30", "70, 130, 190, 25, 45"})
    void fans(int diameter, double light, double heavy, double cheap, double dear) {
        for (Fan fan : Plants.FANS) {
            if (Math.abs(fan.diameter() - 1e-3 * diameter) < 1e-6) {
                TRADE.band(fan.name() + ", mass", light, heavy, GRAM.fromSi(fan.mass()), "g")
                        .band(fan.name() + ", price", cheap, dear, fan.price(), "USD");
            }
        }
    }

    private static Controller controller(int amperes) {
        return Plants.CONTROLLERS.stream()
                .filter(c -> c.current() == amperes)
                .findFirst()
                .orElseThrow();
    }

    private static double figure(String file, String part, String column) {
        int at = List.of(Plants.heads(file)).indexOf(column);
        return Plants.rows(file).stream()
                .filter(row -> row[0].equals(part))
                .mapToDouble(row -> Double.parseDouble(row[at]))
                .findFirst()
                .orElseThrow();
    }
}
