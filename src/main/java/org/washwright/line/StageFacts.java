package org.washwright.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.StageTerm;
import org.washwright.catalogue.Term;
import org.washwright.engine.Fact;
import org.washwright.engine.Origin;
import org.washwright.quantity.Span;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.task.Value;

/** Shows the steps of a line to line rules: who they are, where they stand and who stands beside them. */
final class StageFacts {

    private final FactType type;
    private final ProcessTerm process;

    StageFacts(FactTypes types, ProcessTerm process) {
        this.type = types.type(FactTypes.STAGE).orElseThrow();
        this.process = process;
    }

    /** Facts of these steps. */
    List<Fact> of(List<Step> steps) {
        List<Fact> out = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            out.add(fact(steps, i));
        }
        return out;
    }

    /** Id of the fact of a step. */
    String id(Step step) {
        return "line/" + process.id() + "/" + step.key();
    }

    private Fact fact(List<Step> steps, int index) {
        Step step = steps.get(index);
        List<Value> values = new ArrayList<>();
        List<Origin> origins = new ArrayList<>();
        Origin composed = new Origin(Origin.Kind.COMPUTED, "place in the composed line", List.of(), "");
        for (Field field : type.fields().values()) {
            values.add(value(field, steps, index));
            origins.add(field.property().isEmpty() ? composed : ofTerm(step, field));
        }
        String name =
                step.stage().map(s -> s.term().name()).orElse(process.term().name());
        return new Fact(id(step), type, name, step.certain(), values, origins);
    }

    private Origin ofTerm(Step step, Field field) {
        Optional<Term> term = step.stage().map(StageTerm::term);
        return new Origin(
                Origin.Kind.CATALOGUE,
                term.orElse(process.term()).name(),
                List.of(id(step) + "/id"),
                term.map(t -> t.sources().get(field.property())).orElse(""));
    }

    private Value value(Field field, List<Step> steps, int index) {
        Step step = steps.get(index);
        return switch (field.name()) {
            case "id" -> Value.term(termId(step));
            case "main" -> Value.flag(step.isMain());
            case "cleaning" ->
                Value.flag(step.isMain() || step.stage().orElseThrow().cleaning());
            case "position" -> number(steps.subList(0, index), 1);
            case "count" -> number(steps, 0);
            case "next" -> neighbour(steps, index, 1);
            case "previous" -> neighbour(steps, index, -1);
            default ->
                step.stage()
                        .map(StageTerm::term)
                        .map(t -> t.property(field.property()))
                        .orElse(Value.NOT_APPLICABLE);
        };
    }

    private String termId(Step step) {
        return step.stage().map(StageTerm::id).orElse(process.id());
    }

    /** Number of steps, a range when some are not certain. */
    private static Value number(List<Step> steps, int plus) {
        long certain = steps.stream().filter(Step::certain).count();
        return new Value.Number(new Span(certain + plus, steps.size() + plus));
    }

    /** The step beside it: the next certain one, or any uncertain one that may stand between. */
    private Value neighbour(List<Step> steps, int index, int direction) {
        TreeSet<String> possible = new TreeSet<>();
        for (int i = index + direction; i >= 0 && i < steps.size(); i += direction) {
            possible.add(termId(steps.get(i)));
            if (steps.get(i).certain()) {
                return Value.oneOf(possible);
            }
        }
        // At the end of the line there may be nobody, which no set of terms can say together with somebody.
        return possible.isEmpty() ? Value.NOT_APPLICABLE : Value.UNKNOWN;
    }
}
