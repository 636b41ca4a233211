/**
 * What is asked of an aeroplane: the site, the payload, the limits, the drawer, the car space, and the one list of
 * measures.
 *
 * <p>Depends on {@code design}, {@code parts}, {@code atmosphere} and {@code units}. Start at
 * {@link foamfront.model.mission.Mission}.
 */
@NullMarked
package foamfront.model.mission;

import org.jspecify.annotations.NullMarked;
