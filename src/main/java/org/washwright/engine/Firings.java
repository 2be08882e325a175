package org.washwright.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Reason;
import org.washwright.task.FieldType;

/** Numbers matches in fixed order and resolves what they say: processes meant, values in reasons. */
public final class Firings {

    private final Edition edition;
    private final Words words;

    /** Resolves with the words of this edition. */
    public Firings(Edition edition) {
        this.edition = edition;
        this.words = new Words(edition.catalogue());
    }

    /**
     * Firings of matches.
     *
     * @param inferred matches in order of level, rule and facts
     * @param facts all facts, conclusions included
     * @param line process id for line rules, else empty
     * @param first number of the first firing
     */
    public List<Firing> of(Inference.Inferred inferred, FactBase facts, String line, int first) {
        return of(inferred, facts, line, first, Map.of());
    }

    /**
     * The same for the rules over a line.
     *
     * @param placedBy firings that placed a stage, by the id of the stage's fact
     */
    public List<Firing> of(
            Inference.Inferred inferred, FactBase facts, String line, int first, Map<String, List<Firing>> placedBy) {
        Map<String, List<Firing>> concludedBy = new HashMap<>(placedBy);
        Reading reading = new Reading(facts, concludedBy);
        List<Firing> out = new ArrayList<>();
        for (Match m : inferred.matches()) {
            Firing firing = new Firing(
                    first + out.size(),
                    m.rule(),
                    edition.levels().getOrDefault(m.rule().id(), 0),
                    m.certain(),
                    line,
                    m.facts(),
                    reading.uses(m),
                    reading.held(m),
                    findings(m, line));
            out.add(firing);
            Conclusions.of(m, edition.types())
                    .forEach(f -> concludedBy
                            .computeIfAbsent(f.id(), k -> new ArrayList<>())
                            .add(firing));
        }
        return out;
    }

    private List<Finding> findings(Match match, String line) {
        List<Finding> out = new ArrayList<>();
        for (Effect effect : match.rule().effects()) {
            Optional<Effect.Target> target = target(effect);
            if (target.isEmpty()) {
                out.add(new Finding(effect, List.of(), text(effect.reason(), match, "")));
                continue;
            }
            // One finding per member of a node; members whose sentence is the same share one entry.
            Map<String, List<String>> byText = new LinkedHashMap<>();
            for (String process : processes(target.get(), match)) {
                if (line.isEmpty() || line.equals(process)) {
                    byText.computeIfAbsent(text(effect.reason(), match, process), k -> new ArrayList<>())
                            .add(process);
                }
            }
            byText.forEach((text, processes) -> out.add(new Finding(effect, processes, text)));
        }
        return out;
    }

    private static Optional<Effect.Target> target(Effect effect) {
        if (effect instanceof Effect.RuleOut r) {
            return Optional.of(r.target());
        }
        if (effect instanceof Effect.Score s) {
            return Optional.of(s.target());
        }
        if (effect instanceof Effect.Require r) {
            return Optional.of(r.target());
        }
        if (effect instanceof Effect.Limit l) {
            return Optional.of(l.target());
        }
        return effect instanceof Effect.Caution c ? c.target() : Optional.empty();
    }

    private List<String> processes(Effect.Target target, Match match) {
        if (target instanceof Effect.Target.Node n) {
            return edition.catalogue().members(n.id());
        }
        Fact process =
                match.facts().get(((Effect.Target.Matched) target).pattern()).orElseThrow();
        return List.of(process.id().substring(process.id().indexOf('/') + 1));
    }

    private String text(Reason reason, Match match, String process) {
        StringBuilder out = new StringBuilder();
        for (Reason.Part part : reason.parts()) {
            if (part instanceof Reason.Part.Words w) {
                out.append(w.text());
            } else if (part instanceof Reason.Part.NameOf n) {
                out.append(match.facts().get(n.pattern()).map(this::name).orElse("it"));
            } else if (part instanceof Reason.Part.ValueOf v) {
                out.append(match.facts()
                        .get(v.pattern())
                        .map(f -> words.inSentence(f, v.field()))
                        .orElse("it"));
            } else {
                out.append(
                        process.isEmpty() ? "the process" : edition.catalogue().name("process", process));
            }
        }
        if (out.length() > 0) {
            out.setCharAt(0, Character.toUpperCase(out.charAt(0)));
        }
        return out.toString();
    }

    private String name(Fact fact) {
        if (fact.type().name().equals(FactTypes.CONCLUSION)) {
            return words.value(
                    fact.value(fact.type().field("id").orElseThrow()), FieldType.term("conclusion"), Words.COMPUTED);
        }
        return fact.name();
    }
}
