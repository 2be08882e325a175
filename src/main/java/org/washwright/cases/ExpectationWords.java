package org.washwright.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.washwright.engine.Words;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.Rule;
import org.washwright.task.Attribute;
import org.washwright.task.Group;

/** Puts expectations into words. */
public final class ExpectationWords {

    private final Edition edition;

    /** Words with the names of an edition. */
    public ExpectationWords(Edition edition) {
        this.edition = edition;
    }

    /** What is expected, in words; two expectations of the same words ask the same. */
    public String of(Expectation e) {
        if (e instanceof Expectation.Stands s) {
            return process(s.process()) + " is " + s.status().word();
        }
        if (e instanceof Expectation.RulesOut r) {
            return process(r.process()) + " is ruled out" + by(r.by());
        }
        if (e instanceof Expectation.Cautions c) {
            return "a caution of " + edition.catalogue().name("hazard", c.hazard())
                    + c.process().map(p -> " for " + process(p)).orElse("") + by(c.by());
        }
        if (e instanceof Expectation.Asks a) {
            return asked(a.attribute()) + " is asked for";
        }
        if (e instanceof Expectation.Verifies v) {
            return "cleanliness is proven by " + edition.catalogue().name("test-method", v.method());
        }
        if (e instanceof Expectation.WindowIs w) {
            return window(w);
        }
        if (e instanceof Expectation.StageOrder o) {
            return process(o.process()) + " has in this order: "
                    + String.join(", ", o.stages().stream().map(this::stage).toList());
        }
        if (e instanceof Expectation.Reacts r) {
            return reacts(r);
        }
        Expectation.Says s = (Expectation.Says) e;
        return rule(s.rule()) + " says " + s.verb() + ": " + s.detail() + about(s.about());
    }

    /** What is asked for, in words: an attribute of an entry, or what a list may still hold. */
    private String asked(String ref) {
        String[] parts = ref.split("/");
        Optional<Group> group = Group.byKey(parts[0]);
        if (group.isEmpty()) {
            return edition.catalogue().attributes().containsKey(parts[parts.length - 1])
                    ? edition.catalogue()
                            .attributes()
                            .get(parts[parts.length - 1])
                            .label()
                    : ref;
        }
        if (parts.length == 1) {
            return "any further " + group.get().label();
        }
        String entry = group.get().label() + (group.get().isList() ? " " + (Integer.parseInt(parts[1]) + 1) : "");
        return "the "
                + group.get()
                        .attribute(parts[parts.length - 1])
                        .map(Attribute::label)
                        .orElse(parts[parts.length - 1])
                + " of " + (group.get().isList() ? entry : "the " + entry);
    }

    private String reacts(Expectation.Reacts r) {
        String verb = switch (r.reaction()) {
            case FIRES -> " fires";
            case SILENT -> " does not fire";
            case UNDECIDED -> " is undecided";
        };
        String on =
                r.on().map(facts -> ", on exactly " + String.join(", ", facts)).orElse("");
        return rule(r.rule()) + verb + about(r.about()) + on;
    }

    private String about(Optional<SortedSet<String>> about) {
        return about.map(set -> set.isEmpty()
                        ? ", of no process"
                        : ", of exactly "
                                + String.join(
                                        "; ", set.stream().map(this::process).toList()))
                .orElse("");
    }

    private String window(Expectation.WindowIs w) {
        var parameter = edition.catalogue().parameters().get(w.parameter());
        List<String> ends = new ArrayList<>();
        w.min().ifPresent(v -> ends.add("from " + Quantities.write(v, parameter.dimension(), Words.GIVEN)));
        w.max().ifPresent(v -> ends.add("up to " + Quantities.write(v, parameter.dimension(), Words.GIVEN)));
        w.within().ifPresent((Span s) -> ends.add("within " + Quantities.write(s, parameter.dimension(), Words.GIVEN)));
        return parameter.term().name() + " of " + stage(w.stage()) + " in " + process(w.process()) + ": "
                + String.join(" ", ends);
    }

    private String stage(String id) {
        return id.equals(Effect.StageRef.MAIN)
                ? "the main cleaning"
                : edition.catalogue().name("stage", id);
    }

    String process(String id) {
        return edition.catalogue().name("process", id);
    }

    private String rule(String id) {
        return id + edition.rule(id).map(Rule::title).map(t -> " (" + t + ")").orElse("");
    }

    private static String by(Optional<String> rule) {
        return rule.map(r -> " by " + r).orElse("");
    }
}
