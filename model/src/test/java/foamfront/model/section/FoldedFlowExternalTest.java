package foamfront.model.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foamfront.model.design.WingSection;
import foamfront.model.design.WingSection.CurvedPlate;
import foamfront.model.design.WingSection.FlatPlate;
import foamfront.model.design.WingSection.FoldedFlatBottom;
import foamfront.model.design.WingSection.FoldedSymmetrical;
import foamfront.model.design.WingSection.SteppedPlate;
import foamfront.model.units.MeasuredTable;
import foamfront.model.validation.ErrorStatistics;
import foamfront.model.validation.Subject;
import foamfront.model.validation.Validation;
import org.junit.jupiter.api.Test;

/** Each family as folded, in frictionless flow: what the model starts from, before friction takes its share, against panels. */
class FoldedFlowExternalTest {
    private static final int DIVISIONS = 100;

    /** Rows of the table are printed to four digits, of as many sides as here. */
    private static final double REPEATED = 1e-4;

    private static final int OF_THE_TABLE = 200;

    private static final double[] BOARDS = {0.015, 0.025, 0.04};

    private static final Validation FLOW = Validation.of(
            Subject.SECTION,
            "Folded outlines in frictionless flow",
            "The tests' panel method about each outline as folded of boards of 1.5 to 4 % of chord (derived), against the model"
                    + " before what friction takes.");

    @Test
    void theTableOfFlatBottomedFoldsIsThePanelMethods() {
        MeasuredTable table = MeasuredTable.read(FlatBottomFlow.class, "flat-bottomed-flow.csv");
        for (int row = 1; row < table.rows(); row++) {
            double thickness = table.at(row, 0);
            double board = 0.4 * thickness;
            SectionShape sharp = SectionShape.of(new FoldedFlatBottom(thickness), 1e-6, 1);
            SectionShape blunt = SectionShape.of(new FoldedFlatBottom(thickness), board, 1);
            PanelMethod about = new FoldedOutline(sharp).flow(OF_THE_TABLE);
            PanelMethod aboutBlunt = new FoldedOutline(blunt).flow(OF_THE_TABLE);
            ThinAerofoil theory = sharp.thinAerofoil();
            ThinAerofoil theoryBlunt = blunt.thinAerofoil();
            double angle = about.zeroLiftAngle();
            double edge = aboutBlunt.zeroLiftAngle() - angle;
            assertThat(angle / theory.zeroLiftAngle()).isCloseTo(table.at(row, 1), within(REPEATED));
            assertThat(edge / (theoryBlunt.zeroLiftAngle() - theory.zeroLiftAngle()))
                    .isCloseTo(table.at(row, 2), within(REPEATED));
            double moment = moment(about);
            assertThat(moment / theory.quarterChordMoment()).isCloseTo(table.at(row, 3), within(REPEATED));
            assertThat((moment(aboutBlunt) - moment) / (theoryBlunt.quarterChordMoment() - theory.quarterChordMoment()))
                    .isCloseTo(table.at(row, 4), within(REPEATED));
        }
    }

    @Test
    void flatBottomedFolds() {
        ErrorStatistics angles = new ErrorStatistics();
        ErrorStatistics moments = new ErrorStatistics();
        ErrorStatistics thinAngles = new ErrorStatistics();
        ErrorStatistics thinMoments = new ErrorStatistics();
        for (double board : BOARDS) {
            for (double thickness : new double[] {0.085, 0.105, 0.12, 0.145}) {
                SectionShape shape = SectionShape.of(new FoldedFlatBottom(thickness), board, 1);
                PanelMethod about = new FoldedOutline(shape).flow(DIVISIONS);
                angles.add(FlatBottomFlow.zeroLiftAngle(thickness, board) / about.zeroLiftAngle() - 1);
                moments.add(FlatBottomFlow.quarterChordMoment(thickness, board) / moment(about) - 1);
                thinAngles.add(shape.thinAerofoil().zeroLiftAngle() / about.zeroLiftAngle() - 1);
                thinMoments.add(shape.thinAerofoil().quarterChordMoment() / moment(about) - 1);
            }
        }
        FLOW.set("flat-bottomed fold, zero-lift angle, relative", angles, 0.005, 0.003, "")
                .set("flat-bottomed fold, moment, relative", moments, 0.010, 0.006, "")
                .set("flat-bottomed fold, zero-lift angle, mean line alone, relative", thinAngles, 0.085, 0.065, "")
                .set("flat-bottomed fold, moment, mean line alone, relative", thinMoments, 0.25, 0.20, "");
    }

    @Test
    void curvedPlates() {
        ErrorStatistics angles = new ErrorStatistics();
        ErrorStatistics moments = new ErrorStatistics();
        for (double board : BOARDS) {
            for (double camber : new double[] {0.03, 0.06, 0.10}) {
                PanelMethod about = about(new CurvedPlate(camber), board);
                angles.add(-2 * camber / about.zeroLiftAngle() - 1);
                moments.add(-Math.PI * camber / moment(about) - 1);
            }
        }
        FLOW.set("curved plate, zero-lift angle, relative", angles, 0.056, 0.040, "")
                .set("curved plate, moment, relative", moments, 0.050, 0.028, "");
    }

    @Test
    void steppedPlates() {
        ErrorStatistics angles = new ErrorStatistics();
        ErrorStatistics moments = new ErrorStatistics();
        for (double board : BOARDS) {
            for (double step : new double[] {0.3, 0.5}) {
                SectionShape shape = SectionShape.of(new SteppedPlate(step), board, 1);
                PanelMethod about = about(new SteppedPlate(step), board);
                angles.add(shape.thinAerofoil().zeroLiftAngle() / about.zeroLiftAngle() - 1);
                moments.add(shape.thinAerofoil().quarterChordMoment() / moment(about) - 1);
            }
        }
        FLOW.set("stepped plate, zero-lift angle, relative", angles, 0.016, 0.012, "")
                .set("stepped plate, moment, relative", moments, 0.085, 0.060, "");
    }

    @Test
    void sectionsWithoutCamberHaveNeitherAngleNorMoment() {
        for (WingSection section : new WingSection[] {new FlatPlate(), new FoldedSymmetrical(0.10)}) {
            PanelMethod about = about(section, 0.025);
            assertThat(about.zeroLiftAngle()).isCloseTo(0, within(1e-9));
            assertThat(moment(about)).isCloseTo(0, within(1e-9));
        }
    }

    /** Frictionless slopes stand above 2π, measured ones at these Reynolds numbers below it: friction takes a tenth. */
    @Test
    void slopes() {
        FLOW.band(
                        "flat-bottomed fold of 10.5 %, slope over 2π, frictionless",
                        1.03, 1.10, about(new FoldedFlatBottom(0.105), 0.025).slopeRatio(1), "")
                .band(
                        "symmetrical fold of 10 %, slope over 2π, frictionless",
                        1.03, 1.10, about(new FoldedSymmetrical(0.10), 0.025).slopeRatio(1), "")
                .band(
                        "flat plate, slope over 2π, frictionless",
                        1.02,
                        1.07,
                        about(new FlatPlate(), 0.025).slopeRatio(1),
                        "")
                .band(
                        "stepped plate, slope over 2π, frictionless",
                        1.04,
                        1.10,
                        about(new SteppedPlate(0.5), 0.025).slopeRatio(1),
                        "");
        assertThat(Sections.polar(new FoldedSymmetrical(0.10)).slopeRatio(StrictMath.log(200e3)))
                .isLessThan(1);
    }

    private static PanelMethod about(WingSection section, double board) {
        return new FoldedOutline(SectionShape.of(section, board, 1)).flow(DIVISIONS);
    }

    private static double moment(PanelMethod about) {
        return about.moment(about.zeroLiftAngle(), 1, 0.25);
    }
}
