package foamfront.model.appraisal;

import foamfront.model.airframe.Airframe;
import foamfront.model.airframe.Panel;
import foamfront.model.airframe.Stations;
import foamfront.model.airframe.Surface;
import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Place;
import foamfront.model.design.Power;
import foamfront.model.design.SectionKind;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.fabrication.BillOfMaterials;
import foamfront.model.fabrication.BuildTime;
import foamfront.model.fabrication.FlatPatterns;
import foamfront.model.fabrication.FoldRoom;
import foamfront.model.fabrication.TransportBox;
import foamfront.model.flight.Handling;
import foamfront.model.mass.ClearanceCheck;
import foamfront.model.mass.MassBreakdown;
import foamfront.model.mission.Measure;

/** Geometry, patterns, sheets, masses, money and minutes: everything that needs no air. */
final class WorkshopStage {
    private WorkshopStage() {}

    static void run(Workbench w) {
        Design design = w.design;
        Airframe airframe = Airframe.of(design);
        w.airframe = airframe;
        ClearanceCheck room = ClearanceCheck.of(airframe);
        w.set(Measure.CLEARANCE, room.clearance());
        w.set(Measure.BAY_LENGTH, room.spareLength());
        w.set(Measure.PROPELLER_CLEARANCE, propellerClearance(airframe));
        w.set(Measure.VIEW, missingView(airframe));
        Proportions.set(w, airframe);
        chordFit(w, airframe);
        if (airframe.tail() == null) {
            w.rule(Measure.HORIZONTAL_TAIL_VOLUME);
        } else {
            w.set(Measure.HORIZONTAL_TAIL_VOLUME, Handling.horizontalTailVolume(airframe));
        }
        w.set(Measure.VERTICAL_TAIL_VOLUME, Handling.verticalTailVolume(airframe));
        w.parts = FlatPatterns.of(airframe);
        w.set(Measure.SHEET_FIT, w.parts.sheetFit(design.board()));
        TransportBox box = TransportBox.of(airframe, w.mission.car());
        w.set(Measure.PACKED_LENGTH, box.longest());
        w.set(Measure.CAR_ROOM, box.margin());
        w.sheets = w.nester.sheets(w.parts, design.board());
        w.set(Measure.SHEETS, w.sheets);
        BuildTime time = BuildTime.of(airframe, w.parts, w.mission.workshop(), w.factors);
        w.set(Measure.BUILD_TIME, time.total());
        w.set(Measure.DIFFICULTY, time.difficulty());
        w.set(
                Measure.BUILD_COST,
                BillOfMaterials.of(airframe, w.parts, w.sheets, w.mission, w.factors)
                        .cost());
        masses(w, airframe);
    }

    private static void masses(Workbench w, Airframe airframe) {
        w.masses = MassBreakdown.of(airframe, w.parts, w.mission.workshop(), w.factors);
        double mass = w.masses.mass();
        double area = airframe.area();
        w.set(Measure.PAYLOAD, w.design.payload());
        w.set(Measure.MASS, mass);
        w.set(Measure.EMPTY_MASS, w.masses.emptyMass());
        w.set(Measure.WING_LOADING, mass / area);
        w.set(Measure.WING_CUBE_LOADING, mass / (area * Math.sqrt(area)));
    }

    /** Least gap between the propeller and foam ahead or below; the ground's share is built into the undercarriage. */
    private static double propellerClearance(Airframe airframe) {
        Stations s = airframe.stations();
        Design design = airframe.design();
        if (design.power() instanceof Power.NoseTractor) {
            return -s.propellerX();
        }
        if (design.power() instanceof Power.Pusher pusher) {
            double trailing = design.wing().x() + design.wing().planform().rootChord();
            double below = s.propellerZ()
                    - 0.5 * pusher.plant().propeller().diameter()
                    - 0.5 * airframe.body().height();
            return Math.min(s.propellerX() - trailing, below);
        }
        if (design.power() instanceof Power.TwinTractor twin) {
            double side = twin.y()
                    - 0.5 * twin.plant().propeller().diameter()
                    - 0.5 * airframe.body().width();
            return Math.min(side, design.wing().x() - s.propellerX());
        }
        return 1;
    }

    /** What a nose camera asks for and a propeller ahead of it takes, rad; a pusher's or a twin's nose sees freely. */
    private static double missingView(Airframe airframe) {
        double missing = 0;
        for (Load load : airframe.design().loads()) {
            if (load.view() > 0
                    && load.place() == Place.NOSE
                    && airframe.stations().propellerX() < 0) {
                missing = Math.max(missing, load.view());
            }
        }
        return missing;
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
        w.set(Measure.CHORD_FIT, Math.min(inside - spar, folding));
    }
}
