package org.washwright.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.washwright.assessment.IntendedVerdict.Setting;
import org.washwright.assessment.IntendedVerdict.Verdict;
import org.washwright.catalogue.Catalogue;
import org.washwright.engine.Firing;
import org.washwright.line.ProcessLine;
import org.washwright.line.grading.Grader;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * Judges the process that somebody has in mind. Of a group any process will do, so its best one counts. Of several processes
 * nobody knows yet which it is, so all of them have to fit; else it hangs on which one it turns out to be.
 */
final class Judging {

    private final Catalogue catalogue;
    private final Outcome outcome;
    private final List<ProcessLine> ranked;
    private final Map<String, Grader.Grade> grades;
    private final Map<Integer, Firing> firings = new HashMap<>();
    private final OpenNames open;

    Judging(Edition edition, Outcome outcome, List<ProcessLine> ranked, Map<String, Grader.Grade> grades) {
        this.catalogue = edition.catalogue();
        this.outcome = outcome;
        this.ranked = ranked;
        this.grades = grades;
        outcome.firings().forEach(f -> firings.put(f.n(), f));
        this.open = new OpenNames(outcome.facts());
    }

    /** One process, judged. */
    private record Judged(
            ProcessLine line, Verdict verdict, List<Answer.Sentence> reasons, List<Setting> settings, int place) {}

    /** One term that was said, a process or a group, with the processes it stands for, the best first. */
    private record Meant(String term, String name, List<Judged> judged) {
        Verdict verdict() {
            return judged.isEmpty() ? Verdict.DOES_NOT_FIT : judged.get(0).verdict();
        }

        int place() {
            return judged.isEmpty() ? Integer.MAX_VALUE : judged.get(0).place();
        }
    }

    /** The verdict; empty when the task says nothing of an intended process. */
    Optional<IntendedVerdict> of(CleaningTask task) {
        if (task.entries(Group.INTENDED).entries().isEmpty()) {
            return Optional.empty();
        }
        var entry = task.single(Group.INTENDED);
        IntendedSettings settings = new IntendedSettings(catalogue, entry);
        Value process = entry.value(Group.INTENDED.attributes().get(0).name());
        if (process instanceof Value.OneOf several) {
            List<Meant> meant = several.terms().stream()
                    .map(t -> meant(t, settings))
                    .sorted(Comparator.comparing(Meant::verdict)
                            .thenComparing(Meant::place)
                            .thenComparing(Meant::term))
                    .toList();
            return Optional.of(verdict(meant));
        }
        return settings.given().isEmpty()
                ? Optional.empty()
                : Optional.of(notJudged(settings, process instanceof Value.Unknown));
    }

    private static IntendedVerdict notJudged(IntendedSettings settings, boolean unknown) {
        String text = (unknown ? "Which process is intended is not known" : "No process is intended") + "; without it "
                + String.join(", ", settings.given()) + " can't be judged.";
        return new IntendedVerdict(
                Verdict.NOT_JUDGED.word(), text, "", "", "", List.of(), List.of(), Optional.empty(), Optional.empty());
    }

    private Meant meant(String term, IntendedSettings settings) {
        List<Judged> judged = catalogue.members(term).stream()
                .flatMap(id -> outcome.line(id).stream())
                .map(line -> judged(line, settings))
                .sorted(Comparator.comparing(Judged::verdict)
                        .thenComparing(Judged::place)
                        .thenComparing(j -> j.line().process().id()))
                .toList();
        return new Meant(term, catalogue.name("process", term), judged);
    }

    private Judged judged(ProcessLine line, IntendedSettings said) {
        if (line.status() == ProcessLine.Status.RULED_OUT) {
            return new Judged(line, Verdict.DOES_NOT_FIT, Sentences.of(line.refusals()), List.of(), Integer.MAX_VALUE);
        }
        List<Setting> settings = said.of(line);
        List<Answer.Sentence> conditions = new ArrayList<>(IntendedSettings.conditions(settings));
        Sentences.of(line.conditions()).forEach(c -> conditions.add(withWhatIsOpen(c)));
        return new Judged(
                line,
                conditions.isEmpty() ? Verdict.FITS : Verdict.FITS_IF,
                conditions,
                settings,
                ranked.indexOf(line) + 1);
    }

    private Answer.Sentence withWhatIsOpen(Answer.Sentence condition) {
        Set<String> refs = new LinkedHashSet<>();
        condition.firings().forEach(n -> refs.addAll(firings.get(n).held()));
        return new Answer.Sentence(condition.text() + open.sentence(refs), condition.firings());
    }

    private IntendedVerdict verdict(List<Meant> meant) {
        Meant best = meant.get(0);
        boolean all = meant.stream().allMatch(m -> m.verdict() == Verdict.FITS);
        Verdict verdict = best.verdict() == Verdict.FITS && !all ? Verdict.FITS_IF : best.verdict();
        boolean stands = verdict != Verdict.DOES_NOT_FIT;
        boolean alone = meant.size() == 1 && best.judged().size() == 1;
        Optional<Judged> named = stands || alone ? best.judged().stream().findFirst() : Optional.empty();
        List<Answer.Sentence> reasons = new ArrayList<>();
        if (!stands) {
            meant.forEach(m -> reasons.addAll(whyNot(m, !alone)));
        } else if (!all) {
            reasons.addAll(whichOfThem(meant));
            reasons.addAll(best.judged().get(0).reasons());
        }
        String intended =
                String.join(" or ", meant.stream().map(Meant::name).sorted().toList());
        String process = named.map(j -> j.line().process().id()).orElse("");
        String name = named.map(j -> j.line().process().term().name()).orElse("");
        return new IntendedVerdict(
                verdict.word(),
                text(verdict, intended, name),
                intended,
                process,
                name,
                reasons,
                named.map(Judged::settings).orElse(List.of()),
                named.filter(j -> stands).map(j -> rank(j.place(), process)),
                first(process, stands));
    }

    private static String text(Verdict verdict, String intended, String name) {
        String subject = Headlines.capital(intended);
        boolean itself = intended.equals(name);
        return switch (verdict) {
            case FITS -> subject + " fits" + (itself ? "." : ", best as " + name + ".");
            case FITS_IF -> subject + " fits" + (itself ? " if:" : ", best as " + name + ", if:");
            default -> subject + " does not fit because:";
        };
    }

    private static List<Answer.Sentence> whyNot(Meant meant, boolean several) {
        if (meant.judged().isEmpty()) {
            return List.of(new Answer.Sentence(
                    Headlines.capital(meant.name()) + " is not in this edition, nor is any process of its kind.",
                    List.of()));
        }
        List<Answer.Sentence> out = new ArrayList<>();
        for (Judged j : meant.judged()) {
            String whose = several ? Headlines.capital(j.line().process().term().name()) + ": " : "";
            j.reasons().forEach(r -> out.add(new Answer.Sentence(whose + r.text(), r.firings())));
        }
        return out;
    }

    /** Of several that are not alike it hangs on which one it is; the others' reasons say why. */
    private static List<Answer.Sentence> whichOfThem(List<Meant> meant) {
        Verdict best = meant.get(0).verdict();
        List<String> good = new ArrayList<>();
        List<String> others = new ArrayList<>();
        TreeSet<Integer> why = new TreeSet<>();
        for (Meant m : meant) {
            if (good.isEmpty() || (best == Verdict.FITS && m.verdict() == best)) {
                good.add(m.name());
            } else {
                boolean out = m.verdict() == Verdict.DOES_NOT_FIT;
                others.add(m.name() + (out ? " does not fit" : " fits only under conditions of its own"));
                // Of a group that may fit, only its best one's conditions were weighed.
                m.judged().stream()
                        .limit(out ? Long.MAX_VALUE : 1)
                        .forEach(j -> j.reasons().forEach(r -> why.addAll(r.firings())));
            }
        }
        return others.isEmpty()
                ? List.of()
                : List.of(new Answer.Sentence(
                        "It has to be " + String.join(" or ", good) + ": " + String.join(", ", others) + ".",
                        List.copyOf(why)));
    }

    private IntendedVerdict.Rank rank(int place, String process) {
        Span points = grades.get(process).total();
        return new IntendedVerdict.Rank(place, ranked.size(), points.low(), points.high());
    }

    /** Clearly better is only what has more points however the undecided turns out. */
    private Optional<IntendedVerdict.First> first(String process, boolean stands) {
        return ranked.stream()
                .limit(1)
                .map(l -> l.process())
                .filter(p -> !stands
                        || grades.get(p.id()).total().low()
                                > grades.get(process).total().high())
                .map(p -> new IntendedVerdict.First(
                        p.id(),
                        p.term().name(),
                        grades.get(p.id()).total().low(),
                        grades.get(p.id()).total().high()))
                .findFirst();
    }
}
