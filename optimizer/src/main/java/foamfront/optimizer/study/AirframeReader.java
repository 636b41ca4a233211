package foamfront.optimizer.study;

import foamfront.model.design.Body;
import foamfront.model.design.DesignVariable;
import foamfront.model.design.Fin;
import foamfront.model.design.FinJoint;
import foamfront.model.design.HoldDown;
import foamfront.model.design.Planform;
import foamfront.model.design.SectionKind;
import foamfront.model.design.SparKind;
import foamfront.model.design.Tail;
import foamfront.model.design.TailKind;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Wing;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingHeight;
import foamfront.model.design.WingJoint;
import foamfront.model.design.WingKind;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.design.WingTips;
import foamfront.model.design.WorkshopRules;
import foamfront.model.parts.Spar;
import foamfront.model.units.Unit;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * Wing and tail of a design file. The dimensions the rules build on are looked up first, so that a rule sees what the file
 * states, in whatever order it states it.
 */
final class AirframeReader {
    private final Catalogue catalogue;
    private final double[] values;
    private final WingHeight height;

    AirframeReader(
            Rules file, Catalogue catalogue, double[] values, WingKind kind, WingHeight height, boolean ailerons) {
        this.catalogue = catalogue;
        this.values = values;
        this.height = height;
        Rules wing = file.under(DesignKeys.WING_KEY);
        Rules tail = file.under(DesignKeys.TAIL_KEY);
        Rules body = file.under(DesignKeys.BODY_KEY);
        known(wing, DesignKeys.SPAN, DesignVariable.SPAN);
        known(wing, DesignKeys.ROOT_CHORD, DesignVariable.ROOT_CHORD);
        known(wing, DesignKeys.TAPER, DesignVariable.TAPER);
        known(tail, DesignKeys.TAIL_CHORD, DesignVariable.TAIL_CHORD);
        known(body, DesignKeys.BODY_LENGTH, DesignVariable.BODY_LENGTH);
        known(body, DesignKeys.BODY_WIDTH, DesignVariable.BODY_WIDTH);
        WorkshopRules.complete(values, kind, height, ailerons);
    }

    private void known(Rules table, Key key, DesignVariable variable) {
        if (table.has(key)) {
            values[variable.index()] = table.quantity(key, Double.NaN, variable.unit());
        }
    }

    /** A dimension of the file, or by its rule. */
    double dimension(Rules table, Key key, DesignVariable variable) {
        return table.quantity(key, values[variable.index()], variable.unit());
    }

    Wing wing(Rules table, WingKind kind, Body body) {
        double incidence = dimension(table, DesignKeys.INCIDENCE, DesignVariable.INCIDENCE);
        Planform planform = new Planform(
                dimension(table, DesignKeys.SPAN, DesignVariable.SPAN),
                dimension(table, DesignKeys.ROOT_CHORD, DesignVariable.ROOT_CHORD),
                dimension(table, DesignKeys.TAPER, DesignVariable.TAPER),
                dimension(table, DesignKeys.SWEEP, DesignVariable.SWEEP),
                dimension(table, DesignKeys.DIHEDRAL, DesignVariable.DIHEDRAL),
                incidence,
                table.quantity(DesignKeys.TIP_INCIDENCE, incidence, Unit.DEGREE),
                breaks(table));
        Rules edge = table.under(DesignKeys.LEADING_EDGE);
        double x = edge.quantity(
                DesignKeys.EDGE_X, values[DesignVariable.WING_POSITION.index()] * body.length(), Unit.MILLIMETRE);
        WingHeight standing = kind == WingKind.BIPLANE ? WingHeight.LOW : height;
        double standingZ = kind == WingKind.DELTA
                ? WorkshopRules.deltaZ(body.kind(), body.height())
                : WorkshopRules.wingZ(standing, body.height());
        double z = edge.quantity(DesignKeys.EDGE_Z, standingZ, Unit.MILLIMETRE);
        if (kind == WingKind.BIPLANE) {
            return new Wing.Biplane(
                    planform,
                    build(table, kind),
                    x,
                    z,
                    dimension(table, DesignKeys.GAP, DesignVariable.GAP),
                    dimension(table, DesignKeys.STAGGER, DesignVariable.STAGGER));
        }
        for (Key key : List.of(DesignKeys.GAP, DesignKeys.STAGGER)) {
            if (table.has(key)) {
                table.fault(key, "only a biplane has one", "Delete the key.");
            }
        }
        if (kind == WingKind.FLYING_WING) {
            return new Wing.FlyingWing(planform, build(table, kind), x, z);
        }
        if (kind == WingKind.DELTA) {
            return new Wing.Delta(planform, build(table, kind), x, z);
        }
        return new Wing.Monoplane(height, planform, build(table, kind), x, z);
    }

    private List<Planform.Break> breaks(Rules table) {
        List<Planform.Break> breaks = new ArrayList<>();
        for (Value item : table.items(DesignKeys.BREAKS)) {
            Fields fields = item.fields(DesignKeys.BREAK);
            if (fields != null) {
                breaks.add(new Planform.Break(
                        fields.quantity(DesignKeys.AT, 0.5),
                        fields.quantity(DesignKeys.BREAK_CHORD, 0.1),
                        fields.quantity(DesignKeys.BREAK_SWEEP, 0),
                        fields.quantity(DesignKeys.BREAK_DIHEDRAL, 0)));
            }
        }
        return breaks;
    }

    private WingBuild build(Rules table, WingKind wing) {
        SectionKind standing = wing == WingKind.DELTA ? SectionKind.FLAT_PLATE : SectionKind.FOLDED_FLAT_BOTTOM;
        SectionKind kind = table.choice(DesignKeys.SECTION, SectionKind.values(), standing);
        return new WingBuild(
                section(table, kind),
                table.choice(DesignKeys.JOINT, WingJoint.values(), WingJoint.ONE_PIECE),
                spar(table),
                table.choice(DesignKeys.HOLD_DOWN, HoldDown.values(), HoldDown.GLUED),
                table.choice(DesignKeys.TIPS, WingTips.values(), WingTips.PLAIN));
    }

    private WingSection section(Rules table, SectionKind kind) {
        boolean folded = kind == SectionKind.FOLDED_FLAT_BOTTOM || kind == SectionKind.FOLDED_SYMMETRICAL;
        refuse(table, DesignKeys.THICKNESS, folded, kind.words() + " is as thick as its board makes it");
        refuse(table, DesignKeys.CAMBER, kind == SectionKind.CURVED_PLATE, kind.words() + " is not bent to an arc");
        refuse(table, DesignKeys.STEP, kind == SectionKind.STEPPED_PLATE, kind.words() + " has no step");
        return switch (kind) {
            case FLAT_PLATE -> new WingSection.FlatPlate();
            case STEPPED_PLATE ->
                new WingSection.SteppedPlate(dimension(table, DesignKeys.STEP, DesignVariable.SECTION_STEP));
            case CURVED_PLATE ->
                new WingSection.CurvedPlate(dimension(table, DesignKeys.CAMBER, DesignVariable.SECTION_CAMBER));
            case FOLDED_FLAT_BOTTOM ->
                new WingSection.FoldedFlatBottom(
                        dimension(table, DesignKeys.THICKNESS, DesignVariable.SECTION_THICKNESS));
            case FOLDED_SYMMETRICAL ->
                new WingSection.FoldedSymmetrical(
                        dimension(table, DesignKeys.THICKNESS, DesignVariable.SECTION_THICKNESS));
        };
    }

    /** A dimension that the section kind does not have is a fault. */
    private static void refuse(Rules table, Key key, boolean belongs, String why) {
        if (!belongs && table.has(key)) {
            table.fault(key, "a " + why, "Delete the key.");
        }
    }

    private WingSpar spar(Rules table) {
        Value value = table.value(DesignKeys.SPAR);
        if (value == null) {
            table.take(DesignKeys.SPAR, SparKind.BOARD_STRIP.words());
            return new WingSpar.BoardStrip();
        }
        String text = value.text();
        if (text == null || Key.plain(text).equals(SparKind.BOARD_STRIP.words())) {
            return new WingSpar.BoardStrip();
        }
        Spar spar = StockReader.part(value, catalogue.spars(), "spar");
        return spar == null ? new WingSpar.BoardStrip() : new WingSpar.Stock(spar);
    }

    Tail tail(Rules table, WingKind wing, Body body) {
        boolean tailless = wing == WingKind.FLYING_WING || wing == WingKind.DELTA;
        TailKind standing = tailless ? TailKind.NONE : TailKind.CONVENTIONAL;
        TailKind kind = table.choice(DesignKeys.TAIL_KIND, TailKind.values(), standing);
        if (kind == TailKind.NONE) {
            for (Key key : DesignKeys.PLANE) {
                if (table.has(key)) {
                    table.fault(key, "without a tail there is only the fin", "Delete the key.");
                }
            }
            return new Tail.None(fin(table.under(DesignKeys.FIN_KEY), WorkshopRules.TAILLESS_FINS));
        }
        if (kind == TailKind.V_TAIL) {
            if (table.has(DesignKeys.FIN_KEY)) {
                table.fault(DesignKeys.FIN_KEY, "a V-tail is its own fin", "Delete the key.");
            }
            return new Tail.VTail(plane(table, kind, body, 0));
        }
        Fin fin = fin(table.under(DesignKeys.FIN_KEY), 1);
        TailPlane plane = plane(table, kind, body, fin.height());
        return kind == TailKind.T_TAIL ? new Tail.TTail(plane, fin) : new Tail.Conventional(plane, fin);
    }

    private Fin fin(Rules table, int count) {
        return new Fin(
                table.whole(DesignKeys.FIN_COUNT, count),
                dimension(table, DesignKeys.FIN_HEIGHT, DesignVariable.FIN_HEIGHT),
                dimension(table, DesignKeys.FIN_CHORD, DesignVariable.FIN_CHORD),
                table.quantity(DesignKeys.FIN_TAPER, WorkshopRules.FIN_TAPER, Unit.RATIO),
                table.choice(DesignKeys.FIN_JOINT, FinJoint.values(), FinJoint.FIXED));
    }

    private TailPlane plane(Rules table, TailKind kind, Body body, double finHeight) {
        double cant = kind == TailKind.V_TAIL ? values[DesignVariable.TAIL_CANT.index()] : 0;
        double chord = dimension(table, DesignKeys.TAIL_CHORD, DesignVariable.TAIL_CHORD);
        return new TailPlane(
                dimension(table, DesignKeys.TAIL_SPAN, DesignVariable.TAIL_SPAN),
                chord,
                table.quantity(DesignKeys.TAIL_TAPER, 1, Unit.RATIO),
                table.quantity(DesignKeys.TAIL_SWEEP, 0, Unit.DEGREE),
                table.quantity(DesignKeys.TAIL_DIHEDRAL, cant, Unit.DEGREE),
                dimension(table, DesignKeys.TAIL_INCIDENCE, DesignVariable.TAIL_INCIDENCE),
                table.quantity(DesignKeys.TAIL_X, WorkshopRules.tailX(body.length(), chord), Unit.MILLIMETRE),
                table.quantity(
                        DesignKeys.TAIL_Z, WorkshopRules.tailZ(kind, body.tailHeight(), finHeight), Unit.MILLIMETRE));
    }
}
