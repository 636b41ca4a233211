package foamfront.model.structure;

import static foamfront.model.atmosphere.Atmosphere.GRAVITY;

import foamfront.model.mass.Examples;
import foamfront.model.parts.Board;
import foamfront.model.parts.Provenance;
import foamfront.model.parts.Spar;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Worked examples of structures, figured by hand from their closed forms before the model was written. */
class StructureExternalTest {
    private static final String DERIVED = "Closed form worked by hand (derived).";

    private static Sandwich board(double faceModulus, double coreModulus, double coreShear) {
        return new Sandwich(0.15e-3, 4.5e-3, faceModulus, coreModulus, coreShear);
    }

    @Test
    void aStripOfBoard() {
        Validation check = Validation.of(
                Subject.STRUCTURE,
                "Sandwich strip, faces of 0.15 mm on 4.5 mm of foam",
                "Sandwich beam theory: " + DERIVED);
        check.value("bending stiffness, E 2 GPa", 3.320, board(2e9, 10e6, 3e6).bendingStiffness(), 0.5e-3, "N m")
                .value(
                        "bending stiffness, E 3 GPa",
                        4.943,
                        board(3e9, 10e6, 3e6).bendingStiffness(),
                        0.5e-3,
                        "N m")
                .value(
                        "bending stiffness, E 5 GPa",
                        8.187,
                        board(5e9, 10e6, 3e6).bendingStiffness(),
                        0.5e-3,
                        "N m")
                .value("shear stiffness", 14_415, board(3e9, 10e6, 3e6).shearStiffness(), 0.5, "N/m");
        Board strip =
                new Board("strip", 4.8e-3, 0.3, 0.762, 0.508, 0.15e-3, 3e9, 12e6, 10e6, 3e6, 1, Provenance.INVENTED);
        check.value(
                "sag of 50 mm over 300 mm under 100 g",
                2.335,
                1000 * new StripTest(0.05, 0.3, 0.1).sag(strip),
                2e-3,
                "mm");
    }

    @Test
    void wrinkling() {
        Validation check = Validation.of(
                Subject.STRUCTURE,
                "Wrinkling of a face, 0.5 (E E G)^1/3",
                "N. J. Hoff and S. E. Mautner, J. Aeronautical Sciences 12 (1945) (from memory); figures worked by hand.");
        double[][] rows = {
            {3, 5, 2, 15.5, 0.05},
            {3, 8, 3, 20.8, 0.05},
            {3, 10, 4, 24.7, 0.05},
            {3, 15, 6, 32.3, 0.05},
            {70, 60, 25, 236, 0.5}
        };
        for (double[] row : rows) {
            String name = String.format(Locale.ROOT, "face %.0f GPa, core %.0f, %.0f MPa", row[0], row[1], row[2]);
            double stress = board(row[0] * 1e9, row[1] * 1e6, row[2] * 1e6).wrinklingStress();
            check.value(name, row[3], stress / 1e6, row[4], "MPa");
        }
    }

    @Test
    void aCrudeTestOfABoard() {
        Validation check = Validation.of(
                Subject.STRUCTURE,
                "A 10 in strip between two chairs, broken by the third bottle",
                "Hobby article on foam boards, rcspaceflight, 15 June 2013; bottles of 0.5 kg and a gap of 0.46 m assumed.");
        check.band("paper stress that it bore, two bottles", 5, 8, bottles(2), "MPa")
                .band("paper stress that broke it, three bottles", 8, 20, bottles(3), "MPa");
    }

    private static double bottles(int count) {
        return board(3e9, 8e6, 3e6).faceStress(count * 0.5 * GRAVITY * 0.46 / 4 / 0.254) / 1e6;
    }

    @Test
    void ellipticLoad() {
        Validation check =
                Validation.of(Subject.STRUCTURE, "Wing under an elliptic load", "Integrals of the ellipse: " + DERIVED);
        double[][] table = {
            {0.1, .87289, .77937},
            {0.2, .74706, .58856},
            {0.25, .68504, .50421},
            {0.3, .62384, .42712},
            {0.4, .50463, .29427},
            {0.5, .39100, .18888},
            {0.6, .28476, .10943},
            {0.7, .18812, .05394},
            {0.8, .10409, .01980},
            {0.9, .03739, .00354}
        };
        for (double[] row : table) {
            check.value("shear over the root's at 2y/b " + row[0], row[1], EllipticLoad.shear(row[0]), 0.51e-5, "")
                    .value(
                            "moment over the root's at 2y/b " + row[0],
                            row[2],
                            EllipticLoad.moment(row[0]),
                            0.51e-5,
                            "");
        }
    }

    @Test
    void spars() {
        Validation check = Validation.of(
                Subject.STRUCTURE,
                "Pultruded tubes, E 127 GPa, 1.5 g/cm3",
                "One supplier's least values; EI, mass " + DERIVED);
        double[][] rows = {
            {3, 2, 0.405, 5.89},
            {4, 2.5, 1.352, 11.49},
            {5, 3, 3.391, 18.85},
            {6, 4, 6.483, 23.56},
            {8, 6, 17.455, 32.99},
            {10, 8, 36.806, 42.41},
            {12, 10, 66.929, 51.84},
            {2, 0, 0.0997, 4.71},
            {3, 0, 0.505, 10.6},
            {4, 0, 1.596, 18.85},
            {5, 0, 3.896, 29.45}
        };
        for (double[] row : rows) {
            double d = row[0] / 1000;
            Spar tube = new Spar(
                    "tube", Spar.Shape.ROUND, d, d, row[1] / 1000, 127e9, 600e6, 1500, 1, 5, Provenance.INVENTED);
            String size = String.format(Locale.ROOT, "%.0f", row[0]);
            String bore = String.format(Locale.ROOT, "%.1f", row[1]).replace(".0", "");
            String name = row[1] == 0 ? "rod " + size + " mm, " : size + "/" + bore + " mm, ";
            check.value(name + "EI", row[2], 127e9 * tube.secondMoment(), 0.51e-3, "N m2")
                    .value(name + "mass", row[3], 1000 * tube.linearMass(), row[3] == 10.6 ? 0.051 : 0.51e-2, "g/m");
        }
        strip(check, "carbon strip 0.5x3 mm", 0.5, 3, 127e9, 1500, 0.143, 2.25);
        strip(check, "carbon strip 1x6 mm", 1, 6, 127e9, 1500, 2.286, 9.0);
        strip(check, "carbon strip 1x10 mm", 1, 10, 127e9, 1500, 10.583, 15.0);
        strip(check, "basswood 3x6 mm", 3, 6, 10.1e9, 370, 0.545, 6.66);
        strip(check, "basswood 5x10 mm", 5, 10, 10.1e9, 370, 4.208, 18.5);
        check.value("8/6 mm, moment at 1000 MPa", 34.36, 1e9 * Examples.TUBE.secondMoment() / 0.004, 0.51e-2, "N m");
    }

    private static void strip(
            Validation check, String name, double w, double h, double modulus, double density, double ei, double mass) {
        Spar strip = new Spar(
                name, Spar.Shape.STRIP, w / 1000, h / 1000, 0, modulus, 1e8, density, 1, 1, Provenance.INVENTED);
        check.value(name + ", EI", ei, modulus * strip.secondMoment(), 0.51e-3, "N m2")
                .value(name + ", mass", mass, 1000 * strip.linearMass(), 0.51e-2, "g/m");
    }

    @Test
    void torsion() {
        Validation check = Validation.of(
                Subject.STRUCTURE,
                "Closed tubes in torsion",
                "R. Bredt's formula (1896, from memory), figures worked by hand.");
        ThinTube square = ThinTube.rectangle(0.065, 0.065, 0.0003);
        check.value("65 x 65 x 0.3 mm", 82_387, square.torsionConstant() * 1e12, 0.51, "mm4")
                .value(
                        "its twist at G 1 GPa",
                        0.695,
                        180 / Math.PI / (1e9 * square.torsionConstant()),
                        0.5e-3,
                        "deg/m per N m")
                .value(
                        "100 x 50 x 2 mm",
                        666_667,
                        ThinTube.rectangle(0.1, 0.05, 0.002).torsionConstant() * 1e12,
                        0.5,
                        "mm4")
                .value(
                        "ring of radius 50 x 1 mm, exact solution",
                        785_477,
                        new ThinTube(Math.PI * 0.05 * 0.05, 2 * Math.PI * 0.05, 0.001).torsionConstant() * 1e12,
                        100,
                        "mm4");
    }

    @Test
    void jointsAndHinges() {
        Validation joint = Validation.of(
                Subject.STRUCTURE,
                "Bearing pressure of a joint tube in its sleeve",
                "Linear couple, 6 M / (d l2): " + DERIVED);
        joint.value("5 N m, 8 mm, 150 mm", 167, JointTube.of(5, 0, 0.008, 0.150).pressure() / 1000, 0.5, "kPa")
                .value(
                        "5 N m, 8 mm, 100 mm",
                        375,
                        JointTube.of(5, 0, 0.008, 0.100).pressure() / 1000,
                        0.5,
                        "kPa")
                .value(
                        "3 N m, 6 mm, 120 mm",
                        208,
                        JointTube.of(3, 0, 0.006, 0.120).pressure() / 1000,
                        0.5,
                        "kPa");
        Validation hinge = Validation.of(Subject.STRUCTURE, "Hinge moments", "Thin-aerofoil theory: " + DERIVED);
        double degree = Math.PI / 180;
        double[][] rows = {
            {0.15, .00746, .01576},
            {0.20, .00872, .01611},
            {0.25, .00987, .01647},
            {0.30, .01095, .01685},
            {0.40, .01300, .01767},
            {0.50, .01498, .01860}
        };
        for (double[] row : rows) {
            HingeMoment slopes = HingeMoment.of(row[0]);
            String name = "control chord " + row[0] + ", per degree of ";
            hinge.relative(name + "incidence", row[1], -slopes.incidence() * degree, 0.01, "")
                    .relative(name + "deflection", row[2], -slopes.deflection() * degree, 0.01, "");
        }
        double moment =
                0.5 * 1.225 * 400 * 0.4 * 0.04 * 0.04 * -HingeMoment.of(0.2).deflection() * 20 * degree;
        hinge.value("elevon 0.4 m x 40 mm, 20 degrees, 20 m/s", 0.0505, moment, 0.5e-4, "N m");
    }

    @Test
    void gusts() {
        Validation check = Validation.of(
                Subject.STRUCTURE,
                "Gust of 5 m/s at 15 m/s, 40 N/m2",
                "14 CFR 23.341 in its form before 2017 (from memory), figures worked by hand.");
        double mu = LoadFactor.massRatio(40, 1.225, 0.2, 4.5);
        check.value("mass ratio", 7.397, mu, 5e-3, "")
                .value("alleviation", 0.5127, LoadFactor.alleviation(mu), 2e-4, "");
        double load = 1 + LoadFactor.alleviation(mu) * LoadFactor.sharpGust(40, 1.225, 15, 5, 4.5);
        check.value("load factor", 3.649, load, 5e-3, "g");
    }
}
