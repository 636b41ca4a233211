package foamfront.model.water;

import foamfront.model.airframe.Flotation;
import foamfront.model.airframe.PlaningForm;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/** Buoyancy that the rule asks of an aeroplane of 1.5 kg. */
class FloatingExternalTest {
    private static final Validation RULE = Validation.of(
            Subject.FLIGHT,
            "Buoyancy",
            "14 CFR 23.2310(a): 80 % above the maximum weight in fresh water; litres derived.");

    private static final Validation SPRAY = Validation.of(
            Subject.FLIGHT,
            "Spray",
            "J. B. Parkinson, NACA TN 1290 (1947), from memory; figures derived from its definition.");

    @Test
    void theSprayOfOneAndAHalfKilograms() {
        SPRAY.value("beam loading, beam 0.12 m", 0.868, 1.5 / (Water.DENSITY * 0.12 * 0.12 * 0.12), 5e-4, "")
                .value("spray load, forebody 0.35 m", 0.102, Water.sprayLoad(1.5, 0.12, 0.35), 5e-4, "")
                .value(
                        "spray load, beam 0.135 m, three beams long",
                        0.0675,
                        Water.sprayLoad(1.5, 0.135, 0.405),
                        5e-4,
                        "");
    }

    @Test
    void twoPointSevenLitresFloatOneAndAHalfKilograms() {
        PlaningForm form = PlaningForm.of(0.6, 0.1, 0.08, 0.2, 0.32);
        double scale = StrictMath.cbrt(2.7e-3 / 2 / Floating.volume(form));
        PlaningForm rule = PlaningForm.of(0.6 * scale, 0.1 * scale, 0.08 * scale, 0.2, 0.32 * scale);
        Flotation floats = new Flotation(rule, 2, 0.15, 0.01, -0.2, null);

        double reserve = Floating.of(floats, 1.5, 0.01, 0.2).reserve(1.5);

        RULE.value("reserve of two floats of 1.35 litres", 0.80, reserve, 5e-3, "");
    }
}
