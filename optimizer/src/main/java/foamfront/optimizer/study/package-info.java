/**
 * Study and design files: what is asked, and what was found.
 *
 * <p>{@link foamfront.optimizer.study.StudyReader} and {@link foamfront.optimizer.study.DesignReader} read YAML by the key
 * tables {@link foamfront.optimizer.study.StudyKeys} and {@link foamfront.optimizer.study.DesignKeys}, from which
 * {@link foamfront.optimizer.study.SchemaWriter} also writes the JSON Schema for editors. All faults are told at once.
 * Depends on {@code yaml}, {@code catalogue}, {@code faults} and the model. Start at
 * {@link foamfront.optimizer.study.Study}.
 */
@NullMarked
package foamfront.optimizer.study;

import org.jspecify.annotations.NullMarked;
