package org.washwright.explain.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;
import org.washwright.engine.Conclusions;
import org.washwright.explain.AnswerIndex;
import org.washwright.task.Group;

/** What reasons end in: rules that fired, the facts they matched, and where these come from. */
final class GroundThings {

    private static final int MOST_SAID = 3;

    private final AnswerIndex index;
    private final Answer answer;

    GroundThings(AnswerIndex index) {
        this.index = index;
        this.answer = index.answer();
    }

    Optional<Thing> at(Pointer p) {
        if (p.is("firings", "#")) {
            return Optional.of(firing(p.in(answer.firings(), 1), p.text()));
        }
        if (p.is("firings", "#", "findings", "#")) {
            Answer.Firing firing = p.in(answer.firings(), 1);
            Answer.Finding finding = p.in(firing.findings(), 3);
            String id = identity(firing) + "/" + finding.verb() + " " + String.join(" ", finding.targets());
            return Optional.of(new Thing(
                    id,
                    Kind.FINDING,
                    finding.text(),
                    firing.certain() ? "" : "not decided",
                    p.text(),
                    List.of(index.firingAt(firing.n()))));
        }
        if (p.is("facts", "#")) {
            return Optional.of(fact(p.in(answer.facts(), 1), p.text()));
        }
        if (p.is("facts", "#", "attributes", "#")) {
            Answer.Fact fact = p.in(answer.facts(), 1);
            return Optional.of(attribute(fact, p.in(fact.attributes(), 3), p.text()));
        }
        if (p.is("sources", "#")) {
            Answer.Source source = p.in(answer.sources(), 1);
            return Optional.of(new Thing(
                    "source/" + source.id(),
                    Kind.SOURCE,
                    source.title() + " (" + source.year() + ")",
                    source.seen() ? source.locator() : "cited from memory",
                    p.text(),
                    List.of()));
        }
        if (p.is("inputs", "#")) {
            return Optional.of(input(p.in(answer.inputs(), 1), p.text()));
        }
        return p.is("request", "task", p.step(2)) ? list(p) : Optional.empty();
    }

    /** What a firing is called whatever its number. */
    static String identity(Answer.Firing f) {
        return f.rule() + "[" + String.join(" ", f.matched()) + "]"
                + (f.line().isEmpty() ? "" : " in the line of " + f.line())
                + (f.certain() ? "" : " perhaps");
    }

    private Thing firing(Answer.Firing f, String at) {
        Answer.Rule rule = index.rule(f.rule()).orElseThrow();
        List<String> on = new ArrayList<>();
        f.held().forEach(ref -> on.addAll(place(ref)));
        f.uses().forEach(ref -> on.addAll(place(ref)));
        f.matched().stream()
                .filter(id -> index.fact(id).map(x -> !x.firings().isEmpty()).orElse(false))
                .forEach(id -> on.addAll(place(id)));
        if (on.isEmpty()) {
            f.matched().forEach(id -> on.addAll(place(id)));
        }
        rule.sources()
                .forEach(c -> on.addAll(index.sourceAt(c.source()).stream().toList()));
        String detail = basis(rule) + (f.certain() ? "" : "; not decided");
        return new Thing(identity(f), f.certain() ? Kind.RULE : Kind.OPEN_RULE, called(rule, f), detail, at, on);
    }

    /** A rule by its title; a row of a table, which has none of its own, by what it says. */
    private static String called(Answer.Rule rule, Answer.Firing f) {
        if (!rule.title().endsWith(rule.id())) {
            return rule.title();
        }
        List<String> said =
                f.findings().stream().map(Answer.Finding::text).distinct().toList();
        String more = said.size() > MOST_SAID ? " And " + (said.size() - MOST_SAID) + " more like it." : "";
        return said.stream().limit(MOST_SAID).map(GroundThings::sentence).collect(Collectors.joining(" ")) + more;
    }

    private static String sentence(String text) {
        return text.isEmpty() || text.endsWith(".") || text.endsWith("?") || text.endsWith("!") ? text : text + ".";
    }

    private static String basis(Answer.Rule rule) {
        String places = rule.sources().stream()
                .map(Answer.Cite::locator)
                .filter(l -> !l.isEmpty())
                .collect(Collectors.joining(", "));
        return rule.basis() + (places.isEmpty() ? "" : ", " + places);
    }

    /** Where a reference of a firing points; a group of the task by its key. */
    private List<String> place(String ref) {
        Optional<String> known = index.at(ref);
        if (known.isPresent()) {
            return List.of(known.get());
        }
        return Group.byKey(ref).isPresent() ? List.of("/request/task/" + ref) : List.of();
    }

    private Thing fact(Answer.Fact fact, String at) {
        List<String> on = new ArrayList<>();
        fact.firings().forEach(n -> on.add(index.firingAt(n)));
        if (fact.id().startsWith(Conclusions.PREFIX)) {
            String about = fact.id().substring(Conclusions.PREFIX.length());
            int slash = about.indexOf('/');
            String subject = slash < 0
                    ? ""
                    : index.fact(about.substring(slash + 1))
                            .map(s -> ", of " + s.name())
                            .orElse("");
            return new Thing(fact.id(), Kind.CONCLUSION, fact.name() + subject, "concluded", at, on);
        }
        if (fact.id().startsWith("line/") && !on.isEmpty()) {
            return new Thing(fact.id(), Kind.STAGE, fact.name() + " in the line", "placed by rules", at, on);
        }
        boolean ofEdition = fact.id().startsWith("process/") || fact.id().startsWith("line/");
        if (on.isEmpty() && !ofEdition) {
            fact.attributes().forEach(a -> on.addAll(place(a.ref())));
        }
        Kind kind = !on.isEmpty() ? Kind.SAID : ofEdition ? Kind.CATALOGUE : Kind.GIVEN;
        return new Thing(fact.id(), kind, fact.name(), ofEdition ? "catalogue" : "of the task", at, on);
    }

    private Thing attribute(Answer.Fact fact, Answer.Attribute a, String at) {
        Answer.Origin o = a.origin();
        String text = named(fact, a) + ": " + a.value();
        String warned = o.warnings().isEmpty() ? "" : "; mind: " + String.join("; ", o.warnings());
        List<String> on = new ArrayList<>();
        o.inputs().forEach(ref -> on.addAll(place(ref)));
        on.addAll(index.cited(o.source()));
        // A conclusion and a stage of a line are there because of rules.
        fact.firings().forEach(n -> on.add(index.firingAt(n)));
        // A source that the answer lists stands below by its name.
        String cited = o.source().isEmpty() || !index.cited(o.source()).isEmpty() ? "" : ", " + o.source();
        return switch (o.kind()) {
            case "given" -> new Thing(a.ref(), unknown(a) ? Kind.UNKNOWN : Kind.GIVEN, text, "given" + warned, at, on);
            case "question tree" -> new Thing(a.ref(), Kind.ASKED, text, "asked: " + o.detail() + warned, at, on);
            case "catalogue" ->
                new Thing(a.ref(), Kind.CATALOGUE, text, "catalogue, " + o.detail() + cited + warned, at, on);
            case "computed" -> computed(fact, a, text, o.detail() + cited + warned, at, on);
            default -> new Thing(a.ref(), Kind.UNKNOWN, text, "nobody said", at, on);
        };
    }

    private Thing computed(
            Answer.Fact fact, Answer.Attribute a, String text, String detail, String at, List<String> on) {
        boolean inLine = fact.id().startsWith("line/");
        if (on.isEmpty()
                && inLine
                && !a.ref().endsWith("/main/main")
                && !a.ref().endsWith("/main/id")) {
            on.addAll(placed(fact.id().split("/")[1]));
        }
        boolean byItself = on.isEmpty() && (inLine || fact.id().contains("process/"));
        return new Thing(a.ref(), byItself ? Kind.FORMULA : Kind.COMPUTED, text, detail, at, on);
    }

    /** Rules over the task that place stages in the line of a process: where another stage stands follows from these. */
    private List<String> placed(String process) {
        return answer.firings().stream()
                .filter(f -> f.line().isEmpty()
                        && f.findings().stream()
                                .anyMatch(x -> x.verb().equals("require")
                                        && x.targets().contains(process)))
                .map(f -> index.firingAt(f.n()))
                .toList();
    }

    private static boolean unknown(Answer.Attribute a) {
        return a.knowledge().equals("unknown");
    }

    /** An attribute with the thing it belongs to, as one would say it; what names the thing itself is said once. */
    private static String named(Answer.Fact fact, Answer.Attribute a) {
        if (a.value().equals(fact.name()) || a.label().equals(fact.name())) {
            return a.label();
        }
        String bare = fact.name().replaceFirst("^(the|a further) ", "");
        String own = Group.byFactType(fact.type())
                .map(g -> g.attributes().get(0).label())
                .orElse(bare);
        String label = a.label();
        for (String suffix : List.of(" of the " + own, " of the " + bare)) {
            label = label.endsWith(suffix) ? label.substring(0, label.length() - suffix.length()) : label;
        }
        return fact.name() + ", " + label;
    }

    private Thing input(Design.Input input, String at) {
        boolean assumed = input.ref().startsWith("assumption/");
        String from = input.changed() ? "set for this answer" : index.locators(input.source());
        return new Thing(
                input.ref(),
                assumed ? Kind.ASSUMPTION : Kind.CATALOGUE,
                input.label() + ": " + input.value(),
                (assumed ? "taken for granted" : "catalogue") + (from.isEmpty() ? "" : "; " + from),
                at,
                index.cited(input.source()));
    }

    private Optional<Thing> list(Pointer p) {
        return Group.byKey(p.step(2)).map(group -> {
            boolean open = answer.request().task() instanceof Map<?, ?> task
                    && task.get(group.key()) instanceof Map<?, ?> list
                    && Boolean.TRUE.equals(list.get("open"));
            String text = group.heading() + ": "
                    + (!group.isList() ? "as given" : open ? "whether these are all is not known" : "these are all");
            return new Thing("list/" + group.key(), Kind.LIST, text, "the task", p.text(), List.of());
        });
    }
}
