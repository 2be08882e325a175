package org.washwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Attribute;
import org.washwright.assessment.Answer.Fact;

/** The task as it was given, group by group, what is not known said so; and what follows from it. */
final class TaskPart {

    private static final String UNKNOWN = "not known";
    private static final String NONE = "none";

    /** What an open list may still hold: said in words beside the list. */
    private static final String MORE = "/*";

    private final Page page;
    private final Map<String, List<Fact>> groups = new LinkedHashMap<>();
    private final List<String> none = new ArrayList<>();

    TaskPart(Page page) {
        this.page = page;
        page.answer().facts().stream()
                .filter(TaskPart::isOfTask)
                .forEach(f ->
                        groups.computeIfAbsent(key(f), k -> new ArrayList<>()).add(f));
    }

    /** What somebody said, as against what the edition says or rules concluded. */
    static boolean isOfTask(Fact fact) {
        return fact.firings().isEmpty()
                && !fact.id().contains("process/")
                && !fact.id().endsWith(MORE)
                && !fact.id().startsWith("line/")
                && !fact.id().startsWith("conclusions/");
    }

    void write() {
        page.section(Section.TASK);
        if (!page.report().notes().isBlank()) {
            page.markup().element("p", page.report().notes(), "class", "notes");
        }
        groups().forEach(this::group);
        if (!none.isEmpty()) {
            page.note("There is none of these: " + String.join(", ", none) + ".");
        }
        intended();
        page.end();
    }

    /** Groups that hold something, then those of the request that hold nothing. */
    private Map<String, List<Fact>> groups() {
        Map<String, List<Fact>> all = new LinkedHashMap<>(groups);
        if (page.answer().request().task() instanceof Map<?, ?> task) {
            new TreeMap<>(task).keySet().forEach(k -> all.putIfAbsent(k.toString(), List.of()));
        }
        return all;
    }

    private void group(String key, List<Fact> facts) {
        String rest = rest(key);
        boolean nothing = facts.isEmpty() && rest.isEmpty();
        if (nothing) {
            return;
        }
        if (rest.equals(NONE)) {
            none.add(Lookup.group(key));
            return;
        }
        Markup m = page.markup();
        m.open("div", "class", "group");
        page.heading(Lookup.group(key));
        for (Fact fact : facts) {
            fact(fact, facts.size());
        }
        if (!rest.isEmpty()) {
            page.note(rest);
        }
        m.close();
    }

    /** What is said of a list as a whole: that there is nothing, or that there may be more. */
    private String rest(String key) {
        if (page.answer().request().task() instanceof Map<?, ?> task
                && task.get(key) instanceof Map<?, ?> list
                && list.get("open") instanceof Boolean open) {
            boolean empty = list.get("list") instanceof List<?> entries && entries.isEmpty();
            return open ? (empty ? "Not known." : "Not known whether there are more.") : empty ? NONE : "";
        }
        return "";
    }

    private void fact(Fact fact, int ofSeveral) {
        Markup m = page.markup();
        List<Attribute> said = fact.attributes().stream()
                .filter(a -> isSaid(a) && !a.knowledge().equals("not applicable"))
                .toList();
        List<String> idle = fact.attributes().stream()
                .filter(a -> isSaid(a) && a.knowledge().equals("not applicable"))
                .map(Attribute::label)
                .toList();
        if (ofSeveral > 1) {
            m.element("h4", fact.name());
        }
        if (!said.isEmpty()) {
            m.open("table", "class", "given").open("tbody");
            for (Attribute a : said) {
                boolean unknown = a.knowledge().equals("unknown");
                m.open("tr").element("th", a.label(), "scope", "row");
                m.element("td", unknown ? UNKNOWN : a.value(), "class", unknown ? "unknown" : "value");
                m.element("td", a.origin().kind().equals("given") || unknown ? "" : Lookup.origin(a), "class", "soft");
                m.close();
            }
            m.close().close();
        }
        if (said.isEmpty() && !idle.isEmpty()) {
            page.note("Nothing of this applies.");
        } else if (!idle.isEmpty()) {
            page.note("Does not apply: " + String.join(", ", idle) + ".");
        }
    }

    /** Given, asked, or not known: everything that is neither computed nor read from the edition. */
    static boolean isSaid(Attribute a) {
        String kind = a.origin().kind();
        return !kind.equals("computed") && !kind.equals("catalogue");
    }

    private void intended() {
        page.answer().intended().ifPresent(verdict -> {
            page.heading("the intended process, judged");
            page.paragraph(verdict.text());
            page.sentences(verdict.reasons());
            if (!verdict.settings().isEmpty()) {
                page.table("settings", "setting", "intended", "allowed", "verdict");
                verdict.settings()
                        .forEach(s -> page.row(
                                s.name(), s.given(), s.window().isEmpty() ? "nothing to set" : s.window(), s.state()));
                page.endTable();
            }
        });
    }

    /** What was computed from the task or read from the edition for it, with formula or term and source. */
    void writeFollowing() {
        page.section(Section.FOLLOWS);
        page.table("follows", "what", "value", "from");
        for (Fact fact : page.answer().facts()) {
            if (isOfTask(fact)) {
                fact.attributes().stream()
                        .filter(a -> !isSaid(a)
                                && (a.knowledge().equals("known")
                                        || a.knowledge().equals("range")
                                        || a.knowledge().equals("several")))
                        .forEach(this::following);
            }
        }
        page.endTable();
        concluded();
        page.end();
    }

    private void following(Attribute a) {
        String warnings = a.origin().warnings().isEmpty()
                ? ""
                : ". Mind: " + String.join("; ", a.origin().warnings());
        page.row(page.lookup().nameOf(a), a.value(), Lookup.origin(a) + warnings);
    }

    private void concluded() {
        List<Answer.Sentence> conclusions = page.answer().facts().stream()
                .filter(f -> f.id().startsWith("conclusions/") && !f.id().contains("process/"))
                .map(f -> new Answer.Sentence(f.name(), f.firings()))
                .toList();
        if (!conclusions.isEmpty()) {
            page.heading("concluded by rules");
            page.sentences(conclusions);
        }
    }

    private static String key(Fact fact) {
        int slash = fact.id().indexOf('/');
        return slash < 0 ? fact.id() : fact.id().substring(0, slash);
    }
}
