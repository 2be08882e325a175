package org.washwright.impact.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Parameter;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.Property;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.StageTerm;
import org.washwright.catalogue.Term;
import org.washwright.task.FieldType;

/** What the catalogue of an edition says. */
final class CatalogueFacets {

    private final Catalogue catalogue;
    private final Shown shown;

    private CatalogueFacets(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.shown = new Shown(catalogue);
    }

    static List<Difference> compare(Catalogue before, Catalogue after) {
        CatalogueFacets a = new CatalogueFacets(before);
        CatalogueFacets b = new CatalogueFacets(after);
        List<Difference> out = new ArrayList<>(Facets.compare(Subject.KIND, a.kinds(), b.kinds()));
        out.addAll(Facets.compare(Subject.TERM, a.terms(), b.terms()));
        out.addAll(Facets.compare(Subject.ATTRIBUTE, a.attributes(), b.attributes()));
        return out;
    }

    private Map<String, Facets> kinds() {
        Map<String, Facets> out = new TreeMap<>();
        catalogue.kinds().forEach((id, kind) -> {
            Facets facets = new Facets(kind.name(), Difference.NOWHERE).words("name", kind.name());
            kind.properties()
                    .forEach((p, x) -> facets.words("label of " + p, x.label())
                            .add("type of " + p, Shown.type(x.type()), Shown.exact(x.type()), true));
            out.put(id, facets);
        });
        return out;
    }

    private Map<String, Facets> terms() {
        Map<String, Facets> out = new TreeMap<>();
        catalogue.terms().forEach((kind, terms) -> terms.forEach((id, term) -> out.put(kind + "/" + id, term(term))));
        catalogue.processes().forEach((id, p) -> process(out.get("process/" + id), p));
        catalogue.stages().forEach((id, s) -> stage(out.get("stage/" + id), s));
        catalogue.parameters().forEach((id, p) -> parameter(out.get("parameter/" + id), p));
        catalogue.cautions().forEach((id, text) -> out.get("hazard/" + id).words("caution", text));
        catalogue
                .blindSpots()
                .forEach((id, text) -> out.get("test-method/" + id).words("can't see", text));
        return out;
    }

    /** A task may call a term by its name or a synonym, so that answers can turn on both. */
    private Facets term(Term term) {
        Facets facets = new Facets(term.name(), term.place())
                .matters("name", term.name())
                .words("definition", term.definition())
                .matters(
                        "synonyms",
                        String.join(", ", term.synonyms().stream().sorted().toList()))
                .matters("replaced by", term.replacedBy());
        Kind kind = catalogue.kinds().get(term.kind());
        term.properties().forEach((id, value) -> {
            Property property = kind == null ? null : kind.properties().get(id);
            String label = property == null ? id : property.label();
            FieldType type = property == null ? new FieldType.FactType() : property.type();
            facets.named("property " + id, label(label, id), shown.value(value, type), Shown.exact(value));
        });
        term.sources().forEach((id, cite) -> facets.words("source of " + id, cite));
        return facets;
    }

    /** A label alone where it tells which property is meant. */
    private static String label(String label, String id) {
        return label.replace(' ', '-').equalsIgnoreCase(id) ? label : label + " (" + id + ")";
    }

    private void process(Facets facets, ProcessTerm p) {
        facets.matters("stands below", p.parent()).matters("is a group", Shown.yes(p.group()));
        setting(facets, p.setting());
    }

    private void stage(Facets facets, StageTerm s) {
        facets.matters("position", String.valueOf(s.position()))
                .matters("removes soil", Shown.yes(s.cleaning()))
                .matters("alternatives", String.join(", ", s.alternatives()));
        setting(facets, s.setting());
    }

    private void setting(Facets facets, Setting s) {
        facets.words("what one does", s.phrase());
        s.factors().forEach((id, words) -> facets.words("factor " + id, words));
        s.windows().forEach((id, span) -> {
            Parameter parameter = catalogue.parameters().get(id);
            String range = parameter == null ? Shown.exact(span) : Shown.span(span, parameter.dimension());
            facets.add("window of " + catalogue.name("parameter", id), range, Shown.exact(span), true);
        });
    }

    private static void parameter(Facets facets, Parameter p) {
        facets.add("measures", p.dimension().label(), p.dimension().id(), true)
                .add("scale", Shown.span(p.scale(), p.dimension()), Shown.exact(p.scale()), true)
                .matters("cleaning factor", p.factor());
    }

    private Map<String, Facets> attributes() {
        Map<String, Facets> out = new TreeMap<>();
        catalogue
                .attributes()
                .forEach((id, a) -> out.put(
                        id,
                        new Facets(a.label(), Difference.NOWHERE)
                                .words("label", a.label())
                                .words("question", a.question())
                                .add("type", Shown.type(a.type()), Shown.exact(a.type()), true)));
        return out;
    }
}
