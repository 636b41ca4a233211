package foamfront.model.appraisal;

import foamfront.model.design.Design;
import foamfront.model.design.Load;
import foamfront.model.design.Power;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What can hurt someone with a particular design, besides what every powered model asks; local rules decide. */
public enum Caution {
    RELEASE(
            "Letting anything fall is outside the European open category and elsewhere allowed only where it endangers nobody:"
                    + " ask your authority or club first, and never release over or near people."),
    CAMERA(
            "Flying by camera takes an observer beside the pilot who keeps the aeroplane in sight. A computed range is no leave"
                    + " to fly beyond sight; video and radio reach differ; keep battery for the way back against the wind."),
    FAN(
            "A fan draws in what lies loose and throws it out behind: fingers, sleeves, hair and grit away from both ends, eyes"
                    + " protected."),
    PUSHER_THROW(
            "A pusher's propeller follows the hand that throws it: hold it ahead of the wing, open the throttle only after it"
                    + " has left the hand."),
    GLIDER(
            "A glider has no second try: throw it level and into the wind over open ground, nobody ahead of it or below, and keep"
                    + " height for the way back to its landing place. Over slopes give way to everyone who flies there already."),
    WATER(
            "Over water: stay where a boat reaches it, with a second person and buoyancy aids at hand, and never swim after it;"
                    + " keep clear of bathers and birds. A battery that has been under water, salt water above all, goes into a"
                    + " fireproof box outdoors and is not charged again. Local rules decide.");

    private final String sentence;

    Caution(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }

    /** Those that concern any of these designs, in their own order. */
    public static List<Caution> of(List<Design> designs) {
        return Arrays.stream(values())
                .filter(caution -> designs.stream().anyMatch(caution::concerns))
                .toList();
    }

    /** What needs a clear view, or is called a camera. */
    private static boolean camera(Load load) {
        return load.view() > 0 || load.name().toLowerCase(Locale.ROOT).contains("camera");
    }

    private boolean concerns(Design design) {
        return switch (this) {
            case RELEASE -> design.loads().stream().anyMatch(Load::released);
            case CAMERA -> design.loads().stream().anyMatch(Caution::camera);
            case FAN -> design.power() instanceof Power.DuctedFan;
            case PUSHER_THROW -> design.power() instanceof Power.Pusher && design.thrown();
            case GLIDER -> design.power().motors() == 0;
            case WATER -> design.floats();
        };
    }
}
