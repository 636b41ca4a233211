/**
 * YAML as plain text with positions: no type is guessed, so {@code no}, {@code 010} and {@code 1_000} stay what was written.
 *
 * <p>{@link foamfront.optimizer.yaml.YamlReader} reads one guarded document from the parser's events;
 * {@link foamfront.optimizer.yaml.KeyTable} says which keys a mapping has and what each holds, and
 * {@link foamfront.optimizer.yaml.Fields} reads a mapping by such a table, reporting every fault. The JSON Schema for editors
 * comes from the same tables. Depends on {@code faults} and the model's {@code units}. Start at {@code YamlReader}.
 */
@NullMarked
package foamfront.optimizer.yaml;

import org.jspecify.annotations.NullMarked;
