package foamfront.model.appraisal;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.SectionKind;
import foamfront.model.design.Tail;
import foamfront.model.design.Wing;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.fabrication.BuildTime;
import foamfront.model.fabrication.FoldRoom;
import foamfront.model.flight.Handling;
import foamfront.model.mass.ClearanceCheck;
import foamfront.model.mission.Measure;

/** Geometry, patterns, sheets, masses, money and minutes: everything that needs no air. */
final class WorkshopStage {
    private WorkshopStage() {}

    static void run(Workbench w) {
        Design design = w.design;
        Airframe airframe = Airframe.of(design);
        w.airframe = airframe;
        w.set(Measure.CLEARANCE, ClearanceCheck.least(airframe));
        w.set(Measure.BAY_LENGTH, airframe.stations().bay().spare(design.power().battery()));
        if (airframe.stations().shaft().radius() > 0) {
            w.set(Measure.PROPELLER_CLEARANCE, PropellerClearance.of(airframe));
        } else {
            w.rule(Measure.PROPELLER_CLEARANCE);
        }
        w.set(Measure.VIEW, missingView(design));
        Proportions.set(w, airframe);
        chordFit(w, airframe);
        if (airframe.tail() == null) {
            w.rule(Measure.HORIZONTAL_TAIL_VOLUME);
        } else {
            w.set(Measure.HORIZONTAL_TAIL_VOLUME, Handling.horizontalTailVolume(airframe));
        }
        w.set(Measure.VERTICAL_TAIL_VOLUME, Handling.verticalTailVolume(airframe));
        w.parts = w.patterns.parts(airframe);
        w.set(Measure.SHEET_FIT, w.parts.sheetFit(design.board()));
        w.car.load(airframe, w.mission.car());
        w.set(Measure.PACKED_LENGTH, w.car.longest());
        w.set(Measure.CAR_ROOM, w.car.margin());
        w.sheets = w.nester.sheets(w.parts, design.board());
        w.set(Measure.SHEETS, w.sheets);
        BuildTime time = BuildTime.of(airframe, w.parts, w.mission.workshop(), w.factors);
        w.set(Measure.BUILD_TIME, time.total());
        w.set(Measure.DIFFICULTY, time.difficulty());
        w.set(Measure.BUILD_COST, BillOfMaterials.cost(airframe, w.parts, w.sheets, w.mission, w.factors));
        masses(w, airframe);
    }

    private static void masses(Workbench w, Airframe airframe) {
        w.masses.weigh(airframe, w.parts, w.mission.workshop(), w.factors);
        double mass = w.masses.mass();
        double area = airframe.area();
        w.set(Measure.PAYLOAD, w.design.payload());
        w.set(Measure.MASS, mass);
        w.set(Measure.EMPTY_MASS, w.masses.emptyMass());
        w.set(Measure.WING_LOADING, mass / area);
        w.set(Measure.WING_CUBE_LOADING, mass / (area * Math.sqrt(area)));
    }

    /** What a nose camera asks for and a propeller ahead of it takes, rad; a pusher's or a twin's nose sees freely. */
    private static double missingView(Design design) {
        if (!(design.power() instanceof Power.NoseTractor)) {
            return 0;
        }
        double missing = 0;
        for (int i = 0; i < design.loads().size(); i++) {
            Load load = design.loads().get(i);
            if (load.place() == Place.NOSE) {
                missing = Math.max(missing, load.view());
            }
        }
        return missing;
    }

    /** What is left of a delta's tip chord beside the foot of the fin folded up there, m. */
    private static double foldedFins(Design design, double tipChord) {
        return design.wing() instanceof Wing.Delta
                        && design.tail() instanceof Tail.None none
                        && none.fin().count() > 1
                ? tipChord - none.fin().chord()
                : Double.POSITIVE_INFINITY;
    }

    /** At the tip: inside height less what the spar needs (a plate's must fit its thickness), or what folding has left. */
    private static void chordFit(Workbench w, Airframe airframe) {
        double board = w.design.board().thickness();
        Surface wing = airframe.wing();
        Panel last = wing.panels().get(wing.panels().size() - 1);
        double spar = w.design.wing().build().spar() instanceof WingSpar.Stock stock
                ? stock.spar().height()
                : 0;
        WingSection section = wing.section();
        double inside;
        if (section instanceof WingSection.FoldedFlatBottom folded) {
            inside = folded.thickness() * last.tipChord() - 2 * board;
            spar = Math.max(spar, board);
        } else if (section instanceof WingSection.FoldedSymmetrical folded) {
            inside = folded.thickness() * last.tipChord() - 2 * board;
            spar = Math.max(spar, board);
        } else {
            inside = section.kind() == SectionKind.STEPPED_PLATE ? 2 * board : board;
        }
        double folding = FoldRoom.of(section, board, last.tipChord());
        w.set(Measure.CHORD_FIT, Math.min(Math.min(inside - spar, folding), foldedFins(w.design, last.tipChord())));
    }
}
