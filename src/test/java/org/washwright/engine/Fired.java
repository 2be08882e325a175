package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.washwright.document.Diagnostics;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/** Rules put into the small edition and run on a task by the interpreter. */
final class Fired {

    private Fired() {}

    static String rule(String id, String when, String then) {
        return "rule \"" + id + "\" @id(\"" + id + "\") @basis(\"common practice\") when " + when + " then " + then
                + "; end\n";
    }

    static Firing only(String rule, String yaml) {
        List<Firing> firings = fire(rule, yaml);
        assertEquals(1, firings.size());
        return firings.get(0);
    }

    static List<Firing> fire(String rules, String yaml) {
        Edition edition = SmallEdition.with(rules);
        FactBase facts = facts(edition, yaml);
        Inference.Inferred inferred = ReferenceInterpreter.factory()
                .prepare(edition.taskRules(), edition.levels(), edition.types())
                .run(facts.all());
        return new Firings(edition).of(inferred, facts.with(inferred.conclusions()), "", 1);
    }

    static FactBase facts(Edition edition, String yaml) {
        Diagnostics diagnostics = new Diagnostics();
        FactBase facts = FactBuilder.build(Starter.task(edition, "title: t\n" + yaml), edition, Map.of(), diagnostics);
        assertEquals(List.of(), diagnostics.all());
        return facts;
    }
}
