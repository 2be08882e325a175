package org.washwright.impact.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Edition;
import org.washwright.rule.Field;
import org.washwright.rule.Grading;
import org.washwright.rule.QuestionTree;
import org.washwright.rule.Rule;
import org.washwright.task.FieldType;

/** What an edition says besides rules and catalogue: sources, question trees, grading, assumptions, and its title page. */
final class RestFacets {

    private static final int DIGITS = 6;

    private final Edition edition;
    private final Shown shown;

    private RestFacets(Edition edition) {
        this.edition = edition;
        this.shown = new Shown(edition.catalogue());
    }

    static List<Difference> compare(Edition before, Edition after) {
        RestFacets a = new RestFacets(before);
        RestFacets b = new RestFacets(after);
        List<Difference> out = new ArrayList<>(Facets.compare(Subject.TREE, a.trees(), b.trees()));
        out.addAll(Facets.compare(Subject.GRADING, a.grading(), b.grading()));
        out.addAll(Facets.compare(Subject.ASSUMPTION, a.assumptions(), b.assumptions()));
        out.addAll(Facets.compare(Subject.SOURCE, a.sources(), b.sources()));
        out.addAll(Facets.compare(Subject.HEADER, a.header(), b.header()));
        return out;
    }

    private static Facets facets(String name) {
        return new Facets(name, Difference.NOWHERE);
    }

    private Map<String, Facets> header() {
        return Map.of(
                edition.name(),
                facets(edition.title())
                        .words("title", edition.title())
                        .words("language", edition.language())
                        .words("licence", edition.licence()));
    }

    private Map<String, Facets> sources() {
        Map<String, Facets> out = new TreeMap<>();
        edition.sources()
                .forEach((id, s) -> out.put(
                        id,
                        facets(s.title())
                                .words("title", s.title())
                                .words("year", String.valueOf(s.year()))
                                .words("locator", s.locator())
                                .words("seen", s.seen() ? "yes" : "from memory")));
        return out;
    }

    private Map<String, Facets> assumptions() {
        Map<String, Facets> out = new TreeMap<>();
        edition.assumptions()
                .forEach((id, a) -> out.put(
                        id,
                        facets(a.label())
                                .words("label", a.label())
                                .add(
                                        "value",
                                        shown.value(a.value(), new FieldType.NumberType(a.dimension())),
                                        Shown.exact(a.value()),
                                        true)
                                .add(
                                        "measures",
                                        a.dimension().label(),
                                        a.dimension().id(),
                                        true)
                                .words("source", a.source())));
        return out;
    }

    private Map<String, Facets> trees() {
        Map<String, Facets> out = new TreeMap<>();
        edition.trees().forEach((id, tree) -> out.put(id, tree(tree)));
        return out;
    }

    private Facets tree(QuestionTree tree) {
        Facets facets = facets(tree.title())
                .words("title", tree.title())
                .matters("proposes", tree.proposes())
                .words("basis", tree.basis().word())
                .words("sources", cites(tree.sources()))
                .matters("first question", tree.start());
        FieldType type = edition.types()
                .type(tree.type())
                .flatMap(t -> t.field(tree.attribute()))
                .map(Field::type)
                .orElse(new FieldType.FactType());
        tree.questions().forEach((id, q) -> question(facets, "question " + id, q, type));
        return facets;
    }

    private void question(Facets facets, String name, QuestionTree.Question q, FieldType type) {
        facets.add(name, q.ask(), "asks " + q.ask(), false).words(name + ", help", q.help());
        facets.words(
                name + ", order of answers",
                String.join(
                        ", ", q.answers().stream().map(QuestionTree.Answer::id).toList()));
        q.answers().forEach(a -> {
            String answer = name + ", answer " + a.id();
            facets.words(answer, a.say());
            a.proposal()
                    .ifPresentOrElse(
                            v -> facets.add(answer + " proposes", shown.value(v, type), Shown.exact(v), true),
                            () -> facets.matters(answer + " leads to", a.next()));
        });
    }

    static String cites(List<Rule.Cite> cites) {
        return String.join(
                "; ",
                cites.stream()
                        .map(c -> c.locator().isEmpty() ? c.source() : c.source() + ", " + c.locator())
                        .toList());
    }

    private Map<String, Facets> grading() {
        Grading grading = edition.grading();
        Map<String, Facets> out = new TreeMap<>();
        Facets all = facets("points and areas");
        grading.steps().forEach((n, points) -> exactly(all, "points of a step of " + n, points));
        all.words(
                "order of areas",
                String.join(", ", grading.areas().stream().map(Grading.Area::id).toList()));
        out.put("steps", all);
        grading.areas().forEach(area -> {
            Facets facets = facets(area.name()).words("name", area.name());
            exactly(facets, "weight", area.weight());
            facets.words(
                    "order of criteria",
                    String.join(
                            ", ",
                            area.criteria().stream().map(Grading.Criterion::id).toList()));
            out.put(area.id(), facets);
            area.criteria().forEach(c -> out.put(area.id() + "/" + c.id(), criterion(c)));
        });
        return out;
    }

    private static Facets criterion(Grading.Criterion c) {
        Facets facets = facets(c.name()).words("name", c.name());
        exactly(facets, "weight", c.weight());
        exactly(facets, "start", c.start());
        c.figure().ifPresent(f -> {
            facets.matters("figure", f.field().map(Field::name).orElse("line." + f.line()));
            List<String> curve = new ArrayList<>();
            List<String> exact = new ArrayList<>();
            f.curve().forEach(b -> {
                curve.add(Quantities.write(b.si(), f.dimension(), DIGITS) + " gives " + Shown.number(b.points()));
                exact.add(b.si() + ":" + b.points());
            });
            facets.add("curve", String.join(", ", curve), String.join(";", exact), true);
        });
        return facets;
    }

    private static void exactly(Facets facets, String what, double value) {
        facets.add(what, Shown.number(value), String.valueOf(value), true);
    }
}
