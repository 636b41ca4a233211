package foamfront.optimizer.study;

import foamfront.model.design.Body;
import foamfront.model.design.Choice;
import foamfront.model.design.Controls;
import foamfront.model.design.Design;
import foamfront.model.design.Drive;
import foamfront.model.design.Fin;
import foamfront.model.design.FlapKind;
import foamfront.model.design.Load;
import foamfront.model.design.Planform;
import foamfront.model.design.Power;
import foamfront.model.design.PowerPlant;
import foamfront.model.design.Tail;
import foamfront.model.design.TailPlane;
import foamfront.model.design.Undercarriage;
import foamfront.model.design.Wing;
import foamfront.model.design.WingBuild;
import foamfront.model.design.WingSection;
import foamfront.model.design.WingSpar;
import foamfront.model.units.Quantities;
import foamfront.model.units.Unit;
import java.util.Locale;

/**
 * Writes a design file that {@link DesignReader} reads back to the same design, to nine significant digits: millimetres,
 * grams, degrees, every value written out.
 */
public final class DesignWriter {
    private final StringBuilder out = new StringBuilder(2048);

    private DesignWriter() {}

    /** The file's text. */
    public static String write(Design design) {
        DesignWriter writer = new DesignWriter();
        writer.line("design: " + quoted(design.name()));
        writer.wing(design.wing());
        writer.tail(design.tail());
        writer.body(design.body());
        writer.power(design.power());
        writer.undercarriage(design.undercarriage());
        writer.controls(design.controls());
        writer.line("board: " + quoted(design.board().name()));
        writer.line("covering: " + design.covering().words());
        writer.line("radio: {receiver: " + quoted(design.radio().receiver().name()) + ", servo: "
                + quoted(design.radio().servo().name()) + "}");
        writer.loads(design);
        return writer.out.toString();
    }

    private void wing(Wing wing) {
        Planform plan = wing.planform();
        WingBuild build = wing.build();
        line("wing:");
        choice("kind", wing.kind());
        if (wing instanceof Wing.Monoplane monoplane) {
            choice("height", monoplane.height());
        } else if (wing instanceof Wing.Biplane biplane) {
            length("gap", biplane.gap());
            length("stagger", biplane.stagger());
        }
        length("span", plan.span());
        length("root chord", plan.rootChord());
        ratio("taper", plan.taper());
        angle("quarter-chord sweep", plan.sweep());
        angle("dihedral", plan.dihedral());
        angle("incidence", plan.incidence());
        angle("tip incidence", plan.tipIncidence());
        value("leading edge", "{x: " + mm(wing.x()) + ", z: " + mm(wing.z()) + "}");
        if (!plan.breaks().isEmpty()) {
            line("  breaks:");
            for (Planform.Break at : plan.breaks()) {
                line("    - {at: " + Quantities.print(at.at(), Unit.RATIO) + ", chord: " + mm(at.chord()) + ", sweep: "
                        + deg(at.sweep()) + ", dihedral: " + deg(at.dihedral()) + "}");
            }
        }
        section(build.section());
        choice("joint", build.joint());
        value(
                "spar",
                build.spar() instanceof WingSpar.Stock stock
                        ? quoted(stock.spar().name())
                        : "board strip");
        choice("hold-down", build.holdDown());
        choice("tips", build.tips());
    }

    private void section(WingSection section) {
        choice("section", section.kind());
        if (section instanceof WingSection.FoldedFlatBottom folded) {
            value("section thickness", Quantities.print(folded.thickness(), Unit.PERCENT));
        } else if (section instanceof WingSection.FoldedSymmetrical folded) {
            value("section thickness", Quantities.print(folded.thickness(), Unit.PERCENT));
        } else if (section instanceof WingSection.CurvedPlate curved) {
            value("section camber", Quantities.print(curved.camber(), Unit.PERCENT));
        } else if (section instanceof WingSection.SteppedPlate stepped) {
            value("section step", Quantities.print(stepped.step(), Unit.PERCENT));
        }
    }

    private void tail(Tail tail) {
        if (tail instanceof Tail.Conventional conventional) {
            plane(tail, conventional.plane());
            fin(conventional.fin());
        } else if (tail instanceof Tail.TTail tee) {
            plane(tail, tee.plane());
            fin(tee.fin());
        } else if (tail instanceof Tail.VTail vee) {
            plane(tail, vee.plane());
        } else if (tail instanceof Tail.None none) {
            line("tail:");
            choice("kind", tail.kind());
            fin(none.fin());
        }
    }

    private void plane(Tail tail, TailPlane plane) {
        line("tail:");
        choice("kind", tail.kind());
        length("span", plane.span());
        length("chord", plane.chord());
        ratio("taper", plane.taper());
        angle("sweep", plane.sweep());
        angle("dihedral", plane.dihedral());
        angle("incidence", plane.incidence());
        length("x", plane.x());
        length("z", plane.z());
    }

    private void fin(Fin fin) {
        value(
                "fin",
                "{count: " + fin.count() + ", height: " + mm(fin.height()) + ", chord: " + mm(fin.chord()) + ", taper: "
                        + Quantities.print(fin.taper(), Unit.RATIO) + ", joint: "
                        + fin.joint().words() + "}");
    }

    private void body(Body body) {
        line("body:");
        choice("kind", body.kind());
        length("length", body.length());
        if (!(body instanceof Body.ProfileBoard)) {
            length("width", body.width());
        }
        length("height", body.height());
        if (body instanceof Body.PodAndBoom pod) {
            length("pod length", pod.podLength());
            value("boom", quoted(pod.boom().name()));
        }
        choice("nose", body.nose());
        if (body instanceof Body.BoatHull hull) {
            ratio("step position", hull.step());
            angle("deadrise", hull.deadrise());
        }
    }

    private void power(Power power) {
        Drive drive = power.drive();
        line("power:");
        choice("kind", power.kind());
        if (drive == null) {
            value("battery", quoted(power.battery().name()));
            return;
        }
        if (drive instanceof PowerPlant plant) {
            value("motor", quoted(plant.motor().name()));
            value("propeller", quoted(plant.propeller().name()));
        } else {
            value("fan", quoted(drive.rotor().name()));
        }
        if (power instanceof Power.TwinTractor twin) {
            length("motor station", twin.y());
        }
        value("battery", quoted(drive.battery().name()));
        value("controller", quoted(drive.controller().name()));
    }

    private void undercarriage(Undercarriage gear) {
        line("undercarriage:");
        choice("kind", gear.kind());
        if (gear instanceof Undercarriage.TailWheel tailWheel) {
            value("wheel", quoted(tailWheel.wheel().name()));
        } else if (gear instanceof Undercarriage.Tricycle tricycle) {
            value("wheel", quoted(tricycle.wheel().name()));
        } else if (gear instanceof Undercarriage.Amphibian amphibian) {
            value("wheel", quoted(amphibian.wheel().name()));
        } else if (gear instanceof Undercarriage.Floats floats) {
            length("float length", floats.length());
            length("float beam", floats.beam());
            angle("deadrise", floats.deadrise());
        }
    }

    private void controls(Controls controls) {
        line("controls:");
        value("ailerons", controls.ailerons() ? "yes" : "no");
        value("rudder", controls.rudder() ? "yes" : "no");
        value("elevator", "yes");
        choice("flaps", controls.flaps());
        ratio("aileron span", controls.aileronSpan());
        ratio("aileron chord", controls.aileronChord());
        if (controls.flaps() == FlapKind.FLAPS) {
            ratio("flap span", controls.flapSpan());
            ratio("flap chord", controls.flapChord());
        }
        ratio("elevator chord", controls.elevatorChord());
        ratio("rudder chord", controls.rudderChord());
    }

    private void loads(Design design) {
        if (design.loads().isEmpty()) {
            return;
        }
        line("payload:");
        for (Load load : design.loads()) {
            line("  - name: " + quoted(load.name()));
            line("    mass: " + Quantities.print(load.mass(), Unit.GRAM));
            line("    size: " + mm(load.length()) + " x " + mm(load.width()) + " x " + mm(load.height()));
            line("    place: " + load.place().words());
            line("    release: " + (load.released() ? Release.IN_FLIGHT : Release.NEVER).words());
            if (load.descent() > 0) {
                line("    descent: " + Quantities.print(load.descent(), Unit.METRE_PER_SECOND));
            }
            line("    clear view: " + deg(load.view()));
            line("    power: " + Quantities.print(load.power(), Unit.WATT));
        }
    }

    private void length(String key, double metres) {
        value(key, mm(metres));
    }

    private void angle(String key, double radians) {
        value(key, deg(radians));
    }

    private void ratio(String key, double number) {
        value(key, Quantities.print(number, Unit.RATIO));
    }

    private void choice(String key, Choice choice) {
        value(key, choice.words());
    }

    private void value(String key, String value) {
        line("  " + key + ": " + value);
    }

    private void line(String line) {
        out.append(line).append('\n');
    }

    private static String mm(double metres) {
        return Quantities.print(metres, Unit.MILLIMETRE);
    }

    private static String deg(double radians) {
        return Quantities.print(radians, Unit.DEGREE);
    }

    /** A text that YAML reads back unchanged: in quotation marks unless it is plain words. */
    static String quoted(String text) {
        if (text.matches("[A-Za-z0-9](?:[A-Za-z0-9 ./_+()-]{0,80}[A-Za-z0-9)])?")) {
            return text;
        }
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ' || (c >= 0x7f && c < 0xa0) || c == 0x2028 || c == 0x2029 || c >= 0xd800) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }
}
