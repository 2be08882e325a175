package org.washwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.engine.Firing;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;

/** Lists the rules that spoke and every source that they, or values they read, rest on. */
final class Citations {

    private final Edition edition;

    Citations(Edition edition) {
        this.edition = edition;
    }

    List<Answer.Rule> rules(List<Firing> firings) {
        Map<String, Rule> rules = new TreeMap<>();
        firings.forEach(f -> rules.put(f.rule().id(), f.rule()));
        List<Answer.Rule> out = new ArrayList<>();
        rules.values()
                .forEach(r -> out.add(new Answer.Rule(
                        r.id(),
                        r.title(),
                        r.basis().word(),
                        r.sources().stream()
                                .map(c -> new Answer.Cite(c.source(), c.locator()))
                                .toList(),
                        r.since(),
                        r.note(),
                        r.place().file() + ":" + r.place().line())));
        return out;
    }

    List<Answer.Source> sources(List<Firing> firings, List<Answer.Fact> facts) {
        TreeSet<String> ids = new TreeSet<>();
        firings.forEach(f -> f.rule().sources().forEach(c -> ids.add(c.source())));
        facts.forEach(f -> f.attributes().forEach(a -> {
            for (String cite : a.origin().source().split(";")) {
                ids.add(cite.split(",", 2)[0].strip());
            }
        }));
        return ids.stream()
                .filter(edition.sources()::containsKey)
                .map(id -> edition.sources().get(id))
                .map(s -> new Answer.Source(s.id(), s.title(), s.year(), s.locator(), s.seen()))
                .toList();
    }
}
