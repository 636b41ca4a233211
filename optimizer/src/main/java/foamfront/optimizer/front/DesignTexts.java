package foamfront.optimizer.front;

import foamfront.model.design.Body;
import foamfront.model.design.Design;
import foamfront.model.design.Fin;
import foamfront.model.design.Load;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Tail;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Wing;
import foamfront.model.design.WingSpar;
import foamfront.model.parts.Part;
import foamfront.model.units.Quantities;
import foamfront.model.units.Unit;
import foamfront.optimizer.front.DesignColumns.Text;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The choices and parts of a design, in table order. */
final class DesignTexts {
    static final List<Text> ALL = List.of(
            new Text("wing", design -> design.wing().kind().words()),
            new Text(
                    "wing height",
                    design -> design.wing() instanceof Wing.Monoplane wing
                            ? wing.height().words()
                            : ""),
            new Text("section", design -> design.wing().build().section().kind().words()),
            new Text("wing joint", design -> design.wing().build().joint().words()),
            new Text(
                    "spar",
                    design -> design.wing().build().spar() instanceof WingSpar.Stock stock
                            ? stock.spar().name()
                            : "board strip"),
            new Text("hold-down", design -> design.wing().build().holdDown().words()),
            new Text("wing tips", design -> design.wing().build().tips().words()),
            new Text("tail", design -> design.tail().kind().words()),
            new Text("body", design -> design.body().kind().words()),
            new Text("nose", design -> design.body().nose().words()),
            new Text("boom", design -> design.body() instanceof Body.PodAndBoom pod ? name(pod.boom()) : ""),
            new Text("power", design -> design.power().kind().words()),
            new Text("motor", DesignTexts::motor),
            new Text("propeller", DesignTexts::propeller),
            new Text("fan", design -> design.power() instanceof Power.DuctedFan fan ? name(fan.fan()) : ""),
            new Text("battery", design -> design.power().battery().name()),
            new Text("controller", DesignTexts::controller),
            new Text("undercarriage", design -> design.undercarriage().kind().words()),
            new Text("wheel", design -> name(design.undercarriage().wheel())),
            new Text("ailerons", design -> design.controls().ailerons() ? "yes" : "no"),
            new Text("rudder", design -> design.controls().rudder() ? "yes" : "no"),
            new Text("flaps", design -> design.controls().flaps().words()),
            new Text("fin joint", DesignTexts::finJoint),
            new Text("board", design -> design.board().name()),
            new Text("covering", design -> design.covering().words()),
            new Text("receiver", design -> design.radio().receiver().name()),
            new Text("servo", design -> design.radio().servo().name()),
            new Text("loads", DesignTexts::loads));

    private DesignTexts() {}

    private static String name(@Nullable Part part) {
        return part == null ? "" : part.name();
    }

    static @Nullable PowerPlant plant(Design design) {
        return design.power().drive() instanceof PowerPlant plant ? plant : null;
    }

    static @Nullable Fin fin(Design design) {
        if (design.tail() instanceof Tail.Conventional tail) {
            return tail.fin();
        }
        if (design.tail() instanceof Tail.TTail tail) {
            return tail.fin();
        }
        return design.tail() instanceof Tail.None none ? none.fin() : null;
    }

    static @Nullable TailPlane plane(Design design) {
        if (design.tail() instanceof Tail.Conventional tail) {
            return tail.plane();
        }
        if (design.tail() instanceof Tail.TTail tail) {
            return tail.plane();
        }
        return design.tail() instanceof Tail.VTail tail ? tail.plane() : null;
    }

    private static String propeller(Design design) {
        PowerPlant plant = plant(design);
        return plant == null ? "" : plant.propeller().name();
    }

    private static String finJoint(Design design) {
        Fin fin = fin(design);
        return fin == null ? "" : fin.joint().words();
    }

    private static String motor(Design design) {
        PowerPlant plant = plant(design);
        if (plant != null) {
            return plant.motor().name();
        }
        return "";
    }

    private static String controller(Design design) {
        PowerPlant plant = plant(design);
        if (plant != null) {
            return plant.controller().name();
        }
        return design.power() instanceof Power.DuctedFan fan ? fan.controller().name() : "";
    }

    private static String loads(Design design) {
        return design.loads().stream().map(DesignTexts::load).collect(Collectors.joining("; "));
    }

    private static String load(Load load) {
        return load.name() + " " + Quantities.print(load.mass(), Unit.GRAM);
    }
}
