package foamfront.model.appraisal;

/** What a reader should know about how far a design's figures can be trusted. */
public enum Caveat {
    SECTION_RANGE("part of the wing flies below the Reynolds numbers that its section was measured at"),
    PROPELLER_RANGE("the propeller works outside its measured speeds or advance ratios; the end of the data stands"),
    PROPELLER_REGRESSION(
            "the propeller was not measured; its coefficients come from a regression over its blade family"),
    FAN_ESTIMATE("no open measurement of a fan this small in flight was at hand: its thrust may be a fifth off"),
    MOTOR_HEAT(
            "at full throttle the motor makes more heat than it sheds for long (judgement): half a minute of it at a time, then"
                    + " fly gently"),
    ENDURANCE_CLIPPED("the speed of least power lies below the safe speed; endurance is given at the safe speed"),
    STILL_AIR("glide and sink are those of still air; what slopes and thermals add is not computed"),
    TIP_STALL("the wing tips stall first, or with next to no lift left: it drops a wing"),
    NEAR_250_GRAMS("within 15 % of 250 g, where many countries draw a legal line"),
    ONE_MOTOR_OUT("with one motor stopped full rudder does not hold it at full throttle: throttle back at once"),
    OTHER_HAND("one propeller is of the other hand: see that it is sold, the catalogue prices both alike"),
    GUST_SIZED("gusts, not pull-ups, size the wing"),
    HUMP_RULE("the water's drag at the hump is a rule of thumb, a quarter of the load: it may be a fifth off"),
    LONG_LANDING(
            "its landing roll in still air is longer than the runway: see that nothing stands or lies beyond the end"),
    WEB_GLUE(
            "paper may leave the foam along the wing's web at the limit load (its bond is known to a factor of two either way): run a"
                    + " fillet of glue down both sides of the strip, or set a second strip beside it"),
    SPIRAL("spirally unstable: a bank left alone doubles within 20 s, so that it must be flown all the time");

    private final String sentence;

    Caveat(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }
}
