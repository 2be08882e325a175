package org.washwright.assessment;

import java.util.List;
import java.util.Optional;
import org.washwright.engine.FactBase;
import org.washwright.engine.Firing;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Edition;

/**
 * What an edition makes of a task before anything is graded or put into words: enough for whoever asks many tasks which
 * rules fired and which processes stand.
 *
 * @param edition the edition
 * @param facts all facts of the task, conclusions included; those of stages stand with their lines
 * @param firings every firing, certain and undecided, those of line rules included
 * @param lines the line of every process, in order of the processes' ids
 */
public record Outcome(Edition edition, FactBase facts, List<Firing> firings, List<ProcessLine> lines) {

    /** Keeps copies. */
    public Outcome {
        firings = List.copyOf(firings);
        lines = List.copyOf(lines);
    }

    /** The line of a process. */
    public Optional<ProcessLine> line(String process) {
        return lines.stream().filter(l -> l.process().id().equals(process)).findFirst();
    }

    /** Firings of a rule. */
    public List<Firing> of(String rule) {
        return firings.stream().filter(f -> f.rule().id().equals(rule)).toList();
    }

    /** Processes that are not ruled out. */
    public List<ProcessLine> standing() {
        return lines.stream()
                .filter(l -> l.status() != ProcessLine.Status.RULED_OUT)
                .toList();
    }

    /** The findings of a firing, in the words of answers. */
    public List<Answer.Finding> said(Firing firing) {
        return new FindingCards(edition).firing(firing).findings();
    }

    /** What to find out first, as an answer lists it. */
    public List<Answer.Question> questions() {
        return new Questions(edition, facts, firings).of(standing());
    }

    /** How one asks for what a reference names: an attribute of a fact, or the key of a list that may hold more. */
    public String question(String ref) {
        return new Questions(edition, facts, firings).question(ref);
    }
}
