package foamfront.model.parts;

import static foamfront.model.units.Require.notNegative;
import static foamfront.model.units.Require.positive;

import foamfront.model.units.Currency;

/**
 * Consumables and working rates: what a cut, a fold and a joint cost in grams, money and minutes.
 *
 * @param currency of every price, here and of the parts
 * @param tapeLinearMass of packing tape, kg/m
 * @param tapePrice per metre
 * @param glueLinearMass of one bead of hot-melt glue, kg/m
 * @param gluePrice per kilogram
 * @param linkagePrice horn, pushrod and lead of one servo
 * @param powerFittingsPrice leads, firewall plate and screws of one motor
 * @param strapPrice of a battery strap
 * @param bandPrice of a set of rubber bands with pegs or hooks
 * @param harnessPrice of the lead that joins one more pack in parallel
 * @param switchPrice of the switch of a radio without a motor
 * @param regulatorPrice of the regulator that feeds a radio without a motor
 * @param cutRate seconds per metre of cut or score
 * @param foldRate seconds per metre of fold
 * @param glueRate seconds per metre of glued joint
 * @param tapeRate seconds per metre of taped edge
 * @param partTime seconds for marking out and fitting each cut part
 * @param fittingTime seconds for each bought part installed (servo, motor, wheel ...)
 * @param allowance builder's allowance on the airframe's mass for paint and repairs, as a fraction
 * @param difficulty points of the difficulty index
 */
public record Workshop(
        Currency currency,
        double tapeLinearMass,
        double tapePrice,
        double glueLinearMass,
        double gluePrice,
        double linkagePrice,
        double powerFittingsPrice,
        double strapPrice,
        double bandPrice,
        double harnessPrice,
        double switchPrice,
        double regulatorPrice,
        double cutRate,
        double foldRate,
        double glueRate,
        double tapeRate,
        double partTime,
        double fittingTime,
        double allowance,
        Difficulty difficulty) {
    public Workshop {
        positive("tape mass", tapeLinearMass, "kg/m");
        notNegative("tape price", tapePrice, "per m");
        positive("glue bead mass", glueLinearMass, "kg/m");
        notNegative("glue price", gluePrice, "per kg");
        notNegative("linkage price", linkagePrice, "");
        notNegative("power fittings price", powerFittingsPrice, "");
        notNegative("strap price", strapPrice, "");
        notNegative("band price", bandPrice, "");
        notNegative("harness price", harnessPrice, "");
        notNegative("switch price", switchPrice, "");
        notNegative("regulator price", regulatorPrice, "");
        positive("cut rate", cutRate, "s/m");
        positive("fold rate", foldRate, "s/m");
        positive("glue rate", glueRate, "s/m");
        positive("tape rate", tapeRate, "s/m");
        positive("part time", partTime, "s");
        positive("fitting time", fittingTime, "s");
        notNegative("builder's allowance", allowance, "");
    }
}
