/**
 * Line plots as SVG pages, monochrome: curves are told apart by dash pattern and letter. Start at
 * {@link foamfront.optimizer.pictures.AeroPictures}, an appraisal's polars and span loading.
 */
@NullMarked
package foamfront.optimizer.pictures;

import org.jspecify.annotations.NullMarked;
