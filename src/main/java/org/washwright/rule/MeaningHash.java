package org.washwright.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.Term;
import org.washwright.document.Hashes;
import org.washwright.quantity.Span;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/**
 * Hash of what an edition means: rules by id, terms by id and the rest in canonical form, with numbers in SI. Moving a rule
 * between files, reordering or another unit of the same quantity change nothing.
 */
public final class MeaningHash {

    private MeaningHash() {}

    /** The same edition with its meaning hash. */
    public static Edition sign(Edition e, Map<String, byte[]> cases) {
        Map<String, Object> all = new TreeMap<>();
        all.put("name", e.name());
        all.put("title", e.title());
        all.put("language", e.language());
        all.put("licence", e.licence());
        all.put("sources", e.sources());
        all.put("catalogue", catalogue(e.catalogue()));
        all.put("rules", rules(e.rules()));
        Map<String, Object> trees = new TreeMap<>();
        e.trees().forEach((id, t) -> trees.put(id, tree(t)));
        all.put("trees", trees);
        all.put("grading", grading(e.grading()));
        Map<String, String> assumptions = new TreeMap<>();
        e.assumptions()
                .forEach((id, a) -> assumptions.put(
                        id,
                        String.join(
                                "|", a.label(), value(a.value()), a.dimension().id(), a.source())));
        all.put("assumptions", assumptions);
        Map<String, String> caseHashes = new TreeMap<>();
        cases.forEach((name, bytes) -> caseHashes.put(name, Hashes.sha256(bytes)));
        all.put("cases", caseHashes);
        return new Edition(
                e.name(),
                e.title(),
                e.language(),
                e.licence(),
                e.sources(),
                e.catalogue(),
                e.types(),
                e.rules(),
                e.levels(),
                e.trees(),
                e.grading(),
                e.assumptions(),
                Hashes.sha256(Hashes.canonical(all)),
                e.textHash());
    }

    private static Map<String, String> rules(List<Rule> rules) {
        Map<String, String> out = new TreeMap<>();
        rules.forEach(r -> out.put(r.id(), RuleText.canonical(r)));
        return out;
    }

    private static Map<String, Object> catalogue(Catalogue c) {
        Map<String, Object> out = new TreeMap<>();
        Map<String, Object> kinds = new TreeMap<>();
        c.kinds().forEach((id, k) -> {
            Map<String, String> properties = new TreeMap<>();
            k.properties().forEach((p, x) -> properties.put(p, x.label() + "|" + type(x.type())));
            kinds.put(id, Map.of("name", k.name(), "properties", properties));
        });
        out.put("kinds", kinds);
        Map<String, Object> terms = new TreeMap<>();
        c.terms().forEach((kind, map) -> map.forEach((id, t) -> terms.put(kind + "/" + id, term(t))));
        out.put("terms", terms);
        Map<String, Object> more = new TreeMap<>();
        c.processes()
                .forEach((id, p) -> more.put("process/" + id, List.of(p.parent(), p.group(), setting(p.setting()))));
        c.stages()
                .forEach((id, s) -> more.put(
                        "stage/" + id, List.of(s.position(), s.cleaning(), setting(s.setting()), s.alternatives())));
        c.parameters()
                .forEach((id, p) ->
                        more.put("parameter/" + id, List.of(p.dimension().id(), span(p.scale()), p.factor())));
        c.cautions().forEach((id, text) -> more.put("hazard/" + id, text));
        c.blindSpots().forEach((id, text) -> more.put("test-method/" + id, text));
        c.attributes()
                .forEach((id, a) -> more.put("attribute/" + id, List.of(a.label(), a.question(), type(a.type()))));
        out.put("more", more);
        return out;
    }

    private static Map<String, Object> term(Term t) {
        Map<String, String> properties = new TreeMap<>();
        t.properties().forEach((id, v) -> properties.put(id, value(v)));
        return Map.of(
                "name", t.name(),
                "definition", t.definition(),
                "synonyms", t.synonyms().stream().sorted().toList(),
                "replacedBy", t.replacedBy(),
                "properties", properties,
                "sources", t.sources());
    }

    private static Map<String, Object> setting(Setting s) {
        Map<String, String> windows = new TreeMap<>();
        s.windows().forEach((id, span) -> windows.put(id, span(span)));
        return Map.of("phrase", s.phrase(), "factors", s.factors(), "windows", windows);
    }

    private static String span(Span span) {
        return span.low() + ".." + span.high();
    }

    // Values and types are spelled out here rather than by their classes, so that renaming a class changes no hash.

    private static String value(Value value) {
        if (value instanceof Value.Number n) {
            return span(n.span());
        }
        if (value instanceof Value.OneOf o) {
            return String.join(" or ", o.terms());
        }
        return value instanceof Value.AllOf a ? String.join(" and ", a.terms()) : value.knowledge();
    }

    private static String type(FieldType type) {
        if (type instanceof FieldType.NumberType n) {
            return "quantity " + n.dimension().id();
        }
        return type instanceof FieldType.TermType t ? "kind " + t.kind() : type.describe();
    }

    private static String curve(List<Grading.Breakpoint> curve) {
        return String.join(
                ";", curve.stream().map(b -> b.si() + ":" + b.points()).toList());
    }

    private static Map<String, Object> tree(QuestionTree t) {
        Map<String, Object> questions = new TreeMap<>();
        t.questions().forEach((id, q) -> {
            List<String> answers = new ArrayList<>();
            q.answers()
                    .forEach(a -> answers.add(String.join(
                            "|",
                            a.id(),
                            a.say(),
                            a.next(),
                            a.proposal().map(MeaningHash::value).orElse(""))));
            questions.put(id, List.of(q.ask(), q.help(), answers));
        });
        return Map.of(
                "title", t.title(),
                "proposes", t.proposes(),
                "basis", t.basis().word(),
                "sources", t.sources(),
                "start", t.start(),
                "questions", questions);
    }

    private static Map<String, Object> grading(Grading g) {
        Map<String, String> steps = new TreeMap<>();
        g.steps().forEach((k, v) -> steps.put(String.valueOf(k), String.valueOf(v)));
        List<Object> areas = new ArrayList<>();
        g.areas().forEach(a -> {
            List<String> criteria = new ArrayList<>();
            a.criteria()
                    .forEach(c -> criteria.add(c.id() + "|" + c.name() + "|" + c.weight() + "|" + c.start() + "|"
                            + c.figure()
                                    .map(f -> f.field().map(Field::name).orElse("line." + f.line()) + curve(f.curve()))
                                    .orElse("")));
            areas.add(List.of(a.id(), a.name(), String.valueOf(a.weight()), criteria));
        });
        return Map.of("steps", steps, "areas", areas);
    }
}
