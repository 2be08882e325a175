package org.washwright.engine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Setting;
import org.washwright.engine.derive.Derivation;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * What a formula may read while facts are being made.
 *
 * @param draft the fact in the making
 * @param entry what the task says of it; empty for a process
 * @param setting how a process is run; empty for an entry of the task
 * @param before facts made before
 * @param assumptions values taken for granted
 * @param task the whole task
 * @param catalogue terms of the edition
 */
record FormulaInputs(
        FactDraft draft,
        Entry entry,
        Optional<Setting> setting,
        List<Fact> before,
        Map<String, Value> assumptions,
        CleaningTask task,
        Catalogue catalogue)
        implements Derivation.Inputs {

    @Override
    public Value own(String attribute) {
        return draft.has(attribute) ? draft.get(attribute) : Value.NOT_APPLICABLE;
    }

    @Override
    public Value property(String attribute, String property) {
        return draft.property(catalogue, attribute, property);
    }

    @Override
    public String code(String attribute) {
        Given given = entry.given().get(attribute);
        return given == null ? "" : given.code();
    }

    @Override
    public String codeOf(Group group, String attribute) {
        Given given = task.single(group).given().get(attribute);
        return given == null ? "" : given.code();
    }

    @Override
    public Value given(String attribute) {
        return entry.value(attribute);
    }

    @Override
    public Value of(Group group, String attribute) {
        return before.stream()
                .filter(f -> f.id().equals(group.key()))
                .findFirst()
                .flatMap(f -> f.type().field(attribute).map(f::value))
                .orElse(Value.UNKNOWN);
    }

    @Override
    public Value assumption(String id) {
        return assumptions.getOrDefault(id, Value.UNKNOWN);
    }

    @Override
    public Value highest(String parameter) {
        return highest(setting, parameter);
    }

    @Override
    public String ref(String attribute) {
        return draft.id() + "/" + attribute;
    }

    static Value highest(Optional<Setting> setting, String parameter) {
        return setting.map(s -> s.windows().get(parameter))
                .map(span -> Value.number(span.high()))
                .orElse(Value.NOT_APPLICABLE);
    }
}
